package org.steelyard.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.steelyard.balance.Balance;
import org.steelyard.balance.Balancer;
import org.steelyard.balance.FuelBalance;
import org.steelyard.check.flight.Checker;
import org.steelyard.check.text.FindingText;
import org.steelyard.config.ConfigFolder;
import org.steelyard.config.ConfigResult;
import org.steelyard.model.finding.FindingCode;
import org.steelyard.model.loading.Fuel;
import org.steelyard.model.loading.Load;
import org.steelyard.model.loading.Loading;
import org.steelyard.model.type.AircraftType;
import org.steelyard.model.type.FuelStage;
import org.steelyard.model.type.FuelSystem;
import org.steelyard.model.type.Tail;
import org.steelyard.model.type.Tank;
import org.steelyard.model.type.TankPoint;
import org.steelyard.model.type.TankShare;
import org.steelyard.model.unit.Amounts;
import org.steelyard.model.unit.MassMoment;
import org.steelyard.samples.Draws;
import org.steelyard.samples.EdgeTable;
import org.steelyard.samples.EdgeTopic;
import org.steelyard.samples.OtherTanks;
import org.steelyard.samples.Plain;
import org.steelyard.samples.RandomAircraft;
import org.steelyard.samples.SampleJet;

/**
 * Fuel of another density than the type's: what is given as a volume goes by volume, what is given as a mass by mass.
 */
class FuelDensityTest {

    private static final EdgeTable EDGES = new EdgeTable(FuelDensityTest.class);
    private static final double STANDARD_KG_PER_L = 0.8;
    private static final int SIPS = 2000;

    @AfterAll
    static void write() {
        EDGES.write();
    }

    // ------------------------------------------------------------ capacity

    private static FuelSystem single(double capacity, boolean byVolume, TankPoint... rows) {
        Tank tank = new Tank("main", "main tank", capacity, List.of(rows), byVolume);
        FuelStage burn = new FuelStage(List.of(Plain.tankShare(0, 1, 0)));
        FuelStage fill = new FuelStage(List.of(new TankShare(0, 1, capacity, byVolume)));
        return new FuelSystem(List.of(tank), List.of(burn), List.of(fill), List.of(), STANDARD_KG_PER_L);
    }

    private static Loading flight(FuelSystem tanks, double litres, double densityKgPerL) {
        return OtherTanks.on(
                SampleJet.loaded().loading(),
                tanks,
                new Fuel.ByTank(Amounts.of(litres * densityKgPerL), 0, 0, OptionalDouble.of(densityKgPerL)));
    }

    private static String capacity(FuelSystem tanks, double litres, double densityKgPerL) {
        return capacity(flight(tanks, litres, densityKgPerL));
    }

    private static String capacity(Loading loading) {
        Balance balance = Balancer.balance(loading, RandomAircraft.STRICT);
        String found = Checker.check(loading, balance, RandomAircraft.STRICT).findings().stream()
                .filter(finding -> finding.code() == FindingCode.TANK_CAPACITY)
                .map(finding -> FindingText.sentence(finding, loading.type()))
                .collect(Collectors.joining("; "));
        return found.isEmpty() ? "none" : found;
    }

    @Test
    void aCapacityIsHeldAsItIsGiven() {
        FuelSystem litres = single(6000 * STANDARD_KG_PER_L, true, new TankPoint(4800, 17, true));
        FuelSystem kilograms = single(4800, false, Plain.tankPoint(4800, 17));

        EDGES.row(
                EdgeTopic.DENSITY,
                "6,300 L at 0.76 kg/L in a tank of 6,000 L, 4,800 kg at the type's 0.80 kg/L",
                "main tank with fuel of 0.760 kg/L 4788 kg is 228 kg above its limit of 4560 kg",
                capacity(litres, 6300, 0.76));
        EDGES.row(
                EdgeTopic.DENSITY,
                "6,000 L at 0.84 kg/L, 5,040 kg, in the same tank: full to the brim",
                "none",
                capacity(litres, 6000, 0.84));
        EDGES.row(
                EdgeTopic.DENSITY,
                "the same 5,040 kg in a tank of 4,800 kg",
                "main tank 5040 kg is 240 kg above its limit of 4800 kg",
                capacity(kilograms, 6000, 0.84));
    }

