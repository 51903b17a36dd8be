package org.steelyard.model.input;

import java.util.Optional;

/** What a column of an input can mean. */
public enum Field implements Slot {
    /** Flight number or name. */
    FLIGHT("flight", Kind.TEXT),
    /** Date of departure. */
    DATE("date", Kind.DATE),
    /** Registration. */
    TAIL("tail", Kind.TEXT),
    /** Departure place. */
    FROM("from", Kind.TEXT, "departure"),
    /** Destination. */
    TO("to", Kind.TEXT, "destination"),
    /** Take-off flap setting. */
    FLAPS("flaps", Kind.TEXT, "take-off flaps"),
    /** Landing flap setting. */
    LANDING_FLAPS("landing-flaps", Kind.TEXT),
    /** Thrust rating. */
    THRUST("thrust", Kind.TEXT, "thrust rating"),
    /** Number of flight crew. */
    FLIGHT_CREW("flight-crew", Kind.COUNT),
    /** Number of cabin crew. */
    CABIN_CREW("cabin-crew", Kind.COUNT),
    /** Actual mass of all flight crew. */
    FLIGHT_CREW_MASS("flight-crew-mass", Kind.MASS, "flight crew's mass"),
    /** Number of crew at one of the type's stations. */
    CREW("crew", Kind.COUNT, "crew by station"),
    /** Actual mass of the crew at a station. */
    CREW_MASS("crew-mass", Kind.MASS, "crew's mass by station"),
    /** Code of the pantry variation. */
    PANTRY("pantry", Kind.TEXT, "pantry code"),
    /** Scheme of standard masses by which the row counts. */
    SCHEME("scheme", Kind.TEXT, "scheme of standard masses"),
    /** Passengers of a category, in a zone or in all. */
    PASSENGERS("passengers", Kind.COUNT, "passengers by zone"),
    /** Actual mass of passengers, in a zone or in all. */
    PASSENGER_MASS("passenger-mass", Kind.MASS, "passengers' mass by zone"),
    /** Mass in a hold or in all. */
    HOLD_MASS("hold-mass", Kind.MASS, "mass by hold"),
    /** Bags at standard mass in a hold or in all. */
    HOLD_BAGS("hold-bags", Kind.COUNT, "bags by hold"),
    /** Actual mass of the counted bags in a hold or in all, in place of their standard mass. */
    BAG_MASS("bag-mass", Kind.MASS, "bags' mass by hold"),
    /** Ramp fuel in a tank or in all. */
    FUEL("fuel", Kind.FUEL, "fuel by tank"),
    /** Fuel burnt before take-off. */
    TAXI_FUEL("taxi-fuel", Kind.FUEL),
    /** Fuel burnt from take-off to landing. */
    TRIP_FUEL("trip-fuel", Kind.FUEL),
    /** Density for fuel given by volume. */
    FUEL_DENSITY("fuel-density", Kind.DENSITY),
    /** Zero-fuel mass as somebody else computed it. */
    ZERO_FUEL_MASS("zero-fuel-mass", Kind.MASS, "zero-fuel mass"),
    /** Zero-fuel CG as somebody else computed it. */
    ZERO_FUEL_CG("zero-fuel-cg", Kind.CG, "zero-fuel CG"),
    /** Take-off mass as somebody else computed it. */
    TAKEOFF_MASS("takeoff-mass", Kind.MASS, "take-off mass"),
    /** Take-off CG as somebody else computed it. */
    TAKEOFF_CG("takeoff-cg", Kind.CG, "take-off CG"),
    /** Passengers of a category who come or, negative, go at the last minute, in a zone or anywhere. */
    PASSENGERS_CHANGE("passengers-change", Kind.COUNT, "last-minute change of passengers"),
    /** Mass that comes or goes at the last minute, in a hold or anywhere. */
    HOLD_MASS_CHANGE("hold-mass-change", Kind.MASS, "last-minute change of mass in holds"),
    /** Bags at standard mass that come or go at the last minute, in a hold or anywhere. */
    HOLD_BAGS_CHANGE("hold-bags-change", Kind.COUNT, "last-minute change of bags"),
    /** Fuel that comes or goes at the last minute, in a tank or anywhere. */
    FUEL_CHANGE("fuel-change", Kind.FUEL, "last-minute change of fuel"),
    /** Performance-limited take-off mass. */
    TAKEOFF_LIMIT("takeoff-limit", Kind.MASS, "take-off limit"),
    /** Performance-limited landing mass. */
    LANDING_LIMIT("landing-limit", Kind.MASS),
    /** Trim setting that was recorded. */
    RECORDED_TRIM("recorded-trim", Kind.TRIM),
    /** Zone in which a load item lies. */
    ITEM_ZONE("item-zone", Kind.TEXT, "zone of the item"),
    /** Seat row in which it sits. */
    ITEM_ROW("item-row", Kind.TEXT, "seat row of the item"),
    /** Hold in which it lies. */
    ITEM_HOLD("item-hold", Kind.TEXT, "hold of the item"),
    /** Tank in which it is. */
    ITEM_TANK("item-tank", Kind.TEXT, "tank of the item"),
    /** Crew station at which it sits. */
    ITEM_STATION("item-station", Kind.TEXT, "crew station of the item"),
    /** Zone, hold, tank, crew station or seat row, whichever of the type's places has the name. */
    ITEM_PLACE("item-place", Kind.TEXT, "place of the item"),
    /** What a load item is: a category of passengers, bags, cargo, fuel or crew. */
    ITEM_KIND("item-kind", Kind.TEXT, "kind of item"),
    /** How many persons or bags it is. */
    ITEM_PIECES("item-pieces", Kind.COUNT, "pieces of the item"),
    /** Its mass, or volume of fuel. */
    ITEM_MASS("item-mass", Kind.FUEL, "mass of the item"),
    /** A column carried along under its own heading. */
    EXTRA("extra", Kind.TEXT),
    /** A column left out on purpose. */
    IGNORED("ignored", Kind.TEXT),
    /** Student who filled in a load sheet. */
    STUDENT("student", Kind.TEXT),
    /** Zero-fuel mass on a student's sheet. */
    CLAIMED_ZERO_FUEL_MASS("claimed-zero-fuel-mass", Kind.MASS),
    /** Zero-fuel CG on a student's sheet. */
    CLAIMED_ZERO_FUEL_CG("claimed-zero-fuel-cg", Kind.CG),
    /** Ramp mass on a student's sheet. */
    CLAIMED_RAMP_MASS("claimed-ramp-mass", Kind.MASS),
    /** Ramp CG on a student's sheet. */
    CLAIMED_RAMP_CG("claimed-ramp-cg", Kind.CG),
    /** Take-off mass on a student's sheet. */
    CLAIMED_TAKEOFF_MASS("claimed-takeoff-mass", Kind.MASS),
    /** Take-off CG on a student's sheet. */
    CLAIMED_TAKEOFF_CG("claimed-takeoff-cg", Kind.CG),
    /** Landing mass on a student's sheet. */
    CLAIMED_LANDING_MASS("claimed-landing-mass", Kind.MASS),
    /** Landing CG on a student's sheet. */
    CLAIMED_LANDING_CG("claimed-landing-cg", Kind.CG),
    /** Limiting take-off mass on a student's sheet. */
    CLAIMED_LIMITING_MASS("claimed-limiting-mass", Kind.MASS),
    /** The limit that sets it, on a student's sheet. */
    CLAIMED_LIMITED_BY("claimed-limited-by", Kind.TEXT),
    /** Traffic load allowed on a student's sheet. */
    CLAIMED_TRAFFIC_LOAD("claimed-traffic-load", Kind.MASS),
    /** Underload on a student's sheet. */
    CLAIMED_UNDERLOAD("claimed-underload", Kind.MASS),
    /** Take-off trim on a student's sheet. */
    CLAIMED_TRIM("claimed-trim", Kind.TRIM),
    /** In or out of limits on a student's sheet. */
    CLAIMED_VERDICT("claimed-verdict", Kind.TEXT);

