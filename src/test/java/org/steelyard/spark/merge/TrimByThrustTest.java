package org.steelyard.spark.merge;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.steelyard.analyse.season.SeasonSummary;
import org.steelyard.analyse.season.SeasonTally;
import org.steelyard.balance.Balance;
import org.steelyard.balance.Balancer;
import org.steelyard.check.flight.Checker;
import org.steelyard.check.result.AuditedFlight;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.limit.CgRange;
import org.steelyard.model.loading.FlightSetting;
import org.steelyard.model.loading.Loading;
import org.steelyard.model.trim.TrimPoint;
import org.steelyard.model.trim.TrimScale;
import org.steelyard.model.trim.TrimSlope;
import org.steelyard.model.trim.TrimUnit;
import org.steelyard.model.type.AircraftType;
import org.steelyard.model.unit.MassMoment;
import org.steelyard.samples.EdgeTable;
import org.steelyard.samples.EdgeTopic;
import org.steelyard.samples.Plain;
import org.steelyard.samples.PlantedSeason;
import org.steelyard.samples.SampleJet;

/** Trims that were read on different scales are never put together. */
class TrimByThrustTest {

    private static final EdgeTable EDGES = new EdgeTable(TrimByThrustTest.class);

    @AfterAll
    static void write() {
        EDGES.write();
    }

    /** At 25 % MAC 1.0 units, and half a unit more for reduced thrust; 0.1 less for each % MAC aft. */
    private static TrimScale scale(String thrust) {
        double units = thrust.equals("reduced") ? 1.5 : 1;
        TrimSlope law = new TrimSlope(new TrimPoint(25, units), -0.1, new CgRange(0, 60));
        return Plain.trimScale(Phase.TAKEOFF, "5", thrust, TrimUnit.UNITS, law, 0.1, -2, 4);
    }

    private static AircraftType type(String... thrusts) {
        AircraftType type = SampleJet.type();
        List<TrimScale> scales = new ArrayList<>();
        for (String thrust : thrusts) {
            scales.add(scale(thrust));
        }
        return Plain.aircraftType(
                type.id(),
                type.name(),
                type.geometry(),
                type.limits(),
                type.cabin(),
                type.holds(),
                type.groups(),
                type.fuel(),
                type.envelopes(),
                scales);
    }

    private static AuditedFlight flight(AircraftType type, String thrust, double hold3Kg) {
        Loading loading = SampleJet.loaded().hold(2, hold3Kg).loading();
        Loading set = Plain.loading(
                loading.origin(),
                loading.flight(),
                Plain.tail("TEST-1", type, MassMoment.at(40_000, 17)),
                new FlightSetting("5", thrust, ""),
                loading.crew(),
                loading.load(),
                loading.fuel(),
                loading.performance(),
                loading.recordedTrimUnits(),
                loading.extras());
        Balance balance = Balancer.balance(set, PlantedSeason.POLICY);
        return new AuditedFlight(set, balance, Checker.check(set, balance, PlantedSeason.POLICY));
    }

    private static SeasonSummary summary(List<AuditedFlight> flights) {
        SeasonTally tally = new SeasonTally(PlantedSeason.POLICY);
        flights.forEach(tally::add);
        return tally.summary();
    }

    private static String groups(SeasonSummary summary) {
        return summary.trim().stream()
                .map(group -> group.flapsShown() + ": "
                        + group.trimUnits()
                                .map(trim -> String.format(
                                        Locale.ROOT,
                                        "n %d, mean %.2f, sd %.2f",
                                        trim.n(),
                                        trim.mean(),
                                        trim.sd().orElseThrow()))
                                .orElse("no trim"))
                .collect(Collectors.joining("; "));
    }

    @Test
    void eachRatingWithAScaleIsAGroup() {
        AircraftType type = type("full", "reduced");
        List<AuditedFlight> flights = new ArrayList<>();
        for (int i = 0; i < 40; i++) {
            flights.add(flight(type, i % 4 == 0 ? "full" : "reduced", 1000));
        }
        EDGES.row(
                EdgeTopic.THRUST,
                "40 flights at 25 % MAC with flaps 5, 10 at full thrust (1.0 units) and 30 reduced (1.5): groups",
                "5, thrust full: n 10, mean 1.00, sd 0.00; 5, thrust reduced: n 30, mean 1.50, sd 0.00",
                groups(summary(flights)));
    }

    @Test
    void partsOfASeasonArePutTogetherByRatingToo() {
        AircraftType type = type("full", "reduced");
        List<AuditedFlight> flights = new ArrayList<>();
        for (int i = 0; i < 60; i++) {
            flights.add(flight(type, i % 4 == 0 ? "full" : "reduced", 500 + i * 20));
        }
        SeasonSummary merged = MergeableTallyTest.merged(flights, 3, type);
        assertThat(merged.trim()).hasSize(2).isEqualTo(summary(flights).trim());
        assertThat(bySetting(merged)).hasSize(8).isEqualTo(bySetting(summary(flights)));
    }

    private static List<String> bySetting(SeasonSummary summary) {
        return summary.statistics().spreads().stream()
                .filter(spread -> spread.grouping().equals("flap setting"))
                .map(spread -> spread.setting() + " " + spread.group() + " " + spread.measure() + " "
                        + spread.spread().n())
                .toList();
    }

    @Test
    void ratingsThatReadOneScaleAreOneGroup() {
        AircraftType type = type("", "reduced");
        List<AuditedFlight> flights = new ArrayList<>();
        for (String thrust : List.of("", "full", "reduced", "most", "reduced")) {
            flights.add(flight(type, thrust, 1000));
        }
        EDGES.row(
                EdgeTopic.THRUST,
                "a scale for reduced thrust, another for any; ratings blank, full, reduced, most, reduced: groups",
                "5: n 3, mean 1.00, sd 0.00; 5, thrust reduced: n 2, mean 1.50, sd 0.00",
                groups(summary(flights)));
    }

    @Test
    void noFlightIsUnusualForItsThrustAlone() {
        AircraftType type = type("full", "reduced");
        List<AuditedFlight> flights = new ArrayList<>();
        for (int i = 0; i < 100; i++) {
            flights.add(flight(type, i % 4 == 0 ? "full" : "reduced", 950 + i % 25 * 4));
        }
        EDGES.row(
                EdgeTopic.THRUST,
                "100 flights within 0.4 % MAC, 25 at full thrust whose trims are half a unit less: unusual flights",
                "0",
                Integer.toString(summary(flights).statistics().unusual().size()));
    }
}