    @Test
    void theTanksOfTheShippedJetGoByVolume() {
        ConfigResult shipped = ConfigFolder.load(Path.of("config"));
        AircraftType jet =
                ((ConfigResult.Loaded) shipped).configuration().types().get("jet180");
        Loading loading = SampleJet.loaded().loading();
        Tail tail = Plain.tail("TEST-1", jet, MassMoment.at(40_000, 17.5));
        Fuel fuel = new Fuel.ByTank(Amounts.of(5800 * 0.8, 0, 5820 * 0.8), 0, 0, OptionalDouble.of(0.8));
        Loading onJet = Plain.loading(
                loading.origin(),
                loading.flight(),
                tail,
                loading.setting(),
                loading.crew(),
                new Load.ZeroFuelGiven(MassMoment.at(50_000, 17.5)),
                fuel,
                loading.performance(),
                OptionalDouble.empty(),
                List.of());

        EDGES.row(EdgeTopic.DENSITY, "5,800 and 5,820 L at 0.80 kg/L in tanks of 5,820 L", "none", capacity(onJet));
        assertThat(jet.fuel().tanks().get(0).armTable())
                .extracting(TankPoint::byVolume)
                .containsExactly(false, false, false, true);
    }

    // ------------------------------------------------------------ arms

    /**
     * Rows of 1,000 L at 10 m and 2,000 L at 11 m: the upper layer has its centroid at 12 m, so 1,500 L lie at (1,000 ×
     * 10 + 500 × 12) / 1,500 = 10.667 m whatever they weigh. By mass, 1,140 kg of rows of 800 kg and 1,600 kg are (800
     * × 10 + 340 × 12) / 1,140 = 10.596 m.
     */
    @Test
    void theArmOfTheContentsFollowsWhatTheTableIsIn() {
        FuelSystem byVolume = single(1600, true, new TankPoint(800, 10, true), new TankPoint(1600, 11, true));
        FuelSystem byMass = single(1600, false, Plain.tankPoint(800, 10), Plain.tankPoint(1600, 11));

        EDGES.row(
                EdgeTopic.DENSITY,
                "1,500 L at 0.76 kg/L, rows of 1,000 L at 10 m and 2,000 L at 11 m",
                "10.667 m",
                armM(byVolume, 1500, 0.76));
        EDGES.row(
                EdgeTopic.DENSITY,
                "the same 1,140 kg, rows of 800 kg at 10 m and 1,600 kg at 11 m",
                "10.596 m",
                armM(byMass, 1500, 0.76));
    }

    private static String armM(FuelSystem tanks, double litres, double densityKgPerL) {
        double kg = litres * densityKgPerL;
        Tank tank = flight(tanks, litres, densityKgPerL).tanks().tanks().get(0);
        return String.format(Locale.ROOT, "%.3f m", tank.momentKgM(kg) / kg);
    }

    /** A row in kg beside a capacity in L stays where it is written, as long as it lies below what is full then. */
    @Test
    void inAMixedTableEachRowIsWhatItIsWrittenAs() {
        FuelSystem mixed = single(
                1600, true, Plain.tankPoint(800, 10), Plain.tankPoint(1500, 10.8), new TankPoint(1600, 11, true));

        Tank lighter = mixed.atDensity(0.72).tanks().get(0);
        Tank denser = mixed.atDensity(0.88).tanks().get(0);

        assertThat(lighter.capacityKg()).isCloseTo(1440, within(1e-9));
        assertThat(lighter.armTable()).extracting(TankPoint::armM).containsExactly(10.0, 11.0);
        assertThat(denser.armTable()).extracting(TankPoint::quantityKg).startsWith(800.0, 1500.0);
        assertThat(denser.momentKgM(1760)).isCloseTo(1760 * 11, within(1e-9));
    }

    /** A table in kg under a capacity in L ends below it when the fuel is denser: the last layer goes on. */
    @Test
    void shortOfTheCapacityTheLastLayerGoesOn() {
        FuelSystem tanks = single(1600, true, Plain.tankPoint(800, 10), Plain.tankPoint(1600, 11));

        Tank denser = tanks.atDensity(0.88).tanks().get(0);

        assertThat(denser.capacityKg()).isCloseTo(1760, within(1e-9));
        assertThat(denser.momentKgM(1760)).isCloseTo(800 * 10 + 960 * 12, within(1e-9));
        assertThat(tanks.atDensity(0.88).fillOrder().get(0).shares().get(0).untilKg())
                .isCloseTo(1760, within(1e-9));
    }

    // ------------------------------------------------------------ drawn

    /** Rows in L and their arms. */
    @SuppressWarnings("ArrayRecordComponent") // never compared
    private record Table(double[] litres, double[] armsM) {

        static Table drawn(SplittableRandom random) {
            double[] litres = new double[4];
            double[] armsM = new double[4];
            for (int i = 0; i < 4; i++) {
                litres[i] = (i == 0 ? 0 : litres[i - 1]) + random.nextDouble(300, 2000);
                armsM[i] = random.nextDouble(15, 19);
            }
            return new Table(litres, armsM);
        }

        double fullL() {
            return litres[3];
        }

        Tank tank(String id) {
            List<TankPoint> rows = new ArrayList<>();
            for (int i = 0; i < 4; i++) {
                rows.add(new TankPoint(litres[i] * STANDARD_KG_PER_L, armsM[i], true));
            }
            return new Tank(id, id + " tank", fullL() * STANDARD_KG_PER_L, rows, true);
        }

