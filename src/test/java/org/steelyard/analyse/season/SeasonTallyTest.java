package org.steelyard.analyse.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.steelyard.report.output.page.Flights.JET;
import static org.steelyard.report.output.page.Flights.POLICY;
import static org.steelyard.report.output.page.Flights.SINGLE;
import static org.steelyard.report.output.page.Flights.aft;
import static org.steelyard.report.output.page.Flights.flight;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.steelyard.analyse.column.StatusCount;
import org.steelyard.analyse.figure.Excess;
import org.steelyard.check.result.AuditedFlight;
import org.steelyard.check.result.Status;
import org.steelyard.model.finding.Finding;
import org.steelyard.model.finding.FindingCode;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.finding.Severity;
import org.steelyard.report.output.page.Flights;

class SeasonTallyTest {

    private static SeasonSummary summary(List<AuditedFlight> flights) {
        SeasonTally tally = new SeasonTally(POLICY);
        flights.forEach(tally::add);
        return tally.summary();
    }

    private static SeasonSummary summary(AuditedFlight... flights) {
        return summary(Arrays.asList(flights));
    }

    private static final Finding NOTE =
            Finding.plain(FindingCode.SHARED_LOAD, Severity.NOTE, Phase.ZERO_FUEL, "load shared out");

    @Test
    void aSeasonWithoutFlightsIsEmpty() {
        SeasonSummary summary = summary();
        assertThat(summary.all()).isEqualTo(new StatusCount("all", 0, 0, 0, 0));
        assertThat(summary.types()).isEmpty();
        assertThat(summary.trim()).isEmpty();
        assertThat(summary.worst()).isEmpty();
        assertThat(summary.months()).isEmpty();
    }

    @Test
    void flightsAreCountedByTheirMostSeriousFinding() {
        SeasonSummary summary = summary(
                flight("1").build(),
                flight("2").found(NOTE).build(),
                flight("3").found(aft(Severity.MARGINAL, 0.2)).build(),
                flight("4")
                        .found(aft(Severity.BREACH, -1), aft(Severity.MARGINAL, 0.2))
                        .build());
        assertThat(summary.all()).isEqualTo(new StatusCount("all", 4, 2, 1, 1));
        assertThat(summary.types()).containsExactly(new StatusCount("J180", 4, 2, 1, 1));
    }

    @Test
    void tailsAndRoutesComeWorstFirstAndThenByName() {
        SeasonSummary summary = summary(
                flight("1").tail("ZZ-C", JET).build(),
                flight("2").tail("ZZ-B", JET).found(aft(Severity.MARGINAL, 0.2)).build(),
                flight("3")
                        .tail("ZZ-D", JET)
                        .route("A", "B")
                        .found(aft(Severity.BREACH, -1))
                        .build(),
                flight("4").tail("ZZ-A", JET).build());
        assertThat(summary.tails()).extracting(StatusCount::group).containsExactly("ZZ-D", "ZZ-B", "ZZ-A", "ZZ-C");
        assertThat(summary.routes()).extracting(StatusCount::group).containsExactly("A–B", "NORA–SUDI");
    }

    @Test
    void routesThatAreNotGivenAreLeftOutAndHalfGivenOnesSaySo() {
        SeasonSummary summary = summary(
                flight("1").route("", "").build(), flight("2").route("NORA", "").build());
        assertThat(summary.routes()).containsExactly(new StatusCount("NORA–?", 1, 1, 0, 0));
    }

    @Test
    void findingsAreCountedOnceForEachFlightAndOnceForEach() {
        SeasonSummary summary = summary(
                flight("1")
                        .found(aft(Severity.BREACH, -1), aft(Severity.BREACH, -2))
                        .build(),
                flight("2")
                        .found(aft(Severity.BREACH, -1), aft(Severity.MARGINAL, 0.1))
                        .build(),
                flight("3").found(NOTE).build());
        assertThat(summary.findings())
                .containsExactly(
                        new FindingCount(FindingCode.CG_AFT, Severity.BREACH, 3, 2),
                        new FindingCount(FindingCode.CG_AFT, Severity.MARGINAL, 1, 1),
                        new FindingCount(FindingCode.SHARED_LOAD, Severity.NOTE, 1, 1));
    }

    @Test
    void trimIsGroupedByTypeAndFlapSettingInOrderOfTheirNumbers() {
        SeasonSummary summary = summary(
                flight("1").flaps("15").takeoff(60_000, 20).build(),
                flight("2").flaps("5").takeoff(60_000, 20).build(),
                flight("3").flaps("5").takeoff(60_000, 24).build(),
                flight("4").tail("ZZ-L", SINGLE).takeoff(900, 25).build());
        assertThat(summary.trim()).extracting(TrimGroup::flaps).containsExactly("5", "15", "");
        TrimGroup five = summary.trim().get(0);
        // invented scale: 7.4 units at 8 % MAC, a quarter unit less for each % MAC aft
        assertThat(five.trimUnits().orElseThrow().max()).isCloseTo(4.4, within(1e-9));
        assertThat(five.trimUnits().orElseThrow().mean()).isCloseTo(3.9, within(1e-9));
        assertThat(five.cgPercentMac().mean()).isCloseTo(22, within(1e-9));
        assertThat(summary.trim().get(2).trimUnits()).isEmpty();
        assertThat(summary.trim().get(2).cgPercentMac().n()).isOne();
    }

