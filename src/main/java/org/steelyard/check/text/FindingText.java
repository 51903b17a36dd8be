package org.steelyard.check.text;

import org.steelyard.model.finding.Finding;
import org.steelyard.model.finding.FindingCode;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.finding.Severity;
import org.steelyard.model.limit.LimitLine;
import org.steelyard.model.trim.TrimUnit;
import org.steelyard.model.type.AircraftType;
import org.steelyard.model.type.CgForm;
import org.steelyard.model.type.DisplayUnits;
import org.steelyard.model.unit.MassUnit;
import org.steelyard.model.unit.Quantity;

/**
 * Findings in the words and units of a type's users. Inside a finding is in kg, m and % MAC; here it becomes pounds and
 * inches where the type's users think in them. Running and area loads go with the unit of mass: lb/ft and lb/ft² for
 * pounds, kg/m and kg/m² else.
 */
public final class FindingText {

    private static final double FOOT_M = 0.3048;
    private static final int MORE_DECIMALS = 3;

    private FindingText() {}

    /**
     * The flight's figure in the users' unit.
     *
     * @param finding the finding
     * @param type the flight's type
     * @return the value, to be read with {@link #unit}
     */
    public static double value(Finding finding, AircraftType type) {
        return absolute(finding.quantity(), finding.value(), type);
    }

    /**
     * The limit in the users' unit.
     *
     * @param finding the finding
     * @param type the flight's type
     * @return the limit, to be read with {@link #unit}
     */
    public static double limit(Finding finding, AircraftType type) {
        return absolute(finding.quantity(), finding.limit(), type);
    }

    /**
     * The room to the limit in the users' unit.
     *
     * @param finding the finding
     * @param type the flight's type
     * @return the margin, negative outside, to be read with {@link #unit}
     */
    public static double margin(Finding finding, AircraftType type) {
        DisplayUnits units = type.geometry().units();
        if (finding.quantity() == Quantity.CG && units.cg() == CgForm.ARM) {
            return units.length()
                    .fromM(finding.margin() / 100 * type.geometry().chord().lengthM());
        }
        return absolute(finding.quantity(), finding.margin(), type);
    }

    private static double absolute(Quantity quantity, double inside, AircraftType type) {
        DisplayUnits units = type.geometry().units();
        boolean pounds = units.mass() == MassUnit.LB;
        return switch (quantity) {
            case MASS -> units.mass().fromKg(inside);
            case CG ->
                units.cg() == CgForm.ARM
                        ? units.length().fromM(type.geometry().chord().armAt(inside))
                        : inside;
            case RUNNING_LOAD -> pounds ? MassUnit.LB.fromKg(inside) * FOOT_M : inside;
            case AREA_LOAD -> pounds ? MassUnit.LB.fromKg(inside) * FOOT_M * FOOT_M : inside;
            case COUNT, PERSONS, TRIM, TRIM_DEGREES, NONE -> inside;
        };
    }

    /**
     * A figure of a flight with its unit, as 4599 kg.
     *
     * @param quantity what is measured
     * @param inside the figure in SI units
     * @param type the flight's type, in whose units it is written
     * @return figure and unit
     */
    public static String amount(Quantity quantity, double inside, AircraftType type) {
        return FixedDecimals.of(absolute(quantity, inside, type), decimals(quantity, type)) + " "
                + unit(quantity, type);
    }

    /**
     * The users' unit of a quantity.
     *
     * @param quantity what is measured
     * @param type the flight's type
     * @return its symbol; "units" or "degrees" for trim, "seats" or "passengers" for counts, blank for no numbers
     */
    public static String unit(Quantity quantity, AircraftType type) {
        DisplayUnits units = type.geometry().units();
        boolean pounds = units.mass() == MassUnit.LB;
        return switch (quantity) {
            case MASS -> units.mass().symbol();
            case CG -> units.cg() == CgForm.ARM ? units.length().symbol() : "% MAC";
            case COUNT -> "seats";
            case PERSONS -> "passengers";
            case TRIM -> TrimUnit.Measure.UNITS.label();
            case TRIM_DEGREES -> TrimUnit.Measure.DEGREES.label();
            case RUNNING_LOAD -> pounds ? "lb/ft" : "kg/m";
            case AREA_LOAD -> pounds ? "lb/ft²" : "kg/m²";
            case NONE -> "";
        };
    }

