package org.steelyard.remedy;

/**
 * The dual simplex method for a linear program with bounds on its unknowns, on a full table. As no cost is negative,
 * nothing at all is a dual feasible start, and after a bound is tightened the last table is one again; so a branch and
 * bound search goes on from the table of the node before. (Lemke 1954; bounded form as in Koberstein, The dual simplex
 * method, 2005.)
 *
 * <p>One value is one node of such a search; {@link #copy} makes another. Not for several threads.
 */
final class DualSimplex {

    private static final double TOLERANCE = 1e-9;
    private static final double PIVOT = 1e-9;

    /** After so many steps the first possible choice is taken each time, which cannot go round in circles. */
    private static final int CAREFUL_AFTER = 400;

    private static final int MOST_STEPS = 4000;

    private final int structural;
    private final int columns;
    private final double[][] table;
    private final double[] reducedCost;
    private final double[] lower;
    private final double[] upper;
    private final double[] basicValue;
    private final int[] basic;
    private final boolean[] isBasic;
    private final boolean[] atUpper;
    private boolean gaveUp;

    DualSimplex(LinearProgram program) {
        int rows = program.rows();
        structural = program.size();
        columns = structural + rows;
        table = new double[rows][columns];
        reducedCost = new double[columns];
        lower = new double[columns];
        upper = new double[columns];
        basicValue = new double[rows];
        basic = new int[rows];
        isBasic = new boolean[columns];
        atUpper = new boolean[columns];
        for (int j = 0; j < structural; j++) {
            reducedCost[j] = program.cost(j);
            upper[j] = program.upper(j);
        }
        for (int i = 0; i < rows; i++) {
            for (int j = 0; j < structural; j++) {
                table[i][j] = program.coefficient(i, j);
            }
            int slack = structural + i;
            table[i][slack] = 1;
            upper[slack] = program.equality(i) ? 0 : Double.POSITIVE_INFINITY;
            basic[i] = slack;
            isBasic[slack] = true;
            basicValue[i] = program.bound(i);
        }
    }

    private DualSimplex(DualSimplex other) {
        structural = other.structural;
        columns = other.columns;
        table = new double[other.table.length][];
        for (int i = 0; i < table.length; i++) {
            table[i] = other.table[i].clone();
        }
        reducedCost = other.reducedCost.clone();
        lower = other.lower.clone();
        upper = other.upper.clone();
        basicValue = other.basicValue.clone();
        basic = other.basic.clone();
        isBasic = other.isBasic.clone();
        atUpper = other.atUpper.clone();
    }

    DualSimplex copy() {
        return new DualSimplex(this);
    }

    /** Tightens the bounds of an unknown that is in the basis, as one with a value between whole numbers is. */
    void bound(int unknown, double from, double to) {
        lower[unknown] = Math.max(lower[unknown], from);
        upper[unknown] = Math.min(upper[unknown], to);
    }

    /**
     * Goes on to the optimum.
     *
     * @return whether there is one; false if no values satisfy all rows and bounds, or none was found in many steps
     */
    boolean solve() {
        for (int step = 0; step < MOST_STEPS; step++) {
            boolean careful = step > CAREFUL_AFTER;
            int row = leaving(careful);
            if (row < 0) {
                return true;
            }
            boolean tooLow = basicValue[row] < lower[basic[row]];
            int column = entering(row, tooLow, careful);
            if (column < 0) {
                return false;
            }
            pivot(row, column, tooLow ? lower[basic[row]] : upper[basic[row]], !tooLow);
        }
        gaveUp = true;
        return false;
    }

    /** Whether the last search was given up, so that nothing is known; none of thousands tried was. */
    boolean gaveUp() {
        return gaveUp;
    }

    private int leaving(boolean careful) {
        int row = -1;
        double worst = TOLERANCE;
        for (int i = 0; i < basic.length; i++) {
            int unknown = basic[i];
            double size = 1 + Math.abs(basicValue[i]);
            double beyond = Math.max(lower[unknown] - basicValue[i], basicValue[i] - upper[unknown]) / size;
            if (beyond > worst && (!careful || row < 0 || unknown < basic[row])) {
                row = i;
                worst = careful ? TOLERANCE : beyond;
            }
        }
        return row;
    }

    private int entering(int row, boolean tooLow, boolean careful) {
        int column = -1;
        double least = Double.POSITIVE_INFINITY;
        double pivot = 0;
        for (int j = 0; j < columns; j++) {
            double a = table[row][j];
            boolean helps = tooLow != atUpper[j] ? a < -PIVOT : a > PIVOT;
            if (!isBasic[j] && helps && lower[j] < upper[j]) {
                double ratio = Math.abs(reducedCost[j] / a);
                boolean better = ratio < least - 1e-12;
                boolean asGood = !careful && ratio <= least + 1e-12 && Math.abs(a) > pivot;
                if (better || asGood) {
                    column = j;
                    least = Math.min(least, ratio);
                    pivot = Math.abs(a);
                }
            }
        }
        return column;
    }

    private void pivot(int row, int column, double target, boolean leavesAtUpper) {
        double change = (basicValue[row] - target) / table[row][column];
        double entered = (atUpper[column] ? upper[column] : lower[column]) + change;
        for (int i = 0; i < basic.length; i++) {
            basicValue[i] -= table[i][column] * change;
        }
        basicValue[row] = entered;
        int left = basic[row];
        isBasic[left] = false;
        atUpper[left] = leavesAtUpper;
        basic[row] = column;
        isBasic[column] = true;
        atUpper[column] = false;
        eliminate(row, column);
    }

    private void eliminate(int row, int column) {
        double[] pivotRow = table[row];
        double pivot = pivotRow[column];
        for (int j = 0; j < columns; j++) {
            pivotRow[j] /= pivot;
        }
        for (int i = 0; i < table.length; i++) {
            if (i != row) {
                subtract(table[i], pivotRow, table[i][column]);
            }
        }
        subtract(reducedCost, pivotRow, reducedCost[column]);
    }

    private void subtract(double[] from, double[] pivotRow, double factor) {
        if (factor != 0) {
            for (int j = 0; j < columns; j++) {
                from[j] -= factor * pivotRow[j];
            }
        }
    }

    /** The values of the unknowns at the optimum. */
    double[] values() {
        double[] values = new double[structural];
        for (int j = 0; j < structural; j++) {
            values[j] = atUpper[j] ? upper[j] : lower[j];
        }
        for (int i = 0; i < basic.length; i++) {
            if (basic[i] < structural) {
                values[basic[i]] = Math.min(Math.max(basicValue[i], lower[basic[i]]), upper[basic[i]]);
            }
        }
        return values;
    }
}
