package org.steelyard.trim;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;
import org.steelyard.model.limit.CgRange;
import org.steelyard.model.trim.TrimLaw;
import org.steelyard.model.trim.TrimPoint;
import org.steelyard.model.trim.TrimPoints;
import org.steelyard.model.trim.TrimTable;
import org.steelyard.model.unit.Amounts;

/**
 * A scale fitted to recorded pairs of CG and setting, by {@link ScaleFitter}.
 *
 * @param points the fitted scale at the reference mass, CG rising, trim never rising
 * @param unitsPerKg change of trim for each kg of take-off mass; empty where the pairs show none
 * @param massesKg least and greatest mass of the pairs used, where trim changes with mass; empty else
 * @param referenceMassKg the mass for which the points hold; zero where trim does not change with mass
 * @param pairs how many pairs there were
 * @param residualSdUnits robust standard deviation of what the fit leaves
 * @param outliers pairs that have no weight in the fit, farthest off first
 * @param line the straight line by medians of slopes
 * @param leastSquares the straight line by least squares, which wrong pairs bend
 * @param resamples how many resamples gave the intervals
 */
public record ScaleFit(
        List<FittedPoint> points,
        OptionalDouble unitsPerKg,
        List<Double> massesKg,
        double referenceMassKg,
        int pairs,
        double residualSdUnits,
        List<Outlier> outliers,
        TheilSenLine line,
        LeastSquaresLine leastSquares,
        int resamples) {

    /**
     * A point of the fitted scale.
     *
     * @param cgPercentMac CG in % MAC
     * @param trimUnits trim in units, nose-up positive
     * @param lowUnits lower end of its 95 % interval
     * @param highUnits upper end of its 95 % interval
     */
    public record FittedPoint(double cgPercentMac, double trimUnits, double lowUnits, double highUnits) {}

    /**
     * A pair that the fit did not believe.
     *
     * @param pair the pair
     * @param residualUnits recorded less fitted setting, nose-up positive
     */
    public record Outlier(TrimEvidence pair, double residualUnits) {

        public Outlier {
            Objects.requireNonNull(pair);
        }
    }

    public ScaleFit {
        points = List.copyOf(points);
        Objects.requireNonNull(unitsPerKg);
        massesKg = List.copyOf(massesKg);
        outliers = List.copyOf(outliers);
        Objects.requireNonNull(line);
        Objects.requireNonNull(leastSquares);
    }

    /**
     * The CGs that the believed pairs cover; the scale is not to be extended beyond them.
     *
     * @return range in % MAC
     */
    public CgRange cgRange() {
        return new CgRange(
                points.get(0).cgPercentMac(), points.get(points.size() - 1).cgPercentMac());
    }

    /**
     * The widest half interval of the points: how far off the scale may be, by chance alone.
     *
     * @return units
     */
    public double uncertaintyUnits() {
        double widest = 0;
        for (FittedPoint point : points) {
            widest = Math.max(
                    widest, Math.max(point.highUnits() - point.trimUnits(), point.trimUnits() - point.lowUnits()));
        }
        return widest;
    }

    /**
     * The fit as a law that a type can have.
     *
     * @return points, or a table of two masses where trim changes with mass
     */
    public TrimLaw law() {
        if (unitsPerKg.isEmpty()) {
            return new TrimPoints(points.stream()
                    .map(point -> new TrimPoint(point.cgPercentMac(), point.trimUnits()))
                    .toList());
        }
        List<Amounts> rows = new ArrayList<>();
        for (double massKg : massesKg) {
            double shift = unitsPerKg.getAsDouble() * (massKg - referenceMassKg);
            rows.add(Amounts.of(points.stream()
                    .mapToDouble(point -> point.trimUnits() + shift)
                    .toArray()));
        }
        return new TrimTable(
                Amounts.of(massesKg.stream().mapToDouble(Double::doubleValue).toArray()),
                Amounts.of(
                        points.stream().mapToDouble(FittedPoint::cgPercentMac).toArray()),
                rows);
    }
}
