package org.steelyard.remedy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.steelyard.samples.PoundAircraft.LB_KG;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import java.util.function.Function;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.steelyard.balance.Balance;
import org.steelyard.balance.Balancer;
import org.steelyard.check.flight.Checker;
import org.steelyard.check.result.AuditedFlight;
import org.steelyard.check.result.Remedy;
import org.steelyard.check.text.FindingText;
import org.steelyard.model.finding.Finding;
import org.steelyard.model.finding.FindingCode;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.finding.Severity;
import org.steelyard.model.loading.Loading;
import org.steelyard.model.policy.Policy;
import org.steelyard.samples.Draws;
import org.steelyard.samples.EdgeTable;
import org.steelyard.samples.EdgeTopic;
import org.steelyard.samples.PoundAircraft;
import org.steelyard.samples.PoundAircraft.Writing;
import org.steelyard.samples.RandomAircraft;

/** Loadings in whole pounds that lie exactly on a limit, and the same with a pound more. */
class OnALimitTest {

    private static final Policy POLICY = RandomAircraft.STRICT;
    private static final EdgeTable EDGES = new EdgeTable(OnALimitTest.class);

    /** A limit, put exactly where a loading is; what a pound more is; what then is said; whether it takes a pound. */
    @SuppressWarnings("ImmutableEnumChecker") // what they hold are lambdas without a state
    private enum Limit {
        RAMP(a -> a.maxRampLb = a.rampLb(), Limit::zone, FindingCode.MASS_HIGH),
        TAKEOFF(a -> a.maxTakeoffLb = a.takeoffLb(), Limit::zone, FindingCode.MASS_HIGH),
        TAKEOFF_OF_THE_DAY(
                a -> a.performanceTakeoffLb = OptionalDouble.of((double) a.takeoffLb()),
                Limit::zone,
                FindingCode.MASS_HIGH),
        LANDING(a -> a.maxLandingLb = a.landingLb(), Limit::zone, FindingCode.MASS_HIGH),
        ZERO_FUEL(a -> a.maxZeroFuelLb = a.zeroFuelLb(), Limit::zone, FindingCode.MASS_HIGH),
        FLIGHT_WITHOUT_A_TRIP(Limit::atMaximumWithoutTrip, Limit::zone, FindingCode.MASS_HIGH),
        ALL_MASSES_AT_ONCE(Limit::everyMass, Limit::zone, FindingCode.MASS_HIGH),
        MINIMUM(a -> a.minLb = a.landingLb(), a -> a.zonesLb[1]--, FindingCode.MASS_LOW),
        HOLD(a -> a.maxHoldLb[1] = a.holdsLb[1], Limit::tailHold, FindingCode.HOLD_MASS),
        FLOOR_RUNNING(a -> a.floor(a.holdsLb[1], true), Limit::tailHold, FindingCode.FLOOR_RUNNING),
        FLOOR_AREA(a -> a.floor(a.holdsLb[1], false), Limit::tailHold, FindingCode.FLOOR_AREA),
        GROUP(a -> a.groupLb = a.holdsLb[0] + a.holdsLb[1], Limit::tailHold, FindingCode.GROUP_MASS),
        TANK(
                a -> a.tankLb = Math.max(a.tanksLb[0], a.tanksLb[1]),
                a -> a.tanksLb[a.tanksLb[0] == a.tankLb ? 0 : 1]++,
                FindingCode.TANK_CAPACITY),
        IMBALANCE(
                a -> a.imbalanceLb = Math.max(1, Math.abs(a.tanksLb[0] - a.tanksLb[1])),
                a -> a.tanksLb[a.tanksLb[0] > a.tanksLb[1] ? 0 : 1] += a.tanksLb[0] == a.tanksLb[1] ? 2 : 1,
                FindingCode.FUEL_IMBALANCE),
        AFT_LINE(a -> a.balance(a.takeoffLb() > a.stepLb ? 224 : 226), a -> a.basicLbIn++, FindingCode.CG_AFT),
        FORWARD_LINE(Limit::onForwardLine, a -> a.basicLbIn--, FindingCode.CG_FORWARD),
        STEP_OF_THE_AFT_LINE(Limit::onStep, a -> a.basicLbIn += 2, FindingCode.CG_AFT),
        END_OF_THE_TRIM_BAND(Limit::onBand, a -> a.basicLbIn++, FindingCode.TRIM_BAND);

        private final Consumer<PoundAircraft> put;
        private final Consumer<PoundAircraft> more;
        private final FindingCode code;

        Limit(Consumer<PoundAircraft> put, Consumer<PoundAircraft> more, FindingCode code) {
            this.put = put;
            this.more = more;
            this.code = code;
        }

        private static void zone(PoundAircraft a) {
            a.zonesLb[1]++;
        }

        private static void tailHold(PoundAircraft a) {
            a.holdsLb[1]++;
        }

        private static void atMaximumWithoutTrip(PoundAircraft a) {
            a.tripLb = 0;
            a.maxTakeoffLb = a.takeoffLb();
            a.maxLandingLb = a.takeoffLb();
            a.maxZeroFuelLb = a.takeoffLb();
        }

        private static void everyMass(PoundAircraft a) {
            a.maxRampLb = a.rampLb();
            a.maxTakeoffLb = a.takeoffLb();
            a.maxLandingLb = a.landingLb();
            a.maxZeroFuelLb = a.zeroFuelLb();
        }

        /** At the maximum take-off mass, where the forward line ends at 212 in. */
        private static void onForwardLine(PoundAircraft a) {
            a.maxTakeoffLb = a.takeoffLb();
            a.balance(212);
        }

        /** At the mass of the step, on the more generous of its two arms. */
        private static void onStep(PoundAircraft a) {
            a.stepLb = a.takeoffLb();
            a.balance(226);
        }

