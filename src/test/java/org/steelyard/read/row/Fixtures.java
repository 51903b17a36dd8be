package org.steelyard.read.row;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.input.ColumnMap;
import org.steelyard.model.input.ColumnRule;
import org.steelyard.model.input.ColumnUnit;
import org.steelyard.model.input.Field;
import org.steelyard.model.limit.CgRange;
import org.steelyard.model.limit.Envelope;
import org.steelyard.model.limit.LimitLine;
import org.steelyard.model.limit.LimitPoint;
import org.steelyard.model.limit.MassLimits;
import org.steelyard.model.limit.Side;
import org.steelyard.model.limit.Straightness;
import org.steelyard.model.trim.TrimPoint;
import org.steelyard.model.trim.TrimScale;
import org.steelyard.model.trim.TrimSlope;
import org.steelyard.model.trim.TrimUnit;
import org.steelyard.model.type.AircraftType;
import org.steelyard.model.type.Cabin;
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
import org.steelyard.model.type.Pantry;
import org.steelyard.model.type.PassengerCategory;
import org.steelyard.model.type.Tail;
import org.steelyard.model.type.Tank;
import org.steelyard.model.type.TankShare;
import org.steelyard.model.unit.MassMoment;
import org.steelyard.samples.Plain;

/** An invented fleet and heading maps for the tests of reading. */
public final class Fixtures {

    private static final MassScheme SCHEME = new MassScheme("test", "invented", 88, 70, 84, 35, 0, 13, 85, 75);
    private static final MeanChord CHORD = new MeanChord(10, 4);

    /** Zones A and B, holds 1 to 3, tanks left and right, flaps 5 and 15 with ratings, two pantries. */
    public static final AircraftType TWIN = Plain.aircraftType(
            "twin",
            "Twin",
            new Geometry(CHORD, new IndexFormula(11, 1000, 40), DisplayUnits.METRIC),
            new MassLimits(40_200, 40_000, 36_000, 34_000, 20_000),
            new Cabin(
                    List.of(Plain.cabinZone("A", "front", 8, 40), Plain.cabinZone("B", "rear", 14, 40)),
                    List.of(
                            new CrewStation("cockpit", CrewRole.FLIGHT, 3, 3),
                            new CrewStation("jump", CrewRole.CABIN, 5, 3)),
                    2,
                    2,
                    List.of(new Pantry("std", MassMoment.at(200, 6)), new Pantry("long", MassMoment.at(400, 6))),
                    SCHEME),
            List.of(hold("1", 7), hold("2", 12), hold("3", 16)),
            List.of(),
            new FuelSystem(List.of(tank("left"), tank("right")), stages(2, 0), stages(2, 4000), List.of(), 0.8),
            List.of(envelope()),
            List.of(
                    scale(Phase.TAKEOFF, "5", "TO1"),
                    scale(Phase.TAKEOFF, "15", "TO2"),
                    scale(Phase.LANDING, "30", "")));

    /** One cabin zone, one hold, one tank, no cabin crew, no pantry, no trim scale. */
    public static final AircraftType SINGLE = Plain.aircraftType(
            "single",
            "Single",
            new Geometry(CHORD, new IndexFormula(11, 1000, 40), DisplayUnits.METRIC),
            new MassLimits(40_200, 40_000, 36_000, 34_000, 20_000),
            new Cabin(
                    List.of(Plain.cabinZone("A", "seats", 11, 3)),
                    List.of(new CrewStation("pilot", CrewRole.FLIGHT, 10, 1)),
                    1,
                    0,
                    List.of(),
                    SCHEME),
            List.of(),
            List.of(),
            new FuelSystem(List.of(tank("left")), stages(1, 0), stages(1, 4000), List.of(), 0.72),
            List.of(envelope()),
            List.of());

