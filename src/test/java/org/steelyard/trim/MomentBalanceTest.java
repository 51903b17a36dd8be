package org.steelyard.trim;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
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

/** The balance of moments against textbook examples, and its signs. */
class MomentBalanceTest {

    private static final TakeoffSpeed SPEED = new TakeoffSpeed.OverStall(1.25, 2.0);
    private static final FlapEffect NO_FLAPS = new FlapEffect("0", 0, 0, 0, SPEED);
    private static final Thrust NO_THRUST = new Thrust(0, 0);
    private static final MeanChord UNIT_CHORD = new MeanChord(0, 1);

    private static MomentBalance balance(WingBody wing, TailPlane tail, MeanChord chord) {
        return balance(wing, tail, NO_THRUST, NO_FLAPS, chord);
    }

    private static MomentBalance balance(
            WingBody wing, TailPlane tail, Thrust thrust, FlapEffect flap, MeanChord chord) {
        StabilizerIndicator indicator = new StabilizerIndicator(TrimUnit.DEGREES, 0, 180 / Math.PI, 0.1, -15, 15);
        return new MomentBalance(
                new Airframe("test", "a test", wing, tail, thrust, indicator, java.util.List.of(flap)), flap, chord);
    }

    /** Slopes in textbooks are often for degrees. */
    private static double perDegree(double slope) {
        return Math.toDegrees(slope);
    }

    /**
     * NASA Glenn, Beginner's Guide to Aeronautics, Trimmed Aircraft, answers: wing lift and its arm behind the CG, tail
     * arm behind the CG, so the load of the tail. Our unknown is the tail's load for the weight that both carry.
     */
    @ParameterizedTest
    @Tag("validation")
    @CsvSource({"24000, 2, 10, -6000", "32000, 3, 15, -8000", "32000, 2, 10, -8000", "120000, 5, 25, -30000"})
    void theTailCarriesWhatTheLeversSay(double weightN, double wingArmM, double tailArmM, double tailLoadN) {
        MomentBalance.Balanced balanced = balance(
                        new WingBody(30, wingArmM, 5, 0, 0), new TailPlane(6, tailArmM, 4, 1, 0.3, 0), UNIT_CHORD)
                .balance(weightN, 0, 2000);
        assertThat(balanced.tailLoadN()).isCloseTo(tailLoadN, within(1e-6));
        assertThat(balanced.wingLiftN()).isCloseTo(weightN - tailLoadN, within(1e-6));
    }

    /** The same source: the CG moves 2 m aft, and a wing lift of 150,000 N then needs 19,565 N down at the tail. */
    @Test
    @Tag("validation")
    void aFartherAftCgNeedsLessTailLoad() {
        double tailLoadN = balance(new WingBody(30, 5, 5, 0, 0), new TailPlane(6, 25, 4, 1, 0.3, 0), UNIT_CHORD)
                .balance(150_000 - 19_565.217391, 2, 2000)
                .tailLoadN();
        assertThat(tailLoadN).isCloseTo(-19_565.2, within(0.1));
    }

    /**
     * Question 29641 with its answer on an aviation question-and-answer site: at 3° with the stabilizer 1.5° nose-up,
     * the moment coefficient about the CG is -0.022. Nose-up trim is leading edge down: with the other sign it would be
     * -0.277.
     */
    @ParameterizedTest
    @Tag("validation")
    @CsvSource({"-1.5, -0.022", "1.5, -0.277"})
    void theSignOfTheStabilizerIsLeadingEdgeUp(double stabilizerDeg, double momentCoefficient) {
        MeanChord chord = new MeanChord(0, 6.608);
        double cgM = chord.armAt(31);
        MomentBalance balance = balance(
                new WingBody(260, chord.armAt(26), perDegree(0.12), 0, -0.04),
                new TailPlane(69.5, cgM + 30, perDegree(0.07), 1, 0.5, 0),
                chord);
        assertThat(balance.momentCoefficient(Math.toRadians(3), Math.toRadians(stabilizerDeg), cgM))
                .isCloseTo(momentCoefficient, within(0.0005));
    }

    /** Anderson, Introduction to Flight, examples 7.3 to 7.5 (figures from memory): balance at 4.5°. */
    @Test
    void theWindTunnelModelOfAndersonIsInBalanceAtFourAndAHalfDegrees() {
        double tailArmM = 1.7;
        MomentBalance balance = balance(
                new WingBody(1, 0.24, perDegree(0.08), 0, -0.032),
                new TailPlane(0.34 / tailArmM, 0.35 + tailArmM, perDegree(0.1), 1, 0.35, 0),
                UNIT_CHORD);
        assertThat(balance.momentCoefficient(Math.toRadians(4.5), Math.toRadians(-2.7), 0.35))
                .isCloseTo(0, within(0.0005));
    }

