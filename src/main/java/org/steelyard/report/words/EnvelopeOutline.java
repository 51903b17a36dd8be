package org.steelyard.report.words;

import java.util.ArrayList;
import java.util.List;
import org.steelyard.model.limit.Envelope;
import org.steelyard.model.limit.LimitLine;
import org.steelyard.model.limit.LimitPoint;
import org.steelyard.model.limit.Straightness;

/**
 * The outline of an envelope as points to be joined: up the forward limit and down the aft one. A limit that is
 * straight in moment becomes the curve that it is against arm.
 */
public final class EnvelopeOutline {

    private static final int CURVE = 16;

    private EnvelopeOutline() {}

    public static List<LimitPoint> of(Envelope envelope) {
        List<LimitPoint> outline = new ArrayList<>();
        along(outline, envelope.forward(), false);
        along(outline, envelope.aft(), true);
        return outline;
    }

    private static void along(List<LimitPoint> outline, LimitLine line, boolean down) {
        List<LimitPoint> points = line.points();
        int last = points.size() - 1;
        outline.add(points.get(down ? last : 0));
        for (int i = 1; i <= last; i++) {
            LimitPoint from = points.get(down ? last + 1 - i : i - 1);
            LimitPoint to = points.get(down ? last - i : i);
            if (line.straight() == Straightness.MOMENT) {
                curve(outline, from, to);
            }
            outline.add(to);
        }
    }

    /** Straight in moment between two vertices: the arm is the moment, linear in mass, over the mass. */
    private static void curve(List<LimitPoint> outline, LimitPoint from, LimitPoint to) {
        for (int i = 1; i < CURVE; i++) {
            double t = i / (double) CURVE;
            double massKg = from.massKg() + t * (to.massKg() - from.massKg());
            double fromKgM = from.massKg() * from.armM();
            double momentKgM = fromKgM + t * (to.massKg() * to.armM() - fromKgM);
            outline.add(new LimitPoint(massKg, momentKgM / massKg));
        }
    }
}
