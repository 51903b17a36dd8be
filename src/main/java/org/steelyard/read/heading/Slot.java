package org.steelyard.read.heading;

import java.util.List;
import org.steelyard.model.input.ColumnRule;
import org.steelyard.model.type.PassengerCategory;

/** What the cells of one column add to: a field, by place or for all places together. */
public enum Slot {
    FLIGHT("flight"),
    DATE("date"),
    TAIL("tail"),
    FROM("departure"),
    TO("destination"),
    FLAPS("take-off flaps"),
    LANDING_FLAPS("landing flaps"),
    THRUST("thrust rating"),
    FLIGHT_CREW("flight crew"),
    CABIN_CREW("cabin crew"),
    FLIGHT_CREW_MASS("flight crew's mass"),
    CREW_STATION("crew by station"),
    CREW_STATION_MASS("crew's mass by station"),
    PANTRY("pantry code"),
    SCHEME("scheme of standard masses"),
    ZONE_COUNT("passengers by zone"),
    ZONE_INFANTS("infants by zone"),
    ZONE_MASS("passengers' mass by zone"),
    HOLD_MASS("mass by hold"),
    HOLD_BAGS("bags by hold"),
    BAG_MASS("bags' mass by hold"),
    ALL_COUNT("passengers in total"),
    ALL_INFANTS("infants in total"),
    ALL_PASSENGER_MASS("passengers' mass in total"),
    ALL_HOLD_MASS("baggage and cargo in total"),
    ALL_BAGS("bags in total"),
    ALL_BAG_MASS("bags' mass in total"),
    TANK("fuel by tank"),
    ALL_FUEL("fuel in total"),
    TAXI_FUEL("taxi fuel"),
    TRIP_FUEL("trip fuel"),
    FUEL_DENSITY("fuel density"),
    ZERO_FUEL_MASS("zero-fuel mass"),
    ZERO_FUEL_CG("zero-fuel CG"),
    TAKEOFF_MASS("take-off mass"),
    TAKEOFF_CG("take-off CG"),
    PASSENGERS_CHANGE("last-minute change of passengers"),
    HOLD_MASS_CHANGE("last-minute change of mass in holds"),
    HOLD_BAGS_CHANGE("last-minute change of bags"),
    FUEL_CHANGE("last-minute change of fuel"),
    TAKEOFF_LIMIT("take-off limit"),
    LANDING_LIMIT("landing limit"),
    RECORDED_TRIM("recorded trim"),
    ITEM_ZONE("zone of the item"),
    ITEM_ROW("seat row of the item"),
    ITEM_HOLD("hold of the item"),
    ITEM_TANK("tank of the item"),
    ITEM_STATION("crew station of the item"),
    ITEM_PLACE("place of the item"),
    ITEM_KIND("kind of item"),
    ITEM_PIECES("pieces of the item"),
    ITEM_MASS("mass of the item"),
    EXTRA("extra"),
    IGNORED("ignored");

    /** All of them in their order. */
    public static final List<Slot> ALL = List.of(values());

    /** Slots to which several columns may add. */
    private static final long SUMS = bits(ZONE_COUNT, ZONE_INFANTS, ZONE_MASS, HOLD_MASS, HOLD_BAGS, TANK)
            | bits(ALL_COUNT, ALL_INFANTS, ALL_PASSENGER_MASS)
            | bits(ALL_HOLD_MASS, ALL_BAGS, ALL_FUEL, BAG_MASS, ALL_BAG_MASS, CREW_STATION, CREW_STATION_MASS)
            | bits(PASSENGERS_CHANGE, HOLD_MASS_CHANGE, HOLD_BAGS_CHANGE, FUEL_CHANGE, ITEM_MASS);

    /** Slots whose sums are in kg. */
    private static final long MASSES = bits(ZONE_MASS, HOLD_MASS, ALL_PASSENGER_MASS, ALL_HOLD_MASS)
            | bits(TANK, ALL_FUEL, TAXI_FUEL, TRIP_FUEL, BAG_MASS, ALL_BAG_MASS, CREW_STATION_MASS)
            | bits(HOLD_MASS_CHANGE, FUEL_CHANGE)
            | bits(FLIGHT_CREW_MASS, ZERO_FUEL_MASS, TAKEOFF_MASS, TAKEOFF_LIMIT, LANDING_LIMIT);

    private final String label;

    Slot(String label) {
        this.label = label;
    }

    /** What it is called in messages. */
    public String label() {
        return label;
    }

    /** Its position in the arrays of one row, which are never stored. */
    @SuppressWarnings("EnumOrdinal")
    public int index() {
        return ordinal();
    }