    /** Two limits that theory prescribes: 2π for a wing without ends, π A / 2 for one without span. */
    @Test
    void theLiftSlopeHasTheLimitsOfTheory() {
        assertThat(LiftSlope.perRad(1e9, 0, 0)).isCloseTo(2 * Math.PI, within(1e-6));
        assertThat(LiftSlope.perRad(1e-6, 0, 0) / 1e-6).isCloseTo(Math.PI / 2, within(1e-6));
        assertThat(LiftSlope.downwashSlope(2 * Math.PI * 8 / 10, 8)).isCloseTo(0.4, within(1e-12));
    }

    private static final MeanChord CHORD = new MeanChord(17.6, 4);
    private static final WingBody WING = new WingBody(120, 18.6, 5.2, Math.toRadians(-2), -0.05);
    private static final TailPlane TAIL = new TailPlane(32, 34, 4.2, 0.95, 0.35, 0);

    private static double nose(Thrust thrust, FlapEffect flap, double cgPercent) {
        return -balance(WING, TAIL, thrust, flap, CHORD)
                .balance(60_000 * 9.80665, CHORD.armAt(cgPercent), 3000)
                .stabilizerRad();
    }

    @Test
    void aFartherForwardCgAsksForMoreNoseUpInAStraightLine() {
        double forward = nose(NO_THRUST, NO_FLAPS, 12);
        double middle = nose(NO_THRUST, NO_FLAPS, 24);
        double aft = nose(NO_THRUST, NO_FLAPS, 36);
        assertThat(forward).isGreaterThan(middle);
        assertThat(middle).isGreaterThan(aft).isCloseTo((forward + aft) / 2, within(1e-12));
        double weightN = 60_000 * 9.80665;
        double slope = weightN / (34 - 18.6) * (1 / (0.95 * 3000 * 32 * 4.2) + (1 - 0.35) / (3000 * 120 * 5.2));
        assertThat((forward - aft) / (0.24 * 4)).isCloseTo(slope, within(1e-9));
    }

    @Test
    void theBalancedAnglesLeaveNoMomentAndCarryTheWeight() {
        for (double cg = 10; cg <= 36; cg += 2) {
            FlapEffect flap = new FlapEffect("15", 0.6, -0.12, Math.toRadians(1.2), SPEED);
            MomentBalance balance = balance(WING, TAIL, NO_THRUST, flap, CHORD);
            MomentBalance.Balanced at = balance.balance(588_000, CHORD.armAt(cg), 3000);
            assertThat(balance.momentCoefficient(at.angleOfAttackRad(), at.stabilizerRad(), CHORD.armAt(cg)))
                    .isCloseTo(0, within(1e-12));
            assertThat(at.wingLiftN() + at.tailLoadN()).isCloseTo(588_000, within(1e-6));
        }
    }

    @Test
    void whereMomentsBalanceWithoutTheTailItsLoadIsZero() {
        double armM = WING.centreArmM() + 0.05 * 3000 * 120 * 4 / 588_000;
        assertThat(balance(WING, TAIL, CHORD).balance(588_000, armM, 3000).tailLoadN())
                .isCloseTo(0, within(1e-6));
    }

    /** Each part of what flaps do has a direction of its own. */
    @Test
    void flapsChangeTheTrimInTheStatedDirections() {
        double up = nose(NO_THRUST, NO_FLAPS, 24);
        assertThat(nose(NO_THRUST, new FlapEffect("m", 0, -0.1, 0, SPEED), 24))
                .as("a nose-down moment asks for nose-up trim")
                .isGreaterThan(up);
        assertThat(nose(NO_THRUST, new FlapEffect("d", 0, 0, 0.02, SPEED), 24))
                .as("downwash on the tail already pushes it down")
                .isLessThan(up);
        assertThat(nose(NO_THRUST, new FlapEffect("l", 0.5, 0, 0, SPEED), 24))
                .as("lift lets the body fly at a smaller angle, and the tail with it: its leading edge must come up")
                .isLessThan(up);
    }

    @Test
    void thrustThatPassesBelowTheCgAsksForLessNoseUp() {
        assertThat(nose(new Thrust(200_000, 1.5), NO_FLAPS, 24)).isLessThan(nose(NO_THRUST, NO_FLAPS, 24));
        assertThat(nose(new Thrust(200_000, -1.5), NO_FLAPS, 24)).isGreaterThan(nose(NO_THRUST, NO_FLAPS, 24));
    }
}
