package org.steelyard.report.output.page;

import java.util.List;
import org.steelyard.analyse.season.RecordedTrimGroup;
import org.steelyard.analyse.season.SeasonSummary;
import org.steelyard.check.text.FindingText;
import org.steelyard.model.trim.TrimUnit;
import org.steelyard.report.html.Html;
import org.steelyard.report.html.ScrolledTables;
import org.steelyard.report.output.book.SheetRecordedTrim;
import org.steelyard.report.text.Shown;
import org.steelyard.report.words.WorkbookWords;

/** Recorded trim settings against the right ones: those most often off, by tail and by the policy's column. */
final class PageRecordedTrim {

    private static final int ROWS = 10;

    private PageRecordedTrim() {}

    static void write(Html html, SeasonSummary summary) {
        List<RecordedTrimGroup> groups = summary.recordedTrim();
        if (groups.isEmpty()) {
            return;
        }
        html.open("section", "id", "recorded-trim").element("h2", "Recorded trim against the right setting");
        html.element(
                "p",
                "Recorded less right setting, in units of the scale; UP is too much nose-up. Beyond: farther off"
                        + " than the policy's marginal distance. Loads shared out from totals are left out.",
                "class",
                "hint");
        groups.stream().map(RecordedTrimGroup::kind).distinct().forEach(kind -> table(html, kind, groups));
        html.closeBlock();
    }

    private static void table(Html html, String kind, List<RecordedTrimGroup> groups) {
        List<RecordedTrimGroup> of =
                groups.stream().filter(group -> group.kind().equals(kind)).toList();
        html.open("h3").text("By ").data(kind).close();
        ScrolledTables.open(
                html,
                "Recorded trim by " + kind,
                "",
                WorkbookWords.sentence(kind).replace(".", ""),
                "#n",
                "#Mean difference",
                "#SD",
                "#Beyond, nose-up",
                "#Beyond, nose-down",
                "#Share beyond",
                "Risk");
        of.stream().limit(ROWS).forEach(group -> line(html, group));
        ScrolledTables.close(html);
        if (of.size() > ROWS) {
            html.element("p", Shown.counted(of.size() - ROWS, "more group") + " in the workbook", "class", "hint");
        }
    }

    private static void line(Html html, RecordedTrimGroup group) {
        html.open("tr")
                .open("th", "scope", "row")
                .data(group.name().isBlank() ? "not given" : group.name())
                .close();
        ScrolledTables.numbers(
                html,
                Shown.count(group.flights()),
                FindingText.trim(group.meanUnits(), 0.001, TrimUnit.UNITS),
                group.sdUnits().isPresent() ? Shown.fixed(group.sdUnits().getAsDouble(), 3) : "–",
                Shown.count(group.noseUp()),
                Shown.count(group.noseDown()),
                Shown.share(group.noseUp() + group.noseDown(), group.flights()));
        html.element("td", SheetRecordedTrim.risk(group)).closeBlock();
    }
}