    /** What kind of value a field holds. */
    public enum Kind {
        /** Any text. */
        TEXT,
        /** A date. */
        DATE,
        /** A whole number. */
        COUNT,
        /** A mass. */
        MASS,
        /** A mass or a volume of fuel. */
        FUEL,
        /** Mass for volume. */
        DENSITY,
        /** % MAC, arm or index. */
        CG,
        /** Units of trim, with a sign or with UP and DN. */
        TRIM
    }

    private static final String CLAIMED = "claimed-";

    private final String key;
    private final Kind kind;
    private final String label;

    Field(String key, Kind kind) {
        this(key, kind, key.replace('-', ' '));
    }

    Field(String key, Kind kind, String label) {
        this.key = key;
        this.kind = kind;
        this.label = label;
    }

    @Override
    public Field field() {
        return this;
    }

    @Override
    public String label() {
        return label;
    }

    @Override
    @SuppressWarnings("EnumOrdinal")
    public int index() {
        return ordinal();
    }

    @Override
    public boolean takesSeveral() {
        return isLoad()
                || isChange()
                || switch (this) {
                    case CREW, CREW_MASS, ITEM_MASS, EXTRA, IGNORED -> true;
                    default -> false;
                };
    }

    /**
     * How the field is written in a heading map.
     *
     * @return lower-case words joined by hyphens
     */
    public String key() {
        return key;
    }

    /**
     * What kind of value it holds.
     *
     * @return the kind
     */
    public Kind kind() {
        return kind;
    }

    /**
     * Whether it says what is aboard, so that a blank cell could mean nothing.
     *
     * @return true for passengers, baggage, cargo and fuel aboard with their masses
     */
    public boolean isLoad() {
        return switch (this) {
            case PASSENGERS, PASSENGER_MASS, HOLD_MASS, HOLD_BAGS, BAG_MASS, FUEL -> true;
            default -> false;
        };
    }

    /**
     * Whether its numbers say what comes and, negative, what goes.
     *
     * @return true for last-minute changes
     */
    public boolean isChange() {
        return key.endsWith("-change");
    }

    /**
     * Whether a column of a form can hold it.
     *
     * @param form what each row of the source is
     * @return true if it makes sense there
     */
    public boolean suits(SourceForm form) {
        return switch (this) {
            case FLIGHT, DATE, TAIL, EXTRA, IGNORED -> true;
            default -> key.startsWith("item-") == (form == SourceForm.ITEMS);
        };
    }

    /**
     * Whether it counts passengers of a category.
     *
     * @return true where a column may name a category
     */
    public boolean hasCategory() {
        return this == PASSENGERS || this == PASSENGERS_CHANGE;
    }

    /**
     * The item of a load sheet whose figure it holds.
     *
     * @return empty for a field of the loading itself
     */
    public Optional<SheetItem> claim() {
        return SheetItem.ALL.stream()
                .filter(item -> key.equals(CLAIMED + item.key()))
                .findFirst();
    }

    /**
     * Whether it belongs to a student's sheet and not to the loading.
     *
     * @return true for the student and the claimed figures
     */
    public boolean isOfSheet() {
        return this == STUDENT || key.startsWith(CLAIMED);
    }
}
