package org.steelyard.report.output;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.hipparchus.stat.descriptive.moment.StandardDeviation;
import org.hipparchus.stat.descriptive.rank.Percentile;
import org.steelyard.analyse.column.StatusCount;
import org.steelyard.analyse.figure.Spread;
import org.steelyard.analyse.season.FindingCount;
import org.steelyard.analyse.season.SeasonSummary;
import org.steelyard.analyse.season.TrimGroup;
import org.steelyard.analyse.season.WorstFlight;
import org.steelyard.balance.Balance;
import org.steelyard.balance.TrimResult;
import org.steelyard.check.result.Assessment;
import org.steelyard.check.result.AuditedFlight;
import org.steelyard.check.result.EnvelopeMargin;
import org.steelyard.check.result.LimitingMass;
import org.steelyard.check.result.Status;
import org.steelyard.check.result.TrafficLoad;
import org.steelyard.model.finding.Finding;
import org.steelyard.model.finding.FindingCode;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.finding.Severity;
import org.steelyard.model.input.InputProblem;
import org.steelyard.model.input.ProblemCode;
import org.steelyard.model.input.RejectedRow;
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
import org.steelyard.model.policy.Policy;
import org.steelyard.model.policy.SharingRule;
import org.steelyard.model.trim.TrimPoint;
import org.steelyard.model.trim.TrimPoints;
import org.steelyard.model.trim.TrimScale;
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
import org.steelyard.model.unit.LengthUnit;
import org.steelyard.model.unit.MassMoment;
import org.steelyard.model.unit.MassUnit;
import org.steelyard.model.unit.Quantity;
import org.steelyard.samples.Plain;

/** Flights for the workbook: invented types and random states, from a seed. */
public final class WorkbookFixture {

    public static final Policy POLICY = Plain.policy(1.5, 0.5, 2, 0.3, SharingRule.BY_CAPACITY);
    static final DisplayUnits POUNDS = new DisplayUnits(MassUnit.LB, LengthUnit.IN, CgForm.ARM);
    public static final AircraftType JET = type("MERLE-180", 180, 60_000, DisplayUnits.METRIC, "1", "5", "15");
    static final AircraftType PROP = type("PLOVER-70", 70, 20_000, DisplayUnits.METRIC, "0", "15");
    public static final AircraftType LIGHT = type("WREN-4", 4, 1_100, POUNDS);

    private static final String[] PLACES = {"ZZAA", "ZZBB", "ZZCC", "ZZDD", "ZZEE", "ZZFF"};

    private WorkbookFixture() {}

    static AircraftType type(String id, int seats, double massKg, DisplayUnits units, String... flaps) {
        MeanChord chord = new MeanChord(15, 4);
        return Plain.aircraftType(
                id,
                "Invented " + id,
                new Geometry(chord, new IndexFormula(16, 1000, 50), units),
                new MassLimits(massKg * 1.01, massKg, massKg * 0.9, massKg * 0.8, massKg * 0.4),
                new Cabin(
                        List.of(Plain.cabinZone("A", "front cabin", 12, seats)),
                        List.of(new CrewStation("deck", CrewRole.FLIGHT, 5, 2)),
                        2,
                        0,
                        List.of(),
                        new MassScheme("demo", "invented", 88, 70, 84, 35, 0, 13, 85, 75)),
                List.of(new Hold("1", "forward hold", 10, massKg / 10, Optional.empty())),
                List.of(),
                new FuelSystem(
                        List.of(Plain.tank("main", "main tank", massKg / 4, List.of(Plain.tankPoint(massKg / 4, 16)))),
                        List.of(new FuelStage(List.of(Plain.tankShare(0, 1, 0)))),
                        List.of(new FuelStage(List.of(Plain.tankShare(0, 1, massKg / 4)))),
                        List.of(),
                        0.8),
                List.of(envelope(Phase.ZERO_FUEL, chord, massKg), envelope(Phase.TAKEOFF, chord, massKg)),
                scales(flaps));
    }

    private static Envelope envelope(Phase phase, MeanChord chord, double massKg) {
        return new Envelope(phase, line(Side.FORWARD, chord, massKg, 10), line(Side.AFT, chord, massKg, 35));
    }

    private static LimitLine line(Side side, MeanChord chord, double massKg, double percent) {
        double armM = chord.armAt(percent);
        return new LimitLine(
                side,
                Straightness.ARM,
                List.of(new LimitPoint(massKg * 0.4, armM), new LimitPoint(massKg * 1.01, armM)));
    }

