package org.steelyard.report.html;

/** A range that grows with the values it is given. */
public final class Range {

    private double from = Double.POSITIVE_INFINITY;
    private double to = Double.NEGATIVE_INFINITY;

    public void add(double value) {
        from = Math.min(from, value);
        to = Math.max(to, value);
    }

    /** A wider range: on either side by a part of its width. */
    public Range grown(double part) {
        double more = to > from ? part * (to - from) : Math.max(1, Math.abs(from)) * part;
        Range grown = new Range();
        grown.add(from - more);
        grown.add(to + more);
        return grown;
    }

    public double from() {
        return from;
    }

    public double to() {
        return to;
    }

    double clamp(double value) {
        return Math.max(from, Math.min(to, value));
    }

    public Scale scale(double fromPx, double toPx) {
        return new Scale(from, to, fromPx, toPx);
    }
}