    public static final Tail TWIN_TAIL = Plain.tail("SX-BAA", TWIN, MassMoment.at(22_000, 11));
    public static final Tail SINGLE_TAIL = Plain.tail("SX-ONE", SINGLE, MassMoment.at(21_000, 11));
    public static final Tails TAILS = Tails.of(List.of(
            TWIN_TAIL,
            Plain.tail("SX-BAB", TWIN, MassMoment.at(22_100, 11)),
            Plain.tail("SX-BAC", TWIN, MassMoment.at(22_200, 11)),
            Plain.tail("SX-BZZ", TWIN, MassMoment.at(22_300, 11)),
            SINGLE_TAIL));

    /** Every field of a by-place loading, in kg. */
    public static final ColumnMap MAP = map(
            "club",
            key("Flight", Field.FLIGHT),
            key("Date", Field.DATE),
            key("Tail", Field.TAIL),
            text("From", Field.FROM),
            text("To", Field.TO),
            text("Flaps", Field.FLAPS),
            text("Thrust", Field.THRUST),
            text("Landing flaps", Field.LANDING_FLAPS),
            text("Crew", Field.FLIGHT_CREW),
            text("Cabin crew", Field.CABIN_CREW),
            rule("Crew kg", Field.FLIGHT_CREW_MASS, "", ColumnUnit.KG),
            text("Pantry", Field.PANTRY),
            rule("Pax A", Field.PASSENGERS, "A", ColumnUnit.NONE),
            rule("Pax B", Field.PASSENGERS, "B", ColumnUnit.NONE),
            persons("Children B", "B", PassengerCategory.CHILD),
            persons("Infants B", "B", PassengerCategory.INFANT),
            rule("Pax A kg", Field.PASSENGER_MASS, "A", ColumnUnit.KG),
            rule("Hold 1", Field.HOLD_MASS, "1", ColumnUnit.KG),
            rule("Hold 2", Field.HOLD_MASS, "2", ColumnUnit.KG),
            rule("Hold 3", Field.HOLD_MASS, "3", ColumnUnit.KG),
            rule("Bags 2", Field.HOLD_BAGS, "2", ColumnUnit.NONE),
            rule("Pax", Field.PASSENGERS, "", ColumnUnit.NONE),
            persons("Infants", "", PassengerCategory.INFANT),
            rule("Pax kg", Field.PASSENGER_MASS, "", ColumnUnit.KG),
            rule("Load", Field.HOLD_MASS, "", ColumnUnit.KG),
            rule("Bags", Field.HOLD_BAGS, "", ColumnUnit.NONE),
            rule("Left", Field.FUEL, "left", ColumnUnit.KG),
            rule("Right", Field.FUEL, "right", ColumnUnit.KG),
            rule("Fuel", Field.FUEL, "", ColumnUnit.KG),
            rule("Fuel L", Field.FUEL, "", ColumnUnit.LITRE),
            rule("Density", Field.FUEL_DENSITY, "", ColumnUnit.KG_PER_LITRE),
            rule("Taxi", Field.TAXI_FUEL, "", ColumnUnit.KG),
            rule("Trip", Field.TRIP_FUEL, "", ColumnUnit.KG),
            rule("ZFM", Field.ZERO_FUEL_MASS, "", ColumnUnit.KG),
            rule("ZFCG", Field.ZERO_FUEL_CG, "", ColumnUnit.PERCENT_MAC),
            rule("TOM", Field.TAKEOFF_MASS, "", ColumnUnit.KG),
            rule("TOCG", Field.TAKEOFF_CG, "", ColumnUnit.PERCENT_MAC),
            rule("TO limit", Field.TAKEOFF_LIMIT, "", ColumnUnit.KG),
            rule("L limit", Field.LANDING_LIMIT, "", ColumnUnit.KG),
            rule("Trim", Field.RECORDED_TRIM, "", ColumnUnit.NOSE_UP),
            text("Pilot", Field.EXTRA),
            text("Clerk", Field.IGNORED));

    private Fixtures() {}

    private static Hold hold(String id, double armM) {
        return new Hold(id, "hold " + id, armM, 2000, Optional.empty());
    }

