package org.steelyard.trim;

import java.util.ArrayList;
import java.util.List;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.limit.CgRange;
import org.steelyard.model.limit.Envelope;
import org.steelyard.model.limit.LimitPoint;
import org.steelyard.model.trim.FlapEffect;
import org.steelyard.model.trim.SettingRounding;
import org.steelyard.model.trim.TakeoffSpeed;
import org.steelyard.model.trim.TrimBasis;
import org.steelyard.model.trim.TrimLaw;
import org.steelyard.model.trim.TrimPoint;
import org.steelyard.model.trim.TrimPoints;
import org.steelyard.model.trim.TrimScale;
import org.steelyard.model.trim.TrimTable;
import org.steelyard.model.type.AircraftType;
import org.steelyard.model.type.Airframe;
import org.steelyard.model.type.Airframe.StabilizerIndicator;
import org.steelyard.model.type.MeanChord;
import org.steelyard.model.unit.Amounts;
import org.steelyard.model.unit.MassMoment;

/**
 * A trim scale estimated by {@link MomentBalance} over the CGs and masses of a type's take-off envelope. Trim is a
 * straight line in CG at each mass; where the speed is a factor on the stall and thrust makes no moment it is the same
 * line at every mass, else the scale is a table of masses.
 *
 * @param scale the scale, marked as an estimate
 * @param staticMarginPercentMac distance from the rearmost CG of the scale to the neutral point in % MAC; negative
 *     where the airframe, as described, is not stable
 * @param mostTailLift the greatest size of the tail's lift coefficient at the corners of the scale
 * @param mostAngleRad the greatest angle of attack there, in rad
 */
public record EstimatedScale(TrimScale scale, double staticMarginPercentMac, double mostTailLift, double mostAngleRad) {

    private static final int MASSES = 5;

    /** Beyond this lift coefficient of the tail its lift is hardly linear any more (common practice). */
    public static final double LINEAR_TAIL_LIFT = 0.9;

    /**
     * Estimates the scale of a flap setting.
     *
     * @param type the type, whose take-off envelope says for which CGs and masses
     * @param airframe its airframe
     * @param flap the flap setting
     * @return the scale with what is to be said of it
     */
    public static EstimatedScale of(AircraftType type, Airframe airframe, FlapEffect flap) {
        MeanChord chord = type.geometry().chord();
        MomentBalance balance = new MomentBalance(airframe, flap, chord);
        Envelope envelope = type.envelope(Phase.TAKEOFF).orElseThrow();
        CgRange cgs = cgs(envelope, chord);
        List<MomentBalance.Balanced> corners = new ArrayList<>();
        for (double massKg : new double[] {envelope.minMassKg(), envelope.maxMassKg()}) {
            for (double cg : new double[] {cgs.fromPercentMac(), cgs.toPercentMac()}) {
                corners.add(balance.balance(MassMoment.at(massKg, chord.armAt(cg))));
            }
        }
        StabilizerIndicator indicator = airframe.indicator();
        TrimScale scale = new TrimScale(
                Phase.TAKEOFF,
                flap.flaps(),
                "",
                indicator.unit(),
                law(balance, airframe, flap, envelope, cgs, chord),
                indicator.stepUnits(),
                indicator.bandLowUnits(),
                indicator.bandHighUnits(),
                SettingRounding.NEAREST_HALFWAY_UP,
                TrimBasis.ESTIMATE);
        return new EstimatedScale(
                scale,
                chord.percentAt(balance.neutralPointArmM()) - cgs.toPercentMac(),
                corners.stream()
                        .mapToDouble(at -> Math.abs(at.tailLiftCoefficient()))
                        .max()
                        .orElseThrow(),
                corners.stream()
                        .mapToDouble(MomentBalance.Balanced::angleOfAttackRad)
                        .max()
                        .orElseThrow());
    }

    private static CgRange cgs(Envelope envelope, MeanChord chord) {
        return new CgRange(
                chord.percentAt(envelope.forward().points().stream()
                        .mapToDouble(LimitPoint::armM)
                        .min()
                        .orElseThrow()),
                chord.percentAt(envelope.aft().points().stream()
                        .mapToDouble(LimitPoint::armM)
                        .max()
                        .orElseThrow()));
    }

    private static TrimLaw law(
            MomentBalance balance,
            Airframe airframe,
            FlapEffect flap,
            Envelope envelope,
            CgRange cgs,
            MeanChord chord) {
        boolean sameAtEveryMass = flap.speed() instanceof TakeoffSpeed.OverStall
                && airframe.thrust().momentNm() == 0;
        if (sameAtEveryMass) {
            double[] trims = trims(balance, airframe, envelope.maxMassKg(), cgs, chord);
            return new TrimPoints(List.of(
                    new TrimPoint(cgs.fromPercentMac(), trims[0]), new TrimPoint(cgs.toPercentMac(), trims[1])));
        }
        double[] masses = new double[MASSES];
        List<Amounts> rows = new ArrayList<>();
        for (int i = 0; i < MASSES; i++) {
            double t = i / (MASSES - 1.0);
            masses[i] = envelope.minMassKg() + t * (envelope.maxMassKg() - envelope.minMassKg());
            rows.add(Amounts.of(trims(balance, airframe, masses[i], cgs, chord)));
        }
        return new TrimTable(Amounts.of(masses), Amounts.of(cgs.fromPercentMac(), cgs.toPercentMac()), rows);
    }

    private static double[] trims(
            MomentBalance balance, Airframe airframe, double massKg, CgRange cgs, MeanChord chord) {
        return new double[] {
            trim(balance, airframe, massKg, chord.armAt(cgs.fromPercentMac())),
            trim(balance, airframe, massKg, chord.armAt(cgs.toPercentMac()))
        };
    }

    private static double trim(MomentBalance balance, Airframe airframe, double massKg, double armM) {
        return airframe.indicator()
                .trimUnits(balance.balance(MassMoment.at(massKg, armM)).stabilizerRad());
    }
}
