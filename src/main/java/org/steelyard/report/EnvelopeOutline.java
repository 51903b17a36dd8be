package org.steelyard.report;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.steelyard.model.Envelope;
import org.steelyard.model.LimitLine;
import org.steelyard.model.LimitPoint;
import org.steelyard.model.MeanChord;
import org.steelyard.model.Straightness;
import org.steelyard.report.ChartDataSheet.Line;

/** The outline of an envelope as CG in % MAC and mass: up the forward line, down the aft line, and closed. */
final class EnvelopeOutline {

    private static final int PIECES_OF_A_CURVE = 8;

    private EnvelopeOutline() {}

    static List<Line> of(Envelope envelope, MeanChord chord) {
        List<Line> outline = new ArrayList<>(side(envelope.forward(), chord));
        List<Line> aft = side(envelope.aft(), chord);
        Collections.reverse(aft);
        outline.addAll(aft);
        outline.add(outline.get(0));
        return outline;
    }

    private static List<Line> side(LimitLine line, MeanChord chord) {
        List<Line> side = new ArrayList<>();
        List<LimitPoint> points = line.points();
        int pieces = line.straight() == Straightness.MOMENT ? PIECES_OF_A_CURVE : 1;
        for (int i = 0; i + 1 < points.size(); i++) {
            LimitPoint low = points.get(i);
            LimitPoint high = points.get(i + 1);
            side.add(corner(low.massKg(), low.armM(), chord));
            for (int piece = 1; piece < pieces && high.massKg() > low.massKg(); piece++) {
                double massKg = low.massKg() + (high.massKg() - low.massKg()) * piece / pieces;
                side.add(corner(massKg, line.armAtM(massKg), chord));
            }
        }
        LimitPoint last = points.get(points.size() - 1);
        side.add(corner(last.massKg(), last.armM(), chord));
        return side;
    }

    private static Line corner(double massKg, double armM, MeanChord chord) {
        return Line.of("", chord.percentAt(armM), massKg);
    }
}
