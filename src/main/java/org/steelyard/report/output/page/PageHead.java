package org.steelyard.report.output.page;

import java.util.List;
import org.steelyard.analyse.column.StatusCount;
import org.steelyard.analyse.season.FindingCount;
import org.steelyard.analyse.season.SeasonSummary;
import org.steelyard.check.text.FindingText;
import org.steelyard.model.finding.Severity;
import org.steelyard.model.unit.Counted;
import org.steelyard.report.html.Html;
import org.steelyard.report.html.StatusSymbol;
import org.steelyard.report.html.Svg;
import org.steelyard.report.output.RunFacts;
import org.steelyard.report.output.SeasonResult;
import org.steelyard.report.text.Caution;
import org.steelyard.report.text.NumberText;
import org.steelyard.report.words.SeasonWords;

/** The top of the page: what the season came to, in one sentence and five figures. */
final class PageHead {

    private PageHead() {}

    static void write(Html html, SeasonResult result) {
        html.open("header");
        html.element("p", "Season report", "class", "kind");
        html.open("h1").data(result.facts().season()).closeBlock();
        html.element("p", headline(result), "class", "headline");
        figures(html, result);
        bar(html, result.summary().all());
        highlights(html, result);
        html.element("p", Caution.TEXT, "class", "caution").closeBlock();
    }

    private static String headline(SeasonResult result) {
        StatusCount all = result.summary().all();
        boolean allChecked = result.facts().notChecked(result.summary()).isEmpty();
        if (all.flights() == 0) {
            return "No flights: no row of the input could be used.";
        }
        if (all.breached() + all.marginal() == 0) {
            return "All flights are inside every limit " + (allChecked ? "" : "that was checked ")
                    + "and close to none.";
        }
        return outside(all) + " " + close(all);
    }

    private static String outside(StatusCount all) {
        return all.breached() == 0
                ? "No flight is outside a limit."
                : Counted.of(all.breached(), "flight") + (all.breached() == 1 ? " is" : " are")
                        + " outside at least one limit (" + NumberText.share(all.breached(), all.flights()) + ").";
    }

    private static String close(StatusCount all) {
        return all.marginal() == 0
                ? "None of the others is close to one."
                : Counted.number(all.marginal()) + " more " + (all.marginal() == 1 ? "is" : "are") + " close to one ("
                        + NumberText.share(all.marginal(), all.flights()) + ").";
    }

    private static void figures(Html html, SeasonResult result) {
        StatusCount all = result.summary().all();
        html.open("ul", "class", "figures");
        html.open("li", "class", "figure");
        html.element("span", Counted.number(all.flights()), "class", "big");
        html.element("span", "flights", "class", "mark").closeBlock();
        figure(html, StatusSymbol.CLEAN, all.clean(), "clean", share(all.clean(), all));
        figure(html, StatusSymbol.MARGINAL, all.marginal(), "marginal", share(all.marginal(), all));
        figure(html, StatusSymbol.BREACHED, all.breached(), "breached", share(all.breached(), all));
        RunFacts facts = result.facts();
        String ofRows = NumberText.share(facts.rejected(), facts.rowsSeen()) + " of rows";
        figure(html, StatusSymbol.REJECTED, facts.rejected(), "rejected", ofRows);
        html.closeBlock();
    }

    private static String share(long part, StatusCount all) {
        return NumberText.share(part, all.flights());
    }

    private static void figure(Html html, StatusSymbol mark, long number, String word, String share) {
        html.open("li", "class", "figure " + mark.look());
        html.element("span", Counted.number(number), "class", "big");
        mark.draw(html, word);
        html.element("span", share, "class", "share").closeBlock();
    }

    private static void bar(Html html, StatusCount all) {
        if (all.flights() == 0) {
            return;
        }
        Svg.stretched(
                html,
                "bar",
                1000,
                16,
                Counted.of(all.flights(), "flight") + ": " + Counted.number(all.breached()) + " breached, "
                        + Counted.number(all.marginal()) + " marginal, " + Counted.number(all.clean()) + " clean");
        double x = 0;
        for (Part part : List.of(
                new Part(StatusSymbol.BREACHED, all.breached()),
                new Part(StatusSymbol.MARGINAL, all.marginal()),
                new Part(StatusSymbol.CLEAN, all.clean()))) {
            double width = part.number() == 0 ? 0 : Math.max(4, 1000.0 * part.number() / all.flights());
            Svg.rect(html, "part " + part.mark().look(), x, 2, Math.min(width, 1000 - x), 12);
            x += width;
        }
        html.closeBlock();
    }

    private record Part(StatusSymbol mark, long number) {}

    private static void highlights(Html html, SeasonResult result) {
        SeasonSummary summary = result.summary();
        html.open("ul", "class", "highlights");
        summary.findings().stream()
                .filter(count -> count.severity() == Severity.BREACH)
                .findFirst()
                .ifPresent(count -> commonest(html, count));
        SeasonWords.worstGroups(summary)
                .forEach(sentence -> html.open("li").data(sentence).closeBlock());
        likelyOutside(html, result);
        String notChecked = result.facts().notCheckedSentence(summary);
        if (!notChecked.isEmpty()) {
            html.open("li").data(notChecked).closeBlock();
        }
        RunFacts facts = result.facts();
        html.open("li");
        html.text(Counted.of(facts.rowsSeen(), "row") + " read from "
                + Counted.of(facts.inputs().size(), "file") + ": " + Counted.number(facts.accepted())
                + " accepted, "
                + Counted.number(facts.rejected()) + " rejected, " + Counted.number(facts.blank()) + " blank, "
                + Counted.number(facts.skippedRowCount()) + " skipped.");
        html.closeBlock();
        problems(html, result);
        html.closeBlock();
    }

    private static void likelyOutside(Html html, SeasonResult result) {
        result.policy().chance().ifPresent(rule -> {
            html.open("li")
                    .text("Inside on paper, but outside with a chance of more than "
                            + NumberText.fixed(rule.percent(), 1) + " %: ");
            html.element("strong", Counted.of(result.summary().likelyOutside(), "flight"));
            html.text(".").closeBlock();
        });
    }

    private static void commonest(Html html, FindingCount count) {
        html.open("li")
                .text("Most frequent breach: ")
                .element("strong", FindingText.kind(count.code(), count.severity()));
        html.text(", on " + Counted.of(count.flights(), "flight") + ".").closeBlock();
    }

    private static void problems(Html html, SeasonResult result) {
        int unread = result.fileProblems().size() + result.facts().skipped().size();
        if (unread > 0) {
            html.open("li").text("Not everything was read: ");
            html.element("a", "see the inputs", "href", "#inputs").text(".").closeBlock();
        }
    }
}