    private static Tank tank(String id) {
        return Plain.tank(id, id, 4000, List.of(Plain.tankPoint(4000, 11)));
    }

    private static List<FuelStage> stages(int tanks, double untilKg) {
        List<TankShare> shares = new ArrayList<>();
        for (int tank = 0; tank < tanks; tank++) {
            shares.add(Plain.tankShare(tank, 1, untilKg));
        }
        return List.of(new FuelStage(shares));
    }

    private static Envelope envelope() {
        return new Envelope(Phase.TAKEOFF, line(Side.FORWARD, 10.2), line(Side.AFT, 11.6));
    }

    private static LimitLine line(Side side, double armM) {
        return new LimitLine(
                side, Straightness.ARM, List.of(new LimitPoint(20_000, armM), new LimitPoint(40_000, armM)));
    }

    private static TrimScale scale(Phase phase, String flaps, String thrust) {
        TrimSlope slope = new TrimSlope(new TrimPoint(20, 3), -0.1, new CgRange(5, 40));
        return Plain.trimScale(phase, flaps, thrust, TrimUnit.UNITS, slope, 0.1, 0, 6);
    }

    public static ColumnRule key(String heading, Field field) {
        return new ColumnRule(heading, field, "", PassengerCategory.ADULT, ColumnUnit.NONE, "", true);
    }

    public static ColumnRule text(String heading, Field field) {
        return rule(heading, field, "", ColumnUnit.NONE);
    }

    public static ColumnRule rule(String heading, Field field, String place, ColumnUnit unit) {
        return new ColumnRule(heading, field, place, PassengerCategory.ADULT, unit, "", false);
    }

    static ColumnRule persons(String heading, String place, PassengerCategory category) {
        return new ColumnRule(heading, Field.PASSENGERS, place, category, ColumnUnit.NONE, "", false);
    }

    public static ColumnRule date(String heading, String pattern) {
        return new ColumnRule(heading, Field.DATE, "", PassengerCategory.ADULT, ColumnUnit.NONE, pattern, true);
    }

    public static ColumnMap map(String name, ColumnRule... rules) {
        return Plain.columnMap(
                name, List.of(), "", Optional.empty(), false, ColumnMap.UnknownColumns.LEAVE_OUT, Arrays.asList(rules));
    }

    public static ColumnMap withDecimalComma(ColumnMap map) {
        return Plain.columnMap(
                map.name(),
                map.filePatterns(),
                map.charset(),
                map.delimiter(),
                true,
                map.unknownColumns(),
                map.columns());
    }

    public static ColumnMap keepingUnknown(ColumnMap map) {
        return Plain.columnMap(
                map.name(),
                map.filePatterns(),
                map.charset(),
                map.delimiter(),
                map.decimalComma(),
                ColumnMap.UnknownColumns.KEEP,
                map.columns());
    }

    public static ColumnMap forFiles(ColumnMap map, String... patterns) {
        return Plain.columnMap(
                map.name(),
                Arrays.asList(patterns),
                map.charset(),
                map.delimiter(),
                map.decimalComma(),
                map.unknownColumns(),
                map.columns());
    }

    public static ColumnMap withText(ColumnMap map, String charset, Optional<Character> delimiter) {
        return Plain.columnMap(
                map.name(),
                map.filePatterns(),
                charset,
                delimiter,
                map.decimalComma(),
                map.unknownColumns(),
                map.columns());
    }

    /** The map with other rules instead of those of the same headings, or beside them. */
    public static ColumnMap with(ColumnMap map, ColumnRule... rules) {
        List<ColumnRule> all = new ArrayList<>(Arrays.asList(rules));
        for (ColumnRule rule : map.columns()) {
            if (Arrays.stream(rules).noneMatch(other -> other.heading().equals(rule.heading()))) {
                all.add(rule);
            }
        }
        return map(map.name(), all.toArray(ColumnRule[]::new));
    }
}
