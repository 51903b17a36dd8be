package org.steelyard.report;

import java.util.List;
import java.util.Locale;
import org.steelyard.analyse.SeasonSummary;
import org.steelyard.analyse.StatusCount;
import org.steelyard.analyse.WorstFlight;
import org.steelyard.check.FindingText;
import org.steelyard.model.FlightIdent;
import org.steelyard.model.Loading;

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
        groups(html, "Tail", summary.tails(), true);
        groups(html, "Route", summary.routes(), true);
        groups(html, "Type", summary.types(), false);
        html.close().closeBlock();
    }

    private static void worst(Html html, List<WorstFlight> flights) {
        html.element(
                "p",
                "Farthest outside first. “Times” is how far outside the worst limit lies, as a multiple of the"
                        + " distance that the policy calls marginal.",
                "class",
                "hint");
        Tables.open(html, "Worst flights", "stack", "Flight", "Tail", "Route", "What", "#Times", "Row");
        for (WorstFlight worst : flights) {
            row(html, worst);
        }
        Tables.close(html);
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
        Mark.BREACHED.draw(html, "");
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
        html.element("td", Shown.fixed(worst.excess(), 1), "class", "number", "data-label", "Times");
        html.open("td", "class", "quiet", "data-label", "Row")
                .data(loading.origin().toString());
        html.close().closeBlock();
    }

    private static String capital(String sentence) {
        return sentence.isEmpty()
                ? sentence
                : sentence.substring(0, 1).toUpperCase(Locale.ROOT) + sentence.substring(1);
    }

    private static void groups(Html html, String kind, List<StatusCount> all, boolean offendersOnly) {
        List<StatusCount> shown = all.stream()
                .filter(count -> !offendersOnly || count.breached() + count.marginal() > 0)
                .limit(ROWS)
                .toList();
        html.open("div");
        if (shown.isEmpty()) {
            html.element("h3", kind)
                    .element("p", "None to name.", "class", "quiet")
                    .closeBlock();
            return;
        }
        Tables.open(html, kind, "", kind, "#Breached", "#Marginal", "#Flights", "#Share");
        for (StatusCount count : shown) {
            html.open("tr")
                    .open("th", "scope", "row", "class", "nowrap")
                    .data(count.group())
                    .close();
            Tables.numbers(
                    html,
                    Shown.count(count.breached()),
                    Shown.count(count.marginal()),
                    Shown.count(count.flights()),
                    Shown.share(count.breached(), count.flights()));
            html.closeBlock();
        }
        Tables.close(html);
        if (all.size() > shown.size()) {
            html.element(
                    "p",
                    "The worst " + shown.size() + " of " + Shown.count(all.size()) + "; all flights are in"
                            + " flights.csv.",
                    "class",
                    "hint");
        }
        html.closeBlock();
    }
}
