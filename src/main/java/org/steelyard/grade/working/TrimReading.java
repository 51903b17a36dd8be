package org.steelyard.grade.working;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.steelyard.model.limit.CgRange;
import org.steelyard.model.trim.TrimPoint;
import org.steelyard.model.trim.TrimScale;

/** Reading a trim off a scale, also in the wrong direction. */
public final class TrimReading {

    /** Marks of a scale that is one straight line, in % MAC. */
    private static final double MARKS_PERCENT_MAC = 5;

    private static final double ROUNDING_PERCENT_MAC = 1e-7;

    private TrimReading() {}

    /** The trim in units, not yet in whole steps; empty off the scale. */
    public static Optional<Double> read(TrimScale scale, double cgPercentMac, double massKg, boolean wrongWay) {
        double cg = onto(scale.law().cgRange(), cgPercentMac);
        double at = wrongWay ? mirrored(scale, cg, massKg) : cg;
        OptionalDouble units = scale.law().trimUnitsAt(at, massKg);
        return units.isPresent() ? Optional.of(units.getAsDouble()) : Optional.empty();
    }

    private static double onto(CgRange range, double cgPercentMac) {
        double nearest = Math.min(Math.max(cgPercentMac, range.fromPercentMac()), range.toPercentMac());
        return Math.abs(nearest - cgPercentMac) <= ROUNDING_PERCENT_MAC ? nearest : cgPercentMac;
    }

    /** The CG that lies as far from the one mark as it should from the other. */
    private static double mirrored(TrimScale scale, double cgPercentMac, double massKg) {
        List<TrimPoint> points = scale.law().pointsAt(massKg);
        if (points.size() <= 2) {
            double low = Math.floor(cgPercentMac / MARKS_PERCENT_MAC) * MARKS_PERCENT_MAC;
            return low + MARKS_PERCENT_MAC - (cgPercentMac - low);
        }
        for (int i = 1; i < points.size(); i++) {
            double low = points.get(i - 1).cgPercentMac();
            double high = points.get(i).cgPercentMac();
            if (cgPercentMac >= low && cgPercentMac <= high) {
                return high - (cgPercentMac - low);
            }
        }
        return cgPercentMac;
    }
}
