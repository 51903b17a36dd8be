package org.steelyard.grade.mark;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import java.util.stream.DoubleStream;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.limit.Envelope;
import org.steelyard.model.limit.LimitLine;
import org.steelyard.model.limit.LimitPoint;
import org.steelyard.model.limit.MassLimits;
import org.steelyard.model.limit.Side;
import org.steelyard.model.limit.Straightness;
import org.steelyard.model.loading.Crew;
import org.steelyard.model.loading.FlightIdent;
import org.steelyard.model.loading.FlightSetting;
import org.steelyard.model.loading.Fuel;
import org.steelyard.model.loading.HoldLoad;
import org.steelyard.model.loading.Load;
import org.steelyard.model.loading.Loading;
import org.steelyard.model.loading.Origin;
import org.steelyard.model.loading.Passengers;
import org.steelyard.model.loading.PerformanceLimits;
import org.steelyard.model.loading.ZoneLoad;
import org.steelyard.model.trim.TrimScale;
import org.steelyard.model.trim.TrimTable;
import org.steelyard.model.trim.TrimUnit;
import org.steelyard.model.type.AircraftType;
import org.steelyard.model.type.Cabin;
import org.steelyard.model.type.CabinZone;
import org.steelyard.model.type.CgForm;
import org.steelyard.model.type.CrewRole;
import org.steelyard.model.type.CrewStation;
import org.steelyard.model.type.DisplayUnits;
import org.steelyard.model.type.FuelStage;
import org.steelyard.model.type.FuelSystem;
import org.steelyard.model.type.Geometry;
import org.steelyard.model.type.Hold;
import org.steelyard.model.type.IndexFormula;
import org.steelyard.model.type.MassScheme;
import org.steelyard.model.type.MeanChord;
import org.steelyard.model.type.Tail;
import org.steelyard.model.type.Tank;
import org.steelyard.model.type.TankPoint;
import org.steelyard.model.unit.Amounts;
import org.steelyard.model.unit.LengthUnit;
import org.steelyard.model.unit.MassMoment;
import org.steelyard.model.unit.MassUnit;
import org.steelyard.samples.Plain;

/**
 * Load sheets worked out by a second computation of its own: two invented aircraft, a loading drawn for each sheet, and
 * a student who works line by line and rounds as the writing says. Nothing of the program computes here; its records
 * only carry the loading to the marker.
 */
final class RightClass {

    static final double KG_PER_LB = 0.45359237;
    static final double M_PER_IN = 0.0254;
    private static final int MAC = 0;
    private static final int ARM = 1;
    private static final int INDEX = 2;
    private static final List<String> FIGURES = List.of(
            "zero-fuel-mass",
            "zero-fuel-cg",
            "ramp-mass",
            "ramp-cg",
            "takeoff-mass",
            "takeoff-cg",
            "landing-mass",
            "landing-cg",
            "limiting-mass",
            "limited-by",
            "traffic-load",
            "underload",
            "trim",
            "verdict");

    /**
     * An aircraft in its own units.
     *
     * @param kg one mass unit in kg
     * @param m one length unit in m
     */
    @SuppressWarnings("ArrayRecordComponent") // never compared
    record Ship(
            String name,
            double kg,
            double m,
            double lemac,
            double mac,
            double reference,
            double divisor,
            double constant,
            double[] limits,
            double[][] crew,
            double adult,
            double child,
            double[][] zones,
            double[][] holds,
            double[][] wing,
            double[][] centre,
            double basic,
            double basicArm,
            double forward,
            double aft) {}

    /**
     * How a student writes.
     *
     * @param unit mass unit of the sheet; blank for the aircraft's own
     * @param lineStep step to which each mass on the way is rounded, 0 for none
     * @param massStep step of a mass that is handed in
     * @param measure 0 for % MAC, 1 for arm, 2 for index
     * @param indexStep step to which the index of each line is rounded, 0 for none
     * @param chained each state from the one that was handed in before
     */
    record Writing(
            String name,
            String unit,
            double lineStep,
            double massStep,
            int measure,
            int decimals,
            double indexStep,
            boolean chained) {}

