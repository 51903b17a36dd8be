package org.steelyard.grade.mark;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.steelyard.grade.working.Answer;
import org.steelyard.grade.working.Exercise;
import org.steelyard.grade.working.Working;
import org.steelyard.model.input.Claim;
import org.steelyard.model.input.SheetItem;

/**
 * Says cheaply which pairs of slips cannot explain a sheet: each wrong figure must be touched by one of the two, and a
 * right figure by none, or by both so that they cancel; and what both do to the zero-fuel mass adds up.
 */
final class PairFilter {

    /** A figure that is off by so much of the allowance is touched, perhaps. */
    private static final double PERHAPS = 0.2;

    /** Off by more than this it cannot pass for right. */
    private static final double SURELY = 3;

    private final Agreement agreement;
    private final long[] perhaps;
    private final long[] surely;
    private final double[] zeroFuelKg;
    private long wrong;
    private long right;
    private double wantedKg = Double.NaN;
    private double roomKg;

    PairFilter(Exercise exercise, Agreement agreement, List<Working> workings) {
        this.agreement = agreement;
        perhaps = new long[workings.size()];
        surely = new long[workings.size()];
        zeroFuelKg = new double[workings.size()];
        for (SheetItem item : SheetItem.ALL) {
            Optional<Answer> answer = exercise.right(item, agreement.measure(item));
            if (answer.isPresent() && answer.get() instanceof Answer.Figure number && agreement.isReadable(item)) {
                for (int i = 0; i < workings.size(); i++) {
                    touch(i, item, number, workings.get(i));
                }
                aim(item, number);
            }
        }
    }

    private void touch(int index, SheetItem item, Answer.Figure right, Working working) {
        double off = working.answer(item, agreement.measure(item))
                .map(answer -> ((Answer.Figure) answer).value() - right.value())
                .orElse(Double.POSITIVE_INFINITY);
        double half = agreement.figure(item).map(Claim.Figure::halfStep).orElse(0.0);
        double allowance = agreement.allowance(item, right.step());
        perhaps[index] |= Math.abs(off) > PERHAPS * allowance ? bit(item) : 0;
        surely[index] |= Math.abs(off) > SURELY * (allowance + Math.max(half, right.step())) ? bit(item) : 0;
        if (item == SheetItem.ZERO_FUEL_MASS) {
            zeroFuelKg[index] = off;
        }
    }

    private void aim(SheetItem item, Answer.Figure right) {
        if (item == SheetItem.ZERO_FUEL_MASS) {
            Claim.Figure figure = agreement.figure(item).orElseThrow();
            wantedKg = figure.value() - right.value();
            roomKg = agreement.allowance(item, 0) + figure.halfStep();
        }
    }

    private static long bit(SheetItem item) {
        return 1L << SheetItem.ALL.indexOf(item);
    }

    /** What was found wrong and right on the sheet; figures that follow may be either. */
    void expect(Collection<SheetItem> wrongItems, Collection<SheetItem> rightItems) {
        wrongItems.stream().filter(PairFilter::isNumber).forEach(item -> wrong |= bit(item));
        rightItems.stream().filter(PairFilter::isNumber).forEach(item -> right |= bit(item));
    }

    private static boolean isNumber(SheetItem item) {
        return item.kind() != SheetItem.Kind.LIMIT && item.kind() != SheetItem.Kind.VERDICT;
    }

    boolean mayExplain(int one, int other) {
        boolean touched = (wrong & ~(perhaps[one] | perhaps[other])) == 0;
        long alone = (surely[one] & ~perhaps[other]) | (surely[other] & ~perhaps[one]);
        boolean adds = Double.isNaN(wantedKg) || Math.abs(zeroFuelKg[one] + zeroFuelKg[other] - wantedKg) <= roomKg;
        return touched && (right & alone) == 0 && adds;
    }
}
