package org.steelyard.report.output.page;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Random;
import org.steelyard.balance.Balance;
import org.steelyard.balance.Distribution;
import org.steelyard.balance.FuelBalance;
import org.steelyard.balance.FuelPath;
import org.steelyard.balance.TrimResult;
import org.steelyard.check.result.AuditedFlight;
import org.steelyard.check.result.EnvelopeMargin;
import org.steelyard.check.result.LimitingMass;
import org.steelyard.check.result.TrafficLoad;
import org.steelyard.model.finding.Finding;
import org.steelyard.model.finding.FindingCode;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.finding.Severity;
import org.steelyard.model.limit.CgRange;
import org.steelyard.model.limit.Envelope;
import org.steelyard.model.limit.LimitLine;
import org.steelyard.model.limit.LimitPoint;
import org.steelyard.model.limit.MassLimits;
import org.steelyard.model.limit.Side;
import org.steelyard.model.limit.Straightness;
import org.steelyard.model.loading.Crew;
import org.steelyard.model.loading.Extra;
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
import org.steelyard.model.policy.Policy;
import org.steelyard.model.policy.SharingRule;
import org.steelyard.model.trim.TrimPoint;
import org.steelyard.model.trim.TrimScale;
import org.steelyard.model.trim.TrimSlope;
import org.steelyard.model.trim.TrimUnit;
import org.steelyard.model.type.AircraftType;
import org.steelyard.model.type.Cabin;
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
import org.steelyard.model.unit.Amounts;
import org.steelyard.model.unit.LengthUnit;
import org.steelyard.model.unit.MassMoment;
import org.steelyard.model.unit.MassUnit;
import org.steelyard.model.unit.Quantity;
import org.steelyard.samples.Plain;

/** Audited flights of two invented types, put together by hand, for the tests of statistics and reports. */
public final class Flights {

    public static final Policy POLICY = Plain.policy(0.5, 1, 5, 0.25, SharingRule.BY_CAPACITY);

    /** A jet spoken of in kg and % MAC, its limits straight in moment. */
    public static final AircraftType JET = type(
            "J180",
            "Twin jet J180",
            new Geometry(new MeanChord(16, 4), new IndexFormula(17, 1000, 50), DisplayUnits.METRIC),
            new MassLimits(74_000, 73_500, 65_000, 61_000, 38_000),
            List.of(
                    line(Side.FORWARD, Straightness.MOMENT, 38_000, 16.40, 55_000, 16.32, 68_000, 16.44, 73_500, 16.6),
                    line(Side.AFT, Straightness.MOMENT, 38_000, 17.20, 60_000, 17.44, 73_500, 17.36)),
            List.of(scale("1", 8.0), scale("5", 7.4), scale("15", 6.6)));

    /** A single spoken of in pounds and inches, without a trim scale. */
    public static final AircraftType SINGLE = type(
            "L4",
            "Light single L4",
            new Geometry(
                    new MeanChord(1.9, 1.5),
                    new IndexFormula(0, 1000, 0),
                    new DisplayUnits(MassUnit.LB, LengthUnit.IN, CgForm.ARM)),
            new MassLimits(1115, 1111, 1111, 1111, 600),
            List.of(
                    line(Side.FORWARD, Straightness.ARM, 600, 2.08, 885, 2.08, 1111, 2.25),
                    line(Side.AFT, Straightness.ARM, 600, 2.40, 1111, 2.40)),
            List.of());

    private Flights() {}

    private static AircraftType type(
            String id,
            String name,
            Geometry geometry,
            MassLimits limits,
            List<LimitLine> lines,
            List<TrimScale> scales) {
        MassScheme scheme = new MassScheme("plain", "invented", 88, 70, 84, 35, 0, 15, 85, 75);
        Cabin cabin = new Cabin(
                List.of(Plain.cabinZone("A", "forward cabin", 12, 90), Plain.cabinZone("B", "aft cabin", 22, 90)),
                List.of(new CrewStation("front", CrewRole.FLIGHT, 3, 2)),
                1,
                0,
                List.of(),
                scheme);
        Tank tank = Plain.tank("main", "main tank", 20_000, List.of(Plain.tankPoint(20_000, 17)));
        FuelSystem fuel = new FuelSystem(
                List.of(tank),
                List.of(new FuelStage(List.of(Plain.tankShare(0, 1, 0)))),
                List.of(new FuelStage(List.of(Plain.tankShare(0, 1, 20_000)))),
                List.of(),
                0.8);
        return Plain.aircraftType(
                id,
                name,
                geometry,
                limits,
                cabin,
                List.of(new Hold("1", "hold 1", 11, 3000, Optional.empty())),
                List.of(),
                fuel,
                List.of(new Envelope(Phase.TAKEOFF, lines.get(0), lines.get(1))),
                scales);
    }