    static final List<Writing> WRITINGS = List.of(
            new Writing("own unit, 0.01 % MAC", "", 0, 1, MAC, 2, 0, false),
            new Writing("own unit, 0.1 % MAC, each state from the one before", "", 1, 1, MAC, 1, 0, true),
            new Writing("masses to 10 at the end, 0.01 % MAC", "", 0, 10, MAC, 2, 0, false),
            new Writing("masses to 10 at each step, 0.1 % MAC", "", 10, 10, MAC, 1, 0, false),
            new Writing("lb at each step, 0.1 % MAC", "lb", 1, 1, MAC, 1, 0, false),
            new Writing("kg, arm to three places", "kg", 0, 1, ARM, 3, 0, false),
            new Writing("t with three places, 0.01 % MAC", "t", 0, 0.001, MAC, 2, 0, false),
            new Writing("t with two places, 0.1 % MAC, each state from the one before", "t", 0, 0.01, MAC, 1, 0, true),
            new Writing("whole index units at the end", "", 1, 1, INDEX, 0, 0, false),
            new Writing("index of each line to 0.1", "", 1, 1, INDEX, 1, 0.1, false));

    private static final Ship JET = new Ship(
            "jet",
            1,
            1,
            15.2,
            3.75,
            16.5,
            800,
            60,
            new double[] {62_300, 62_000, 55_400, 51_900, 33_000},
            new double[][] {{2, 85, 3.1}, {4, 75, 16.4}},
            84,
            35,
            new double[][] {{7.3, 40}, {13.1, 46}, {19.6, 46}, {25.2, 40}},
            new double[][] {{8.7, 2_200}, {12.3, 2_600}, {21.4, 2_900}, {25.9, 1_400}},
            new double[][] {{1_500, 16.62}, {4_600, 17.45}},
            new double[][] {{6_200, 15.84}},
            34_210,
            16.163,
            9,
            33);

    private static final Ship COMMUTER = new Ship(
            "commuter",
            KG_PER_LB,
            M_PER_IN,
            402.5,
            78.4,
            420,
            10_000,
            100,
            new double[] {38_250, 38_000, 36_500, 34_600, 22_000},
            new double[][] {{2, 190, 121}, {1, 170, 168}},
            187,
            78,
            new double[][] {{214, 12}, {301, 16}, {404, 16}, {492, 8}},
            new double[][] {{171, 900}, {553, 1_900}},
            new double[][] {{900, 418.2}, {3_300, 424.6}},
            new double[][] {{1_400, 409.7}},
            23_415,
            437.4,
            12,
            39);

    static final List<Ship> SHIPS = List.of(JET, COMMUTER);
    private static final double[] SCALE_CGS = {-40, 0, 20, 40, 90};
    private static final double[][] SCALE_UNITS = {{17, 7.6, 3.4, -1.1, -9.5}, {18, 8.8, 4.1, -0.9, -9.9}};
    private static final double[] SCALE_SHARES = {0.5, 1.05};

    private final SplittableRandom random;
    private final Ship ship;
    private final int[][] seated;
    private final double[] holds;
    private final double wingEach;
    private final double inCentre;
    private final double taxi;
    private final double trip;

    RightClass(Ship ship, long seed) {
        this.ship = ship;
        random = new SplittableRandom(seed);
        double full = 0.35 + 0.65 * random.nextDouble();
        seated = new int[ship.zones().length][2];
        for (int i = 0; i < seated.length; i++) {
            int all = (int) Math.min(ship.zones()[i][1], ship.zones()[i][1] * full * (0.6 + 0.6 * random.nextDouble()));
            seated[i][1] = random.nextInt(3) == 0 ? Math.min(all, random.nextInt(4)) : 0;
            seated[i][0] = all - seated[i][1];
        }
        holds = new double[ship.holds().length];
        for (int i = 0; i < holds.length; i++) {
            holds[i] = random.nextInt(7) == 0 ? 0 : Math.rint(ship.holds()[i][1] * 0.9 * full * random.nextDouble());
        }
        double wingFull = ship.wing()[ship.wing().length - 1][0];
        wingEach = Math.rint(wingFull * (0.35 + 0.65 * random.nextDouble()));
        inCentre = random.nextBoolean() ? 0 : Math.rint(ship.centre()[0][0] * random.nextDouble());
        taxi = 10 * (4 + random.nextInt(12));
        trip = Math.rint((2 * wingEach + inCentre - taxi) * (0.2 + 0.5 * random.nextDouble()));
    }

