package org.steelyard.analyse.part;

import java.io.Serializable;
import java.util.Arrays;
import java.util.OptionalDouble;
import org.steelyard.analyse.figure.CoMoments;

/** Sums over the parts of flights with full detail: of one type, one setting or one group. */
public final class PartTally implements Serializable {

    private static final long serialVersionUID = 1;

    private final CoMoments withCg;
    private final CoMoments withTrim;
    private final double[] massSumsKg;
    private final int parts;

    public PartTally(int parts) {
        this.parts = parts;
        withCg = new CoMoments(2 * parts);
        withTrim = new CoMoments(2 * parts + 1);
        massSumsKg = new double[parts];
    }

    /** Takes a flight with {@link PartFigures#all all its figures}. */
    public void add(PartFigures flight, double[] figures, OptionalDouble trimUnits) {
        double cg = flight.aboutReference();
        withCg.add(figures, cg);
        for (int j = 0; j < parts; j++) {
            massSumsKg[j] += flight.massKg(j);
        }
        if (trimUnits.isPresent()) {
            double[] withCgItself = Arrays.copyOf(figures, 2 * parts + 1);
            withCgItself[2 * parts] = cg;
            withTrim.add(withCgItself, trimUnits.getAsDouble());
        }
    }

    /** Adds the sums of other flights. */
    public void merge(PartTally other) {
        withCg.merge(other.withCg);
        withTrim.merge(other.withTrim);
        for (int j = 0; j < parts; j++) {
            massSumsKg[j] += other.massSumsKg[j];
        }
    }

    public int parts() {
        return parts;
    }

    long n() {
        return withCg.n();
    }

    long nTrim() {
        return withTrim.n();
    }

    public double meanAboutReference() {
        return withCg.meanY();
    }

    public double meanMassKg(int part) {
        return massSumsKg[part] / withCg.n();
    }

    double sdCg() {
        return Math.sqrt(withCg.varianceY());
    }

    double sdTrim() {
        return Math.sqrt(withTrim.varianceY());
    }

    /** Mean pull of a part about a CG, in % MAC. */
    public double meanPull(int part, double aboutReference) {
        return withCg.mean(part) - aboutReference * withCg.mean(parts + part);
    }

    /** The part's share of the variance of CG: its covariance with CG over the variance; all shares add up to 1. */
    double shareOfCg(int part) {
        double about = withCg.meanY();
        return (withCg.covariance(part) - about * withCg.covariance(parts + part)) / withCg.varianceY();
    }

    /**
     * The part's share of the variance of trim, by way of CG: slope of trim on CG times its covariance with trim over
     * the variance of trim. All shares add up to what the straight line explains.
     */
    double shareOfTrim(int part) {
        double about = withTrim.mean(2 * parts);
        double slope = withTrim.covariance(2 * parts) / withTrim.variance(2 * parts);
        return slope * (withTrim.covariance(part) - about * withTrim.covariance(parts + part)) / withTrim.varianceY();
    }
}
