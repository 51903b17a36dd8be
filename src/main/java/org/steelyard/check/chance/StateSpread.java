package org.steelyard.check.chance;

import java.util.Objects;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.type.MeanChord;
import org.steelyard.model.unit.MassMoment;

/**
 * How mass and moment of one state vary about what was computed, as two numbers that are jointly normal.
 *
 * @param phase which state; in flight the point nearest to a limit
 * @param expected mass and moment that are expected; the moment differs from the computed one where a seating rule
 *     takes the seats of a zone from one end
 * @param massVarianceKg2 variance of mass in kg²
 * @param momentVarianceKg2M2 variance of moment about the datum in kg²·m²
 * @param covarianceKg2M covariance of mass and moment in kg²·m
 */
public record StateSpread(
        Phase phase, MassMoment expected, double massVarianceKg2, double momentVarianceKg2M2, double covarianceKg2M) {

    public StateSpread {
        Objects.requireNonNull(phase);
        Objects.requireNonNull(expected);
    }

    /**
     * The standard deviation of mass.
     *
     * @return in kg
     */
    public double massSdKg() {
        return Math.sqrt(massVarianceKg2);
    }

    /**
     * The standard deviation of CG, by the first order of its change with mass and moment.
     *
     * @param chord the type's chord
     * @return in % MAC
     */
    public double cgSdPercentMac(MeanChord chord) {
        return 100 * distanceSdKgM(expected.armM()) / expected.massKg() / chord.lengthM();
    }

    /**
     * The standard deviation of the distance, in moment, to a line of the plane of mass and moment.
     *
     * @param slopeM slope of the line in kg·m of moment for each kg
     * @return in kg·m: the root of {@code Var M - 2 slope Cov + slope² Var m}
     */
    double distanceSdKgM(double slopeM) {
        return Math.sqrt(
                Math.max(0, momentVarianceKg2M2 - 2 * slopeM * covarianceKg2M + slopeM * slopeM * massVarianceKg2));
    }
}
