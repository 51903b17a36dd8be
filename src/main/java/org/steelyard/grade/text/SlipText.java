package org.steelyard.grade.text;

import java.util.Optional;
import org.steelyard.balance.FuelBalance;
import org.steelyard.grade.working.Candidates;
import org.steelyard.grade.working.Exercise;
import org.steelyard.grade.working.Limits;
import org.steelyard.grade.working.Line;
import org.steelyard.grade.working.Slip;
import org.steelyard.grade.working.Slip.Target;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.input.CgMeasure;
import org.steelyard.model.input.SheetItem;
import org.steelyard.model.loading.Fuel;
import org.steelyard.model.type.MeanChord;
import org.steelyard.model.unit.MassMoment;

/** What was likely done and what the right step is, in a sentence or two to the student. */
public final class SlipText {

    private final Exercise exercise;
    private final FigureText text;

    public SlipText(Exercise exercise) {
        this.exercise = exercise;
        text = new FigureText(exercise.type());
    }

    public String sentence(Slip slip) {
        return switch (slip.kind()) {
            case POUNDS ->
                figure(slip) + " seems to have been turned into pounds, or written in them, where "
                        + "kilograms belong: divide pounds by 2.2046, once, and write the unit beside each figure.";
            case KILOGRAMS ->
                figure(slip) + " was in kilograms already, but seems to have been taken for pounds and "
                        + "multiplied by 0.4536: look at the unit before converting.";
            case VOLUME -> volume(slip);
            case NEIGHBOURS_ARM -> neighbour(slip);
            case CREW_LEFT_OUT -> leftOut(slip) + " The dry operating mass holds the crew.";
            case PANTRY_LEFT_OUT -> leftOut(slip) + " The dry operating mass holds the pantry.";
            case PLACE_LEFT_OUT -> leftOut(slip) + " Tick off each zone and hold as you add it.";
            case PLACE_TWICE -> twice(slip);
            case CHILD_AS_ADULT -> children();
            case DIGITS_SWAPPED -> digits(slip);
            case ARITHMETIC -> arithmetic(slip);
            case ROUNDED_EARLY -> rounded(slip);
            case TAXI_NOT_OFF ->
                "The taxi fuel of " + text.mass(fuel().taxiKg()) + " seems not to have been taken off: "
                        + states(Phase.RAMP, fuel().taxiKg(), Phase.TAKEOFF);
            case TAXI_TWICE ->
                "The taxi fuel of " + text.mass(fuel().taxiKg()) + " seems to have been taken off twice; "
                        + "once is right: " + states(Phase.RAMP, fuel().taxiKg(), Phase.TAKEOFF);
            case TRIP_OFF_RAMP ->
                "The trip fuel seems to have been taken off the ramp mass; the taxi fuel is gone by "
                        + "then, so it comes off the take-off mass: "
                        + states(Phase.TAKEOFF, fuel().tripKg(), Phase.LANDING);
            case RAMP_FOR_TAKEOFF ->
                "The ramp state seems to stand in the place of the take-off state: "
                        + states(Phase.RAMP, fuel().taxiKg(), Phase.TAKEOFF);
            case ZERO_FUEL_CG_FOR_TRIM ->
                "The trim seems to have been read at the zero-fuel CG of " + cg(Phase.ZERO_FUEL)
                        + "; the stabilizer is set for the take-off CG of " + cg(Phase.TAKEOFF) + ", which gives "
                        + rightTrim() + ".";
            case WRONG_FLAP ->
                "The trim seems to have been read on the scale for flaps " + slip.what()
                        + "; this take-off is with flaps "
                        + exercise.loading().setting().flaps() + ", whose scale gives "
                        + rightTrim() + ".";
            case SCALE_WRONG_WAY ->
                "The trim scale seems to have been read in the wrong direction between two marks: the "
                        + "farther aft the CG, the less nose-up the trim. At " + cg(Phase.TAKEOFF) + " it gives "
                        + rightTrim() + ".";
            case TRIM_SIGN ->
                "The amount of trim is right, but nose up and nose down are exchanged: a forward CG needs "
                        + "nose-up trim, an aft CG less of it. At " + cg(Phase.TAKEOFF) + " the scale gives "
                        + rightTrim()
                        + ".";
            case LEMAC_OR_MAC -> chord(slip);
            case DATUM_FOR_LEMAC ->
                "The % MAC seems to have been counted from the datum: take the arm of LEMAC, "
                        + text.arm(given().leadingEdgeM()) + ", off the arm of the CG before dividing by the MAC. "
                        + percentWorking();
            case INDEX_CONSTANT ->
                "The constant of "
                        + FigureText.points(exercise.type().geometry().index().constant())
                        + " seems to be missing from the index: index = mass × (arm − reference arm) / divisor + constant.";
            case WRONG_PHASE -> wrongPhase(slip);
            case LIMIT_LEFT_OUT ->
                "The " + slip.what() + " seems not to have been looked at: each limit gives a take-off "
                        + "mass, and the least of them counts, here " + right(SheetItem.LIMITING_MASS) + ", set by the "
                        + right(SheetItem.LIMITED_BY) + ".";
            case ENVELOPE_MISREAD ->
                "The verdict does not follow from the figures: rightly worked, this loading is "
                        + right(SheetItem.VERDICT)
                        + ". Enter each mass with its CG in the envelope of its own phase, and "
                        + "look at every limit of mass.";
        };
    }

