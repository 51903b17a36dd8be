package org.steelyard.report;

import org.steelyard.model.FindingCode;

/** Kinds of findings in words. */
final class FindingWords {

    private FindingWords() {}

    static String of(FindingCode code) {
        return switch (code) {
            case MASS_HIGH -> "maximum mass";
            case MASS_LOW -> "minimum mass";
            case CG_FORWARD -> "forward CG limit";
            case CG_AFT -> "aft CG limit";
            case MASS_OFF_ENVELOPE -> "mass that the envelope does not reach";
            case ZONE_SEATS -> "passengers to a zone's seats";
            case CREW_SEATS -> "crew to their seats";
            case HOLD_MASS -> "hold limit";
            case FLOOR_RUNNING -> "floor limit by length";
            case FLOOR_AREA -> "floor limit by area";
            case GROUP_MASS -> "limit of several places together";
            case TANK_CAPACITY -> "tank capacity";
            case FUEL_IMBALANCE -> "fuel imbalance";
            case FUEL_SHORT -> "fuel for taxi and trip";
            case TRIM_OFF_SCALE -> "off the trim scale";
            case TRIM_BAND -> "trim band";
            case TRIM_UNKNOWN -> "no flap setting, so no trim";
            case SHARED_LOAD -> "load shared out by rule";
            case SHARED_FUEL -> "fuel shared out by fill order";
            case GIVEN_STATE -> "state taken as given";
        };
    }
}
