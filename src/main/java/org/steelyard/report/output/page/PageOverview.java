package org.steelyard.report.output.page;

import java.util.List;
import org.steelyard.analyse.season.SeasonSummary;
import org.steelyard.analyse.season.WorstFlight;
import org.steelyard.check.text.FindingText;
import org.steelyard.report.html.Html;
import org.steelyard.report.html.PageTable;
import org.steelyard.report.html.StatusSymbol;
import org.steelyard.report.table.DataTable;
import org.steelyard.report.table.season.TypicalTrimTable;

/** What a manager sees first: the worst flights, and the typical trim by type and flap setting. */
final class PageOverview {

    private static final int GROUPS = 9;

    private PageOverview() {}

    static void write(Html html, SeasonSummary summary) {
        html.open("div", "class", "overview");
        worst(html, summary.worstBriefly());
        typical(html, TypicalTrimTable.of(summary).without("cg")); // half a page wide
        html.closeBlock();
    }

    private static void worst(Html html, List<WorstFlight> flights) {
        html.open("section", "id", "overview-worst").element("h2", "Farthest outside");
        if (flights.isEmpty()) {
            html.element("p", "No flight is outside a limit.").closeBlock();
            return;
        }
        html.open("ul", "class", "offenders");
        for (WorstFlight worst : flights) {
            html.open("li");
            StatusSymbol.BREACHED.draw(html, worst.exceeded().label());
            html.text(" ");
            html.open("strong", "data-origin", worst.flight().loading().origin().toString())
                    .data(worst.flight().loading().flight().flight())
                    .close();
            html.text(" " + worst.flight().loading().flight().date() + ", ");
            html.data(worst.flight().loading().tail().registration()).text(": ");
            html.data(FindingText.sentence(
                    worst.finding(), worst.flight().loading().type()));
            html.closeBlock();
        }
        html.closeBlock();
        html.closeBlock();
    }

    private static void typical(Html html, DataTable table) {
        html.open("section", "id", "overview-trim").element("h2", table.title());
        new PageTable(table.first(GROUPS)).stacked().write(html);
        html.closeBlock();
    }
}
