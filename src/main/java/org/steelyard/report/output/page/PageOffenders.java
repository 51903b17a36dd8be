package org.steelyard.report.output.page;

import java.util.List;
import java.util.Locale;
import org.steelyard.analyse.column.Exceeded;
import org.steelyard.analyse.season.SeasonSummary;
import org.steelyard.analyse.season.WorstFlight;
import org.steelyard.check.text.FindingText;
import org.steelyard.model.loading.FlightIdent;
import org.steelyard.model.loading.Loading;
import org.steelyard.report.html.Html;
import org.steelyard.report.html.PageTable;
import org.steelyard.report.html.ScrolledTables;
import org.steelyard.report.html.StatusSymbol;
import org.steelyard.report.table.DataTable;
import org.steelyard.report.table.season.StatusTable;
import org.steelyard.report.words.FlightFigures;
import org.steelyard.report.words.RemedyCell;
import org.steelyard.report.words.SeasonWords;

/** Which flights, tails, routes and types are worst. */
final class PageOffenders {

    private static final int ROWS = 10;

    private PageOffenders() {}

    static void write(Html html, SeasonSummary summary) {
        html.open("section", "id", "worst").element("h2", "Worst flights");
        if (summary.worst().isEmpty()) {
            html.element("p", "No flight is outside a limit.");
        } else {
            worst(html, summary.worst());
        }
        html.closeBlock();
        html.open("section", "id", "groups").element("h2", "Tails, routes and types");
        html.open("div", "class", "columns");
        List.of(StatusTable.TAILS, StatusTable.ROUTES, StatusTable.TYPES)
                .forEach(table -> groups(html, table.of(summary)));
        html.close().closeBlock();
    }

    private static void worst(Html html, List<WorstFlight> flights) {
        html.element(
                "p",
                "By what is exceeded, the farthest first; a flight that exceeds several limits stands under each.",
                "class",
                "hint");
        for (Exceeded kind : Exceeded.values()) {
            List<WorstFlight> some =
                    flights.stream().filter(worst -> worst.exceeded() == kind).toList();
            if (!some.isEmpty()) {
                String title = "Outside a limit: " + kind.label();
                html.element("h3", title);
                ScrolledTables.open(html, title, "stack", "Flight", "Tail", "Route", "What", "#Beyond by", "Row");
                some.forEach(worst -> row(html, worst));
                ScrolledTables.close(html);
            }
        }
    }

    private static void row(Html html, WorstFlight worst) {
        Loading loading = worst.flight().loading();
        FlightIdent flight = loading.flight();
        html.open("tr");
        html.open("th", "scope", "row")
                .open("span", "data-origin", loading.origin().toString())
                .data(flight.flight())
                .close();
        html.text(" ")
                .element("span", flight.date().toString(), "class", "nowrap quiet")
                .close();
        html.open("td", "class", "nowrap", "data-label", "Tail")
                .data(loading.tail().registration())
                .text(" ");
        html.open("span", "class", "quiet").data(loading.type().id()).close().close();
        html.open("td", "class", "nowrap", "data-label", "Route");
        if (!flight.from().isBlank() || !flight.to().isBlank()) {
            html.data(flight.from()).text("–").data(flight.to());
        }
        html.close();
        html.open("td", "class", "wide", "data-label", "What");
        StatusSymbol.BREACHED.draw(html, "");
        html.data(capital(FindingText.sentence(worst.finding(), loading.type())));
        String assumed = FlightFigures.assumed(worst.flight());
        if (!assumed.isEmpty()) {
            html.text(" ").element("span", "assumed: " + assumed, "class", "quiet");
        }
        String remedy = RemedyCell.of(worst.flight());
        if (!remedy.isEmpty()) {
            html.open("div", "class", "quiet").text("→ ").data(remedy).close();
        }
        html.close();
        html.element("td", SeasonWords.excess(worst), "class", "number", "data-label", "Beyond by");
        html.open("td", "class", "quiet", "data-label", "Row")
                .data(loading.origin().toString());
        html.close().closeBlock();
    }

    private static String capital(String sentence) {
        return sentence.isEmpty()
                ? sentence
                : sentence.substring(0, 1).toUpperCase(Locale.ROOT) + sentence.substring(1);
    }

    private static void groups(Html html, DataTable table) {
        html.open("div").element("h3", table.title());
        new PageTable(table.without("share_marginal").first(ROWS)).write(html);
        html.closeBlock();
    }
}