    private static List<TrimScale> scales(String... flaps) {
        List<TrimScale> scales = new ArrayList<>();
        for (String setting : flaps) {
            scales.add(scale(setting));
        }
        return scales;
    }

    static TrimScale scale(String flaps) {
        TrimPoints law = new TrimPoints(List.of(new TrimPoint(5, 3.2), new TrimPoint(40, -2.4)));
        return Plain.trimScale(Phase.TAKEOFF, flaps, "", TrimUnit.UNITS, law, 0.1, -2, 2.5);
    }

    /** So many random flights of the three types. */
    public static List<AuditedFlight> flights(int count, long seed) {
        Random random = new Random(seed);
        List<AuditedFlight> flights = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            flights.add(flight(i, random));
        }
        return flights;
    }

    private static AuditedFlight flight(int i, Random random) {
        int which = random.nextInt(10);
        AircraftType type = which < 5 ? JET : which < 9 ? PROP : LIGHT;
        String flaps = type.trimScales().isEmpty()
                ? ""
                : type.trimScales()
                        .get(random.nextInt(type.trimScales().size()))
                        .flaps();
        String from = PLACES[random.nextInt(PLACES.length)];
        String to =
                PLACES[(random.nextInt(PLACES.length - 1) + 1 + List.of(PLACES).indexOf(from)) % PLACES.length];
        Origin origin = new Origin("spring.csv", "", i + 2);
        FlightIdent ident =
                new FlightIdent("ZZ" + (100 + i), LocalDate.of(2026, 3, 1).plusDays(i % 90), from, to);
        String registration = "ZZ-" + type.id().charAt(0) + (char) ('A' + random.nextInt(6));
        double massKg = type.limits().maxTakeoffKg() * (0.8 + 0.205 * random.nextDouble());
        double cgPercentMac = 22 + 5 * random.nextGaussian();
        List<Extra> extras = List.of(new Extra("pilot", "Pilot " + random.nextInt(30)));
        return flight(
                origin,
                ident,
                Plain.tail(registration, type, MassMoment.at(massKg / 2, 16)),
                flaps,
                massKg,
                cgPercentMac,
                extras);
    }

    /** A flight of one take-off mass and CG, the other states beside it. */
    public static AuditedFlight flight(
            Origin origin,
            FlightIdent ident,
            Tail tail,
            String flaps,
            double massKg,
            double cgPercentMac,
            List<Extra> extras) {
        AircraftType type = tail.type();
        Loading loading = Plain.loading(
                origin,
                ident,
                tail,
                new FlightSetting(flaps, "", ""),
                Crew.STANDARD,
                new Load.Totals(Passengers.adults(3), OptionalDouble.empty(), HoldLoad.EMPTY),
                new Fuel.Total(massKg / 10, 10, massKg / 20),
                PerformanceLimits.NONE,
                OptionalDouble.empty(),
                extras);
        MeanChord chord = type.geometry().chord();
        MassMoment takeoff = MassMoment.at(massKg, chord.armAt(cgPercentMac));
        MassMoment zeroFuel = MassMoment.at(massKg * 0.85, chord.armAt(cgPercentMac + 1));
        Optional<TrimResult> trim = type.trimScale(Phase.TAKEOFF, flaps, "")
                .map(scale -> new TrimResult(scale, scale.law().trimUnitsAt(cgPercentMac, massKg)));
        Balance balance = new Balance(
                Optional.of(tail.basic()),
                Optional.of(zeroFuel),
                Optional.of(MassMoment.at(massKg + 100, chord.armAt(cgPercentMac))),
                takeoff,
                Optional.of(MassMoment.at(massKg * 0.9, chord.armAt(cgPercentMac + 0.5))),
                Optional.empty(),
                Optional.empty(),
                trim,
                Optional.empty());
        return new AuditedFlight(loading, balance, assessment(type, takeoff, zeroFuel));
    }

    private static Assessment assessment(AircraftType type, MassMoment takeoff, MassMoment zeroFuel) {
        List<EnvelopeMargin> margins =
                List.of(margin(type, Phase.ZERO_FUEL, zeroFuel), margin(type, Phase.TAKEOFF, takeoff));
        List<Finding> findings = new ArrayList<>();
        for (EnvelopeMargin margin : margins) {
            cg(findings, margin.phase(), FindingCode.CG_FORWARD, margin.forwardPercentMac(), 10, 1);
            cg(findings, margin.phase(), FindingCode.CG_AFT, margin.aftPercentMac(), 35, -1);
        }
        double room = type.limits().maxTakeoffKg() - takeoff.massKg();
        if (room < 0) {
            findings.add(new Finding(
                    FindingCode.MASS_HIGH,
                    Severity.BREACH,
                    Phase.TAKEOFF,
                    "maximum take-off mass",
                    Quantity.MASS,
                    takeoff.massKg(),
                    type.limits().maxTakeoffKg(),
                    room));
        }
        findings.sort(Comparator.comparing(Finding::severity).reversed());
        findings.add(Finding.plain(
                FindingCode.SHARED_LOAD, Severity.NOTE, Phase.ZERO_FUEL, "zones and holds are shared out by capacity"));
        double aboard = zeroFuel.massKg() / 3;
        return Plain.assessment(
                findings, margins, Optional.of(new TrafficLoad(aboard + room, aboard, LimitingMass.TAKEOFF)));
    }

    private static void cg(List<Finding> findings, Phase phase, FindingCode code, double room, double limit, int side) {
        if (room < POLICY.marginalCgPercentMac()) {
            Severity severity = room < 0 ? Severity.BREACH : Severity.MARGINAL;
            String subject = code == FindingCode.CG_AFT ? "aft limit" : "forward limit";
            findings.add(new Finding(code, severity, phase, subject, Quantity.CG, limit + side * room, limit, room));
        }
    }

    private static EnvelopeMargin margin(AircraftType type, Phase phase, MassMoment state) {
        double percent = type.geometry().chord().percentAt(state.armM());
        return new EnvelopeMargin(
                phase,
                state,
                percent - 10,
                (percent - 10) * state.massKg() / 25,
                state,
                35 - percent,
                (35 - percent) * state.massKg() / 25,
                type.limits().maxRampKg() - state.massKg());
    }

    /** So many rejected rows of two files with different headings. */
    public static List<RejectedRow> rejected(int count) {
        List<RejectedRow> rows = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            rows.add(i % 3 == 2 ? island(i) : spring(i));
        }
        rows.sort(Comparator.comparing((RejectedRow row) -> row.origin().file())
                .thenComparing(row -> row.origin().row()));
        return rows;
    }

    private static RejectedRow spring(int i) {
        Origin origin = new Origin("spring.csv", "", 40 + i);
        return new RejectedRow(
                origin,
                "plain",
                List.of("flight", "date", "tail", "adults", "trip fuel kg"),
                List.of("ZZ" + i, "32.13.2026", "ZZ-QQQ", "-4", "12,5"),
                List.of(
                        new InputProblem(
                                origin, "date", ProblemCode.NOT_A_DATE, "not a date", "32.13.2026", "year-month-day"),
                        new InputProblem(
                                origin,
                                "tail",
                                ProblemCode.UNKNOWN_NAME,
                                "no such tail",
                                "ZZ-QQQ",
                                "a registration of fleet.csv"),
                        new InputProblem(
                                origin,
                                "adults",
                                ProblemCode.OUT_OF_RANGE,
                                "a count is not negative",
                                "-4",
                                "0 or more")));
    }

    private static RejectedRow island(int i) {
        Origin origin = new Origin("island.xlsx", "March", 9 + i);
        return new RejectedRow(
                origin,
                "pounds",
                List.of("Flt", "Day", "Reg", "ZFW lb"),
                List.of("=1+1", "2026-03-0" + (1 + i % 9), "ZZ-WA", ""),
                List.of(new InputProblem(origin, "ZFW lb", ProblemCode.MISSING, "no value", "", "a mass in lb")));
    }

    public static RunFacts facts(long accepted, long rejected) {
        return Plain.runFacts(
                "Spring 2026",
                "0.1.0",
                List.of("config=config"),
                List.of(
                        Plain.inputFile(
                                "spring.csv",
                                "ab".repeat(32),
                                123_456,
                                "plain",
                                accepted + rejected + 2,
                                accepted,
                                rejected,
                                2,
                                List.of("column 'remarks' left out")),
                        Plain.inputFile("island.xlsx", "cd".repeat(32), 9_876, "pounds", 0, 0, 0, 0, List.of())),
                List.of(
                        new RunFacts.ConfigFile("types/merle-180.yaml", "ef".repeat(32)),
                        new RunFacts.ConfigFile("fleet.csv", "01".repeat(32))),
                List.of(new RunFacts.SkippedFile("notes.txt", "neither CSV nor XLSX")));
    }

    /** What the flights come to, by general statistics from elsewhere. */
    public static SeasonSummary summary(List<AuditedFlight> flights) {
        return Plain.seasonSummary(
                count("all", flights),
                counts(flights, flight -> flight.loading().type().id()),
                counts(flights, flight -> flight.loading().tail().registration()),
                counts(
                        flights,
                        flight -> flight.loading().flight().from() + "–"
                                + flight.loading().flight().to()),
                findingCounts(flights),
                trimGroups(flights),
                worst(flights));
    }

    private static List<StatusCount> counts(List<AuditedFlight> flights, Function<AuditedFlight, String> group) {
        return flights.stream().collect(Collectors.groupingBy(group)).entrySet().stream()
                .map(entry -> count(entry.getKey(), entry.getValue()))
                .sorted(Comparator.comparing(StatusCount::breached)
                        .thenComparing(StatusCount::marginal)
                        .reversed()
                        .thenComparing(StatusCount::group))
                .toList();
    }

    private static StatusCount count(String group, List<AuditedFlight> flights) {
        Map<Status, Long> byStatus = flights.stream()
                .collect(Collectors.groupingBy(flight -> flight.assessment().status(), Collectors.counting()));
        return new StatusCount(
                group,
                flights.size(),
                byStatus.getOrDefault(Status.CLEAN, 0L),
                byStatus.getOrDefault(Status.MARGINAL, 0L),
                byStatus.getOrDefault(Status.BREACHED, 0L));
    }

    private static List<FindingCount> findingCounts(List<AuditedFlight> flights) {
        List<FindingCount> counts = new ArrayList<>();
        for (FindingCode code : FindingCode.values()) {
            for (Severity severity : Severity.values()) {
                long findings = 0;
                long concerned = 0;
                for (AuditedFlight flight : flights) {
                    long here = flight.assessment().findings().stream()
                            .filter(finding -> finding.code() == code && finding.severity() == severity)
                            .count();
                    findings += here;
                    concerned += here > 0 ? 1 : 0;
                }
                if (findings > 0) {
                    counts.add(new FindingCount(code, severity, findings, concerned));
                }
            }
        }
        counts.sort(Comparator.comparing(FindingCount::severity)
                .thenComparing(FindingCount::findings)
                .reversed());
        return counts;
    }

    private static List<TrimGroup> trimGroups(List<AuditedFlight> flights) {
        Map<String, List<AuditedFlight>> groups = flights.stream()
                .collect(Collectors.groupingBy(
                        flight -> String.format(
                                Locale.ROOT,
                                "%s %2s",
                                flight.loading().type().id(),
                                flight.loading().setting().flaps()),
                        TreeMap::new,
                        Collectors.toList()));
        return groups.values().stream().map(WorkbookFixture::trimGroup).toList();
    }

    private static TrimGroup trimGroup(List<AuditedFlight> flights) {
        double[] trims = flights.stream()
                .flatMap(flight -> flight.balance().takeoffTrim().stream())
                .flatMapToDouble(trim -> trim.trimUnits().stream())
                .toArray();
        double[] cgs = flights.stream()
                .mapToDouble(flight -> flight.loading()
                        .type()
                        .geometry()
                        .chord()
                        .percentAt(flight.balance().takeoff().armM()))
                .toArray();
        StatusCount count = count("", flights);
        return Plain.trimGroup(
                flights.get(0).loading().type().id(),
                flights.get(0).loading().setting().flaps(),
                "",
                TrimUnit.UNITS,
                trims.length == 0 ? Optional.empty() : Optional.of(spread(trims)),
                spread(cgs),
                count.marginal(),
                count.breached());
    }

    static Spread spread(double[] values) {
        Percentile percentile = new Percentile().withEstimationType(Percentile.EstimationType.R_7);
        percentile.setData(values);
        double mean = 0;
        double min = values[0];
        double max = values[0];
        for (double value : values) {
            mean += value / values.length;
            min = Math.min(min, value);
            max = Math.max(max, value);
        }
        return new Spread(
                values.length,
                mean,
                values.length == 1
                        ? OptionalDouble.empty()
                        : OptionalDouble.of(new StandardDeviation().evaluate(values)),
                min,
                percentile.evaluate(5),
                percentile.evaluate(25),
                percentile.evaluate(50),
                percentile.evaluate(75),
                percentile.evaluate(95),
                max);
    }

    private static List<WorstFlight> worst(List<AuditedFlight> flights) {
        return flights.stream()
                .filter(flight -> flight.assessment().status() == Status.BREACHED)
                .map(flight ->
                        new WorstFlight(flight, flight.assessment().findings().get(0)))
                .sorted(Comparator.comparing(WorstFlight::exceeded)
                        .thenComparing(worst -> worst.finding().margin()))
                .limit(20)
                .toList();
    }
}