    private static LimitLine line(Side side, Straightness straight, double... massesAndArms) {
        List<LimitPoint> points = new ArrayList<>();
        for (int i = 0; i < massesAndArms.length; i += 2) {
            points.add(new LimitPoint(massesAndArms[i], massesAndArms[i + 1]));
        }
        return new LimitLine(side, straight, points);
    }

    private static TrimScale scale(String flaps, double anchorUnits) {
        TrimSlope law = new TrimSlope(new TrimPoint(8, anchorUnits), -0.25, new CgRange(5, 40));
        return Plain.trimScale(Phase.TAKEOFF, flaps, "", TrimUnit.UNITS, law, 0.1, -1, 8);
    }

    public static Builder flight(String name) {
        return new Builder(name);
    }

    public static Finding finding(
            FindingCode code, Severity severity, Quantity quantity, double value, double limit, double margin) {
        return new Finding(code, severity, Phase.TAKEOFF, "take-off limit", quantity, value, limit, margin);
    }

    public static Finding aft(Severity severity, double margin) {
        Finding plain = finding(FindingCode.CG_AFT, severity, Quantity.CG, 34 - margin, 34, margin);
        return new Finding(
                plain.code(),
                severity,
                plain.phase(),
                "aft limit",
                plain.quantity(),
                plain.value(),
                plain.limit(),
                margin);
    }

    /** A season of flights spread over a year; the same seed gives the same flights. */
    public static List<AuditedFlight> season(long seed, int flights) {
        Random random = new Random(seed);
        String[] places = {"NORA", "SUDI", "ESTE", "VEST", "MIDA"};
        String[] flaps = {"1", "5", "5", "5", "15"};
        List<AuditedFlight> season = new ArrayList<>();
        for (int i = 0; i < flights; i++) {
            boolean jet = random.nextInt(10) < 8;
            AircraftType type = jet ? JET : SINGLE;
            Builder flight = flight("SY" + (100 + i))
                    .row("season.csv", i + 2)
                    .on(LocalDate.of(2025, 1, 1).plusDays(i * 365L / flights))
                    .route(places[random.nextInt(5)], places[random.nextInt(5)])
                    .tail((jet ? "ZZ-J" : "ZZ-L") + (char) ('A' + random.nextInt(6)), type);
            if (jet) {
                flight.flaps(flaps[random.nextInt(flaps.length)])
                        .takeoff(58_000 + 6_500 * random.nextGaussian(), 22 + 4.2 * random.nextGaussian());
            } else {
                flight.takeoff(960 + 90 * random.nextGaussian(), 23 + 4 * random.nextGaussian());
            }
            season.add(flight.checked().build());
        }
        return season;
    }

    /** Puts one flight together; what is not said is plain. */
    public static final class Builder {

        private final String name;
        private Origin origin = new Origin("flights.csv", "", 2);
        private LocalDate date = LocalDate.of(2025, 3, 14);
        private String from = "NORA";
        private String to = "SUDI";
        private Tail tail = Plain.tail("ZZ-JA", JET, MassMoment.at(40_000, 17));
        private String flaps = "5";
        private MassMoment takeoff = MassMoment.at(60_000, 17);
        private boolean detail;
        private final List<Finding> findings = new ArrayList<>();
        private final List<EnvelopeMargin> margins = new ArrayList<>();
        private final List<Extra> extras = new ArrayList<>();

        private Builder(String name) {
            this.name = name;
        }

        public Builder row(String file, long row) {
            origin = new Origin(file, "", row);
            return this;
        }

        public Builder on(LocalDate day) {
            date = day;
            return this;
        }

        public Builder route(String departure, String destination) {
            from = departure;
            to = destination;
            return this;
        }

        public Builder tail(String registration, AircraftType type) {
            boolean jet = type.equals(JET);
            tail = Plain.tail(registration, type, MassMoment.at(jet ? 40_000 : 620, jet ? 17 : 2.2));
            flaps = jet ? flaps : "";
            return this;
        }

        public Builder flaps(String setting) {
            flaps = setting;
            return this;
        }

        public Builder takeoff(double massKg, double cgPercentMac) {
            takeoff = MassMoment.at(massKg, tail.type().geometry().chord().armAt(cgPercentMac));
            return this;
        }

        /** Gives all states and loads, not the take-off state alone. */
        public Builder inDetail() {
            detail = true;
            return this;
        }

        public Builder found(Finding... found) {
            findings.addAll(Arrays.asList(found));
            return this;
        }