    /** A line of the working: mass in the aircraft's unit, moment in its units. */
    private record Line(double mass, double arm, boolean dry) {}

    private List<Line> lines() {
        List<Line> lines = new ArrayList<>();
        lines.add(new Line(ship.basic(), ship.basicArm(), true));
        for (double[] crew : ship.crew()) {
            lines.add(new Line(crew[0] * crew[1], crew[2], true));
        }
        for (int i = 0; i < seated.length; i++) {
            double mass = seated[i][0] * ship.adult() + seated[i][1] * ship.child();
            lines.add(new Line(mass, ship.zones()[i][0], false));
        }
        for (int i = 0; i < holds.length; i++) {
            lines.add(new Line(holds[i], ship.holds()[i][0], false));
        }
        return lines;
    }

    /** Which line to leave out: a hold with something in it; -1 if there is none. */
    int loadedHold() {
        int first = 1 + ship.crew().length + seated.length;
        for (int i = 0; i < holds.length; i++) {
            int at = (i + seated[0][0]) % holds.length;
            if (holds[at] * ship.kg() > 150) {
                return first + at;
            }
        }
        return -1;
    }

    private static double rounded(double value, double step) {
        return step == 0 ? value : Math.rint(value / step) * step;
    }

    /** Moment of a quantity: straight between the rows of the table. */
    private static double moment(double[][] table, double mass) {
        double lowMass = 0;
        double low = 0;
        for (double[] row : table) {
            double high = row[0] * row[1];
            if (mass <= row[0]) {
                return low + (mass - lowMass) / (row[0] - lowMass) * (high - low);
            }
            lowMass = row[0];
            low = high;
        }
        throw new IllegalStateException("more than the tank holds");
    }

    /** Left, right and centre after so much has burnt: the centre first, then the wings alike. */
    private double[] tanks(double burnt) {
        double centre = Math.max(0, inCentre - burnt);
        double each = wingEach - (burnt - (inCentre - centre)) / 2;
        return new double[] {each, each, centre};
    }

    /** The student's sheet: figures as text, by the order of {@link #FIGURES}. */
    private final class Work {

        private final Writing writing;
        private final double unit;
        private final double step;
        private final double[] mass = new double[4];
        private final double[] moment = new double[4];
        private final double[] writtenMass = new double[4];
        private final double[] writtenMac = new double[4];
        private final String[] cells = new String[FIGURES.size()];

        Work(Writing writing, int leftOut) {
            this.writing = writing;
            unit = unitKg(ship, writing) / ship.kg();
            step = writing.lineStep();
            states(leftOut);
            limits(leftOut);
            for (int i = 0; i < 4; i++) {
                cells[2 * i] = mass(mass[i]);
            }
        }

        private double line(double mass) {
            return rounded(mass / unit, step);
        }

        private double momentOf(double lineMass, double exactMoment, double arm) {
            double own = exactMoment == 0 ? lineMass * arm : exactMoment / unit;
            if (writing.indexStep() == 0) {
                return own;
            }
            double index = (own - lineMass * ship.reference()) * unit / ship.divisor();
            return rounded(index, writing.indexStep()) * ship.divisor() / unit + lineMass * ship.reference();
        }

        private void states(int leftOut) {
            List<Line> lines = lines();
            for (int i = 0; i < lines.size(); i++) {
                if (i != leftOut) {
                    mass[0] += line(lines.get(i).mass());
                    moment[0] +=
                            momentOf(line(lines.get(i).mass()), 0, lines.get(i).arm());
                }
            }
            write(0);
            double[] burnt = {0, 0, taxi, taxi + trip};
            double[] before = new double[2];
            for (int i = 1; i < 4; i++) {
                double[] fuel = fuel(burnt[i]);
                double fromMass = writing.chained() ? writtenMass[i - 1] : mass[i - 1];
                double fromMoment = writing.chained() ? writtenMass[i - 1] * arm(writtenMac[i - 1]) : moment[i - 1];
                double more = i == 1 ? fuel[0] : -line(i == 2 ? taxi : trip);
                mass[i] = fromMass + more;
                moment[i] = fromMoment + fuel[1] - before[1];
                before = fuel;
                write(i);
            }
        }

