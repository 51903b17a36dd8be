package org.steelyard.report.html;

import java.util.ArrayList;
import java.util.List;

/**
 * A straight scale from values to places in a picture.
 *
 * @param from value at the one end
 * @param to value at the other end, more than from
 * @param fromPx place of the one end
 * @param toPx place of the other end
 */
public record Scale(double from, double to, double fromPx, double toPx) {

    public double px(double value) {
        return fromPx + (value - from) / (to - from) * (toPx - fromPx);
    }

    boolean contains(double value) {
        return value >= from && value <= to;
    }

    public double clamp(double value) {
        return Math.max(from, Math.min(to, value));
    }

    /** The distance between marks, 1, 2 or 5 times a power of ten, so that there are about so many. */
    double step(int about) {
        double rough = (to - from) / about;
        double power = Math.pow(10, Math.floor(Math.log10(rough)));
        double digit = rough / power;
        return power * (digit < 1.5 ? 1 : digit < 3.5 ? 2 : digit < 7.5 ? 5 : 10);
    }

    /** Round values within the scale, a step apart. */
    public List<Double> marks(int about) {
        double step = step(about);
        List<Double> marks = new ArrayList<>();
        for (long i = (long) Math.ceil(from / step); i * step <= to; i++) {
            marks.add(i * step);
        }
        return marks;
    }

    /** How many decimals the marks need. */
    public int decimals(int about) {
        return Math.max(0, (int) -Math.floor(Math.log10(step(about)) + 1e-9));
    }
}