        private static void onBand(PoundAircraft a) {
            a.flaps = "2";
            a.bandLow = 0.5;
            a.balance(220);
        }

        private boolean isByMass() {
            return code == FindingCode.MASS_HIGH
                    || code == FindingCode.MASS_LOW
                    || code == FindingCode.HOLD_MASS
                    || code == FindingCode.FLOOR_RUNNING
                    || code == FindingCode.FLOOR_AREA
                    || code == FindingCode.GROUP_MASS;
        }
    }

    private static AuditedFlight audited(Loading loading) {
        Balance balance = Balancer.balance(loading, POLICY);
        return new AuditedFlight(loading, balance, Checker.check(loading, balance, POLICY));
    }

    private static AuditedFlight flight(long seed, Limit limit, Writing writing, boolean more) {
        PoundAircraft aircraft = new PoundAircraft(seed);
        limit.put.accept(aircraft);
        if (more) {
            limit.more.accept(aircraft);
        }
        return audited(aircraft.loading(writing));
    }

    private static List<FindingCode> breaches(AuditedFlight flight) {
        return flight.assessment().findings().stream()
                .filter(finding -> finding.severity() == Severity.BREACH)
                .map(Finding::code)
                .distinct()
                .toList();
    }

    private static void forEachDrawn(Function<Long, Consumer<Writing>> law) {
        for (long seed = 1; seed <= Draws.of(60); seed++) {
            for (Writing writing : Writing.values()) {
                law.apply(seed).accept(writing);
            }
        }
    }

    @ParameterizedTest
    @EnumSource(Limit.class)
    void onALimitIsInsideWithASettingAndEveryMargin(Limit limit) {
        forEachDrawn(seed -> writing -> {
            AuditedFlight flight = flight(seed, limit, writing, false);
            assertThat(breaches(flight))
                    .as("%s, seed %d, %s", limit, seed, writing)
                    .isEmpty();
            assertThat(flight.balance().takeoffTrim().orElseThrow().settingUnits())
                    .as("setting, %s, seed %d, %s", limit, seed, writing)
                    .isPresent();
            assertThat(flight.assessment().margins())
                    .as("margins, %s, seed %d, %s", limit, seed, writing)
                    .extracting(margin -> margin.phase())
                    .containsExactlyInAnyOrder(Phase.ZERO_FUEL, Phase.TAKEOFF, Phase.FLIGHT, Phase.LANDING);
        });
    }

    @ParameterizedTest
    @EnumSource(Limit.class)
    void aPoundMoreIsOutside(Limit limit) {
        forEachDrawn(seed -> writing -> assertThat(breaches(flight(seed, limit, writing, true)))
                .as("%s, seed %d, %s", limit, seed, writing)
                .contains(limit.code));
    }

    @ParameterizedTest
    @EnumSource(
            value = Limit.class,
            names = {"TANK", "IMBALANCE"},
            mode = EnumSource.Mode.EXCLUDE)
    void whatIsAPoundOutsideTakesAPoundToPutRight(Limit limit) {
        forEachDrawn(seed -> writing -> {
            Remedy remedy =
                    RemedySearch.of(flight(seed, limit, writing, true), POLICY).orElseThrow();
            String about = String.format(Locale.ROOT, "%s, seed %d, %s: %s", limit, seed, writing, remedy.sentence());
            assertThat(remedy.loading()).as(about).isPresent();
            assertThat(breaches(audited(remedy.loading().orElseThrow())))
                    .as(about)
                    .isEmpty();
            if (limit.isByMass()) {
                assertThat(remedy.massKg() / LB_KG).as(about).isCloseTo(1, within(1e-6));
            } else {
                assertThat(remedy.massKg() / LB_KG).as(about).isLessThan(1 + 1e-6);
            }
        });
    }

    @Test
    void aMassThatTheTrimTableDoesNotReachIsWhatTheSentenceNames() {
        PoundAircraft aircraft = new PoundAircraft(5);
        aircraft.maxTakeoffLb = aircraft.takeoffLb() - 3;

        AuditedFlight flight = audited(aircraft.loading(Writing.POUNDS));

        String expected = "the take-off trim scale for flaps 1 gives no setting for a mass of " + aircraft.takeoffLb()
                + " lb; it is for masses from 3000 lb to " + aircraft.maxTakeoffLb + " lb";
        assertThat(sentence(flight, FindingCode.TRIM_OFF_SCALE)).isEqualTo(expected);
    }

    private static String sentence(AuditedFlight flight, FindingCode code) {
        return flight.assessment().findings().stream()
                .filter(finding -> finding.code() == code)
                .map(finding -> FindingText.sentence(finding, flight.loading().type()))
                .findFirst()
                .orElse("nothing");
    }

    @Test
    void theTableOfEdgesShowsEachLimit() {
        for (Limit limit : Limit.values()) {
            AuditedFlight on = flight(9, limit, Writing.POUNDS, false);
            AuditedFlight beyond = flight(9, limit, Writing.POUNDS, true);
            String name = limit.name().toLowerCase(java.util.Locale.ROOT).replace('_', ' ');
            String unit = limit.isByMass() || limit == Limit.TANK || limit == Limit.IMBALANCE ? "lb" : "lb in";
            EDGES.row(
                    EdgeTopic.ON_A_LIMIT,
                    name + ": in whole pounds exactly on it, and 1 or 2 " + unit + " beyond",
                    "inside; " + limit.code.name(),
                    (breaches(on).isEmpty() ? "inside" : breaches(on).toString()) + "; "
                            + (breaches(beyond).contains(limit.code) ? limit.code.name() : breaches(beyond)));
        }
    }

    @AfterAll
    static void write() {
        EDGES.write();
    }
}
