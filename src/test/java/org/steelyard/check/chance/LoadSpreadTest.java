package org.steelyard.check.chance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.steelyard.balance.Balance;
import org.steelyard.balance.Balancer;
import org.steelyard.config.ConfigFolder;
import org.steelyard.config.ConfigResult;
import org.steelyard.config.Configuration;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.limit.LimitLine;
import org.steelyard.model.limit.LimitPoint;
import org.steelyard.model.limit.Side;
import org.steelyard.model.limit.Straightness;
import org.steelyard.model.loading.Fuel;
import org.steelyard.model.loading.HoldLoad;
import org.steelyard.model.loading.Load;
import org.steelyard.model.loading.Loading;
import org.steelyard.model.loading.Passengers;
import org.steelyard.model.loading.ZoneLoad;
import org.steelyard.model.policy.DuplicateRule;
import org.steelyard.model.policy.Policy;
import org.steelyard.model.policy.SeatingRule;
import org.steelyard.model.policy.SpreadRule;
import org.steelyard.model.type.AircraftType;
import org.steelyard.model.type.CabinZone;
import org.steelyard.model.type.MassScheme;
import org.steelyard.model.type.MeanChord;
import org.steelyard.model.type.PassengerCategory;
import org.steelyard.model.type.SeatRow;
import org.steelyard.model.type.Tail;
import org.steelyard.model.type.Tank;
import org.steelyard.model.unit.Amounts;
import org.steelyard.model.unit.MassMoment;
import org.steelyard.samples.Plain;
import org.steelyard.samples.Rows;
import org.steelyard.samples.SampleJet;

/**
 * The closed form against Monte Carlo: every person drawn with a mass and a seat that nobody else has, every hold, tank
 * and basic mass drawn too. A run in the gate draws fewer; {@code -Dsteelyard.chanceDraws=1000000} draws a million.
 */
class LoadSpreadTest {

    private static final int DRAWS = Integer.getInteger("steelyard.chanceDraws", 20_000);
    private static final double[] CHANCES = {0.5, 0.05, 0.001};
    private static final double[] QUANTILES = {0, 1.6448536269514722, 3.090232306167813};

    private static final Configuration CONFIGURATION =
            ((ConfigResult.Loaded) ConfigFolder.load(Path.of("config"))).configuration();

    private static SpreadRule rule(SeatingRule seating) {
        return new SpreadRule(seating, 15, 13, 16, 9, 5, 0.3, 0.8, 1, 0.2, 0.2);
    }

    private static Policy policy(SeatingRule seating) {
        Policy policy = CONFIGURATION.policy();
        return Plain.policy(
                1,
                0.5,
                2,
                0.2,
                policy.sharing(),
                policy.recordedTrim(),
                Optional.empty(),
                DuplicateRule.FIRST,
                Optional.empty(),
                Optional.of(rule(seating)),
                0);
    }

    record Case(String name, Loading loading, SeatingRule seating, Side side, double slopeM, Straightness straight) {

        @Override
        public String toString() {
            return name;
        }
    }

    static Stream<Case> cases() {
        Tail jet = CONFIGURATION.tails().get("QI-JAA");
        Tail prop = CONFIGURATION.tails().values().stream()
                .filter(tail -> tail.type().id().equals("prop70"))
                .findFirst()
                .orElseThrow();
        Load mixed = new Load.ByPlace(
                List.of(
                        people(5, 4, 0, 3),
                        people(10, 9, 0, 2),
                        people(12, 14, 0, 4),
                        people(7, 8, 0, 0),
                        people(0, 0, 21, 3),
                        people(1, 2, 0, 0)),
                List.of(
                        new HoldLoad(400, 12),
                        new HoldLoad(0, 60),
                        new HoldLoad(900, 0),
                        new HoldLoad(0, 30),
                        new HoldLoad(100, 4)));
        Load totals = new Load.Totals(new Passengers(60, 50, 0, 9, 2), OptionalDouble.empty(), new HoldLoad(1200, 90));
        Load weighed = new Load.ByPlace(
                List.of(
                        new ZoneLoad(Passengers.adults(9), OptionalDouble.of(777)),
                        people(5, 6, 0, 1),
                        people(4, 4, 0, 0),
                        people(3, 3, 3, 1)),
                List.of(new HoldLoad(200, 0), new HoldLoad(0, 40), new HoldLoad(0, 3)));
        Fuel jetFuel = new Fuel.ByTank(Amounts.of(3400, 2900, 3350), 200, 4800);
        Fuel propFuel = new Fuel.ByTank(Amounts.of(1300, 1250), 60, 900);
        return Stream.of(
                new Case(
                        "jet, aft line that bends in moment",
                        loading(jet, mixed, jetFuel),
                        SeatingRule.RANDOM,
                        Side.AFT,
                        2e-5,
                        Straightness.ARM),
                new Case(
                        "jet, forward line",
                        loading(jet, mixed, jetFuel),
                        SeatingRule.RANDOM,
                        Side.FORWARD,
                        -1e-5,
                        Straightness.MOMENT),
                new Case(
                        "jet from windows to middle",
                        loading(jet, mixed, jetFuel),
                        SeatingRule.WINDOW_AISLE_MIDDLE,
                        Side.FORWARD,
                        0,
                        Straightness.ARM),
                new Case(
                        "jet with totals",
                        loading(jet, totals, jetFuel),
                        SeatingRule.RANDOM,
                        Side.AFT,
                        0,
                        Straightness.ARM),
                new Case(
                        "turboprop, a zone weighed",
                        loading(prop, weighed, propFuel),
                        SeatingRule.RANDOM,
                        Side.AFT,
                        5e-5,
                        Straightness.MOMENT));
    }

