package org.steelyard.remedy;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.steelyard.balance.Balance;
import org.steelyard.balance.Balancer;
import org.steelyard.check.flight.Checker;
import org.steelyard.check.result.AuditedFlight;
import org.steelyard.check.result.Remedy;
import org.steelyard.check.result.Status;
import org.steelyard.model.finding.Finding;
import org.steelyard.model.finding.FindingCode;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.finding.Severity;
import org.steelyard.model.limit.CgRange;
import org.steelyard.model.loading.Loading;
import org.steelyard.model.policy.Policy;
import org.steelyard.model.trim.TrimLaw;
import org.steelyard.model.trim.TrimPoint;
import org.steelyard.model.trim.TrimScale;
import org.steelyard.model.trim.TrimSlope;
import org.steelyard.model.trim.TrimTable;
import org.steelyard.model.trim.TrimUnit;
import org.steelyard.model.type.AircraftType;
import org.steelyard.model.unit.Amounts;
import org.steelyard.samples.EdgeTable;
import org.steelyard.samples.EdgeTopic;
import org.steelyard.samples.Plain;
import org.steelyard.samples.RandomAircraft;
import org.steelyard.samples.SampleJet;

/** A landing scale that ends before the flight's landing: worth knowing, but nothing that keeps it on the ground. */
class LandingScaleTest {

    private static final EdgeTable EDGES = new EdgeTable(LandingScaleTest.class);
    private static final Policy POLICY = RandomAircraft.STRICT;
    private static final TrimLaw NARROW = new TrimSlope(new TrimPoint(25, 1), -0.5, new CgRange(24, 26));
    private static final TrimLaw LIGHT = new TrimTable(
            Amounts.of(41_000, 42_000), Amounts.of(15, 35), List.of(Amounts.of(3, -3), Amounts.of(3, -3)));

    @AfterAll
    static void write() {
        EDGES.write();
    }

    private static AuditedFlight flight(SampleJet jet, Optional<TrimLaw> landing) {
        AircraftType type = SampleJet.type();
        List<TrimScale> scales = landing.map(
                        law -> List.of(Plain.trimScale(Phase.LANDING, "30", "", TrimUnit.UNITS, law, 0.5, -5, 6)))
                .orElse(List.of());
        AircraftType with = Plain.aircraftType(
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
        Loading plain = jet.loading();
        Loading loading = Plain.loading(
                plain.origin(),
                plain.flight(),
                Plain.tail("TEST-1", with, plain.tail().basic()),
                plain.setting(),
                plain.crew(),
                plain.load(),
                plain.fuel(),
                plain.performance(),
                plain.recordedTrimUnits(),
                plain.extras());
        Balance balance = Balancer.balance(loading, POLICY);
        return new AuditedFlight(loading, balance, Checker.check(loading, balance, POLICY));
    }

    /** 2,000 kg at 19 m for 1,000 kg at 15 m and at 19 m: some 2 % MAC aft, inside every envelope. */
    private static SampleJet aft() {
        return SampleJet.loaded().hold(0, 0).hold(2, 2000);
    }

    private static String said(AuditedFlight flight) {
        Finding off = flight.assessment().findings().stream()
                .filter(finding -> finding.code() == FindingCode.TRIM_OFF_SCALE)
                .findFirst()
                .orElseThrow();
        return flight.assessment().status().label() + ", " + off.severity().label();
    }

    @Test
    void aCgOrAMassOffTheLandingScaleIsANote() {
        EDGES.row(
                EdgeTopic.LANDING_SCALE,
                "landing CG 27.1 % MAC inside its envelope of 20 to 30, landing scale from 24 to 26",
                "clean, note",
                said(flight(aft(), Optional.of(NARROW))));
        EDGES.row(
                EdgeTopic.LANDING_SCALE,
                "landing mass 48,200 kg, landing scale up to 42,000",
                "clean, note",
                said(flight(aft(), Optional.of(LIGHT))));
        AuditedFlight flight = flight(aft(), Optional.of(NARROW));
        assertThat(flight.assessment().findings()).hasSize(1).allMatch(one -> one.severity() == Severity.NOTE);
        EDGES.row(
                EdgeTopic.LANDING_SCALE,
                "what is to be moved for it",
                "nothing",
                RemedySearch.of(flight, POLICY).map(Remedy::sentence).orElse("nothing"));
    }

    /** Another breach is put right as if the type had no landing scale: no further for the scale's sake. */
    @ParameterizedTest
    @ValueSource(doubles = {3100, 3400, 4000})
    void aRemedyLooksForNoLandingScale(double holdKg) {
        SampleJet jet = SampleJet.loaded()
                .flaps("")
                .zone(0, 0)
                .zone(1, 0)
                .zone(2, 30)
                .hold(0, 0)
                .hold(2, holdKg);
        Remedy without = RemedySearch.of(flight(jet, Optional.empty()), POLICY).orElseThrow();
        for (TrimLaw law : List.of(NARROW, LIGHT)) {
            AuditedFlight flight = flight(jet, Optional.of(law));
            assertThat(flight.assessment().status()).isEqualTo(Status.BREACHED);
            assertThat(RemedySearch.of(flight, POLICY).orElseThrow().sentence()).isEqualTo(without.sentence());
        }
    }

    @Test
    void theRoomOfAPlaceDoesNotEndWithTheLandingScale() {
        Room without = RoomSearch.of(flight(aft(), Optional.empty())).orElseThrow();
        for (TrimLaw law : List.of(NARROW, LIGHT)) {
            assertThat(RoomSearch.of(flight(aft(), Optional.of(law))).orElseThrow())
                    .isEqualTo(without);
        }
    }
}
