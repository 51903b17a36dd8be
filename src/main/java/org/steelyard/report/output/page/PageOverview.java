package org.steelyard.report.output.page;

import java.util.List;
import org.steelyard.analyse.season.SeasonSummary;
import org.steelyard.analyse.season.TrimGroup;
import org.steelyard.analyse.season.WorstFlight;
import org.steelyard.check.text.FindingText;
import org.steelyard.report.html.Html;
import org.steelyard.report.html.ScrolledTables;
import org.steelyard.report.html.StatusSymbol;
import org.steelyard.report.text.Shown;
import org.steelyard.report.words.SeasonWords;
import org.steelyard.report.words.TypeNames;

/** What a manager sees first: the worst flights, and the typical trim by type and flap setting. */
final class PageOverview {

    private static final int GROUPS = 9;

    private PageOverview() {}

    static void write(Html html, SeasonSummary summary, TypeNames names) {
        html.open("div", "class", "overview");
        worst(html, summary.worstBriefly());
        typical(html, SeasonWords.withTrim(summary), names);
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

    private static void typical(Html html, List<TrimGroup> groups, TypeNames names) {
        html.open("section", "id", "overview-trim").element("h2", "Typical take-off trim");
        if (groups.isEmpty()) {
            html.element("p", SeasonWords.NO_TRIM).closeBlock();
            return;
        }
        ScrolledTables.open(
                html, "Typical take-off trim", "stack", "Type", "Flaps", "#Flights", "#5 %", "#Median", "#95 %");
        groups.stream().limit(GROUPS).forEach(group -> row(html, group, names));
        ScrolledTables.close(html);
        if (groups.size() > GROUPS) {
            html.element("p", "The first " + GROUPS + " of " + groups.size() + "; all are below.", "class", "hint");
        }
        html.closeBlock();
    }

    private static void row(Html html, TrimGroup group, TypeNames names) {
        html.open("tr")
                .open("th", "scope", "row")
                .data(names.of(group.typeId()))
                .close();
        html.open("td", "data-label", "Flaps").data(group.flapsShown()).close();
        group.trimUnits().ifPresent(trim -> number(html, "Flights", Shown.count(trim.n())));
        List<String> typical = SeasonWords.typical(group);
        for (int i = 0; i < typical.size(); i++) {
            number(html, SeasonWords.TYPICAL.get(i), typical.get(i));
        }
        html.closeBlock();
    }

    private static void number(Html html, String label, String number) {
        html.element("td", number, "class", "number", "data-label", label);
    }
}
