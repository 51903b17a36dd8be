package org.steelyard.validation;

import java.util.List;
import org.steelyard.model.trim.FlapEffect;
import org.steelyard.model.trim.LiftSlope;
import org.steelyard.model.trim.TakeoffSpeed;
import org.steelyard.model.trim.TrimUnit;
import org.steelyard.model.type.Airframe;
import org.steelyard.model.type.Airframe.StabilizerIndicator;
import org.steelyard.model.type.Airframe.TailPlane;
import org.steelyard.model.type.Airframe.Thrust;
import org.steelyard.model.type.Airframe.WingBody;
import org.steelyard.model.type.MeanChord;
import org.steelyard.trim.MomentBalance;

/**
 * The longitudinal moment balance of textbooks. Where a case gives lift and moment of the whole aircraft, they are
 * written as wing and tail that add up to them; the answers then are the program's own.
 */
class PitchBalanceTest extends PublishedCases {

    private static final FlapEffect NO_FLAPS = new FlapEffect("0", 0, 0, 0, new TakeoffSpeed.OverStall(1.2, 2));
    private static final MeanChord UNIT_CHORD = new MeanChord(0, 1);
    private static final double PRESSURE_PA = 1000;

    PitchBalanceTest() {
        super("pitch-balance", 9, 2);
    }

    @Override
    void answer(Given given, Answers answers) {
        switch (given.word("do")) {
            case "whole" -> new Whole(given, answers).answer();
            case "parts" -> new Parts(given, answers).answer();
            case "slope" ->
                answers.number(
                        "tailLiftSlope",
                        LiftSlope.perRad(
                                given.number("tailAspectRatio").orElseThrow(),
                                Math.toRadians(given.number("tailSweepDeg").orElseThrow()),
                                given.number("mach").orElseThrow()));
            default -> throw new AssertionError("nothing does " + given.word("do"));
        }
    }

    private static MomentBalance balance(WingBody wing, TailPlane tail, MeanChord chord) {
        StabilizerIndicator indicator = new StabilizerIndicator(TrimUnit.DEGREES, 0, 180 / Math.PI, 0.1, -20, 20);
        Airframe airframe =
                new Airframe("case", "a published case", wing, tail, new Thrust(0, 0), indicator, List.of(NO_FLAPS));
        return new MomentBalance(airframe, NO_FLAPS, chord);
    }

    /** An aircraft given by CL = a α + b t + c and CM about the nose = d α + e t + f. */
    private static final class Whole {

        private final Given given;
        private final Answers answers;
        private final double perRad;
        private final double referenceM;
        private final double areaOfAll;
        private final double wingArea;
        private final MomentBalance balance;
        private final WingBody wing;

        Whole(Given given, Answers answers) {
            this.given = given;
            this.answers = answers;
            perRad = given.number("perDegree").isPresent() ? 180 / Math.PI : 1;
            referenceM = given.number("referenceM").orElse(1);
            double tailArea = given.number("tailAreaM2").orElse(0);
            wingArea = tailArea > 0 ? given.number("wingAreaM2").orElseThrow() : 1;
            areaOfAll = tailArea > 0 ? wingArea + tailArea : 1;
            double liftTail = slope("liftTail");
            double tailSlope =
                    given.number("tailTail").orElse(tailArea > 0 ? liftTail * areaOfAll / tailArea : liftTail * 10);
            double tailShare = liftTail / tailSlope;
            double tailByAngle = tailByAngle(tailSlope, tailShare);
            double tailZero = tailZero(tailShare);
            double tailArm = -slope("momentTail") / liftTail;
            double wingSlope = slope("liftSlope") - tailShare * tailByAngle;
            double wingZero = number("liftZero") - tailShare * tailZero;
            double wingArm = -(slope("momentSlope") + tailShare * tailByAngle * tailArm) / wingSlope;
            double moment = number("momentZero") + wingZero * wingArm + tailShare * tailZero * tailArm;
            double ratio = areaOfAll / wingArea;
            double zeroLift = -wingZero / wingSlope;
            double downwashSlope = 1 - tailByAngle / tailSlope;
            double downwash = -tailZero / tailSlope + downwashSlope * zeroLift;
            wing = new WingBody(wingArea, wingArm, wingSlope * ratio, zeroLift, moment * ratio);
            balance = balance(
                    wing,
                    new TailPlane(tailShare * areaOfAll, tailArm, tailSlope, 1, downwashSlope, downwash),
                    UNIT_CHORD);
        }

        private double number(String name) {
            return given.number(name).orElseThrow();
        }

        private double slope(String name) {
            return perRad * number(name);
        }

        /** The tail's slope with angle of attack: given, or what the wing leaves, or any that downwash could make. */
        private double tailByAngle(double tailSlope, double tailShare) {
            if (given.number("tailSlope").isPresent()) {
                return number("tailSlope");
            }
            // rounding in print can leave the tail more than its own slope
            return given.number("wingSlope").isPresent()
                    ? Math.min(
                            tailSlope, (number("liftSlope") - number("wingSlope") * wingArea / areaOfAll) / tailShare)
                    : 0.7 * tailSlope;
        }

        private double tailZero(double tailShare) {
            if (given.number("tailZero").isPresent()) {
                return number("tailZero");
            }
            return given.number("wingZero").isPresent()
                    ? (number("liftZero") - number("wingZero") * wingArea / areaOfAll) / tailShare
                    : 0;
        }

