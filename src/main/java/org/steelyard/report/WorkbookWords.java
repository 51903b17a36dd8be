package org.steelyard.report;

import java.util.Locale;
import org.steelyard.check.Status;
import org.steelyard.model.FindingCode;
import org.steelyard.model.Severity;

/** The words and signs of the workbook. The signs differ in shape and are in every common font. */
final class WorkbookWords {

    static final String RING = "○ ";
    static final String TRIANGLE = "▲ ";
    static final String SQUARE = "■ ";
    private static final String DOT = "• ";

    private WorkbookWords() {}

    static String status(Status status) {
        return switch (status) {
            case CLEAN -> RING + status.label();
            case MARGINAL -> TRIANGLE + status.label();
            case BREACHED -> SQUARE + status.label();
        };
    }

    static String severity(Severity severity) {
        return switch (severity) {
            case NOTE -> DOT + severity.label();
            case MARGINAL -> TRIANGLE + severity.label();
            case BREACH -> SQUARE + severity.label();
        };
    }

    /** A kind of finding in words, with a capital letter. */
    static String kind(FindingCode code, Severity severity) {
        boolean close = severity == Severity.MARGINAL;
        return switch (code) {
            case MASS_HIGH -> close ? "Mass close to its limit" : "Mass above its limit";
            case MASS_LOW -> close ? "Mass close to the minimum" : "Mass below the minimum";
            case CG_FORWARD -> close ? "CG close to the forward limit" : "CG ahead of the forward limit";
            case CG_AFT -> close ? "CG close to the aft limit" : "CG behind the aft limit";
            case MASS_OFF_ENVELOPE -> "Mass off the envelope";
            case ZONE_SEATS -> "More passengers than seats in a zone";
            case CREW_SEATS -> "More crew than seats";
            case HOLD_MASS -> close ? "Hold close to its limit" : "Too much in a hold";
            case FLOOR_RUNNING -> close ? "Running load close to its limit" : "Running load too high";
            case FLOOR_AREA -> close ? "Area load close to its limit" : "Area load too high";
            case GROUP_MASS -> close ? "Group of places close to its limit" : "Too much in a group of places";
            case TANK_CAPACITY -> close ? "Tank close to its capacity" : "More fuel than a tank holds";
            case FUEL_IMBALANCE -> close ? "Fuel imbalance close to its limit" : "Fuel imbalance too great";
            case FUEL_SHORT -> "Less fuel than taxi and trip burn";
            case TRIM_OFF_SCALE -> "Trim off the scale";
            case TRIM_BAND -> close ? "Trim close to the end of its band" : "Trim outside its band";
            case TRIM_UNKNOWN -> "No trim without a flap setting";
            case SHARED_LOAD -> "Load shared out from totals";
            case SHARED_FUEL -> "Fuel shared out from a total";
            case GIVEN_STATE -> "State taken as given";
        };
    }

    /** With a capital letter and a full stop. */
    static String sentence(String text) {
        if (text.isBlank()) {
            return text;
        }
        String stop = text.endsWith(".") ? "" : ".";
        int first = text.codePointAt(0);
        return Character.toString(Character.toTitleCase(first)) + text.substring(Character.charCount(first)) + stop;
    }

    /** As {@code 1 flight} or {@code 3,000 flights}. */
    static String count(long n, String one) {
        return number(n) + " " + one + (n == 1 ? "" : "s");
    }

    static String number(long n) {
        return String.format(Locale.ROOT, "%,d", n);
    }
}
