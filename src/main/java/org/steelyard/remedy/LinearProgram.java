package org.steelyard.remedy;

import java.util.ArrayList;
import java.util.List;
import org.steelyard.model.unit.Amounts;

/**
 * A small linear program with whole numbers: least {@code c·x} with {@code a·x ≤ b} for each row, {@code 0 ≤ x ≤ u},
 * some of x whole. All costs are not negative. Rows are scaled to a greatest coefficient of one.
 */
final class LinearProgram {

    /** One unknown. */
    private record Unknown(double cost, double upper, boolean whole) {}

    private record Row(Amounts coefficients, double bound, boolean equality) {}

    private final List<Unknown> unknowns = new ArrayList<>();
    private final List<Row> rows = new ArrayList<>();

    /**
     * Adds an unknown.
     *
     * @return its number, from 0
     */
    int unknown(double cost, double upper, boolean whole) {
        if (!(cost >= 0 && upper >= 0)) {
            throw new IllegalArgumentException("an unknown needs a cost and an upper bound that are not negative");
        }
        unknowns.add(new Unknown(cost, whole ? Math.floor(upper + 1e-9) : upper, whole));
        return unknowns.size() - 1;
    }

    int size() {
        return unknowns.size();
    }

    int rows() {
        return rows.size();
    }

    double cost(int unknown) {
        return unknowns.get(unknown).cost();
    }

    double upper(int unknown) {
        return unknowns.get(unknown).upper();
    }

    boolean whole(int unknown) {
        return unknowns.get(unknown).whole();
    }

    double coefficient(int row, int unknown) {
        return rows.get(row).coefficients().at(unknown);
    }

    double bound(int row) {
        return rows.get(row).bound();
    }

    boolean equality(int row) {
        return rows.get(row).equality();
    }

    /** Adds a row once all unknowns are there: at most a bound. */
    void atMost(double[] coefficients, double bound) {
        add(coefficients, bound, false);
    }

    /** Adds a row: equal to a bound. */
    void equal(double[] coefficients, double bound) {
        add(coefficients, bound, true);
    }

    private void add(double[] coefficients, double bound, boolean equality) {
        double greatest = 0;
        for (double coefficient : coefficients) {
            greatest = Math.max(greatest, Math.abs(coefficient));
        }
        double scale = greatest > 0 ? greatest : 1;
        double[] scaled = new double[size()];
        for (int j = 0; j < scaled.length; j++) {
            scaled[j] = coefficients[j] / scale;
        }
        rows.add(new Row(Amounts.of(scaled), bound / scale, equality));
    }
}