        void answer() {
            double neutral = balance.neutralPointArmM();
            double cg = given.number("cg").orElseGet(() -> neutral - number("staticMargin"));
            answers.number("neutralPoint", neutral);
            answers.number("neutralPointM", neutral * referenceM);
            answers.number("cg", cg);
            answers.number("staticMargin", neutral - cg);
            moments(cg, "");
            moments(neutral, "AtNeutralPoint");
            double alpha = cm(1, 0, cg) - cm(0, 0, cg);
            double tail = cm(0, 1, cg) - cm(0, 0, cg);
            answers.number("incidencePerTail", -tail / alpha);
            answers.number("incidenceZeroDeg", Math.toDegrees(-cm(0, 0, cg) / alpha));
            if (given.number("takeoffLift").isPresent()) {
                set(number("takeoffLift"), cg);
            } else if (given.number("takeoffWingLift").isPresent()) {
                set(totalFor(number("takeoffWingLift"), cg), cg);
            }
        }

        private double cm(double alphaRad, double stabilizerRad, double cg) {
            return balance.momentCoefficient(alphaRad, stabilizerRad, cg) * wingArea / areaOfAll;
        }

        private void moments(double at, String suffix) {
            answers.number("cmAlpha" + suffix, (cm(1, 0, at) - cm(0, 0, at)) / perRad);
            answers.number("cmTail" + suffix, (cm(0, 1, at) - cm(0, 0, at)) / perRad);
            answers.number("cmZero" + suffix, cm(0, 0, at));
        }

        private void set(double lift, double cg) {
            MomentBalance.Balanced at = balance.balance(lift * areaOfAll * PRESSURE_PA, cg, PRESSURE_PA);
            answers.number("tailSettingRad", at.stabilizerRad());
            answers.number("tailSettingDeg", Math.toDegrees(at.stabilizerRad()));
            answers.number("incidenceRad", at.angleOfAttackRad());
            answers.number("incidenceDeg", Math.toDegrees(at.angleOfAttackRad()));
            answers.number("tailLift", at.tailLiftCoefficient());
            answers.number("totalLift", lift);
        }

        /** The lift of the whole that goes with a lift of the wing: the balance is linear in it. */
        private double totalFor(double wingLift, double cg) {
            double one = wingLiftAt(1, cg);
            return 1 + (wingLift - one) / (wingLiftAt(2, cg) - one);
        }

        private double wingLiftAt(double lift, double cg) {
            return balance.balance(lift * areaOfAll * PRESSURE_PA, cg, PRESSURE_PA)
                            .wingLiftN()
                    / (PRESSURE_PA * wing.areaM2());
        }
    }

    /** An aircraft given by its wing and its tail. */
    private static final class Parts {

        private final Given given;
        private final Answers answers;
        private final MeanChord chord;
        private final MomentBalance balance;

        Parts(Given given, Answers answers) {
            this.given = given;
            this.answers = answers;
            chord = new MeanChord(0, given.number("chordM").orElse(1));
            double areaM2 = given.number("wingAreaM2").orElse(20);
            double wingM = given.number("wingCentreM").orElseGet(() -> chord.armAt(100 * number("wingCentre")));
            double tailM = given.number("tailBehindWingM").isPresent()
                    ? wingM + number("tailBehindWingM")
                    : chord.armAt(100 * number("cg"))
                            + given.number("tailArmFromCgM").orElse(5);
            double tailAreaM2 =
                    given.number("tailAreaM2").orElseGet(() -> number("tailVolume") * areaM2 * chord.lengthM() / 5);
            balance = balance(
                    new WingBody(areaM2, wingM, slope("wingSlope"), 0, number("momentCoefficient")),
                    new TailPlane(
                            tailAreaM2,
                            tailM,
                            slope("tailSlope"),
                            1,
                            number("downwashSlope"),
                            Math.toRadians(number("downwashDeg"))),
                    chord);
        }

        private double number(String name) {
            return given.number(name).orElseThrow();
        }

        private double slope(String stem) {
            return given.number(stem + "PerRad").orElseGet(() -> Math.toDegrees(number(stem + "PerDeg")));
        }

        void answer() {
            double neutralM = balance.neutralPointArmM();
            double cgM = given.number("cg").isPresent()
                    ? chord.armAt(100 * number("cg"))
                    : neutralM - number("staticMargin") * chord.lengthM();
            double stabilizerRad =
                    -Math.toRadians(given.number("stabilizerNoseUpDeg").orElse(0));
            double incidenceRad = Math.toRadians(given.number("incidenceDeg").orElse(0));
            answers.number("neutralPointM", neutralM);
            answers.number("cm", balance.momentCoefficient(incidenceRad, stabilizerRad, cgM));
            double zero = balance.momentCoefficient(0, stabilizerRad, cgM);
            double perRad = balance.momentCoefficient(1, stabilizerRad, cgM) - zero;
            answers.number("cmZero", zero);
            answers.number("cmAlphaPerDeg", Math.toRadians(perRad));
            answers.number("incidenceDegForBalance", Math.toDegrees(-zero / perRad));
            double level = balance.momentCoefficient(incidenceRad, 0, cgM);
            double byStabilizer = balance.momentCoefficient(incidenceRad, 1, cgM) - level;
            answers.number("stabilizerNoseUpDegForBalance", Math.toDegrees(level / byStabilizer));
        }
    }
}
