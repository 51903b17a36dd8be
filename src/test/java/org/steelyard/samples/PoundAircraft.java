package org.steelyard.samples;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.limit.Envelope;
import org.steelyard.model.limit.FloorLimit;
import org.steelyard.model.limit.ImbalanceLimit;
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
import org.steelyard.model.trim.TrimLaw;
import org.steelyard.model.trim.TrimPoint;
import org.steelyard.model.trim.TrimPoints;
import org.steelyard.model.trim.TrimScale;
import org.steelyard.model.trim.TrimTable;
import org.steelyard.model.trim.TrimUnit;
import org.steelyard.model.type.AircraftType;
import org.steelyard.model.type.Cabin;
import org.steelyard.model.type.CabinZone;
import org.steelyard.model.type.CgForm;
import org.steelyard.model.type.DisplayUnits;
import org.steelyard.model.type.FuelStage;
import org.steelyard.model.type.FuelSystem;
import org.steelyard.model.type.Geometry;
import org.steelyard.model.type.Hold;
import org.steelyard.model.type.IndexFormula;
import org.steelyard.model.type.LoadGroup;
import org.steelyard.model.type.MassScheme;
import org.steelyard.model.type.MeanChord;
import org.steelyard.model.type.Tank;
import org.steelyard.model.type.TankShare;
import org.steelyard.model.unit.Amounts;
import org.steelyard.model.unit.LengthUnit;
import org.steelyard.model.unit.MassMoment;
import org.steelyard.model.unit.MassUnit;

/**
 * A made-up aircraft whose masses are whole pounds and whose arms are whole inches, so that sums are known exactly in
 * whole numbers: a limit can be put exactly where a loading is. It can be written in pounds and inches or in the exact
 * decimals of kg and m, and with its datum moved. The chord begins at 200 in and is 80 in long; 1 % MAC is 0.8 in.
 */
@SuppressWarnings("LongDoubleConversion") // whole pounds, which a double holds exactly
public final class PoundAircraft {

    /** One pound. */
    public static final double LB_KG = 0.45359237;

    private static final double IN_M = 0.0254;
    private static final double FT_M = 0.3048;
    private static final int[] ZONES_IN = {150, 210, 270};
    private static final int[] HOLDS_IN = {120, 300};
    private static final int FUEL_IN = 215;

    /** How figures get into the type: both are exact to the last digits of a double, not to the same last digits. */
    public enum Writing {
        POUNDS(0),
        METRIC(0),
        DATUM_11_M(11),
        DATUM_30_M(30);

        private final double datumM;

        Writing(double datumM) {
            this.datumM = datumM;
        }

        double kg(double lb) {
            return this == METRIC
                    ? new BigDecimal(lb).multiply(new BigDecimal("0.45359237")).doubleValue()
                    : lb * LB_KG;
        }

        double m(double inches) {
            return this == METRIC
                    ? new BigDecimal(inches).multiply(new BigDecimal("0.0254")).doubleValue()
                    : datumM + inches * IN_M;
        }
    }

    public final SplittableRandom random;

    public long basicLb = 5200;
    public long basicLbIn;
    public final long[] zonesLb = new long[3];
    public final int[] seated = new int[3];
    public final long[] holdsLb = new long[2];
    public final long[] tanksLb = new long[2];
    public long taxiLb;
    public long tripLb;

    public long maxRampLb = 12_000;
    public long maxTakeoffLb = 11_900;
    public long maxLandingLb = 11_900;
    public long maxZeroFuelLb = 11_900;
    public long minLb = 4_000;
    public final long[] maxHoldLb = {600, 600};
    public long groupLb = 1_200;
    public long tankLb = 900;
    public long imbalanceLb = 900;
    public Optional<FloorLimit> floor = Optional.empty();
    public OptionalDouble performanceTakeoffLb = OptionalDouble.empty();
    /** Below this mass the aft limit is at 226 in, above it at 224 in; on it the more generous holds. */
    public long stepLb = 10_000;

    /** By how much the envelopes of the other states are wider than that of take-off, to each side. */
    public int widerIn = 8;

    public double bandHigh = 3.9;
    public double bandLow = -1;
    public String flaps = "1";