    public long bit() {
        return 1L << index();
    }

    /** A set of slots. */
    public static long bits(Slot... slots) {
        long bits = 0;
        for (Slot slot : slots) {
            bits |= slot.bit();
        }
        return bits;
    }

    /** The first of a set that is not empty. */
    public static Slot first(long slots) {
        return ALL.get(Long.numberOfTrailingZeros(slots));
    }

    /** Whether several columns may mean it: their values add up, or stand beside each other. */
    boolean takesSeveral() {
        return (SUMS & bit()) != 0 || this == EXTRA || this == IGNORED;
    }

    public boolean isMass() {
        return (MASSES & bit()) != 0;
    }

    static Slot of(ColumnRule rule) {
        boolean all = rule.place().isBlank();
        return switch (rule.field()) {
            case FLIGHT -> FLIGHT;
            case DATE -> DATE;
            case TAIL -> TAIL;
            case FROM -> FROM;
            case TO -> TO;
            case FLAPS -> FLAPS;
            case LANDING_FLAPS -> LANDING_FLAPS;
            case THRUST -> THRUST;
            case FLIGHT_CREW -> FLIGHT_CREW;
            case CABIN_CREW -> CABIN_CREW;
            case FLIGHT_CREW_MASS -> FLIGHT_CREW_MASS;
            case CREW -> CREW_STATION;
            case CREW_MASS -> CREW_STATION_MASS;
            case PANTRY -> PANTRY;
            case SCHEME -> SCHEME;
            case PASSENGERS ->
                rule.category() == PassengerCategory.INFANT
                        ? all ? ALL_INFANTS : ZONE_INFANTS
                        : all ? ALL_COUNT : ZONE_COUNT;
            case PASSENGER_MASS -> all ? ALL_PASSENGER_MASS : ZONE_MASS;
            case HOLD_MASS -> all ? ALL_HOLD_MASS : HOLD_MASS;
            case HOLD_BAGS -> all ? ALL_BAGS : HOLD_BAGS;
            case BAG_MASS -> all ? ALL_BAG_MASS : BAG_MASS;
            case FUEL -> all ? ALL_FUEL : TANK;
            case TAXI_FUEL -> TAXI_FUEL;
            case TRIP_FUEL -> TRIP_FUEL;
            case FUEL_DENSITY -> FUEL_DENSITY;
            case ZERO_FUEL_MASS -> ZERO_FUEL_MASS;
            case ZERO_FUEL_CG -> ZERO_FUEL_CG;
            case TAKEOFF_MASS -> TAKEOFF_MASS;
            case TAKEOFF_CG -> TAKEOFF_CG;
            case PASSENGERS_CHANGE -> PASSENGERS_CHANGE;
            case HOLD_MASS_CHANGE -> HOLD_MASS_CHANGE;
            case HOLD_BAGS_CHANGE -> HOLD_BAGS_CHANGE;
            case FUEL_CHANGE -> FUEL_CHANGE;
            case TAKEOFF_LIMIT -> TAKEOFF_LIMIT;
            case LANDING_LIMIT -> LANDING_LIMIT;
            case RECORDED_TRIM -> RECORDED_TRIM;
            case ITEM_ZONE -> ITEM_ZONE;
            case ITEM_ROW -> ITEM_ROW;
            case ITEM_HOLD -> ITEM_HOLD;
            case ITEM_TANK -> ITEM_TANK;
            case ITEM_STATION -> ITEM_STATION;
            case ITEM_PLACE -> ITEM_PLACE;
            case ITEM_KIND -> ITEM_KIND;
            case ITEM_PIECES -> ITEM_PIECES;
            case ITEM_MASS -> ITEM_MASS;
            case EXTRA -> EXTRA;
            case IGNORED -> IGNORED;
            // a student's figures do not belong to the loading: they are carried along, and read by ClaimCells
            case STUDENT,
                    CLAIMED_ZERO_FUEL_MASS,
                    CLAIMED_ZERO_FUEL_CG,
                    CLAIMED_RAMP_MASS,
                    CLAIMED_RAMP_CG,
                    CLAIMED_TAKEOFF_MASS,
                    CLAIMED_TAKEOFF_CG,
                    CLAIMED_LANDING_MASS,
                    CLAIMED_LANDING_CG,
                    CLAIMED_LIMITING_MASS,
                    CLAIMED_LIMITED_BY,
                    CLAIMED_TRAFFIC_LOAD,
                    CLAIMED_UNDERLOAD,
                    CLAIMED_TRIM,
                    CLAIMED_VERDICT -> EXTRA;
        };
    }
}
