package org.steelyard.report.output.page;

import org.steelyard.analyse.column.StatusCount;
import org.steelyard.analyse.season.FindingCount;
import org.steelyard.analyse.season.SeasonSummary;
import org.steelyard.check.text.FindingText;
import org.steelyard.report.html.Html;
import org.steelyard.report.html.ScrolledTables;
import org.steelyard.report.html.StatusSymbol;
import org.steelyard.report.html.Svg;
import org.steelyard.report.text.Shown;

/** Which kinds of findings there are, how many, and when. */
final class PageFindings {

    private PageFindings() {}

    static void kinds(Html html, SeasonSummary summary) {
        html.open("section", "id", "findings", "class", "still").element("h2", "Kinds of findings");
        if (summary.findings().isEmpty()) {
            html.element("p", "Nothing was found.").closeBlock();
            return;
        }
        long most = summary.findings().stream()
                .mapToLong(FindingCount::flights)
                .max()
                .orElse(1);
        ScrolledTables.open(html, "Kinds of findings", "", "Severity", "Limit", "Code", "#Flights", "#Findings", "");
        summary.findings().forEach(count -> kind(html, count, most));
        ScrolledTables.close(html);
        html.closeBlock();
    }

    private static void kind(Html html, FindingCount count, long most) {
        html.open("tr").open("td");
        StatusSymbol mark = StatusSymbol.of(count.severity());
        mark.draw(html, count.severity().label());
        html.close().element("th", FindingText.kind(count.code(), count.severity()), "scope", "row");
        html.open("td").element("code", count.code().code()).close();
        ScrolledTables.numbers(html, Shown.count(count.flights()), Shown.count(count.findings()));
        html.open("td");
        bar(html, mark, count.flights(), most);
        html.close().closeBlock();
    }

    private static void bar(Html html, StatusSymbol mark, long number, long most) {
        html.open(
                "svg",
                "xmlns",
                "http://www.w3.org/2000/svg",
                "class",
                "count",
                "viewBox",
                "0 0 100 10",
                "aria-hidden",
                "true");
        Svg.rect(html, "part " + mark.look(), 0.5, 1, Math.max(1, 99.0 * number / most), 8);
        html.close();
    }

    static void months(Html html, SeasonSummary summary) {
        if (summary.months().isEmpty()) {
            return;
        }
        html.open("section", "id", "months").element("h2", "Breached and marginal flights by month");
        ScrolledTables.open(
                html, "Flights by month", "", "Month", "#Flights", "#Breached", "#Share", "#Marginal", "#Share");
        for (StatusCount month : summary.months()) {
            html.open("tr").element("th", month.group(), "scope", "row");
            ScrolledTables.numbers(
                    html,
                    Shown.count(month.flights()),
                    Shown.count(month.breached()),
                    Shown.share(month.breached(), month.flights()),
                    Shown.count(month.marginal()),
                    Shown.share(month.marginal(), month.flights()));
            html.closeBlock();
        }
        ScrolledTables.close(html);
        html.closeBlock();
    }
}
