package org.steelyard.trim;

import java.util.Objects;
import org.steelyard.model.trim.FlapEffect;
import org.steelyard.model.type.Airframe;
import org.steelyard.model.type.MeanChord;
import org.steelyard.model.unit.MassMoment;

/**
 * The balance of longitudinal moments of an airframe in steady flight at take-off speed, just after it has left the
 * ground, with the elevator neutral. Which stabilizer angle makes the moments about the CG add up to nothing?
 *
 * <p>Signs: lift up, moments nose-up, arms aft, stabilizer angle leading edge up (so nose-up trim is a negative angle).
 * With mass m, gravity g, dynamic pressure q, wing area S, chord c, arms x of CG, of the aerodynamic centre of wing and
 * body (w) and of the tail (t), tail area St, efficiency η, lift-curve slopes a and at:
 *
 * <pre>
 * lift:           m g = Lw + Lt
 * moment:         0 = M0 + Lw (x - xw) - Lt (xt - x) + T z,   M0 = q S c (Cm0 + ΔCm)
 * from both:      Lt = (M0 + m g (x - xw) + T z) / (xt - xw)
 * wing and body:  Lw = q S (a (α - α0) + ΔCL)
 * tail:           Lt = η q St at (α + i - ε),   ε = ε0 + ε' (α - α0) + Δε
 * so:             i = Lt / (η q St at) - α + ε
 * </pre>
 *
 * The stabilizer angle is linear in the arm of the CG: {@code di/dx = m g / (xt - xw) × (1 / (η q St at) + (1 - ε') /
 * (q S a))}, which is positive, so that a CG farther forward asks for more nose-up trim. Δ marks what the flaps add:
 * their nose-down moment asks for nose-up trim, their downwash on the tail and their lift, which lets the body fly at a
 * smaller angle of attack, change it too; the sum decides.
 *
 * <p>Sources: the balance of wing, body and tail as in J. D. Anderson, Introduction to Flight, chapter 7; B. Etkin and
 * L. D. Reid, Dynamics of Flight, chapter 2; R. C. Nelson, Flight Stability and Automatic Control, chapter 2 (all from
 * memory). The forms here keep the tail's lift in the sum of lifts, which elementary texts leave out.
 *
 * <p>Validity: small angles, lift linear in angle of attack (no stall of wing or tail), low Mach number, no ground
 * effect, no effect of propeller or jet but the moment of the thrust line, drag and vertical arms left out, rigid
 * airframe. An estimate: within a degree or so if the data are good.
 */
public final class MomentBalance {

    /** Standard acceleration of free fall, m/s² (ISO 80000-3). */
    private static final double GRAVITY_M_PER_S2 = 9.80665;

    private final Airframe airframe;
    private final FlapEffect flap;
    private final MeanChord chord;

    /**
     * The balance of an airframe with a flap setting.
     *
     * @param airframe data of the airframe
     * @param flap what the flaps add
     * @param chord the chord that moment coefficients are referred to
     */
    public MomentBalance(Airframe airframe, FlapEffect flap, MeanChord chord) {
        this.airframe = Objects.requireNonNull(airframe);
        this.flap = Objects.requireNonNull(flap);
        this.chord = Objects.requireNonNull(chord);
    }

    /**
     * The state of balance.
     *
     * @param wingLiftN lift of wing and body in N
     * @param tailLoadN lift of the tail in N, down negative
     * @param angleOfAttackRad angle of attack of the body's reference line in rad
     * @param tailLiftCoefficient lift coefficient of the tail, referred to its area and the pressure there
     * @param stabilizerRad angle of the stabilizer against the body's reference line in rad, leading edge up positive
     */
    public record Balanced(
            double wingLiftN,
            double tailLoadN,
            double angleOfAttackRad,
            double tailLiftCoefficient,
            double stabilizerRad) {}

