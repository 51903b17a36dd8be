package org.steelyard.report;

import org.steelyard.analyse.FindingCount;
import org.steelyard.analyse.SeasonSummary;
import org.steelyard.analyse.SeasonTables;
import org.steelyard.check.FindingText;
import tech.tablesaw.api.Row;

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
        Tables.open(html, "Kinds of findings", "", "Severity", "Limit", "Code", "#Flights", "#Findings", "");
        summary.findings().forEach(count -> kind(html, count, most));
        Tables.close(html);
        html.closeBlock();
    }

    private static void kind(Html html, FindingCount count, long most) {
        html.open("tr").open("td");
        Mark mark = Mark.of(count.severity());
        mark.draw(html, count.severity().label());
        html.close().element("th", FindingText.kind(count.code(), count.severity()), "scope", "row");
        html.open("td").element("code", count.code().code()).close();
        Tables.numbers(html, Shown.count(count.flights()), Shown.count(count.findings()));
        html.open("td");
        bar(html, mark, count.flights(), most);
        html.close().closeBlock();
    }

    private static void bar(Html html, Mark mark, long number, long most) {
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
        SeasonTables.MonthByType months = SeasonTables.findingsByMonth(summary);
        html.open("section", "id", "months").element("h2", "Breaches and marginals by month");
        String[] headings = new String[months.typeIds().size() + 2];
        headings[0] = "Month";
        headings[headings.length - 1] = Tables.NUMBERS + "All types";
        for (int i = 0; i < months.typeIds().size(); i++) {
            headings[i + 1] = Tables.NUMBERS + months.typeIds().get(i);
        }
        Tables.open(html, "Findings by month and type", "", headings);
        for (Row row : months.counts()) {
            html.open("tr").element("th", row.getString("month"), "scope", "row");
            for (int i = 0; i < months.typeIds().size(); i++) {
                Tables.numbers(html, count(row, Integer.toString(i)));
            }
            Tables.numbers(html, count(row, "all"));
            html.closeBlock();
        }
        Tables.close(html);
        html.element("p", "Findings, notes not counted. A dash: the type did not fly.", "class", "hint");
        html.closeBlock();
    }

    private static String count(Row row, String column) {
        return row.isMissing(column) ? "–" : Shown.count(Math.round(row.getDouble(column)));
    }
}