    /** A loading well inside every limit, with the take-off CG near 217 in. */
    public PoundAircraft(long seed) {
        random = new SplittableRandom(seed);
        for (int i = 0; i < 3; i++) {
            seated[i] = i == 1 ? 0 : random.nextInt(1, 5);
            zonesLb[i] = i == 1 ? random.nextInt(200, 900) : seated[i] * random.nextInt(120, 230);
        }
        for (int i = 0; i < 2; i++) {
            holdsLb[i] = 21L * random.nextInt(4, 20);
            tanksLb[i] = random.nextInt(300, 800);
        }
        taxiLb = random.nextInt(5, 30);
        tripLb = random.nextInt(50, 500);
        balance(217);
    }

    /** Sets the basic moment so that the take-off CG is at a whole inch, exactly. */
    public void balance(long takeoffIn) {
        basicLbIn = 0;
        basicLbIn = takeoffLb() * takeoffIn - takeoffLbIn();
    }

    public long zeroFuelLb() {
        return basicLb + zonesLb[0] + zonesLb[1] + zonesLb[2] + holdsLb[0] + holdsLb[1];
    }

    public long rampLb() {
        return zeroFuelLb() + tanksLb[0] + tanksLb[1];
    }

    public long takeoffLb() {
        return rampLb() - taxiLb;
    }

    public long landingLb() {
        return takeoffLb() - tripLb;
    }

    private long takeoffLbIn() {
        long lbIn = basicLbIn + FUEL_IN * (takeoffLb() - zeroFuelLb());
        for (int i = 0; i < 3; i++) {
            lbIn += ZONES_IN[i] * zonesLb[i];
        }
        return lbIn + HOLDS_IN[0] * holdsLb[0] + HOLDS_IN[1] * holdsLb[1];
    }

    /** A floor of 7 ft by 3 ft that carries so much at most, by its running load or by its area load. */
    public void floor(long lb, boolean running) {
        OptionalDouble limit = OptionalDouble.of(running ? lb / 7.0 * LB_KG / FT_M : lb / 21.0 * LB_KG / FT_M / FT_M);
        floor = Optional.of(new FloorLimit(
                84 * IN_M,
                36 * IN_M,
                running ? limit : OptionalDouble.empty(),
                running ? OptionalDouble.empty() : limit));
    }

    /** The flight in a writing. */
    public Loading loading(Writing in) {
        MassMoment basic = new MassMoment(in.kg(basicLb), basicLbIn * LB_KG * IN_M + in.m(0) * in.kg(basicLb));
        return Plain.loading(
                new Origin("pounds.csv", "", 2),
                new FlightIdent("P1", LocalDate.of(2026, 4, 1), "", ""),
                Plain.tail("TEST-3", type(in), basic),
                new FlightSetting(flaps, "", ""),
                Crew.STANDARD,
                new Load.ByPlace(
                        List.of(zone(in, 0), zone(in, 1), zone(in, 2)),
                        List.of(new HoldLoad(in.kg(holdsLb[0]), 0), new HoldLoad(in.kg(holdsLb[1]), 0))),
                new Fuel.ByTank(Amounts.of(in.kg(tanksLb[0]), in.kg(tanksLb[1])), in.kg(taxiLb), in.kg(tripLb)),
                new PerformanceLimits(
                        performanceTakeoffLb.isPresent()
                                ? OptionalDouble.of(in.kg(performanceTakeoffLb.getAsDouble()))
                                : OptionalDouble.empty(),
                        OptionalDouble.empty()),
                OptionalDouble.empty(),
                List.of());
    }

    private ZoneLoad zone(Writing in, int zone) {
        return new ZoneLoad(
                seated[zone] == 0 ? Passengers.NONE : Passengers.adults(seated[zone]),
                OptionalDouble.of(in.kg(zonesLb[zone])));
    }