    @Test
    void aFlightBeyondTheScaleCountsForCgOnly() {
        TrimGroup group = summary(
                        flight("1").takeoff(60_000, 60).build(),
                        flight("2").takeoff(60_000, 20).build())
                .trim()
                .get(0);
        assertThat(group.trimUnits().orElseThrow().n()).isOne();
        assertThat(group.cgPercentMac().n()).isEqualTo(2);
    }

    @Test
    void monthsCountFlightsOnceWhateverWasFoundOnThem() {
        SeasonSummary summary = summary(
                flight("1").on(LocalDate.of(2025, 2, 1)).found(NOTE).build(),
                flight("2")
                        .on(LocalDate.of(2025, 1, 31))
                        .found(aft(Severity.BREACH, -1), aft(Severity.MARGINAL, 0.1))
                        .build());
        assertThat(summary.months())
                .containsExactly(new StatusCount("2025-01", 1, 0, 0, 1), new StatusCount("2025-02", 1, 1, 0, 0));
    }

    @Test
    void theWorstFlightsAreThoseThatASortOfAllWouldGive() {
        Random random = new Random(11);
        List<AuditedFlight> flights = new ArrayList<>();
        for (int i = 0; i < 500; i++) {
            flights.add(flight("F" + i)
                    .found(aft(Severity.BREACH, -1 - random.nextInt(40) / 8.0))
                    .build());
        }
        List<AuditedFlight> sorted = new ArrayList<>(flights);
        sorted.sort(Comparator.comparingDouble(
                flight -> flight.assessment().findings().get(0).margin()));
        assertThat(summary(flights).worst())
                .hasSize(10)
                .extracting(WorstFlight::flight)
                .containsExactlyElementsOf(sorted.subList(0, 10));
    }

    @Test
    void aFlightIsAsBadAsItsWorstBreach() {
        WorstFlight worst = summary(flight("1")
                        .found(aft(Severity.BREACH, -1), aft(Severity.BREACH, -3), aft(Severity.BREACH, -2))
                        .build())
                .worst()
                .get(0);
        assertThat(worst.finding().margin()).isEqualTo(-3);
        assertThat(worst.excess()).isEqualTo(new Excess(3, Excess.Unit.PERCENT_MAC));
    }

    @Test
    void aBreachWithoutNumbersIsStillAmongTheWorst() {
        Finding plain = Finding.plain(FindingCode.TRIM_OFF_SCALE, Severity.BREACH, Phase.TAKEOFF, "off the scale");
        assertThat(summary(flight("1").found(plain).build()).worst()).hasSize(1);
    }

    @Test
    void theOrderOfFlightsChangesNothingButTies() {
        List<AuditedFlight> flights = new ArrayList<>(Flights.season(3, 800));
        SeasonSummary inOrder = summary(flights);
        Collections.shuffle(flights, new Random(4));
        SeasonSummary shuffled = summary(flights);
        assertThat(shuffled.trim()).isEqualTo(inOrder.trim());
        assertThat(shuffled.findings()).isEqualTo(inOrder.findings());
        assertThat(shuffled.tails()).isEqualTo(inOrder.tails());
        assertThat(shuffled.months()).isEqualTo(inOrder.months());
        assertThat(shuffled.worst())
                .extracting(WorstFlight::excess)
                .isEqualTo(inOrder.worst().stream().map(WorstFlight::excess).toList());
    }

    @Test
    void everyGroupingCountsEveryFlight() {
        List<AuditedFlight> flights = Flights.season(5, 900);
        SeasonSummary summary = summary(flights);
        long breached = flights.stream()
                .filter(flight -> flight.assessment().status() == Status.BREACHED)
                .count();
        assertThat(breached).isPositive();
        for (List<StatusCount> groups : List.of(summary.types(), summary.tails(), summary.routes())) {
            assertThat(groups.stream().mapToLong(StatusCount::flights).sum()).isEqualTo(900);
            assertThat(groups.stream().mapToLong(StatusCount::breached).sum()).isEqualTo(breached);
        }
        assertThat(summary.months().stream().mapToLong(StatusCount::flights).sum())
                .isEqualTo(900);
        assertThat(summary.trim().stream()
                        .mapToLong(group -> group.cgPercentMac().n())
                        .sum())
                .isEqualTo(900);
    }

    @Test
    void aSummaryMayBeAskedForOnTheWay() {
        SeasonTally tally = new SeasonTally(POLICY);
        List<AuditedFlight> flights = Flights.season(6, 200);
        flights.subList(0, 100).forEach(tally::add);
        assertThat(tally.summary().all().flights()).isEqualTo(100);
        flights.subList(100, 200).forEach(tally::add);
        assertThat(tally.summary()).isEqualTo(summary(flights));
    }
}
