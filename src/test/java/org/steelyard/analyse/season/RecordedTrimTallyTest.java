package org.steelyard.analyse.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.hipparchus.stat.descriptive.DescriptiveStatistics;
import org.junit.jupiter.api.Test;
import org.steelyard.balance.Balance;
import org.steelyard.balance.Balancer;
import org.steelyard.check.flight.Checker;
import org.steelyard.check.result.AuditedFlight;
import org.steelyard.model.loading.Extra;
import org.steelyard.model.loading.FlightIdent;
import org.steelyard.model.loading.HoldLoad;
import org.steelyard.model.loading.Load;
import org.steelyard.model.loading.Loading;
import org.steelyard.model.loading.Passengers;
import org.steelyard.model.policy.Policy;
import org.steelyard.model.policy.RecordedTrimRule;
import org.steelyard.model.policy.SharingRule;
import org.steelyard.samples.Plain;
import org.steelyard.samples.SampleJet;

/** Differences of recorded settings by tail and pilot, against Hipparchus. */
class RecordedTrimTallyTest {

    private static final Policy POLICY =
            Plain.policy(0, 0, 0, 0, SharingRule.BY_CAPACITY, Optional.of(new RecordedTrimRule(0.3, 0.6, "Pilot")));

    private static AuditedFlight flight(String tail, String pilot, double off, Optional<Load> load) {
        Loading sample = SampleJet.loaded().loading();
        double right = Balancer.balance(sample, POLICY)
                .takeoffTrim()
                .orElseThrow()
                .settingUnits()
                .orElseThrow();
        Loading loading = Plain.loading(
                sample.origin(),
                new FlightIdent("T1", LocalDate.of(2026, 4, 1), "", ""),
                Plain.tail(tail, sample.type(), sample.tail().basic()),
                sample.setting(),
                sample.crew(),
                load.orElse(sample.load()),
                sample.fuel(),
                sample.performance(),
                Double.isNaN(off) ? OptionalDouble.empty() : OptionalDouble.of(right + off),
                List.of(new Extra("gate", "7"), new Extra("pilot", pilot)));
        Balance balance = Balancer.balance(loading, POLICY);
        return new AuditedFlight(loading, balance, Checker.check(loading, balance, POLICY));
    }

    private static List<RecordedTrimGroup> groups(List<AuditedFlight> flights) {
        SeasonTally tally = new SeasonTally(POLICY);
        flights.forEach(tally::add);
        return tally.summary().recordedTrim();
    }

    @Test
    void differencesAreSummedUpByTailAndByTheColumnOfThePolicy() {
        double[] offs = {0, 0.1, 0.4, -0.5, 0.3, 1.2};
        List<AuditedFlight> flights = new ArrayList<>();
        DescriptiveStatistics all = new DescriptiveStatistics();
        for (double off : offs) {
            flights.add(flight("A", "Ida", off, Optional.empty()));
            all.addValue(off);
        }
        flights.add(flight("B", "Ida", 0, Optional.empty()));
        Collections.shuffle(flights, new Random(3));
        List<RecordedTrimGroup> groups = groups(flights);
        assertThat(groups).hasSize(3);
        RecordedTrimGroup a = groups.get(0);
        assertThat(a.kind()).isEqualTo("tail");
        assertThat(a.name()).isEqualTo("A");
        assertThat(a.flights()).isEqualTo(6);
        assertThat(a.meanUnits()).isCloseTo(all.getMean(), within(1e-9));
        assertThat(a.sdUnits().orElseThrow()).isCloseTo(all.getStandardDeviation(), within(1e-9));
        assertThat(a.noseUp()).isEqualTo(2);
        assertThat(a.noseDown()).isEqualTo(1);
        assertThat(a.shareBeyond()).isEqualTo(0.5);
        assertThat(groups.get(1).name()).isEqualTo("B");
        assertThat(groups.get(1).sdUnits()).isEmpty();
        assertThat(groups.get(2).kind()).isEqualTo("Pilot");
        assertThat(groups.get(2).name()).isEqualTo("Ida");
        assertThat(groups.get(2).flights()).isEqualTo(7);
    }

    @Test
    void flightsWithoutARecordAndSharedLoadsAreLeftOut() {
        Load totals = new Load.Totals(Passengers.adults(30), OptionalDouble.empty(), new HoldLoad(2000, 0));
        assertThat(groups(List.of(
                        flight("A", "Ida", Double.NaN, Optional.empty()), flight("A", "Ida", 3, Optional.of(totals)))))
                .isEmpty();
    }
}