    private AircraftType type(Writing in) {
        return Plain.aircraftType(
                "POUNDS",
                "an aircraft in whole pounds",
                new Geometry(
                        new MeanChord(in.m(200), 80 * IN_M),
                        new IndexFormula(in.m(215), 10, 50),
                        new DisplayUnits(MassUnit.LB, LengthUnit.IN, CgForm.PERCENT_MAC)),
                new MassLimits(
                        in.kg(maxRampLb),
                        in.kg(takeoffLimitLb()),
                        in.kg(atMost(maxLandingLb)),
                        in.kg(atMost(maxZeroFuelLb)),
                        in.kg(minLb)),
                new Cabin(
                        List.of(zone(in, "A", 0), zone(in, "B", 1), zone(in, "C", 2)),
                        List.of(),
                        0,
                        0,
                        List.of(),
                        new MassScheme("drawn", "drawn", 88, 70, 84, 35, 0, 13, 85, 75)),
                List.of(hold(in, 0, "nose hold", Optional.empty()), hold(in, 1, "tail hold", floor)),
                List.of(new LoadGroup("holds", "both holds", List.of(0, 1), List.of(), in.kg(groupLb))),
                fuel(in),
                List.of(
                        envelope(in, Phase.ZERO_FUEL, atMost(maxZeroFuelLb), widerIn),
                        envelope(in, Phase.TAKEOFF, takeoffLimitLb(), 0),
                        envelope(in, Phase.FLIGHT, takeoffLimitLb(), widerIn),
                        envelope(in, Phase.LANDING, atMost(maxLandingLb), widerIn)),
                List.of(byMass(in), byPoints()));
    }

    /** The limits stand in order whichever of them is put somewhere. */
    private long takeoffLimitLb() {
        return Math.min(maxTakeoffLb, maxRampLb);
    }

    private long atMost(long limitLb) {
        return Math.min(limitLb, takeoffLimitLb());
    }

    private static CabinZone zone(Writing in, String id, int zone) {
        return Plain.cabinZone(id, "zone " + id, in.m(ZONES_IN[zone]), 12);
    }

    private Hold hold(Writing in, int hold, String name, Optional<FloorLimit> carries) {
        return new Hold("" + (hold + 1), name, in.m(HOLDS_IN[hold]), in.kg(maxHoldLb[hold]), carries);
    }

    private FuelSystem fuel(Writing in) {
        List<TankShare> empty = List.of(Plain.tankShare(0, 1, 0), Plain.tankShare(1, 1, 0));
        List<TankShare> full = List.of(Plain.tankShare(0, 1, in.kg(tankLb)), Plain.tankShare(1, 1, in.kg(tankLb)));
        return new FuelSystem(
                List.of(tank(in, "left"), tank(in, "right")),
                List.of(new FuelStage(empty)),
                List.of(new FuelStage(full)),
                List.of(new ImbalanceLimit(0, 1, in.kg(imbalanceLb))),
                0.8);
    }

    private Tank tank(Writing in, String id) {
        return Plain.tank(id, id + " tank", in.kg(tankLb), List.of(Plain.tankPoint(in.kg(tankLb), in.m(FUEL_IN))));
    }

    private Envelope envelope(Writing in, Phase phase, long maxLb, int wider) {
        LimitLine forward = new LimitLine(
                Side.FORWARD, Straightness.ARM, List.of(point(in, 3_000, 208 - wider), point(in, maxLb, 212 - wider)));
        List<LimitPoint> aft = stepLb < maxLb
                ? List.of(
                        point(in, 3_000, 226 + wider),
                        point(in, stepLb, 226 + wider),
                        point(in, stepLb, 224 + wider),
                        point(in, maxLb, 224 + wider))
                : List.of(point(in, 3_000, 226 + wider), point(in, maxLb, 226 + wider));
        Straightness straight = phase == Phase.FLIGHT ? Straightness.MOMENT : Straightness.ARM;
        return new Envelope(phase, forward, new LimitLine(Side.AFT, straight, aft));
    }

    private static LimitPoint point(Writing in, long lb, long inches) {
        return new LimitPoint(in.kg(lb), in.m(inches));
    }

    private TrimScale byMass(Writing in) {
        return scale(
                "1",
                new TrimTable(
                        Amounts.of(in.kg(3_000), in.kg(5_000), in.kg(takeoffLimitLb())),
                        Amounts.of(5, 15, 25, 35),
                        List.of(
                                Amounts.of(3.5, 2, 0.75, -0.5),
                                Amounts.of(3.75, 2.25, 1, -0.25),
                                Amounts.of(4, 2.5, 1.25, 0))));
    }

    /** From 212 in (15 %) to 220 in (25 %) the trim falls from 2 to 0.5. */
    private TrimScale byPoints() {
        return scale(
                "2",
                new TrimPoints(List.of(
                        new TrimPoint(5, 4), new TrimPoint(15, 2), new TrimPoint(25, 0.5), new TrimPoint(35, -1))));
    }

    private TrimScale scale(String setting, TrimLaw law) {
        return Plain.trimScale(Phase.TAKEOFF, setting, "", TrimUnit.UNITS, law, 0.25, bandLow, bandHigh);
    }
}
