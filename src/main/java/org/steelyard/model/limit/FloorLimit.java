package org.steelyard.model.limit;

import java.util.OptionalDouble;
import org.steelyard.model.unit.Require;

/**
 * What a hold's floor carries. The running load is mass over length, the area load mass over length times width; the
 * contents are taken as spread over the whole floor. The same holds for the footprint of a single package on a floor;
 * one that stands on bearers rests on their length and their widths together.
 *
 * @param lengthM length of the floor along the aircraft in m, more than zero
 * @param widthM width of the floor in m, more than zero
 * @param maxRunningKgPerM largest running load in kg/m, where there is one
 * @param maxAreaKgPerM2 largest area load in kg/m², where there is one
 */
public record FloorLimit(
        double lengthM, double widthM, OptionalDouble maxRunningKgPerM, OptionalDouble maxAreaKgPerM2) {

    /**
     * Checks the numbers.
     *
     * @throws IllegalArgumentException if a number is not more than zero or no limit is given
     */
    public FloorLimit {
        Require.positive("floor lengthM", lengthM);
        Require.positive("floor widthM", widthM);
        maxRunningKgPerM.ifPresent(value -> Require.positive("maxRunningKgPerM", value));
        maxAreaKgPerM2.ifPresent(value -> Require.positive("maxAreaKgPerM2", value));
        Require.that(
                maxRunningKgPerM.isPresent() || maxAreaKgPerM2.isPresent(), "a floor needs a running or an area limit");
    }

    /**
     * The running load of a mass spread over the floor.
     *
     * @param massKg mass in kg
     * @return kg for each m of length
     */
    public double runningKgPerM(double massKg) {
        return massKg / lengthM;
    }

    /**
     * The area load of a mass spread over the floor.
     *
     * @param massKg mass in kg
     * @return kg for each m² of floor
     */
    public double areaKgPerM2(double massKg) {
        return massKg / (lengthM * widthM);
    }

    /**
     * The most that the floor carries, spread over all of it.
     *
     * @return the lesser of what the running and the area limit allow, in kg
     */
    public double maxKg() {
        double byRunningKg = maxRunningKgPerM.orElse(Double.POSITIVE_INFINITY) * lengthM;
        double byAreaKg = maxAreaKgPerM2.orElse(Double.POSITIVE_INFINITY) * lengthM * widthM;
        return Math.min(byRunningKg, byAreaKg);
    }
}