    private static ZoneLoad people(int men, int women, int adults, int children) {
        return new ZoneLoad(new Passengers(men, women, adults, children, 0), OptionalDouble.empty());
    }

    private static Loading loading(Tail tail, Load load, Fuel fuel) {
        Loading sample = SampleJet.loaded().loading();
        return Plain.loading(
                sample.origin(),
                sample.flight(),
                tail,
                sample.setting(),
                sample.crew(),
                load,
                fuel,
                sample.performance(),
                OptionalDouble.empty(),
                List.of());
    }

    @ParameterizedTest
    @MethodSource("cases")
    @Tag("validation")
    void theChanceOfBeingOutsideIsThatOfManyDraws(Case drawn) {
        Policy policy = policy(drawn.seating());
        Balance balance = Balancer.balance(drawn.loading(), policy);
        StateSpread spread = LoadSpread.of(
                        drawn.loading(), balance, policy.spread().orElseThrow(), policy)
                .with(
                        Phase.TAKEOFF,
                        balance.takeoff(),
                        balance.fuel().orElseThrow().takeoffKg());
        List<LimitLine> lines = new ArrayList<>();
        for (double quantile : QUANTILES) {
            lines.add(line(drawn, spread, quantile));
        }
        MonteCarlo draws =
                new MonteCarlo(drawn.loading(), drawn.seating(), policy.spread().orElseThrow(), balance);
        int[] outside = new int[lines.size()];
        for (int i = 0; i < DRAWS; i++) {
            MassMoment state = draws.next();
            for (int k = 0; k < outside.length; k++) {
                outside[k] += lines.get(k).roomM(state.massKg(), state.armM()) < 0 ? 1 : 0;
            }
        }
        assertThat(draws.massSdKg())
                .isCloseTo(spread.massSdKg(), within(5 * spread.massSdKg() / Math.sqrt(2.0 * DRAWS)));
        for (int k = 0; k < outside.length; k++) {
            double chance = LineChance.of(
                            lines.get(k),
                            spread,
                            drawn.loading().type().geometry().chord())
                    .chance();
            assertThat(chance).isCloseTo(CHANCES[k], within(0.05 * CHANCES[k]));
            double error = Math.sqrt(chance * (1 - chance) / DRAWS);
            double drawnChance = (double) outside[k] / DRAWS;
            if (Boolean.getBoolean("steelyard.show")) {
                System.out.printf(
                        Locale.ROOT,
                        "%s: closed %.6f, drawn %.6f, %.1f standard errors%n",
                        drawn,
                        chance,
                        drawnChance,
                        (drawnChance - chance) / error);
            }
            assertThat(drawnChance).as("closed form %s", chance).isCloseTo(chance, within(4 * error));
        }
    }

    /** A line at so many standard deviations from what is expected, with a slope of its own in arm against mass. */
    private static LimitLine line(Case drawn, StateSpread spread, double quantile) {
        double massKg = spread.expected().massKg();
        double armM = spread.expected().armM();
        double sign = drawn.side() == Side.AFT ? 1 : -1;
        double slopeM = armM + drawn.slopeM() * massKg;
        double atM = (spread.expected().momentKgM() + sign * quantile * spread.distanceSdKgM(slopeM)) / massKg;
        List<LimitPoint> points = new ArrayList<>();
        for (double factor : new double[] {0.8, 1.2}) {
            double otherKg = factor * massKg;
            double straightM = atM + (otherKg - massKg) * drawn.slopeM();
            double momentM = (atM * massKg + slopeM * (otherKg - massKg)) / otherKg;
            points.add(new LimitPoint(otherKg, drawn.straight() == Straightness.ARM ? straightM : momentM));
        }
        return new LimitLine(drawn.side(), drawn.straight(), points);
    }

