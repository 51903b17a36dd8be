package org.steelyard.remedy;

import java.util.Optional;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.limit.CgRange;
import org.steelyard.model.trim.TrimScale;
import org.steelyard.model.type.MeanChord;
import org.steelyard.model.unit.MassMoment;
import org.steelyard.model.unit.Tolerance;

/**
 * How far the moment of a state may change before its trim leaves the permitted band of a scale, or at take-off the
 * scale itself. That a landing scale ends is no limit.
 *
 * @param scale the scale
 * @param chord the type's chord
 * @param state mass and moment
 */
record TrimGuard(TrimScale scale, MeanChord chord, MassMoment state) {

    /** Greatest change of moment aft; without a limit where the scale does not reach that mass anyway. */
    double aftBoundKgM(double deltaKg) {
        return permitted(deltaKg)
                .filter(range -> endIsLimit()
                        || Tolerance.isAhead(
                                range.toPercentMac(), scale.law().cgRange().toPercentMac()))
                .map(range -> boundKgM(range.toPercentMac(), deltaKg))
                .orElse(Double.POSITIVE_INFINITY);
    }

    /** Greatest change of moment forward, as a rule negative. */
    double forwardBoundKgM(double deltaKg) {
        return permitted(deltaKg)
                .filter(range -> endIsLimit()
                        || Tolerance.isAft(
                                range.fromPercentMac(), scale.law().cgRange().fromPercentMac()))
                .map(range -> boundKgM(range.fromPercentMac(), deltaKg))
                .orElse(Double.NEGATIVE_INFINITY);
    }

    private Optional<CgRange> permitted(double deltaKg) {
        return scale.law().cgFor(scale.bandLowUnits(), scale.bandHighUnits(), massKg(deltaKg));
    }

    /** Whether a CG or mass for which there is no setting is not allowed. */
    boolean endIsLimit() {
        return scale.phase() == Phase.TAKEOFF;
    }

    /** Whether the mass after a change is allowed. */
    boolean reaches(double deltaKg) {
        return !endIsLimit() || !scale.law().pointsAt(massKg(deltaKg)).isEmpty();
    }

    private double massKg(double deltaKg) {
        return state.massKg() + deltaKg;
    }

    private double boundKgM(double cgPercentMac, double deltaKg) {
        return massKg(deltaKg) * chord.armAt(cgPercentMac) - state.momentKgM();
    }
}