    /**
     * How many decimals a figure of a quantity is shown with.
     *
     * @param quantity what is measured
     * @param type the flight's type
     * @return number of decimals
     */
    public static int decimals(Quantity quantity, AircraftType type) {
        DisplayUnits units = type.geometry().units();
        return switch (quantity) {
            case MASS ->
                switch (units.mass()) {
                    case KG, LB -> 0;
                    case TONNE -> 3;
                };
            case CG ->
                units.cg() == CgForm.PERCENT_MAC
                        ? 2
                        : switch (units.length()) {
                            case M, FT -> 3;
                            case CM, IN -> 2;
                            case MM -> 0;
                        };
            case TRIM, TRIM_DEGREES -> 2;
            case RUNNING_LOAD, AREA_LOAD -> 1;
            case COUNT, PERSONS, NONE -> 0;
        };
    }

    /**
     * A trim as pilots say it.
     *
     * @param trimUnits trim in units, nose-up positive
     * @param stepUnits step of the scale, which sets the decimals
     * @param unit what the numbers are
     * @return as {@code 0.2 UP}, {@code 1.1 DN} or {@code 0.0}; on a scale of plain numbers as {@code 6.0}
     */
    public static String trim(double trimUnits, double stepUnits, TrimUnit unit) {
        int decimals = trimDecimals(stepUnits);
        if (unit.numbering().isPlain()) {
            String number = FixedDecimals.of(unit.numbering().turned(trimUnits), decimals);
            return (isZero(number) ? number.replace("-", "") : number) + unit.symbol();
        }
        String digits = FixedDecimals.of(Math.abs(trimUnits), decimals);
        String direction = isZero(digits) ? "" : trimUnits > 0 ? " UP" : " DN";
        return digits + unit.symbol() + direction;
    }

    /**
     * How much one trim differs from another, or two from each other.
     *
     * @param amountUnits the difference in units; its sign is left out
     * @param stepUnits step of the scale, which sets the decimals
     * @param unit what the numbers are
     * @return as {@code 0.4} or {@code 0.4°}
     */
    public static String trimAmount(double amountUnits, double stepUnits, TrimUnit unit) {
        return FixedDecimals.of(Math.abs(amountUnits), trimDecimals(stepUnits)) + unit.symbol();
    }

    private static int trimDecimals(double stepUnits) {
        int decimals = 0;
        for (double step = stepUnits; decimals < 3 && Math.abs(step - Math.rint(step)) > 1e-9; step *= 10) {
            decimals++;
        }
        return decimals;
    }

    private static boolean isZero(String digits) {
        for (int i = 0; i < digits.length(); i++) {
            if (digits.charAt(i) >= '1' && digits.charAt(i) <= '9') {
                return false;
            }
        }
        return true;
    }

    /**
     * A kind of finding in words.
     *
     * @param code kind
     * @param severity how serious
     * @return a few words with a capital letter
     */
    public static String kind(FindingCode code, Severity severity) {
        boolean close = severity == Severity.MARGINAL;
        return switch (code) {
            case MASS_HIGH -> close ? "Mass close to its limit" : "Mass above its limit";
            case MASS_LOW -> close ? "Mass close to the minimum" : "Mass below the minimum";
            case CG_FORWARD -> close ? "CG close to the forward limit" : "CG ahead of the forward limit";
            case CG_AFT -> close ? "CG close to the aft limit" : "CG behind the aft limit";
            case MASS_OFF_ENVELOPE -> "Mass off the envelope";
            case ZONE_SEATS -> "More passengers than seats";
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
            case TRIM_UNKNOWN -> "No trim: setting or scale missing";
            case TRIM_RECORDED -> close ? "Recorded trim some way off" : "Recorded trim far off";
            case TRIM_ESTIMATE -> "Trim is an estimate";
            case LAST_MINUTE_PASSENGERS -> "Too many last-minute passengers";
            case LAST_MINUTE_MASS -> "Too much last-minute load";
            case LAST_MINUTE_FUEL -> "Too much last-minute fuel";
            case LAST_MINUTE_EFFECT -> "Changed at the last minute";
            case LIKELY_OUTSIDE -> "Inside on paper, likely outside";
            case SHARED_LOAD -> "Load shared out from totals";
            case SHARED_FUEL -> "Fuel shared out from a total";
            case BLANK_LOAD -> "Blank load cells counted as none";
            case GIVEN_STATE -> "State taken as given";
        };
    }

    /**
     * The finding in a sentence.
     *
     * @param finding the finding
     * @param type the flight's type
     * @return plain English without a full stop, numbers in the users' units
     */
    public static String sentence(Finding finding, AircraftType type) {
        return new Sentence(finding, type).text();
    }

    private record Sentence(Finding finding, AircraftType type) {