        private double[] fuel(double burnt) {
            double[] tanks = tanks(burnt);
            double sum = 0;
            double moments = 0;
            for (int i = 0; i < 3; i++) {
                double[][] table = i < 2 ? ship.wing() : ship.centre();
                double exact = tanks[i] == 0 ? 0 : moment(table, tanks[i]);
                sum += line(tanks[i]);
                moments += exact == 0 ? 0 : momentOf(tanks[i] / unit, exact, 0);
            }
            return new double[] {sum, moments};
        }

        private double arm(double percentMac) {
            return ship.lemac() + percentMac / 100 * ship.mac();
        }

        private void write(int i) {
            writtenMass[i] = rounded(mass[i], writing.massStep());
            double arm = moment[i] / mass[i];
            double mac = (arm - ship.lemac()) / ship.mac() * 100;
            double value = switch (writing.measure()) {
                case MAC -> mac;
                case ARM -> arm;
                default -> (moment[i] - mass[i] * ship.reference()) * unit / ship.divisor() + ship.constant();
            };
            String text = String.format(Locale.ROOT, "%." + decimals() + "f", value);
            cells[2 * i + 1] = text;
            writtenMac[i] = writing.measure() == MAC ? Double.parseDouble(text) : mac;
        }

        private int decimals() {
            boolean inches = writing.measure() == ARM && ship.m() < 0.1;
            return inches ? writing.decimals() - 2 : writing.decimals();
        }

        private String mass(double value) {
            int places = writing.massStep() < 0.005 ? 3 : writing.massStep() < 0.05 ? 2 : 0;
            return String.format(Locale.ROOT, "%." + places + "f", rounded(value, writing.massStep()));
        }

        private void limits(int leftOut) {
            double ramp = fuel(0)[0];
            double takeoffFuel = ramp - line(taxi);
            double[] takeoff = {
                line(ship.limits()[3]) + takeoffFuel,
                line(ship.limits()[1]),
                line(ship.limits()[2]) + line(trip),
                line(ship.limits()[0]) - line(taxi)
            };
            int least = 0;
            for (int i = 1; i < 4; i++) {
                least = takeoff[i] < takeoff[least] ? i : least;
            }
            String[] names = {"maximum zero-fuel mass", "maximum take-off mass", "maximum landing mass", "ramp"};
            double dry = 0;
            double traffic = 0;
            List<Line> lines = lines();
            for (int i = 0; i < lines.size(); i++) {
                double part = i == leftOut ? 0 : line(lines.get(i).mass());
                dry += lines.get(i).dry() ? part : 0;
                traffic += lines.get(i).dry() ? 0 : part;
            }
            double allowed = takeoff[least] - takeoffFuel - dry;
            cells[8] = mass(takeoff[least]);
            cells[9] = names[least];
            cells[10] = mass(allowed);
            cells[11] = mass(allowed - traffic);
            cells[12] = trim();
            cells[13] = verdict() ? "in limits" : "out of limits";
        }

        private double seenMass(int i) {
            return writing.chained() ? writtenMass[i] : mass[i];
        }

        private boolean verdict() {
            double[] most = {ship.limits()[3], ship.limits()[0], ship.limits()[1], ship.limits()[2]};
            boolean in = true;
            for (int i = 0; i < 4; i++) {
                in &= seenMass(i) <= most[i] / unit + 1e-7 && seenMass(i) >= ship.limits()[4] / unit - 1e-7;
                in &= i == 1 || (writtenMac[i] >= ship.forward() - 1e-9 && writtenMac[i] <= ship.aft() + 1e-9);
            }
            return in;
        }

