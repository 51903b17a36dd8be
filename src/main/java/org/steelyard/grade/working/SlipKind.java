package org.steelyard.grade.working;

/** Slips that students make, each with its commonness: how often it is met against the others, by our judgement. */
public enum SlipKind {
    /** A mass in kilograms turned into pounds, or taken for what it is in pounds. */
    POUNDS("kilograms turned into pounds", 4),
    /** A mass in kilograms taken for pounds and turned into kilograms. */
    KILOGRAMS("pounds taken for kilograms", 4),
    /** Litres or gallons written where a mass belongs, or a mass taken for litres. */
    VOLUME("fuel volume as mass", 5),
    /** The arm of the place next to it. */
    NEIGHBOURS_ARM("neighbour's arm", 6),
    /** Crew left out. */
    CREW_LEFT_OUT("crew left out", 5),
    /** Pantry left out. */
    PANTRY_LEFT_OUT("pantry left out", 5),
    /** A zone or hold left out. */
    PLACE_LEFT_OUT("zone or hold left out", 9),
    /** A zone or hold counted twice. */
    PLACE_TWICE("zone or hold twice", 4),
    /** Children at the mass of adults. */
    CHILD_AS_ADULT("child as adult", 6),
    /** Two digits that stand beside each other swapped. */
    DIGITS_SWAPPED("digits swapped", 6),
    /** A sum that is off by one in a decimal place. */
    ARITHMETIC("arithmetic slip", 4),
    /** Rounded before the end. */
    ROUNDED_EARLY("rounded too early", 3),
    /** Taxi fuel not taken off. */
    TAXI_NOT_OFF("taxi fuel not taken off", 9),
    /** Taxi fuel taken off twice. */
    TAXI_TWICE("taxi fuel twice", 4),
    /** Trip fuel taken off the ramp mass. */
    TRIP_OFF_RAMP("trip fuel off the wrong mass", 5),
    /** The ramp state in the place of the take-off state. */
    RAMP_FOR_TAKEOFF("ramp for take-off", 4),
    /** The zero-fuel CG taken to the trim scale. */
    ZERO_FUEL_CG_FOR_TRIM("zero-fuel CG for trim", 5),
    /** The scale of another flap setting. */
    WRONG_FLAP("wrong flap's scale", 6),
    /** Read in the wrong direction between two marks. */
    SCALE_WRONG_WAY("scale read the wrong way", 4),
    /** Nose up for nose down. */
    TRIM_SIGN("nose up for nose down", 6),
    /** A slip with LEMAC or MAC. */
    LEMAC_OR_MAC("LEMAC or MAC slip", 4),
    /** The datum in place of LEMAC. */
    DATUM_FOR_LEMAC("datum for LEMAC", 4),
    /** The constant of the index not added. */
    INDEX_CONSTANT("index constant forgotten", 5),
    /** A limit of another phase. */
    WRONG_PHASE("limit of the wrong phase", 5),
    /** One of the limits not looked at. */
    LIMIT_LEFT_OUT("limit left out", 4),
    /** The envelope read wrongly. */
    ENVELOPE_MISREAD("envelope misread", 2);

    private final String label;
    private final double weight;

    SlipKind(String label, double weight) {
        this.label = label;
        this.weight = weight;
    }

    /**
     * The slip in a few words.
     *
     * @return its name on tables
     */
    public String label() {
        return label;
    }

    public double weight() {
        return weight;
    }
}