    /** Draws the take-off state of a flight as it might truly be. */
    private static final class MonteCarlo {

        private final SplittableRandom random = new SplittableRandom(20261125);
        private final Loading loading;
        private final AircraftType type;
        private final SeatingRule seating;
        private final SpreadRule rule;
        private final Balance balance;
        private final MassMoment crew;
        private double massKg;
        private double momentKgM;
        private double sumKg;
        private double squaresKg2;
        private int drawn;

        MonteCarlo(Loading loading, SeatingRule seating, SpreadRule rule, Balance balance) {
            this.loading = loading;
            this.type = loading.type();
            this.seating = seating;
            this.rule = rule;
            this.balance = balance;
            this.crew =
                    balance.dryOperating().orElseThrow().minus(loading.tail().basic());
        }

        double massSdKg() {
            double mean = sumKg / drawn;
            return Math.sqrt(squaresKg2 / drawn - mean * mean);
        }

        MassMoment next() {
            massKg = crew.massKg();
            momentKgM = crew.momentKgM();
            MassMoment basic = loading.tail().basic();
            double chordM = type.geometry().chord().lengthM();
            add(
                    basic.massKg() * (1 + rule.basicMassPercent() / 100 * random.nextGaussian()),
                    basic.armM() + rule.basicCgPercentMac() / 100 * chordM * random.nextGaussian());
            if (loading.load() instanceof Load.ByPlace byPlace) {
                byPlace(byPlace);
            } else {
                totals((Load.Totals) loading.load());
            }
            fuel();
            double offKg = massKg - balance.takeoff().massKg();
            sumKg += offKg;
            squaresKg2 += offKg * offKg;
            drawn++;
            return new MassMoment(massKg, momentKgM);
        }

        private void add(double kg, double armM) {
            massKg += kg;
            momentKgM += kg * armM;
        }

        private void byPlace(Load.ByPlace load) {
            for (int i = 0; i < load.zones().size(); i++) {
                CabinZone zone = type.cabin().zones().get(i);
                sit(masses(load.zones().get(i)), seats(zone), seating == SeatingRule.RANDOM);
            }
            for (int i = 0; i < load.holds().size(); i++) {
                HoldLoad hold = load.holds().get(i);
                hold(i, hold.massKg(), hold.bags());
            }
        }

        private void hold(int index, double looseKg, double bags) {
            double kg = looseKg
                    + bags * type.cabin().scheme().bagKg()
                    + Math.sqrt(bags) * rule.bagKg() * random.nextGaussian();
            add(kg, type.holds().get(index).armM() + rule.holdPositionM() * random.nextGaussian());
        }

        private void totals(Load.Totals load) {
            List<Double> seats = new ArrayList<>();
            type.cabin().zones().forEach(zone -> seats.addAll(seats(zone)));
            sit(masses(new ZoneLoad(load.passengers(), load.passengersKg())), seats, true);
            double all = load.hold().massKg(type.cabin().scheme());
            for (int i = 0; i < type.holds().size(); i++) {
                double share = balance.distribution().orElseThrow().holdKg().at(i) / all;
                hold(i, load.hold().massKg() * share, load.hold().bags() * share);
            }
        }

        private List<Double> masses(ZoneLoad zone) {
            MassScheme scheme = type.cabin().scheme();
            List<Double> masses = new ArrayList<>();
            for (PassengerCategory category : PassengerCategory.values()) {
                for (int k = 0; k < zone.passengers().count(category); k++) {
                    if (zone.actualKg().isPresent()) {
                        masses.add(zone.actualKg().getAsDouble()
                                / zone.passengers().seated());
                    } else if (category != PassengerCategory.INFANT) {
                        masses.add(scheme.massKg(category) + rule.personKg(category) * random.nextGaussian());
                    }
                }
            }
            return masses;
        }