        String text() {
            return switch (finding.code()) {
                case MASS_HIGH -> phase() + " mass " + value() + gap("below", "above") + "the " + ofLimit();
                case MASS_LOW -> phase() + " mass " + value() + gap("above", "below") + "the " + ofLimit();
                case CG_FORWARD -> phase() + " CG " + value() + gap("behind", "ahead of") + "the " + ofLimit();
                case CG_AFT -> phase() + " CG " + value() + gap("ahead of", "behind") + "the " + ofLimit();
                case MASS_OFF_ENVELOPE -> offEnvelope();
                case ZONE_SEATS, CREW_SEATS ->
                    finding.subject() + ": " + Rounded.upTo(finding.value(), 0) + " persons for "
                            + whole(finding.limit()) + " seats";
                case HOLD_MASS, GROUP_MASS, TANK_CAPACITY, FLOOR_RUNNING, FLOOR_AREA ->
                    finding.subject() + " " + value() + gap("below", "above") + "its limit of " + limit();
                case FUEL_IMBALANCE ->
                    "fuel imbalance of " + value() + (finding.phase() == Phase.FLIGHT ? " " : " at ") + phase()
                            + " between " + finding.subject() + gap("below", "above") + "the limit of " + limit();
                case FUEL_SHORT -> "taxi and trip burn " + value() + " but " + limit() + " is aboard";
                case TRIM_OFF_SCALE -> finding.subject();
                case TRIM_BAND, TRIM_RECORDED, TRIM_ESTIMATE -> finding.subject();
                case LAST_MINUTE_PASSENGERS, LAST_MINUTE_MASS, LAST_MINUTE_FUEL -> lastMinute();
                case LAST_MINUTE_EFFECT,
                        TRIM_UNKNOWN,
                        LIKELY_OUTSIDE,
                        SHARED_LOAD,
                        SHARED_FUEL,
                        BLANK_LOAD,
                        GIVEN_STATE -> finding.subject();
            };
        }

        private String phase() {
            return finding.phase().label();
        }

        private String lastMinute() {
            String what = finding.quantity() == Quantity.PERSONS ? "" : " of " + finding.subject();
            return "last-minute change of " + value() + what + " is " + beyond() + " beyond the " + limit()
                    + " that the policy lets without a new load sheet";
        }

        private String offEnvelope() {
            boolean above = finding.value() > finding.limit();
            return phase() + " mass " + value() + " is " + beyond()
                    + (above ? " above" : " below") + " the masses of the " + finding.subject() + ", which "
                    + (above ? "end" : "begin") + " at " + limit() + (above ? atTop() : "");
        }

        private String atTop() {
            return type.envelope(finding.phase())
                    .map(envelope -> "; at its top the forward limit is " + cg(envelope.forward())
                            + " and the aft limit " + cg(envelope.aft()))
                    .orElse("");
        }

        private String cg(LimitLine line) {
            double percentMac = type.geometry().chord().percentAt(line.armAtM(line.maxMassKg()));
            return FixedDecimals.of(absolute(Quantity.CG, percentMac, type), FindingText.decimals(Quantity.CG, type))
                    + " " + FindingText.unit(Quantity.CG, type);
        }

        private String gap(String inside, String outside) {
            boolean breach = finding.severity() == Severity.BREACH;
            String room = breach ? beyond() : Rounded.downTo(Math.max(margin(finding, type), 0), decimals()) + unit();
            return " is " + room + " " + (breach ? outside : inside) + " ";
        }

        /** How far outside, which is what has to be put right. */
        private String beyond() {
            return Rounded.upTo(Math.abs(margin(finding, type)), decimals()) + unit();
        }

        private String ofLimit() {
            return finding.subject() + " of " + limit();
        }

        private String value() {
            return number(FindingText.value(finding, type)) + unit();
        }

        private String limit() {
            return number(FindingText.limit(finding, type)) + unit();
        }

        private String number(double shown) {
            return FixedDecimals.of(shown, decimals());
        }

        /** As many as a figure has, and more where what is outside a limit would look as if it were on it. */
        private int decimals() {
            int decimals = FindingText.decimals(finding.quantity(), type);
            double value = FindingText.value(finding, type);
            double limit = FindingText.limit(finding, type);
            boolean breach = finding.margin() < 0;
            for (int more = 0; breach && more < MORE_DECIMALS && alike(value, limit, decimals); more++) {
                decimals++;
            }
            return decimals;
        }

        private static boolean alike(double value, double limit, int decimals) {
            return Math.abs(value - limit) < 1
                    && FixedDecimals.of(value, decimals).equals(FixedDecimals.of(limit, decimals));
        }

        private String unit() {
            return " " + FindingText.unit(finding.quantity(), type);
        }

        private static String whole(double count) {
            return FixedDecimals.of(count, 0);
        }
    }
}