    private Fuel fuel() {
        return exercise.loading().fuel();
    }

    private MassMoment state(Phase phase) {
        return exercise.right().state(phase).orElse(MassMoment.ZERO);
    }

    private String cg(Phase phase) {
        CgMeasure measure = text.usualMeasure();
        double armM = state(phase).armM();
        return text.cg(measure == CgMeasure.ARM ? armM : given().percentAt(armM), measure);
    }

    private MeanChord given() {
        return exercise.type().geometry().chord();
    }

    private String right(SheetItem item) {
        CgMeasure measure = text.usualMeasure();
        return exercise.right(item, measure)
                .map(answer -> AnswerText.of(text, item, answer, measure))
                .orElse("not given");
    }

    private String rightTrim() {
        return right(SheetItem.TRIM);
    }

    private Line line(Slip slip) {
        return exercise.lines().get(slip.index());
    }

    private String states(Phase from, double lessKg, Phase to) {
        return text.massNumber(state(from).massKg()) + " − " + text.massNumber(lessKg) + " = "
                + text.mass(state(to).massKg()) + ".";
    }

    private static String capital(String words) {
        return words.isEmpty() ? words : Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }

    /** The figure that a slip befell, with its amount. */
    private String figure(Slip slip) {
        return switch (slip.target()) {
            case LINE ->
                "The mass of " + line(slip).name() + ", " + text.mass(line(slip).massKg()) + ",";
            case ZONES -> "The mass of the passengers, " + text.mass(sum(Line.Kind.ZONE)) + " in all,";
            case HOLDS -> "The load of the holds, " + text.mass(sum(Line.Kind.HOLD)) + " in all,";
            case FUEL -> "The ramp fuel of " + text.mass(rampKg());
            case TAXI -> "The taxi fuel of " + text.mass(fuel().taxiKg());
            case TRIP -> "The trip fuel of " + text.mass(fuel().tripKg());
            case ITEM ->
                slip.index() < 0
                        ? "Every mass that was handed in"
                        : "The " + item(slip).label() + ", rightly " + right(item(slip)) + ",";
            case METHOD -> capital(slip.what());
        };
    }

    private static SheetItem item(Slip slip) {
        return SheetItem.ALL.get(slip.index());
    }

    private double sum(Line.Kind kind) {
        return exercise.lines().stream()
                .filter(line -> line.kind() == kind)
                .mapToDouble(Line::massKg)
                .sum();
    }

    private double rampKg() {
        return exercise.balance()
                .fuel()
                .map(FuelBalance::rampKg)
                .map(tanks -> tanks.sum())
                .orElse(0.0);
    }

    private String volume(Slip slip) {
        double densityKgPerL = exercise.loading().tanks().densityKgPerL();
        return capital(slip.what()) + ", it seems: volume times density is mass. At "
                + FigureText.points(densityKgPerL) + " kg/L "
                + (slip.target() == Target.FUEL
                        ? text.mass(rampKg()) + " is the ramp fuel"
                        : text.mass(fuel().tripKg()) + " is the trip fuel")
                + ", and masses alone are added up.";
    }

    private String neighbour(Slip slip) {
        Line line = line(slip);
        return capital(slip.what()) + ", it seems: " + text.mass(line.massKg()) + " × " + text.arm(line.armM())
                + " is the moment, not × " + text.arm(slip.amount()) + ". Put a finger on the line of the table.";
    }

    private String leftOut(Slip slip) {
        Line line = line(slip);
        return capital(line.name()) + " seems to have been left out: " + text.mass(line.massKg()) + " at "
                + text.arm(line.armM()) + " belong in the sum. With them the zero-fuel mass is "
                + text.mass(state(Phase.ZERO_FUEL).massKg()) + ".";
    }

    private String twice(Slip slip) {
        Line line = line(slip);
        return capital(line.name()) + " seems to have been counted twice: its " + text.mass(line.massKg()) + " at "
                + text.arm(line.armM()) + " belong in the sum once. The zero-fuel mass is "
                + text.mass(state(Phase.ZERO_FUEL).massKg()) + ".";
    }