    /**
     * Balances the aircraft at the take-off speed of its flap setting.
     *
     * @param takeoff mass, more than zero, and its moment
     * @return loads and angles
     */
    public Balanced balance(MassMoment takeoff) {
        double weightN = takeoff.massKg() * GRAVITY_M_PER_S2;
        return balance(
                weightN,
                takeoff.armM(),
                flap.speed().dynamicPressurePa(weightN, airframe.wing().areaM2()));
    }

    /**
     * Balances the aircraft.
     *
     * @param weightN weight in N, more than zero
     * @param cgArmM arm of the CG in m
     * @param pressurePa dynamic pressure in Pa, more than zero
     * @return loads and angles
     */
    public Balanced balance(double weightN, double cgArmM, double pressurePa) {
        Airframe.WingBody wing = airframe.wing();
        Airframe.TailPlane tail = airframe.tail();
        double freeNm =
                pressurePa * wing.areaM2() * chord.lengthM() * (wing.momentCoefficient() + flap.momentCoefficient())
                        + airframe.thrust().momentNm();
        double tailLoadN = (freeNm + weightN * (cgArmM - wing.centreArmM())) / (tail.centreArmM() - wing.centreArmM());
        double wingLiftN = weightN - tailLoadN;
        double liftCoefficient = wingLiftN / (pressurePa * wing.areaM2());
        double angle = wing.zeroLiftRad() + (liftCoefficient - flap.liftCoefficient()) / wing.liftSlopePerRad();
        double tailCoefficient = tailLoadN / (tail.efficiency() * pressurePa * tail.areaM2());
        double stabilizer = tailCoefficient / tail.liftSlopePerRad() - angle + downwashRad(angle);
        return new Balanced(wingLiftN, tailLoadN, angle, tailCoefficient, stabilizer);
    }

    /**
     * The moment about the CG at any angles, balanced or not, without thrust.
     *
     * @param angleOfAttackRad angle of attack in rad
     * @param stabilizerRad angle of the stabilizer in rad, leading edge up positive
     * @param cgArmM arm of the CG in m
     * @return pitching moment coefficient, nose-up positive, referred to wing area and chord
     */
    public double momentCoefficient(double angleOfAttackRad, double stabilizerRad, double cgArmM) {
        Airframe.WingBody wing = airframe.wing();
        Airframe.TailPlane tail = airframe.tail();
        double wingCoefficient =
                wing.liftSlopePerRad() * (angleOfAttackRad - wing.zeroLiftRad()) + flap.liftCoefficient();
        double tailCoefficient =
                tail.liftSlopePerRad() * (angleOfAttackRad + stabilizerRad - downwashRad(angleOfAttackRad));
        double tailVolume = tail.areaM2() * (tail.centreArmM() - cgArmM) / (wing.areaM2() * chord.lengthM());
        return wing.momentCoefficient()
                + flap.momentCoefficient()
                + wingCoefficient * (cgArmM - wing.centreArmM()) / chord.lengthM()
                - tail.efficiency() * tailVolume * tailCoefficient;
    }

    private double downwashRad(double angleOfAttackRad) {
        Airframe.TailPlane tail = airframe.tail();
        return tail.downwashRad()
                + tail.downwashSlope() * (angleOfAttackRad - airframe.wing().zeroLiftRad())
                + flap.downwashRad();
    }

    /**
     * The neutral point with the stabilizer fixed: the arm at which the lift added by a change of angle of attack acts,
     * {@code (a xw + η (St / S) at (1 - ε') xt) / (a + η (St / S) at (1 - ε'))}. A CG behind it has no stable trim.
     *
     * @return arm in m
     */
    public double neutralPointArmM() {
        Airframe.WingBody wing = airframe.wing();
        Airframe.TailPlane tail = airframe.tail();
        double tailSlope =
                tail.efficiency() * tail.areaM2() / wing.areaM2() * tail.liftSlopePerRad() * (1 - tail.downwashSlope());
        return (wing.liftSlopePerRad() * wing.centreArmM() + tailSlope * tail.centreArmM())
                / (wing.liftSlopePerRad() + tailSlope);
    }
}