        /** L·m: each layer up to the surface by its own centroid. */
        double momentLM(double contentsL) {
            double sumLM = 0;
            double lowL = 0;
            double lowLM = 0;
            for (int i = 0; i < 4 && contentsL > lowL; i++) {
                double centroidM = (litres[i] * armsM[i] - lowLM) / (litres[i] - lowL);
                sumLM += (Math.min(contentsL, litres[i]) - lowL) * centroidM;
                lowL = litres[i];
                lowLM = litres[i] * armsM[i];
            }
            return sumLM;
        }
    }

    /** Three tanks in L, emptied sip by sip in L by a loop of its own, at a density from 0.70 to 0.88 kg/L. */
    @Test
    @Tag("validation")
    void theFuelPathIsThatOfTanksEmptiedInLitres() {
        for (long seed = 1; seed <= Draws.of(150); seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            List<Table> tables = List.of(Table.drawn(random), Table.drawn(random), Table.drawn(random));
            double untilL = random.nextDouble(0, 500);
            double[] litres = tables.stream()
                    .mapToDouble(table -> random.nextDouble(0, table.fullL()))
                    .toArray();
            double densityKgPerL = random.nextDouble(0.70, 0.88);
            double tripL = random.nextDouble() * (litres[0] + litres[1] + litres[2]);
            Loading loading = OtherTanks.on(
                    SampleJet.loaded().loading(),
                    drawn(tables, untilL),
                    new Fuel.ByTank(
                            Amounts.of(litres[0] * densityKgPerL, litres[1] * densityKgPerL, litres[2] * densityKgPerL),
                            0,
                            tripL * densityKgPerL,
                            OptionalDouble.of(densityKgPerL)));
            Balance balance = Balancer.balance(loading, RandomAircraft.STRICT);
            MassMoment zeroFuel = balance.zeroFuel().orElseThrow();
            FuelBalance fuel = balance.fuel().orElseThrow();

            double sipL = tripL / SIPS;
            double slackKgM = 4 * sipL * densityKgPerL * 60;
            for (int sip = 0; sip <= SIPS; sip++) {
                double[] now = litres;
                double kgM = 0;
                double kg = 0;
                for (int i = 0; i < 3; i++) {
                    kg += now[i] * densityKgPerL;
                    kgM += tables.get(i).momentLM(now[i]) * densityKgPerL;
                }
                assertThat(momentAt(fuel.path().points(), zeroFuel.massKg() + kg) - zeroFuel.momentKgM())
                        .as("seed %d, sip %d", seed, sip)
                        .isCloseTo(kgM, within(sip == 0 ? 1e-5 : slackKgM));
                sip(litres, untilL, sipL);
            }
        }
    }

    private static FuelSystem drawn(List<Table> tables, double untilL) {
        List<FuelStage> burn = List.of(
                new FuelStage(List.of(new TankShare(2, 1, untilL * STANDARD_KG_PER_L, true))),
                new FuelStage(List.of(Plain.tankShare(0, 1, 0), Plain.tankShare(1, 1, 0))),
                new FuelStage(List.of(Plain.tankShare(2, 1, 0))));
        List<FuelStage> fill = new ArrayList<>();
        for (int i = 0; i < 3; i++) {
            fill.add(new FuelStage(List.of(new TankShare(i, 1, tables.get(i).fullL() * STANDARD_KG_PER_L, true))));
        }
        return new FuelSystem(
                List.of(
                        tables.get(0).tank("left"),
                        tables.get(1).tank("right"),
                        tables.get(2).tank("centre")),
                burn,
                fill,
                List.of(),
                STANDARD_KG_PER_L);
    }

    /** The centre down to so much, then both wings evenly, then the rest of the centre. */
    private static void sip(double[] litres, double untilL, double sipL) {
        double leftL = sipL;
        double centreL = Math.min(leftL, Math.max(0, litres[2] - untilL));
        litres[2] -= centreL;
        leftL -= centreL;
        double evenL = Math.min(leftL / 2, Math.min(litres[0], litres[1]));
        litres[0] -= evenL;
        litres[1] -= evenL;
        leftL -= 2 * evenL;
        for (int tank = 0; tank < 3; tank++) {
            double partL = Math.min(leftL, litres[tank]);
            litres[tank] -= partL;
            leftL -= partL;
        }
    }

    private static double momentAt(List<MassMoment> points, double massKg) {
        for (int i = 1; i < points.size(); i++) {
            MassMoment high = points.get(i - 1);
            MassMoment low = points.get(i);
            if (massKg >= low.massKg() - 1e-6) {
                double part = (high.massKg() - massKg) / (high.massKg() - low.massKg());
                return high.momentKgM() + part * (low.momentKgM() - high.momentKgM());
            }
        }
        return points.get(0).momentKgM();
    }
}
