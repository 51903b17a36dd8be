package org.steelyard.model;

import java.util.Optional;

/** What a column of an input can mean. */
public enum Field {
    /** Flight number or name. */
    FLIGHT("flight", Kind.TEXT),
    /** Date of departure. */
    DATE("date", Kind.DATE),
    /** Registration. */
    TAIL("tail", Kind.TEXT),
    /** Departure place. */
    FROM("from", Kind.TEXT),
    /** Destination. */
    TO("to", Kind.TEXT),
    /** Take-off flap setting. */
    FLAPS("flaps", Kind.TEXT),
    /** Landing flap setting. */
    LANDING_FLAPS("landing-flaps", Kind.TEXT),
    /** Thrust rating. */
    THRUST("thrust", Kind.TEXT),
    /** Number of flight crew. */
    FLIGHT_CREW("flight-crew", Kind.COUNT),
    /** Number of cabin crew. */
    CABIN_CREW("cabin-crew", Kind.COUNT),
    /** Actual mass of all flight crew. */
    FLIGHT_CREW_MASS("flight-crew-mass", Kind.MASS),
    /** Code of the pantry variation. */
    PANTRY("pantry", Kind.TEXT),
    /** Passengers of a category, in a zone or in all. */
    PASSENGERS("passengers", Kind.COUNT),
    /** Actual mass of passengers, in a zone or in all. */
    PASSENGER_MASS("passenger-mass", Kind.MASS),
    /** Mass in a hold or in all. */
    HOLD_MASS("hold-mass", Kind.MASS),
    /** Bags at standard mass in a hold or in all. */
    HOLD_BAGS("hold-bags", Kind.COUNT),
    /** Ramp fuel in a tank or in all. */
    FUEL("fuel", Kind.FUEL),
    /** Fuel burnt before take-off. */
    TAXI_FUEL("taxi-fuel", Kind.FUEL),
    /** Fuel burnt from take-off to landing. */
    TRIP_FUEL("trip-fuel", Kind.FUEL),
    /** Density for fuel given by volume. */
    FUEL_DENSITY("fuel-density", Kind.DENSITY),
    /** Zero-fuel mass as somebody else computed it. */
    ZERO_FUEL_MASS("zero-fuel-mass", Kind.MASS),
    /** Zero-fuel CG as somebody else computed it. */
    ZERO_FUEL_CG("zero-fuel-cg", Kind.CG),
    /** Take-off mass as somebody else computed it. */
    TAKEOFF_MASS("takeoff-mass", Kind.MASS),
    /** Take-off CG as somebody else computed it. */
    TAKEOFF_CG("takeoff-cg", Kind.CG),
    /** Performance-limited take-off mass. */
    TAKEOFF_LIMIT("takeoff-limit", Kind.MASS),
    /** Performance-limited landing mass. */
    LANDING_LIMIT("landing-limit", Kind.MASS),
    /** Trim setting that was recorded. */
    RECORDED_TRIM("recorded-trim", Kind.TRIM),
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
    CLAIMED_VERDICT("claimed-verdict", Kind.TEXT),
    /** A column carried along under its own heading. */
    EXTRA("extra", Kind.TEXT),
    /** A column left out on purpose. */
    IGNORED("ignored", Kind.TEXT);

    /** What kind of value a field holds. */
    public enum Kind {
        /** Any text. */
        TEXT,
        /** A date. */
        DATE,
        /** A whole number, not negative. */
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

    Field(String key, Kind kind) {
        this.key = key;
        this.kind = kind;
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
