package org.steelyard.analyse.column;

import org.steelyard.model.finding.FindingCode;

/**
 * What a breach exceeds. Breaches of one kind compare with each other; the order is the one in which they are shown.
 */
public enum Exceeded {
    /** CG limits on ground and in flight. */
    CG("CG"),
    /** Mass limits of a state. */
    MASS("mass"),
    /** Holds, groups, floors and seats. */
    STRUCTURE("structure"),
    /** Tanks, their difference, and what is burnt against what is aboard. */
    FUEL("fuel"),
    /** Trim scales and bands. */
    TRIM("trim"),
    /** What comes and goes without a new load sheet. */
    LAST_MINUTE("last minute");

    private final String label;

    Exceeded(String label) {
        this.label = label;
    }

    /** The kind in a word or two. */
    public String label() {
        return label;
    }

    public static Exceeded by(FindingCode code) {
        return switch (code) {
            case CG_FORWARD, CG_AFT, LIKELY_OUTSIDE -> CG;
            case MASS_HIGH, MASS_LOW, MASS_OFF_ENVELOPE, GIVEN_STATE -> MASS;
            case ZONE_SEATS, CREW_SEATS, HOLD_MASS, FLOOR_RUNNING, FLOOR_AREA, GROUP_MASS, SHARED_LOAD, BLANK_LOAD ->
                STRUCTURE;
            case TANK_CAPACITY, FUEL_IMBALANCE, FUEL_SHORT, SHARED_FUEL -> FUEL;
            case TRIM_OFF_SCALE, TRIM_BAND, TRIM_UNKNOWN, TRIM_RECORDED, TRIM_ESTIMATE -> TRIM;
            case LAST_MINUTE_PASSENGERS, LAST_MINUTE_MASS, LAST_MINUTE_FUEL, LAST_MINUTE_EFFECT -> LAST_MINUTE;
        };
    }
}