    private String children() {
        var scheme = exercise.loading().scheme();
        double moreKg = exercise.lines().stream().mapToDouble(Line::childrenKg).sum();
        return "The children seem to have been taken at the standard mass of adults, " + text.mass(scheme.adultKg())
                + " in place of " + text.mass(scheme.childKg()) + " each: that is " + text.mass(moreKg)
                + " too much in all.";
    }

    private String digits(Slip slip) {
        if (slip.target() == Target.ITEM) {
            return "Two digits of the " + item(slip).label() + " seem to be swapped; it is " + right(item(slip))
                    + ". Read each figure back after writing it.";
        }
        return figure(slip) + " seems to have been copied with two digits swapped, as "
                + text.mass(given(slip) + slip.amount()) + ". Read each figure back after copying it.";
    }

    private double given(Slip slip) {
        double stepKg = Candidates.massStepKg(exercise.type().geometry().units());
        double massKg = switch (slip.target()) {
            case LINE -> line(slip).massKg();
            case FUEL -> rampKg();
            case TAXI -> fuel().taxiKg();
            default -> fuel().tripKg();
        };
        return Math.rint(massKg / stepKg) * stepKg;
    }

    private String arithmetic(Slip slip) {
        SheetItem item = item(slip);
        if (item.kind() == SheetItem.Kind.CG) {
            return "The sum of the moments at " + item.phase().map(Phase::label).orElse("") + " seems to be off by "
                    + text.momentNumber(Math.abs(slip.amount())) + " " + text.momentUnitName()
                    + ", one in one decimal place: add the column once more, from below.";
        }
        return "The " + item.label() + " is off by exactly " + text.mass(Math.abs(slip.amount())) + ", one in one "
                + "decimal place, as a carry forgotten or made twice gives. Add the column once more, from below; on a "
                + "sheet without a slip it is " + right(item) + ".";
    }

    private String rounded(Slip slip) {
        return switch (slip.index()) {
            case Candidates.ROUND_MASS ->
                "The zero-fuel mass seems to have been rounded to "
                        + text.mass(slip.amount())
                        + " before going on: keep every digit to the end, and round the result "
                        + "alone.";
            case Candidates.ROUND_ARM ->
                "The zero-fuel CG seems to have been rounded to " + text.arm(slip.amount())
                        + " before going on: add up moments and divide once, at the end.";
            default ->
                "The take-off CG seems to have been rounded to a whole % MAC before reading the scale: read it at "
                        + cg(Phase.TAKEOFF) + ", which gives " + rightTrim() + ".";
        };
    }

    private String chord(Slip slip) {
        String what = slip.what().startsWith("LEMAC")
                ? "LEMAC seems to have been taken as " + text.arm(slip.amount()) + ", with two digits swapped"
                : slip.what().startsWith("MAC")
                        ? "The MAC seems to have been taken as " + text.arm(slip.amount()) + ", with two digits swapped"
                        : slip.what().startsWith("divided")
                                ? "The distance behind LEMAC seems to have been divided by LEMAC in place of the MAC"
                                : "The reference arm of the index seems to have been taken for LEMAC";
        return what + ". " + percentWorking();
    }

    private String percentWorking() {
        Phase phase = Phase.TAKEOFF;
        double armM = state(phase).armM();
        return "(" + text.armNumber(armM) + " − " + text.armNumber(given().leadingEdgeM()) + ") / "
                + text.armNumber(given().lengthM()) + " × 100 = "
                + text.cg(given().percentAt(armM), CgMeasure.PERCENT_MAC)
                + " at " + phase.label() + ".";
    }

    private String wrongPhase(Slip slip) {
        Optional<String> rule = switch (slip.index()) {
            case Limits.LANDING_WITHOUT_TRIP ->
                Optional.of("the trip fuel is burnt before landing, so it is added to the maximum landing mass");
            case Limits.ZERO_FUEL_WITHOUT_FUEL ->
                Optional.of("the fuel at take-off is added to the maximum zero-fuel mass");
            case Limits.RAMP_FOR_TAKEOFF ->
                Optional.of("the maximum ramp mass holds before taxi; at take-off the maximum take-off mass does");
            case Limits.LANDING_FOR_TAKEOFF ->
                Optional.of("the maximum landing mass holds at landing, with the trip fuel burnt");
            default -> Optional.empty();
        };
        if (rule.isEmpty()) {
            return capital(slip.what()) + ", it seems: each state has limits of its own. This loading is "
                    + right(SheetItem.VERDICT) + ".";
        }
        return capital(slip.what()) + ", it seems: " + rule.get() + ". The least take-off mass of all is "
                + right(SheetItem.LIMITING_MASS) + ", set by the " + right(SheetItem.LIMITED_BY) + ".";
    }
}
