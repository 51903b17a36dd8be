package org.steelyard.report;

import java.util.List;
import java.util.function.Function;
import org.steelyard.model.Envelope;
import org.steelyard.model.LimitLine;
import org.steelyard.model.LimitPoint;
import org.steelyard.model.Straightness;

/**
 * The outline of an envelope as the path of a drawing; a limit that is straight in moment is the curve that it is.
 *
 * @param x place of a vertex from left to right
 * @param y place of a vertex from top to bottom
 */
record LimitOutline(Function<LimitPoint, Double> x, Function<LimitPoint, Double> y) {

    private static final int CURVE = 16;

    /** Up the forward limit and down the aft one. */
    String of(Envelope envelope) {
        StringBuilder d = new StringBuilder("M");
        along(d, envelope.forward(), false);
        along(d, envelope.aft(), true);
        return d.append('z').toString();
    }

    private void along(StringBuilder d, LimitLine line, boolean down) {
        List<LimitPoint> points = line.points();
        int last = points.size() - 1;
        vertex(d, points.get(down ? last : 0));
        for (int i = 1; i <= last; i++) {
            LimitPoint from = points.get(down ? last + 1 - i : i - 1);
            LimitPoint to = points.get(down ? last - i : i);
            if (line.straight() == Straightness.MOMENT) {
                curve(d, from, to);
            }
            vertex(d, to);
        }
    }

    /** Straight in moment between two vertices: the arm is the moment, linear in mass, over the mass. */
    private void curve(StringBuilder d, LimitPoint from, LimitPoint to) {
        for (int i = 1; i < CURVE; i++) {
            double t = i / (double) CURVE;
            double massKg = from.massKg() + t * (to.massKg() - from.massKg());
            double fromKgM = from.massKg() * from.armM();
            double momentKgM = fromKgM + t * (to.massKg() * to.armM() - fromKgM);
            vertex(d, new LimitPoint(massKg, momentKgM / massKg));
        }
    }

    private void vertex(StringBuilder d, LimitPoint point) {
        d.append(d.length() > 1 ? "L" : "")
                .append(Svg.px(x.apply(point)))
                .append(' ')
                .append(Svg.px(y.apply(point)));
    }
}
