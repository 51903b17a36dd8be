package org.steelyard.model.unit;

import java.util.Arrays;

/**
 * A fixed row of finite numbers, one for each place of a type in the type's own order: the fuel in each tank in kg, for
 * example. The unit is that of the component that holds it. Immutable.
 */
public final class Amounts {

    private final double[] values;

    private Amounts(double[] values) {
        this.values = values;
    }

    /**
     * Copies the values.
     *
     * @param values finite numbers, in the order of the places
     * @return the row of them
     * @throws IllegalArgumentException if one is not finite
     */
    public static Amounts of(double... values) {
        double[] copy = values.clone();
        for (double value : copy) {
            Require.finite("amount", value);
        }
        return new Amounts(copy);
    }

    /**
     * A row of zeros.
     *
     * @param size how many
     * @return as many zeros
     */
    public static Amounts zeros(int size) {
        return new Amounts(new double[size]);
    }

    /**
     * One value.
     *
     * @param index from 0
     * @return the value there
     * @throws IndexOutOfBoundsException if there is no such place
     */
    public double at(int index) {
        return values[index];
    }

    /**
     * How many places there are.
     *
     * @return the number of values
     */
    public int size() {
        return values.length;
    }

    /**
     * The sum, taken in the order of the places.
     *
     * @return the sum of all values
     */
    public double sum() {
        double sum = 0;
        for (double value : values) {
            sum += value;
        }
        return sum;
    }

    /**
     * A copy for work on.
     *
     * @return a new array of the values
     */
    public double[] toArray() {
        return values.clone();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Amounts that && Arrays.equals(values, that.values);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(values);
    }

    @Override
    public String toString() {
        return Arrays.toString(values);
    }
}