        private String trim() {
            double share =
                    (seenMass(2) * unit / ship.limits()[1] - SCALE_SHARES[0]) / (SCALE_SHARES[1] - SCALE_SHARES[0]);
            double cg = writtenMac[2];
            double units = 0;
            for (int i = 1; i < SCALE_CGS.length; i++) {
                if (cg >= SCALE_CGS[i - 1] && cg < SCALE_CGS[i]) {
                    double along = (cg - SCALE_CGS[i - 1]) / (SCALE_CGS[i] - SCALE_CGS[i - 1]);
                    double light = SCALE_UNITS[0][i - 1] + along * (SCALE_UNITS[0][i] - SCALE_UNITS[0][i - 1]);
                    double heavy = SCALE_UNITS[1][i - 1] + along * (SCALE_UNITS[1][i] - SCALE_UNITS[1][i - 1]);
                    units = light + share * (heavy - light);
                }
            }
            double set = Math.floor(units * 10 + 0.5) / 10;
            return String.format(Locale.ROOT, "%.1f %s", Math.abs(set), set < 0 ? "DN" : "UP");
        }
    }

    private static double unitKg(Ship ship, Writing writing) {
        return switch (writing.unit()) {
            case "lb" -> KG_PER_LB;
            case "kg" -> 1;
            case "t" -> 1000;
            default -> ship.kg();
        };
    }

    /** The heading line of a table of sheets in a writing. */
    static String headings(Ship ship, Writing writing) {
        String unit = writing.unit().isEmpty() ? (ship.kg() == 1 ? "kg" : "lb") : writing.unit();
        String cg = switch (writing.measure()) {
            case MAC -> "% MAC";
            case ARM -> ship.m() == 1 ? "m" : "in";
            default -> "index";
        };
        List<String> headings = new ArrayList<>(List.of("student", "flight"));
        for (String figure : FIGURES) {
            boolean mass = figure.endsWith("-mass") || figure.endsWith("load");
            headings.add("claimed-" + figure
                    + (mass
                            ? " (" + unit + ")"
                            : figure.endsWith("-cg") ? " (" + cg + ")" : figure.equals("trim") ? " (nose-up)" : ""));
        }
        return String.join(",", headings);
    }

    /** The sheet as a row of the table; without a line of the load, or -1 for a right one. */
    String row(String student, Writing writing, int leftOut) {
        return student + ",E," + String.join(",", new Work(writing, leftOut).cells);
    }

    // ------------------------------------------------------------ the loading, for the marker

    Loading loading() {
        double kg = ship.kg();
        List<ZoneLoad> zones = Arrays.stream(seated)
                .map(in -> new ZoneLoad(new Passengers(0, 0, in[0], in[1], 0), OptionalDouble.empty()))
                .toList();
        List<HoldLoad> loads = DoubleStream.of(holds)
                .mapToObj(mass -> new HoldLoad(mass * kg, 0))
                .toList();
        return Plain.loading(
                new Origin("made", "", 1),
                new FlightIdent("E", LocalDate.of(2026, 5, 1), "", ""),
                tail(),
                new FlightSetting("5", "", ""),
                Crew.STANDARD,
                new Load.ByPlace(zones, loads),
                new Fuel.ByTank(Amounts.of(wingEach * kg, wingEach * kg, inCentre * kg), taxi * kg, trip * kg),
                PerformanceLimits.NONE,
                OptionalDouble.empty(),
                List.of());
    }

    Tail tail() {
        return Plain.tail("MADE-1", type(), MassMoment.at(ship.basic() * ship.kg(), ship.basicArm() * ship.m()));
    }

