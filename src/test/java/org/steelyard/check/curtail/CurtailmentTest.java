package org.steelyard.check.curtail;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.steelyard.check.chance.SeatingAllowance;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.limit.LimitLine;
import org.steelyard.model.limit.LimitPoint;
import org.steelyard.model.limit.Movement;
import org.steelyard.model.limit.Side;
import org.steelyard.model.policy.SeatingRule;
import org.steelyard.model.policy.SpreadRule;
import org.steelyard.model.type.AircraftType;
import org.steelyard.model.type.Cabin;
import org.steelyard.model.type.CabinZone;
import org.steelyard.samples.EdgeTable;
import org.steelyard.samples.EdgeTopic;
import org.steelyard.samples.Rows;
import org.steelyard.samples.SampleJet;

class CurtailmentTest {

    private static final EdgeTable EDGES = new EdgeTable(CurtailmentTest.class);

    @AfterAll
    static void write() {
        EDGES.write();
    }

    /**
     * The sample without a cabin: three holds of 3,000 kg at 15, 17 and 19 m, lightest mass 41,000 kg, envelopes from
     * there to 60,000 kg. The allowance for bags and their position is nothing where nothing is loaded.
     */
    private static CurtailedEnvelope freighter(SpreadRule rule) {
        return Curtailment.of(type(List.of(), List.of()), rule, 2).get(0);
    }

    private static CurtailedPoint at(CurtailedEnvelope envelope, double massKg) {
        return envelope.forward().stream()
                .filter(point -> point.certified().massKg() == massKg)
                .findFirst()
                .orElseThrow();
    }

    private static String taken(CurtailedEnvelope envelope, double massKg) {
        CurtailedPoint point = at(envelope, massKg);
        return String.format(Locale.ROOT, "%.0f kg m", point.takenKgM());
    }

    /** 2 × 0.5 m × the root of the squares of what lies in each hold, the largest filled first. */
    @Test
    void anEmptyFreighterDoesNotLoseTheAllowanceOfFullHolds() {
        CurtailedEnvelope envelope = freighter(new SpreadRule(SeatingRule.RANDOM, 0, 0, 0, 0, 0, 0.5, 0, 0, 0, 0));

        EDGES.row(
                EdgeTopic.FREIGHTER,
                "empty at 41,000 kg: as much as with a quarter of the holds' 9,000 kg, 2,250 kg in one",
                "2250 kg m",
                taken(envelope, 41_000));
        EDGES.row(
                EdgeTopic.FREIGHTER,
                "half of it, at 45,500 kg: as much as with three quarters, 3,000, 3,000 and 750 kg",
                "4308 kg m",
                taken(envelope, 45_500));
        EDGES.row(EdgeTopic.FREIGHTER, "at 60,000 kg: all three holds full", "5196 kg m", taken(envelope, 60_000));
    }

    /** By a loop of its own over every 50 kg of load: nowhere is less taken off than is due there. */
    @Test
    void betweenTheVerticesOfAFreighterNoLessIsTakenOffThanIsDue() {
        CurtailedEnvelope envelope = freighter(new SpreadRule(SeatingRule.RANDOM, 0, 0, 0, 0, 0, 0.5, 0, 0, 0, 0));
        for (double massKg = 41_000; massKg <= 60_000; massKg += 50) {
            double leftKg = massKg - 41_000;
            double squares = 0;
            for (int hold = 0; hold < 3; hold++) {
                double hereKg = Math.min(3000, leftKg);
                squares += hereKg * hereKg;
                leftKg -= hereKg;
            }
            double takenKgM = (envelope.operational().forward().armAtM(massKg)
                            - envelope.certified().forward().armAtM(massKg))
                    * massKg;
            assertThat(takenKgM).as("%.0f kg", massKg).isGreaterThanOrEqualTo(2 * 0.5 * Math.sqrt(squares) - 1e-6);
        }
    }

    private static final double LB_IN = 0.45359237 * 0.0254;
    private static final SpreadRule NOTHING = new SpreadRule(SeatingRule.RANDOM, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0);
    private static final SpreadRule ALL = new SpreadRule(SeatingRule.RANDOM, 15, 13, 16, 9, 5, 0.3, 0.8, 1, 0.2, 0.2);

    private static AircraftType type(List<CabinZone> zones, List<Movement> movements) {
        AircraftType sample = SampleJet.type();
        Cabin cabin = sample.cabin();
        return new AircraftType(
                sample.id(),
                sample.name(),
                sample.geometry(),
                sample.limits(),
                new Cabin(zones, cabin.crewStations(), 2, 2, List.of(), cabin.scheme()),
                sample.holds(),
                List.of(),
                sample.fuel(),
                sample.envelopes(),
                sample.trimScales(),
                movements);
    }

    private static List<CabinZone> zones() {
        return List.of(
                new CabinZone("A", "zone A", 15, 30, Rows.of(5, 0.8, 30, 15)),
                new CabinZone("B", "zone B", 17, 30, Rows.of(5, 0.8, 30, 17)),
                new CabinZone("C", "zone C", 19, 30, Rows.of(5, 0.8, 30, 19)));
    }

