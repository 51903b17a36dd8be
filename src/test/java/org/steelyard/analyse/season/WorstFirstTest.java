package org.steelyard.analyse.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.steelyard.report.output.page.Flights.POLICY;
import static org.steelyard.report.output.page.Flights.flight;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.steelyard.analyse.column.StatusCount;
import org.steelyard.analyse.figure.Spread;
import org.steelyard.check.result.AuditedFlight;
import org.steelyard.model.finding.Finding;
import org.steelyard.model.finding.FindingCode;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.finding.Severity;
import org.steelyard.model.unit.Quantity;
import org.steelyard.samples.Draws;
import org.steelyard.samples.EdgeTable;
import org.steelyard.samples.EdgeTopic;

/** Which exceedances, tails and routes come first, wherever they are shown. */
class WorstFirstTest {

    private static final EdgeTable EDGES = new EdgeTable(WorstFirstTest.class);

    @AfterAll
    static void table() {
        EDGES.write();
    }

    private static Finding breach(FindingCode code, Quantity quantity, double limit, double beyond) {
        return new Finding(code, Severity.BREACH, Phase.RAMP, "x", quantity, limit + beyond, limit, -beyond);
    }

    private static Finding aft(double percentMac) {
        return breach(FindingCode.CG_AFT, Quantity.CG, 34, percentMac);
    }

    private static Finding heavy(double kg) {
        return breach(FindingCode.MASS_HIGH, Quantity.MASS, 70_000, kg);
    }

    private static Finding hold(double kg) {
        return breach(FindingCode.HOLD_MASS, Quantity.MASS, 2_000, kg);
    }

    private static SeasonSummary season(Finding... eachOfAFlight) {
        List<AuditedFlight> flights = new ArrayList<>();
        for (Finding finding : eachOfAFlight) {
            flights.add(flight("F" + flights.size()).found(finding).build());
        }
        return season(flights);
    }

    private static SeasonSummary season(List<AuditedFlight> flights) {
        SeasonTally tally = new SeasonTally(POLICY);
        flights.forEach(tally::add);
        return tally.summary();
    }

    private static String codes(Stream<WorstFlight> worst) {
        return worst.map(one -> one.finding().code().code()).collect(Collectors.joining(", "));
    }

    private static String kinds(List<WorstFlight> worst) {
        return worst.stream().map(one -> one.exceeded().label()).collect(Collectors.joining(", "));
    }

    @Test
    void likeIsComparedWithLikeAndCgAndMassComeFirst() {
        Finding ahead = breach(FindingCode.CG_FORWARD, Quantity.CG, 15, 7.8);
        Finding imbalance = breach(FindingCode.FUEL_IMBALANCE, Quantity.MASS, 600, 200);
        EDGES.row(
                EdgeTopic.EXCEEDANCES,
                "a fuel imbalance of 200 kg beyond 600 kg, and a CG 7.8 % MAC ahead of its limit",
                "cg-forward, fuel-imbalance",
                codes(season(imbalance, ahead).worst().stream()));
        EDGES.row(
                EdgeTopic.EXCEEDANCES,
                "in one hold 300 kg beyond 2,000 kg (15 %), in one zone 4 passengers beyond 30 (13.3 %)",
                "hold-mass, zone-seats",
                codes(season(breach(FindingCode.ZONE_SEATS, Quantity.COUNT, 30, 4), hold(300)).worst().stream()));
        EDGES.row(
                EdgeTopic.EXCEEDANCES,
                "14 kg beyond a mass of 700 kg (2 %), 700 kg beyond one of 70,000 kg (1 %)",
                "700, 70000",
                season(heavy(700), breach(FindingCode.MASS_HIGH, Quantity.MASS, 700, 14)).worst().stream()
                        .map(one -> String.format(
                                java.util.Locale.ROOT, "%.0f", one.finding().limit()))
                        .collect(Collectors.joining(", ")));
    }

    @Test
    void aFlightStandsUnderEachKindThatItExceedsByItsWorst() {
        SeasonSummary season = season(List.of(flight("1")
                .found(hold(10), heavy(700), aft(1), aft(2), hold(20))
                .build()));
        EDGES.row(
                EdgeTopic.EXCEEDANCES,
                "one flight, CG 1 and 2 % MAC aft, 700 kg too heavy, holds 10 and 20 kg over",
                "CG 2, mass 700, structure 20",
                season.worst().stream()
                        .map(one -> String.format(
                                java.util.Locale.ROOT,
                                "%s %.0f",
                                one.exceeded().label(),
                                -one.finding().margin()))
                        .collect(Collectors.joining(", ")));
    }

