package org.steelyard.grade.mark;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.steelyard.grade.working.Answer;
import org.steelyard.grade.working.Exercise;
import org.steelyard.model.input.CgMeasure;
import org.steelyard.model.input.Claim;
import org.steelyard.model.input.SheetItem;

/**
 * Decides between two readings of a figure as a person does who knows what was asked: by its size, then by what the
 * other figures of the sheet show. Where neither decides, none is taken.
 */
final class Readings {

    /** A mass that is so many times too large or too small is no reading: the two are a thousand times apart. */
    private static final double MOST_TIMES = 20;

    /** The load that is allowed or left is at least looked for in this share of the take-off mass. */
    private static final double LEAST_SHARE = 0.01;

    /** A CG farther off than this is no reading; a chord taken from the datum comes to several hundred. */
    private static final double MOST_PERCENT_MAC = 1000;

    /** An index or arm is near zero for some types, and has no thousandths then. */
    private static final double MOST_OTHER_PERCENT_MAC = 200;

    private final Exercise exercise;
    private final Map<SheetItem, Claim> read = new EnumMap<>(SheetItem.class);

    private Readings(Exercise exercise) {
        this.exercise = exercise;
    }

    /** The claims with one reading each; what has two still is unreadable. */
    static Map<SheetItem, Claim> of(Exercise exercise, Map<SheetItem, Claim> claims) {
        Readings readings = new Readings(exercise);
        claims.forEach((item, claim) -> readings.read.put(
                item, claim instanceof Claim.Ambiguous either ? readings.bySize(item, either) : claim));
        claims.forEach((item, claim) -> {
            if (readings.read.get(item) instanceof Claim.Ambiguous either) {
                readings.read.put(item, readings.byOthers(item, either, claims));
            }
        });
        return readings.read;
    }

    private Claim bySize(SheetItem item, Claim.Ambiguous either) {
        boolean grouped = isOfSize(item, either.grouped());
        boolean decimal = isOfSize(item, either.decimal());
        return grouped == decimal ? either : grouped ? either.grouped() : either.decimal();
    }

    private boolean isOfSize(SheetItem item, Claim.Figure figure) {
        Optional<Answer> right = exercise.right(item, figure.measure());
        if (right.isEmpty() || !(right.get() instanceof Answer.Figure number)) {
            return true;
        }
        if (item.kind() == SheetItem.Kind.CG) {
            double most = figure.measure() == CgMeasure.PERCENT_MAC ? MOST_PERCENT_MAC : MOST_OTHER_PERCENT_MAC;
            return Math.abs(figure.value() - number.value()) <= most * exercise.perPercentMac(item, figure.measure());
        }
        double leastKg = LEAST_SHARE * exercise.balance().takeoff().massKg();
        double sizeKg = Math.max(Math.abs(number.value()), leastKg);
        double massKg = Math.abs(figure.value());
        return massKg <= MOST_TIMES * sizeKg && massKg >= Math.abs(number.value()) / MOST_TIMES;
    }

    private Claim byOthers(SheetItem item, Claim.Ambiguous either, Map<SheetItem, Claim> claims) {
        Optional<Boolean> isDecimal = either.isDecimal().or(() -> asOthersWere(item, claims));
        return isDecimal
                .<Claim>map(decimal -> decimal ? either.decimal() : either.grouped())
                .orElse(new Claim.Unreadable(
                        either.shown(), "one reading: the sign may stand for thousands or for decimals"));
    }

    /** What the size decided of other figures of the kind, if it decided the same of all. */
    private Optional<Boolean> asOthersWere(SheetItem item, Map<SheetItem, Claim> claims) {
        boolean decimal = false;
        boolean grouped = false;
        for (Map.Entry<SheetItem, Claim> entry : claims.entrySet()) {
            boolean alike = entry.getKey().kind() == item.kind() && entry.getKey() != item;
            if (alike && entry.getValue() instanceof Claim.Ambiguous other) {
                decimal |= read.get(entry.getKey()).equals(other.decimal());
                grouped |= read.get(entry.getKey()).equals(other.grouped());
            }
        }
        return decimal == grouped ? Optional.empty() : Optional.of(decimal);
    }
}
