package org.steelyard.report.grade;

import java.util.List;
import org.steelyard.check.result.AuditedFlight;
import org.steelyard.grade.mark.Diagnosis;
import org.steelyard.grade.mark.MarkedItem;
import org.steelyard.grade.mark.MarkedSheet;
import org.steelyard.grade.mark.Outcome;
import org.steelyard.grade.text.FigureText;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.input.SheetForm;
import org.steelyard.model.input.SheetItem;
import org.steelyard.model.loading.Loading;
import org.steelyard.model.unit.Counted;
import org.steelyard.report.html.EnvelopePicture;
import org.steelyard.report.html.Html;
import org.steelyard.report.html.PageShell;
import org.steelyard.report.html.ScrolledTables;
import org.steelyard.report.text.Caution;
import org.steelyard.report.text.NumberText;
import org.steelyard.report.words.EnvelopeCloud;

/** The page that a student gets back. */
final class GradePage {

    private final MarkedSheet sheet;
    private final Html html;

    private GradePage(MarkedSheet sheet) {
        this.sheet = sheet;
        html = PageShell.begin("Load sheet of " + GradeWords.student(sheet), "print.css");
    }

    static String of(MarkedSheet sheet, String scheme, String version) {
        GradePage page = new GradePage(sheet);
        page.content(scheme);
        page.html.element("footer", "Steelyard " + version + ". " + Caution.TEXT);
        return PageShell.end(page.html);
    }

    private void content(String scheme) {
        Loading loading = sheet.exercise().loading();
        html.open("header").element("p", "Load sheet, marked", "class", "kind");
        html.open("h1").data(GradeWords.student(sheet)).close();
        html.open("p", "class", "facts");
        fact("exercise", loading.flight().flight());
        fact("aircraft", loading.tail().registration() + ", " + loading.type().name());
        fact(
                "flaps",
                loading.setting().flaps().isBlank() ? "none" : loading.setting().flaps());
        fact("marking", scheme);
        html.close().closeBlock();
        html.element("p", Caution.TEXT, "class", "caution");
        html.open("main").open("div", "class", "top");
        score();
        picture();
        html.closeBlock();
        cause();
        items();
        html.closeBlock();
    }

    private void fact(String name, String value) {
        html.open("span").text(name + " ");
        html.open("strong").data(value).close().close().text(" ");
    }

    private void score() {
        html.open("section", "class", "trim").element("h2", "Points");
        html.element("p", GradeWords.points(sheet), "class", "setting");
        html.open("p").element("strong", sheet.passed() ? "Pass" : "Not passed");
        html.text(", with " + NumberText.fixed(sheet.percent(), 0) + " %; the pass mark is "
                + FigureText.points(sheet.passPercent()) + " %.");
        html.closeBlock();
        long right = count(Outcome.RIGHT);
        long follows = count(Outcome.FOLLOWS);
        StringBuilder words = new StringBuilder(Counted.of(right, "figure")).append(" right");
        append(words, follows, "right from your own earlier figures");
        append(words, count(Outcome.WRONG), "wrong");
        append(words, count(Outcome.UNREADABLE), "not readable");
        append(words, count(Outcome.MISSING), "missing");
        html.element("p", words.append('.').toString());
        String handedIn = GradeWords.handedIn(sheet.handedIn());
        if (!handedIn.isEmpty()) {
            html.open("p").data(handedIn).close();
        }
        html.closeBlock();
    }

    private static void append(StringBuilder words, long count, String what) {
        if (count > 0) {
            words.append(", ").append(count).append(' ').append(what);
        }
    }

    private long count(Outcome outcome) {
        return sheet.items().stream().filter(item -> item.outcome() == outcome).count();
    }

    private void picture() {
        Loading loading = sheet.exercise().loading();
        if (loading.type().envelope(Phase.TAKEOFF).isPresent()) {
            EnvelopeCloud cloud = new EnvelopeCloud(loading.type());
            cloud.add(
                    new AuditedFlight(
                            loading,
                            sheet.exercise().balance(),
                            sheet.exercise().assessment()),
                    sheet.exercise().assessment().status());
            html.open("figure");
            new EnvelopePicture(cloud).draw(html);
            html.element("figcaption", "The right take-off state in its envelope.");
            html.closeBlock();
        }
    }