        /** Arms of the seats of a zone in the order in which they are taken. */
        private List<Double> seats(CabinZone zone) {
            List<SeatRow> rows = zone.rows();
            List<Double> seats = new ArrayList<>();
            double sumM = 0;
            for (int column = 0; column * rows.size() < zone.seats() + rows.size(); column += 2) {
                for (SeatRow row : rows) {
                    for (int k = column; k < Math.min(column + 2, row.seats()); k++) {
                        seats.add(row.armM());
                        sumM += row.armM();
                    }
                }
            }
            double middleM = sumM / seats.size();
            return seats.stream().map(atM -> zone.armM() + atM - middleM).toList();
        }

        /** Nobody shares a seat: at random any of them, else the first ones, who sits on which by chance. */
        private void sit(List<Double> masses, List<Double> seats, boolean anywhere) {
            double[] free = seats.stream().mapToDouble(Double::doubleValue).toArray();
            int among = anywhere ? free.length : masses.size();
            for (int k = 0; k < masses.size(); k++) {
                int taken = k + random.nextInt(among - k);
                double armM = free[taken];
                free[taken] = free[k];
                add(masses.get(k), armM);
            }
        }

        private void fuel() {
            double density = 1 + rule.fuelDensityPercent() / 100 * random.nextGaussian();
            Amounts tanksKg = balance.fuel().orElseThrow().takeoffKg();
            for (int i = 0; i < tanksKg.size(); i++) {
                Tank tank = type.fuel().tanks().get(i);
                double kg = tanksKg.at(i) * (1 + rule.fuelQuantityPercent() / 100 * random.nextGaussian());
                massKg += density * kg;
                momentKgM += density * tank.momentKgM(kg);
            }
        }
    }

    /** 175 passengers of mean 190 lb and standard deviation 47 lb (FAA AC 120-27E) vary by 47 √175 = 621.8 lb. */
    @Test
    @Tag("validation")
    void aFullCabinVariesByTheRootOfItsNumber() {
        double lb = 0.45359237;
        SpreadRule persons = new SpreadRule(SeatingRule.RANDOM, 0, 0, 47 * lb, 0, 0, 0, 0, 0, 0, 0);
        Loading loading = SampleJet.loaded()
                .zone(0, 58)
                .zone(1, 58)
                .zone(2, 59)
                .hold(0, 0)
                .hold(2, 0)
                .loading();
        Balance balance = Balancer.balance(loading, policy(SeatingRule.RANDOM));
        StateSpread spread = LoadSpread.of(loading, balance, persons, policy(SeatingRule.RANDOM))
                .with(Phase.ZERO_FUEL, balance.zeroFuel().orElseThrow(), Amounts.zeros(0));

        assertThat(spread.massSdKg() / lb).isCloseTo(621.8, within(0.05));
    }

    @Test
    void aFullZoneOfEqualPersonsCannotSitOtherwise() {
        CabinZone zone = new CabinZone("A", "zone A", 10, 6, Rows.of(2, 1, 6, 10));

        assertThat(SeatSpread.of(zone, 6, SeatingRule.RANDOM)).isEqualTo(new SeatSpread(6, 0, 0.25));
        assertThat(SeatSpread.of(zone, 6, SeatingRule.WINDOW_AISLE_MIDDLE)).isEqualTo(new SeatSpread(6, 0, 0.25));
        assertThat(SeatSpread.of(zone, 2, SeatingRule.WINDOW_AISLE_MIDDLE)).isEqualTo(new SeatSpread(2, -0.5, 0));
    }

    /** A vertex in the middle of the spread of mass: the closed form of either side alone would be far off. */
    @Test
    @Tag("validation")
    void aVertexWithinTheSpreadOfMassIsIntegratedOver() {
        StateSpread state =
                new StateSpread(Phase.TAKEOFF, new MassMoment(50_000, 850_000), 300.0 * 300, 9e6, 300.0 * 900);
        LimitLine line = new LimitLine(
                Side.AFT,
                Straightness.MOMENT,
                List.of(new LimitPoint(40_000, 17.02), new LimitPoint(50_100, 17.06), new LimitPoint(60_000, 16.4)));
        SplittableRandom random = new SplittableRandom(7);
        int outside = 0;
        int draws = 200_000;
        for (int i = 0; i < draws; i++) {
            double z = random.nextGaussian();
            double massKg = 50_000 + 300 * z;
            double momentKgM = 850_000 + 900 * z + Math.sqrt(9e6 - 900 * 900) * random.nextGaussian();
            outside += line.roomM(massKg, momentKgM / massKg) < 0 ? 1 : 0;
        }
        double chance = LineChance.of(line, state, new MeanChord(16, 4)).chance();

        assertThat((double) outside / draws).isCloseTo(chance, within(4 * Math.sqrt(chance * (1 - chance) / draws)));
    }
}