    /**
     * EMB-145 airplane operations manual 1-06-40, page 21: gear -10,155.15, movement in flight -4,017.00 and seating
     * -152,772.23 lb in come to -166,944.38 lb in, which is 3.71 in at 45,000 lb; at the lightest mass, where nobody
     * can be aboard, the gear alone counts.
     */
    @Test
    @Tag("validation")
    void aManufacturersAllowancesAddUpAsPrinted() {
        List<Movement> movements = List.of(
                new Movement("gear", 10_155.15 * LB_IN, 0, true, false),
                new Movement("movement in flight", 4_017.00 * LB_IN, 0, true, true),
                new Movement("seating", 152_772.23 * LB_IN, 0, false, true));
        CurtailedEnvelope flight =
                Curtailment.of(type(SampleJet.type().cabin().zones(), movements), NOTHING, 1.96).stream()
                        .filter(envelope -> envelope.certified().phase() == Phase.FLIGHT)
                        .findFirst()
                        .orElseThrow();

        CurtailedPoint lightest = flight.forward().get(0);
        CurtailedPoint heaviest = flight.forward().get(flight.forward().size() - 1);
        assertThat(heaviest.totalKgM() / LB_IN).isCloseTo(166_944.38, within(0.005));
        assertThat(heaviest.totalKgM() / LB_IN / 45_000).isCloseTo(3.71, within(0.005));
        assertThat(lightest.totalKgM() / LB_IN).isCloseTo(10_155.15, within(0.005));
    }

    /**
     * Four rows 1 m apart, four abreast: windows from the front sum up to 2 (1.5 + 0.5) = 4 m, then fall, then again.
     */
    @Test
    void windowSeatsFromTheFrontStandFarthestForwardHalfWay() {
        CabinZone zone = new CabinZone("A", "zone A", 10, 16, Rows.of(4, 1, 16, 10));
        SeatingAllowance forward = SeatingAllowance.of(List.of(zone), 80, Side.FORWARD);

        assertThat(forward.kgM()).isCloseTo(80 * 4.0, within(1e-9));
        assertThat(forward.kgM(0)).isZero();
        assertThat(forward.kgM(1)).isCloseTo(80 * 1.5, within(1e-9));
        assertThat(forward.kgM(3)).isCloseTo(80 * 3.5, within(1e-9));
        assertThat(SeatingAllowance.of(List.of(zone), 80, Side.AFT).kgM(3)).isCloseTo(80 * 3.5, within(1e-9));
        assertThat(SeatingAllowance.of(List.of(zone, zone), 80, Side.FORWARD).kgM(5))
                .isCloseTo(80 * 6.5, within(1e-9));
    }

    @Test
    void noLessIsTakenOffBetweenVerticesThanThere() {
        AircraftType type = type(zones(), List.of(new Movement("walking", 200, 200, false, true)));
        for (CurtailedEnvelope envelope : Curtailment.of(type, ALL, 1.96)) {
            LimitLine forward = envelope.operational().forward();
            LimitLine aft = envelope.operational().aft();
            for (int k = 0; k + 1 < envelope.forward().size(); k++) {
                CurtailedPoint low = envelope.forward().get(k);
                CurtailedPoint high = envelope.forward().get(k + 1);
                double massKg =
                        0.3 * low.certified().massKg() + 0.7 * high.certified().massKg();
                double leastKgM = Math.min(low.totalKgM(), high.totalKgM());
                double certifiedM = envelope.certified().forward().armAtM(massKg);
                assertThat((forward.armAtM(massKg) - certifiedM) * massKg)
                        .isGreaterThanOrEqualTo(Math.max(low.totalKgM(), high.totalKgM()) - 1e-6)
                        .isGreaterThan(leastKgM - 1e-6);
                assertThat(aft.armAtM(massKg))
                        .isLessThan(envelope.certified().aft().armAtM(massKg));
            }
        }
    }

    /** 30 of 90 seats 2 m off the limit's arm and so on: by hand, at the heaviest take-off mass, limit at 16.8 m. */
    @Test
    void whatVariesByChanceIsCombinedByTheRootOfTheSumOfSquares() {
        SpreadRule persons = new SpreadRule(SeatingRule.RANDOM, 0, 0, 16, 0, 0, 0.5, 0, 0, 0, 0);
        AircraftType type = type(SampleJet.type().cabin().zones(), List.of());
        CurtailedEnvelope takeoff = Curtailment.of(type, persons, 2).get(1);
        CurtailedPoint heaviest = takeoff.forward().get(takeoff.forward().size() - 1);

        double people = 2 * 16 * Math.sqrt(30 * (1.8 * 1.8 + 0.2 * 0.2 + 2.2 * 2.2));
        double holds = 2 * 0.5 * Math.sqrt(3) * 3000;
        assertThat(heaviest.certified()).isEqualTo(new LimitPoint(60_000, 16.8));
        assertThat(heaviest.totalKgM()).isCloseTo(Math.hypot(people, holds), within(1e-6));
    }

    @Test
    void anEnvelopeOfWhichNothingIsLeftIsRefused() {
        List<Movement> movements = List.of(new Movement("all", 1e6, 1e6, false, false));

        assertThatThrownBy(() -> Curtailment.of(type(zones(), movements), NOTHING, 1))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("nothing is left of the zero fuel envelope");
    }
}