        public Builder extra(String column, String value) {
            extras.add(new Extra(column, value));
            return this;
        }

        /** Holds take-off mass and CG against the type's envelope and notes what is outside or close. */
        public Builder checked() {
            Envelope envelope = tail.type().envelopes().get(0);
            MeanChord chord = tail.type().geometry().chord();
            double massKg = takeoff.massKg();
            if (!envelope.reaches(massKg)) {
                boolean high = massKg > envelope.maxMassKg();
                double limit = high ? envelope.maxMassKg() : envelope.minMassKg();
                double margin = high ? limit - massKg : massKg - limit;
                FindingCode code = high ? FindingCode.MASS_HIGH : FindingCode.MASS_LOW;
                return found(finding(code, Severity.BREACH, Quantity.MASS, massKg, limit, margin));
            }
            double forward = 100 * envelope.forward().roomM(massKg, takeoff.armM()) / chord.lengthM();
            double aft = 100 * envelope.aft().roomM(massKg, takeoff.armM()) / chord.lengthM();
            margins.add(new EnvelopeMargin(
                    Phase.TAKEOFF,
                    takeoff,
                    forward,
                    forward / 100 * chord.lengthM() * massKg,
                    takeoff,
                    aft,
                    aft / 100 * chord.lengthM() * massKg,
                    envelope.maxMassKg() - massKg));
            double cg = chord.percentAt(takeoff.armM());
            side(FindingCode.CG_FORWARD, "forward limit", cg, cg - forward, forward);
            side(FindingCode.CG_AFT, "aft limit", cg, cg + aft, aft);
            return this;
        }

        private void side(FindingCode code, String limitName, double cg, double limit, double margin) {
            if (margin < POLICY.marginalCgPercentMac()) {
                Severity severity = margin < 0 ? Severity.BREACH : Severity.MARGINAL;
                findings.add(new Finding(code, severity, Phase.TAKEOFF, limitName, Quantity.CG, cg, limit, margin));
            }
        }

        public AuditedFlight build() {
            Loading loading = Plain.loading(
                    origin,
                    new FlightIdent(name, date, from, to),
                    tail,
                    new FlightSetting(flaps, "", ""),
                    Crew.STANDARD,
                    detail
                            ? new Load.ByPlace(
                                    List.of(
                                            new ZoneLoad(Passengers.adults(50), OptionalDouble.empty()),
                                            new ZoneLoad(Passengers.adults(40), OptionalDouble.empty())),
                                    List.of(new HoldLoad(1200, 0)))
                            : new Load.TakeoffGiven(takeoff),
                    detail ? new Fuel.ByTank(Amounts.of(8200), 200, 5000) : new Fuel.NotGiven(),
                    PerformanceLimits.NONE,
                    detail ? OptionalDouble.of(3.4) : OptionalDouble.empty(),
                    extras);
            findings.sort((a, b) -> b.severity().compareTo(a.severity()));
            Optional<TrafficLoad> traffic =
                    detail ? Optional.of(new TrafficLoad(16_000, 8_760, LimitingMass.LANDING)) : Optional.empty();
            return new AuditedFlight(loading, balance(), Plain.assessment(findings, margins, traffic));
        }

        private Balance balance() {
            Optional<TrimResult> trim = tail.type()
                    .trimScale(Phase.TAKEOFF, flaps, "")
                    .map(scale -> new TrimResult(
                            scale,
                            scale.law()
                                    .trimUnitsAt(
                                            tail.type().geometry().chord().percentAt(takeoff.armM()),
                                            takeoff.massKg())));
            if (!detail) {
                return new Balance(
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        takeoff,
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        trim,
                        Optional.empty());
            }
            MassMoment ramp = takeoff.plus(MassMoment.at(200, 17));
            MassMoment landing = takeoff.minus(MassMoment.at(5000, 17));
            return new Balance(
                    Optional.of(tail.basic().plus(MassMoment.at(170, 3))),
                    Optional.of(takeoff.minus(MassMoment.at(8000, 17))),
                    Optional.of(ramp),
                    takeoff,
                    Optional.of(landing),
                    Optional.of(new Distribution(
                            Amounts.of(50, 40),
                            Amounts.of(4200, 3360),
                            Amounts.of(4200 * 12, 3360 * 22),
                            Amounts.of(1200),
                            OptionalInt.of(90),
                            false,
                            false)),
                    Optional.of(new FuelBalance(
                            tail.type().fuel(),
                            List.of(Amounts.of(8200), Amounts.of(8000), Amounts.of(3000)),
                            1,
                            200,
                            5000,
                            0,
                            new FuelPath(List.of(takeoff, landing)))),
                    trim,
                    Optional.empty());
        }
    }
}
