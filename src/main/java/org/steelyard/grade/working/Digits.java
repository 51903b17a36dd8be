package org.steelyard.grade.working;

import java.util.ArrayList;
import java.util.List;

/** Digits of a figure and what becomes of them. */
final class Digits {

    private Digits() {}

    /**
     * What a figure becomes when two of its digits that stand beside each other are swapped; none begins with a zero.
     *
     * @param value the figure
     * @param step value of its last digit
     * @return each other figure once, in order of the place
     */
    static List<Double> swaps(double value, double step) {
        String digits = Long.toString(Math.round(Math.abs(value) / step));
        double sign = value < 0 ? -1 : 1;
        List<Double> swapped = new ArrayList<>();
        for (int i = 0; i + 1 < digits.length() && digits.length() < 16; i++) {
            boolean zeroFirst = i == 0 && digits.charAt(1) == '0';
            if (digits.charAt(i) != digits.charAt(i + 1) && !zeroFirst) {
                String other =
                        digits.substring(0, i) + digits.charAt(i + 1) + digits.charAt(i) + digits.substring(i + 2);
                swapped.add(sign * Long.parseLong(other) * step);
            }
        }
        return swapped;
    }
}
