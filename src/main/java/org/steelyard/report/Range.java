package org.steelyard.report;

/** A range that grows with the values it is given. */
final class Range {

    private double from = Double.POSITIVE_INFINITY;
    private double to = Double.NEGATIVE_INFINITY;

    void add(double value) {
        from = Math.min(from, value);
        to = Math.max(to, value);
    }

    /** A wider range: on either side by a part of its width. */
    Range grown(double part) {
        double more = to > from ? part * (to - from) : Math.max(1, Math.abs(from)) * part;
        Range grown = new Range();
        grown.add(from - more);
        grown.add(to + more);
        return grown;
    }

    double from() {
        return from;
    }

    double to() {
        return to;
    }

    double clamp(double value) {
        return Math.max(from, Math.min(to, value));
    }

    Scale scale(double fromPx, double toPx) {
        return new Scale(from, to, fromPx, toPx);
    }
}