    private void cause() {
        html.open("section").element("h2", "What happened");
        if (sheet.diagnosis() instanceof Diagnosis.Found found) {
            found(found);
        } else if (sheet.diagnosis() instanceof Diagnosis.CannotTell cannot) {
            html.element(
                    "p",
                    "No slip, and no two slips together, give these figures. Begin with the "
                            + String.join(
                                    ", then the ",
                                    cannot.first().stream()
                                            .map(SheetItem::label)
                                            .toList())
                            + ", and go through the sum line by line.");
        } else if (sheet.diagnosis() instanceof Diagnosis.Rounding rounding) {
            html.element(
                    "p",
                    "The working is right: the rounding on this sheet explains the "
                            + String.join(
                                    ", the ",
                                    rounding.items().stream()
                                            .map(SheetItem::label)
                                            .toList())
                            + ". Carry more digits on the way and round at the end.");
        } else if (GradeWords.isEmpty(sheet)) {
            html.element("p", "No figure was entered.");
        } else {
            html.element("p", "Every figure that was entered is right.");
        }
        html.closeBlock();
    }

    private void found(Diagnosis.Found found) {
        if (!found.whole()) {
            html.element(
                    "p",
                    "What follows explains the first wrong figure and not all of the others: put it right, and look at the"
                            + " rest again.");
        }
        GradeWords.Feedback feedback = GradeWords.feedback(found);
        feedback.sure().forEach(sentence -> html.element("p", sentence, "class", "told"));
        if (!feedback.either().isEmpty()) {
            String more = feedback.sure().isEmpty() ? "" : "Besides: ";
            html.element("p", more + "the figures do not tell which of these it was; each explains them:");
            html.open("ul");
            feedback.either().forEach(one -> html.element("li", one));
            html.closeBlock();
        }
    }

    private void items() {
        html.open("section").element("h2", "Figure by figure");
        ScrolledTables.open(html, "Figure by figure", "", SheetForm.ASKED, "#Yours", "#Right", "Marked", "#Points");
        for (MarkedItem item : sheet.items()) {
            html.open("tr", "class", look(item.outcome())).element("th", SheetForm.label(item.item()), "scope", "row");
            html.open("td", "class", "number").data(item.claimed().isEmpty() ? "–" : item.claimed());
            html.close();
            html.open("td", "class", "number").data(item.right()).close();
            html.open("td");
            html.element("span", sign(item.outcome()) + " " + item.outcome().label(), "class", "mark");
            if (!item.chain().isEmpty()) {
                html.element("span", ": " + item.chain(), "class", "chain");
            }
            html.close();
            ScrolledTables.numbers(html, FigureText.points(item.points()) + " / " + FigureText.points(item.outOf()));
            html.closeBlock();
        }
        html.open("tr", "class", "sum").element("th", "Sum", "scope", "row", "colspan", "4");
        ScrolledTables.numbers(html, FigureText.points(sheet.points()) + " / " + FigureText.points(sheet.outOf()));
        html.closeBlock();
        ScrolledTables.close(html);
        html.closeBlock();
    }

    private static String look(Outcome outcome) {
        return switch (outcome) {
            case RIGHT -> "clean";
            case FOLLOWS -> "marginal";
            case WRONG, UNREADABLE -> "breached";
            case MISSING, NOT_ASKED -> "note";
        };
    }

    static String sign(Outcome outcome) {
        return switch (outcome) {
            case RIGHT -> "✓";
            case FOLLOWS -> "↪";
            case WRONG, UNREADABLE -> "✗";
            case MISSING, NOT_ASKED -> "–";
        };
    }

    static List<Outcome> shown() {
        return List.of(Outcome.RIGHT, Outcome.FOLLOWS, Outcome.WRONG, Outcome.UNREADABLE, Outcome.MISSING);
    }
}
