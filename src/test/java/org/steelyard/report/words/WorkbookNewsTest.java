package org.steelyard.report.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.steelyard.analyse.column.StatusCount;
import org.steelyard.analyse.season.FindingCount;
import org.steelyard.analyse.season.SeasonSummary;
import org.steelyard.check.text.FindingText;
import org.steelyard.model.finding.FindingCode;
import org.steelyard.model.finding.Severity;
import org.steelyard.samples.Plain;

class WorkbookNewsTest {

    private static final FindingCount AFT = new FindingCount(FindingCode.CG_AFT, Severity.BREACH, 14, 12);
    private static final FindingCount HEAVY = new FindingCount(FindingCode.MASS_HIGH, Severity.BREACH, 20, 9);
    private static final FindingCount CLOSE = new FindingCount(FindingCode.CG_FORWARD, Severity.MARGINAL, 7, 6);

    @Test
    void breachesComeWithTheKindOfMostFlightsAndTheTailThatStandsOut() {
        assertThat(news(3_000, 40, 37, List.of(HEAVY, AFT, CLOSE), tail("ZZ-ABC", 110, 5), tail("ZZ-DEF", 90, 4)))
                .isEqualTo("37 of 3,000 flights are outside a limit. Most often: CG behind the aft limit (12 flights)."
                        + " Worst tail: ZZ-ABC, 5 of its 110 flights outside a limit (4.5 %).");
    }

    @Test
    void tailsOfFewFlightsAreNotNamed() {
        assertThat(news(40, 0, 8, List.of(AFT), tail("ZZ-ABC", 20, 4), tail("ZZ-DEF", 20, 4)))
                .endsWith("(12 flights).");
    }

    @Test
    void oneBreachIsSingular() {
        assertThat(news(100, 0, 1, List.of(new FindingCount(FindingCode.HOLD_MASS, Severity.BREACH, 1, 1))))
                .isEqualTo("1 of 100 flights is outside a limit. Most often: Too much in a hold (1 flight).");
    }

    @Test
    void marginalsAreTheNewsWhereNothingIsBreached() {
        assertThat(news(100, 6, 0, List.of(CLOSE)))
                .isEqualTo("All 100 flights are inside every limit; 6 of 100 flights are close to one."
                        + " Most often: CG close to the forward limit (6 flights).");
    }

    @Test
    void aCleanSeasonSaysSo() {
        assertThat(news(100, 0, 0, List.of())).isEqualTo("All 100 flights are inside every limit and close to none.");
        assertThat(news(1, 0, 0, List.of())).isEqualTo("The one flight is inside every limit and close to none.");
    }

    @Test
    void withoutFlightsTheRejectedRowsAreTheNews() {
        SeasonSummary none = summary(0, 0, 0, List.of());
        assertThat(WorkbookNews.of(none, 0)).isEqualTo("No flight was accepted.");
        assertThat(WorkbookNews.of(none, 1)).isEqualTo("No flight was accepted; one row was rejected.");
        assertThat(WorkbookNews.of(none, 1_200)).isEqualTo("No flight was accepted; 1,200 rows were rejected.");
    }

    /** Each code, what it is called beyond a limit, and what close to one, where that is another thing. */
    private static final List<String> KINDS = List.of(
            "mass-high|Mass above its limit|Mass close to its limit",
            "mass-low|Mass below the minimum|Mass close to the minimum",
            "cg-forward|CG ahead of the forward limit|CG close to the forward limit",
            "cg-aft|CG behind the aft limit|CG close to the aft limit",
            "mass-off-envelope|Mass off the envelope|",
            "zone-seats|More passengers than seats|",
            "crew-seats|More crew than seats|",
            "hold-mass|Too much in a hold|Hold close to its limit",
            "floor-running|Running load too high|Running load close to its limit",
            "floor-area|Area load too high|Area load close to its limit",
            "group-mass|Too much in a group of places|Group of places close to its limit",
            "tank-capacity|More fuel than a tank holds|Tank close to its capacity",
            "fuel-imbalance|Fuel imbalance too great|Fuel imbalance close to its limit",
            "fuel-short|Less fuel than taxi and trip burn|",
            "trim-off-scale|Trim off the scale|",
            "trim-band|Trim outside its band|Trim close to the end of its band",
            "trim-unknown|No trim: setting or scale missing|",
            "trim-recorded|Recorded trim far off|Recorded trim some way off",
            "trim-estimate|Trim is an estimate|",
            "last-minute-passengers|Too many last-minute passengers|",
            "last-minute-mass|Too much last-minute load|",
            "last-minute-fuel|Too much last-minute fuel|",
            "last-minute-effect|Changed at the last minute|",
            "likely-outside|Inside on paper, likely outside|",
            "shared-load|Load shared out from totals|",
            "shared-fuel|Fuel shared out from a total|",
            "blank-load|Blank load cells counted as none|",
            "given-state|State taken as given|");

    @Test
    void everyKindHasItsWords() {
        List<String> said = new ArrayList<>();
        for (FindingCode code : FindingCode.values()) {
            String outside = FindingText.kind(code, Severity.BREACH);
            String close = FindingText.kind(code, Severity.MARGINAL);
            said.add(code.code() + "|" + outside + "|" + (close.equals(outside) ? "" : close));
        }
        assertThat(said).isEqualTo(KINDS);
    }

    private static String news(
            long flights, long marginal, long breached, List<FindingCount> findings, StatusCount... tails) {
        return WorkbookNews.of(summary(flights, marginal, breached, findings, tails), 0);
    }

    private static SeasonSummary summary(
            long flights, long marginal, long breached, List<FindingCount> findings, StatusCount... tails) {
        StatusCount all = new StatusCount("all", flights, flights - marginal - breached, marginal, breached);
        return Plain.seasonSummary(all, List.of(), List.of(tails), List.of(), findings, List.of(), List.of());
    }

    private static StatusCount tail(String name, long flights, long breached) {
        return new StatusCount(name, flights, flights - breached, 0, breached);
    }
}