    private AircraftType type() {
        double kg = ship.kg();
        double m = ship.m();
        double[] limits = DoubleStream.of(ship.limits()).map(mass -> mass * kg).toArray();
        boolean metric = kg == 1;
        DisplayUnits units = new DisplayUnits(
                metric ? MassUnit.KG : MassUnit.LB, metric ? LengthUnit.M : LengthUnit.IN, CgForm.PERCENT_MAC);
        List<Hold> places = new ArrayList<>();
        for (int i = 0; i < holds.length; i++) {
            double[] hold = ship.holds()[i];
            places.add(new Hold((i + 1) + "", "hold " + (i + 1), hold[0] * m, hold[1] * kg, Optional.empty()));
        }
        return Plain.aircraftType(
                ship.name(),
                ship.name(),
                new Geometry(
                        new MeanChord(ship.lemac() * m, ship.mac() * m),
                        new IndexFormula(ship.reference() * m, ship.divisor() * kg * m, ship.constant()),
                        units),
                new MassLimits(limits[0], limits[1], limits[2], limits[3], limits[4]),
                cabin(),
                places,
                List.of(),
                fuel(),
                List.of(
                        envelope(Phase.ZERO_FUEL, 0),
                        envelope(Phase.TAKEOFF, 0),
                        envelope(Phase.FLIGHT, 15),
                        envelope(Phase.LANDING, 0)),
                List.of(scale()));
    }

    private Cabin cabin() {
        double kg = ship.kg();
        double[][] crew = ship.crew();
        List<CabinZone> zones = new ArrayList<>();
        for (int i = 0; i < ship.zones().length; i++) {
            String id = "" + (char) ('A' + i);
            zones.add(Plain.cabinZone(id, "zone " + id, ship.zones()[i][0] * ship.m(), (int) ship.zones()[i][1]));
        }
        MassScheme scheme = new MassScheme(
                "made",
                "our own",
                ship.adult() * kg,
                ship.adult() * kg,
                ship.adult() * kg,
                ship.child() * kg,
                0,
                13 * kg,
                crew[0][1] * kg,
                crew[1][1] * kg);
        return new Cabin(
                zones,
                List.of(
                        new CrewStation("deck", CrewRole.FLIGHT, crew[0][2] * ship.m(), (int) crew[0][0]),
                        new CrewStation("cabin", CrewRole.CABIN, crew[1][2] * ship.m(), (int) crew[1][0])),
                (int) crew[0][0],
                (int) crew[1][0],
                List.of(),
                scheme);
    }

    private FuelSystem fuel() {
        List<Tank> tanks =
                List.of(tank("left", ship.wing()), tank("right", ship.wing()), tank("centre", ship.centre()));
        double wingKg = tanks.get(0).capacityKg();
        double centreKg = tanks.get(2).capacityKg();
        return new FuelSystem(
                tanks,
                List.of(
                        new FuelStage(List.of(Plain.tankShare(2, 1, 0))),
                        new FuelStage(List.of(Plain.tankShare(0, 1, 0), Plain.tankShare(1, 1, 0)))),
                List.of(
                        new FuelStage(List.of(Plain.tankShare(0, 1, wingKg), Plain.tankShare(1, 1, wingKg))),
                        new FuelStage(List.of(Plain.tankShare(2, 1, centreKg)))),
                List.of(),
                0.8);
    }

    private Tank tank(String id, double[][] table) {
        List<TankPoint> points = Arrays.stream(table)
                .map(row -> Plain.tankPoint(row[0] * ship.kg(), row[1] * ship.m()))
                .toList();
        return Plain.tank(id, id + " tank", points.get(points.size() - 1).quantityKg(), points);
    }

    private Envelope envelope(Phase phase, double wider) {
        return new Envelope(phase, line(Side.FORWARD, ship.forward() - wider), line(Side.AFT, ship.aft() + wider));
    }

    private LimitLine line(Side side, double percentMac) {
        double armM = (ship.lemac() + percentMac / 100 * ship.mac()) * ship.m();
        double kg = ship.kg();
        return new LimitLine(
                side,
                Straightness.ARM,
                List.of(
                        new LimitPoint(ship.limits()[4] * kg / 2, armM),
                        new LimitPoint(ship.limits()[0] * kg * 2, armM)));
    }

    private TrimScale scale() {
        double mostKg = ship.limits()[1] * ship.kg();
        TrimTable table = new TrimTable(
                Amounts.of(SCALE_SHARES[0] * mostKg, SCALE_SHARES[1] * mostKg),
                Amounts.of(SCALE_CGS),
                List.of(Amounts.of(SCALE_UNITS[0]), Amounts.of(SCALE_UNITS[1])));
        return Plain.trimScale(Phase.TAKEOFF, "5", "", TrimUnit.UNITS, table, 0.1, -20, 20);
    }
}