    @Test
    void anOverviewShowsTwoOfCgAndOfMassAndOneOfEachOtherKind() {
        SeasonSummary season = season(hold(1), hold(2), heavy(1), heavy(2), heavy(3), aft(1), aft(2), aft(3));
        EDGES.row(
                EdgeTopic.EXCEEDANCES,
                "an overview of 3 flights each with CG and mass outside, 2 with a hold",
                "CG, CG, mass, mass, structure",
                kinds(season.worstBriefly()));
    }

    /** Drawn exceedances in any order: each kind holds the farthest of it, and they are in order. */
    @Test
    void whatIsKeptIsWhatASortOfAllGives() {
        long seed = 20_270_103;
        for (int run = 0; run < Draws.of(200); run++) {
            Random random = new Random(seed + run);
            List<Finding> findings = new ArrayList<>();
            for (int i = 0; i < 60; i++) {
                double beyond = 1 + random.nextInt(1_000_000) / 1e4;
                findings.add(
                        switch (random.nextInt(3)) {
                            case 0 -> aft(beyond);
                            case 1 -> heavy(beyond);
                            default -> hold(beyond);
                        });
            }
            List<Double> kept = season(findings.toArray(Finding[]::new)).worst().stream()
                    .map(one -> -one.finding().margin())
                    .toList();
            List<Double> expected = new ArrayList<>();
            for (FindingCode code : List.of(FindingCode.CG_AFT, FindingCode.MASS_HIGH, FindingCode.HOLD_MASS)) {
                findings.stream()
                        .filter(finding -> finding.code() == code)
                        .sorted(Comparator.comparingDouble(Finding::margin))
                        .limit(10)
                        .forEach(finding -> expected.add(-finding.margin()));
            }
            assertThat(kept).as("seed " + (seed + run)).isEqualTo(expected);
        }
    }

    private static StatusCount tail(String name, long flights, long breached) {
        return new StatusCount(name, flights, flights - breached, 0, breached);
    }

    private static String worst(StatusCount... tails) {
        List<StatusCount> ranked = new ArrayList<>(List.of(tails));
        Collections.reverse(ranked);
        ranked.sort(StatusCount.WORST_FIRST);
        return StatusCount.worst(ranked).map(StatusCount::group).orElse("none")
                + " of "
                + ranked.stream().map(StatusCount::group).collect(Collectors.joining(", "));
    }

    @Test
    void theWorstTailHasTheGreatestShareOfThoseThatHaveNotFewFlights() {
        EDGES.row(
                EdgeTopic.OUTPUTS_AGREE,
                "worst tail: A 5 of 500 flights breached, B 3 of 30",
                "B of B, A",
                worst(tail("A", 500, 5), tail("B", 30, 3)));
        EDGES.row(
                EdgeTopic.OUTPUTS_AGREE,
                "worst tail: C 10 of 20, D 1 of 21; fewer than 21 flights are few",
                "D of D, C",
                worst(tail("C", 20, 10), tail("D", 21, 1)));
        EDGES.row(
                EdgeTopic.OUTPUTS_AGREE,
                "worst tail: E 2 of 20, F 1 of 20; both have few flights",
                "none of E, F",
                worst(tail("E", 20, 2), tail("F", 20, 1)));
        EDGES.row(EdgeTopic.OUTPUTS_AGREE, "worst tail: G alone, 9 of 90", "none of G", worst(tail("G", 90, 9)));
        EDGES.row(
                EdgeTopic.OUTPUTS_AGREE,
                "worst tail: H 0 of 100, I 0 of 50",
                "none of H, I",
                worst(tail("I", 50, 0), tail("H", 100, 0)));
    }

    @Test
    void fewIsTheSameOfAShareAndOfAPercentile() {
        for (int n : new int[] {20, 21}) {
            EDGES.row(
                    EdgeTopic.OUTPUTS_AGREE,
                    "a tail and a spread of " + n + " flights: few by share, few by percentile",
                    n == 20 ? "true, true" : "false, false",
                    tail("A", n, 1).few() + ", " + Spread.of(new double[n]).few());
        }
    }
}
