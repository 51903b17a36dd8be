package org.steelyard.report;

import java.util.List;
import org.steelyard.analyse.SeasonSummary;
import org.steelyard.analyse.Spread;
import org.steelyard.analyse.TrimGroup;
import org.steelyard.analyse.WorstFlight;
import org.steelyard.check.FindingText;
import org.steelyard.model.TrimUnit;

/** What a manager sees first: the worst flights, and the typical trim by type and flap setting. */
final class PageOverview {

    private static final int WORST = 5;
    private static final int GROUPS = 12;
    private static final double STEP = 0.01;

    private PageOverview() {}

    static void write(Html html, SeasonSummary summary, TypeNames names) {
        html.open("div", "class", "overview");
        worst(html, summary.worst());
        typical(html, summary.trim(), names);
        html.closeBlock();
    }

    private static void worst(Html html, List<WorstFlight> flights) {
        html.open("section", "id", "overview-worst").element("h2", "Farthest outside");
        if (flights.isEmpty()) {
            html.element("p", "No flight is outside a limit.").closeBlock();
            return;
        }
        html.open("ul", "class", "offenders");
        for (WorstFlight worst : flights.subList(0, Math.min(WORST, flights.size()))) {
            html.open("li");
            Mark.BREACHED.draw(html, "");
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

    private static void typical(Html html, List<TrimGroup> all, TypeNames names) {
        List<TrimGroup> groups =
                all.stream().filter(group -> group.trimUnits().isPresent()).toList();
        html.open("section", "id", "overview-trim").element("h2", "Typical take-off trim");
        if (groups.isEmpty()) {
            html.element("p", "No flight has a trim: its type has no scale, or no flap setting was given.")
                    .closeBlock();
            return;
        }
        Tables.open(
                html, "Typical take-off trim", "stack", "Type", "Flaps", "#Median", "#90 % between", "#With a trim");
        groups.stream().limit(GROUPS).forEach(group -> row(html, group, names));
        Tables.close(html);
        if (groups.size() > GROUPS) {
            html.element("p", "The first " + GROUPS + " of " + groups.size() + "; all are below.", "class", "hint");
        }
        html.closeBlock();
    }

    private static void row(Html html, TrimGroup group, TypeNames names) {
        Spread spread = group.trimUnits().orElseThrow();
        html.open("tr")
                .open("th", "scope", "row")
                .data(names.of(group.typeId()))
                .close();
        html.open("td", "data-label", "Flaps").data(group.flapsShown()).close();
        number(html, "Median", trim(spread.median(), group.unit()));
        number(html, "90 % between", trim(spread.p5(), group.unit()) + " – " + trim(spread.p95(), group.unit()));
        number(html, "With a trim", Shown.count(spread.n()));
        html.closeBlock();
    }

    private static void number(Html html, String label, String number) {
        html.element("td", number, "class", "number", "data-label", label);
    }

    private static String trim(double units, TrimUnit unit) {
        return FindingText.trim(units, STEP, unit);
    }
}
