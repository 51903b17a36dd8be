package org.steelyard.model.trim;

import java.util.List;
import java.util.OptionalDouble;
import org.steelyard.model.limit.CgRange;
import org.steelyard.model.unit.Require;

/**
 * A trim law by a slope through an anchor point: {@code trim = anchor trim + slope (cg - anchor cg)}, the same at every
 * mass.
 *
 * @param anchor a point of the line
 * @param unitsPerPercentMac change of trim for each % MAC aft, nose-up positive; never more than zero
 * @param cgRange the CGs for which the law holds
 */
public record TrimSlope(TrimPoint anchor, double unitsPerPercentMac, CgRange cgRange) implements TrimLaw {

    /**
     * Checks the numbers.
     *
     * @throws IllegalArgumentException if the slope is positive or not finite, or the range is of one CG
     */
    public TrimSlope {
        Require.finite("unitsPerPercentMac", unitsPerPercentMac);
        Require.that(
                unitsPerPercentMac <= 0,
                "trim must not turn nose-up as the CG moves aft, as a slope of " + unitsPerPercentMac
                        + " says; is the sign of the scale right");
        Require.that(cgRange.fromPercentMac() < cgRange.toPercentMac(), "a slope must span some CG");
    }

    @Override
    public OptionalDouble trimUnitsAt(double cgPercentMac, double massKg) {
        return cgRange.contains(cgPercentMac)
                ? OptionalDouble.of(line(cgRange.nearestPercentMac(cgPercentMac)))
                : OptionalDouble.empty();
    }

    @Override
    public List<TrimPoint> pointsAt(double massKg) {
        double from = cgRange.fromPercentMac();
        double to = cgRange.toPercentMac();
        return List.of(new TrimPoint(from, line(from)), new TrimPoint(to, line(to)));
    }

    private double line(double cgPercentMac) {
        return anchor.trimUnits() + unitsPerPercentMac * (cgPercentMac - anchor.cgPercentMac());
    }

    @Override
    public <T> T match(Cases<T> cases) {
        return cases.slope(this);
    }
}
