package org.steelyard.demo;

import java.util.List;
import java.util.Optional;
import org.steelyard.model.type.Hold;
import org.steelyard.model.unit.MassMoment;

/** Shares baggage and cargo out among the holds as a loader does: so that the CG comes out near where it is wanted. */
final class HoldSplit {

    private static final int STEPS = 40;

    /** No hold is filled beyond this part of what it takes. */
    private static final double MOST = 0.9;

    private final List<Hold> holds;
    private final MassMoment before;
    private final double[] uneven;

    /** Uneven weights make holds fill as differently as they do in life. */
    HoldSplit(List<Hold> holds, MassMoment before, Draws draws) {
        this.holds = holds;
        this.before = before;
        this.uneven = holds.stream().mapToDouble(hold -> draws.bell(0.6, 1.4)).toArray();
    }

    /** The masses by hold that bring the CG nearest to an arm; empty if the holds cannot take the total. */
    Optional<double[]> towards(double armM, double totalKg) {
        Optional<double[]> best = Optional.empty();
        double leastM = Double.MAX_VALUE;
        for (int step = 0; step <= STEPS; step++) {
            double[] partsKg = parts(armM, totalKg, (double) step / STEPS);
            double missM = Math.abs(loaded(partsKg).armM() - armM);
            if (fits(partsKg) && missM < leastM) {
                leastM = missM;
                best = Optional.of(partsKg);
            }
        }
        return best;
    }

    private double[] parts(double armM, double totalKg, double forwardShare) {
        double[] partsKg = new double[holds.size()];
        double forward = weight(armM, true);
        double aft = weight(armM, false);
        for (int i = 0; i < partsKg.length; i++) {
            boolean isForward = holds.get(i).armM() < armM;
            double share = isForward ? forwardShare / forward : (1 - forwardShare) / aft;
            partsKg[i] = Math.rint(totalKg * share * uneven[i] * holds.get(i).maxKg());
        }
        return partsKg;
    }

    private double weight(double armM, boolean forward) {
        double weight = 0;
        for (int i = 0; i < uneven.length; i++) {
            weight += holds.get(i).armM() < armM == forward
                    ? uneven[i] * holds.get(i).maxKg()
                    : 0;
        }
        return weight;
    }

    private boolean fits(double[] partsKg) {
        for (int i = 0; i < partsKg.length; i++) {
            if (partsKg[i] > MOST * holds.get(i).maxKg()) {
                return false;
            }
        }
        return true;
    }

    private MassMoment loaded(double[] partsKg) {
        MassMoment sum = before;
        for (int i = 0; i < partsKg.length; i++) {
            sum = sum.plus(MassMoment.at(partsKg[i], holds.get(i).armM()));
        }
        return sum;
    }
}
