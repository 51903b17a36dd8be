package org.steelyard.model.trim;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.steelyard.model.limit.CgRange;
import org.steelyard.model.unit.Quantity;
import org.steelyard.model.unit.Require;
import org.steelyard.model.unit.Tolerance;

/**
 * A trim law by points, linear between two neighbours and the same at every mass.
 *
 * @param points at least two, CG rising, trim never rising
 */
public record TrimPoints(List<TrimPoint> points) implements TrimLaw {

    /**
     * Checks the order.
     *
     * @throws IllegalArgumentException if there are fewer than two points, CG does not rise, or trim rises
     */
    public TrimPoints {
        points = List.copyOf(points);
        requireOrder(points);
    }

    static void requireOrder(List<TrimPoint> points) {
        Require.that(points.size() >= 2, "a trim scale needs at least two points");
        for (int i = 1; i < points.size(); i++) {
            TrimPoint before = points.get(i - 1);
            TrimPoint here = points.get(i);
            Require.that(
                    here.cgPercentMac() > before.cgPercentMac(),
                    "CG of a trim scale must rise: " + here.cgPercentMac() + " after " + before.cgPercentMac());
            Require.that(
                    here.trimUnits() <= before.trimUnits(),
                    "trim must not turn nose-up as the CG moves aft, as it does at " + here.cgPercentMac()
                            + " % MAC; is the sign of the scale right");
        }
    }

    @Override
    public OptionalDouble trimUnitsAt(double cgPercentMac, double massKg) {
        if (!cgRange().contains(cgPercentMac)) {
            return OptionalDouble.empty();
        }
        double onPercentMac = cgRange().nearestPercentMac(cgPercentMac);
        int i = 1;
        while (points.get(i).cgPercentMac() < onPercentMac) {
            i++;
        }
        TrimPoint low = points.get(i - 1);
        TrimPoint high = points.get(i);
        if (onPercentMac == high.cgPercentMac()) {
            return OptionalDouble.of(high.trimUnits());
        }
        double t = (onPercentMac - low.cgPercentMac()) / (high.cgPercentMac() - low.cgPercentMac());
        return OptionalDouble.of(low.trimUnits() + t * (high.trimUnits() - low.trimUnits()));
    }

    @Override
    public CgRange cgRange() {
        return new CgRange(
                points.get(0).cgPercentMac(), points.get(points.size() - 1).cgPercentMac());
    }

    @Override
    public List<TrimPoint> pointsAt(double massKg) {
        return points;
    }

    static Optional<CgRange> inverse(List<TrimPoint> points, double lowUnits, double highUnits) {
        if (points.isEmpty()) {
            return Optional.empty();
        }
        double mostUnits = points.get(0).trimUnits();
        double leastUnits = points.get(points.size() - 1).trimUnits();
        if (Tolerance.isOutside(mostUnits - lowUnits, Quantity.TRIM)
                || Tolerance.isOutside(highUnits - leastUnits, Quantity.TRIM)) {
            return Optional.empty();
        }
        return Optional.of(new CgRange(
                firstCgAtOrBelow(points, Math.max(highUnits, leastUnits)),
                lastCgAtOrAbove(points, Math.min(lowUnits, mostUnits))));
    }

    private static double firstCgAtOrBelow(List<TrimPoint> points, double units) {
        int i = 0;
        while (points.get(i).trimUnits() > units) {
            i++;
        }
        return i == 0 ? points.get(0).cgPercentMac() : crossing(points.get(i - 1), points.get(i), units);
    }

    private static double lastCgAtOrAbove(List<TrimPoint> points, double units) {
        int i = points.size() - 1;
        while (points.get(i).trimUnits() < units) {
            i--;
        }
        return i == points.size() - 1
                ? points.get(i).cgPercentMac()
                : crossing(points.get(i), points.get(i + 1), units);
    }

    private static double crossing(TrimPoint low, TrimPoint high, double units) {
        double t = (units - low.trimUnits()) / (high.trimUnits() - low.trimUnits());
        return low.cgPercentMac() + t * (high.cgPercentMac() - low.cgPercentMac());
    }

    @Override
    public <T> T match(Cases<T> cases) {
        return cases.points(this);
    }
}
