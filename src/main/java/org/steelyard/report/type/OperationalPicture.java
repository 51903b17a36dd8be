package org.steelyard.report.type;

import java.util.List;
import java.util.stream.Stream;
import org.steelyard.check.curtail.CurtailedEnvelope;
import org.steelyard.check.text.FindingText;
import org.steelyard.model.limit.Envelope;
import org.steelyard.model.limit.LimitLine;
import org.steelyard.model.limit.LimitPoint;
import org.steelyard.model.limit.Straightness;
import org.steelyard.model.type.AircraftType;
import org.steelyard.model.type.CgForm;
import org.steelyard.model.type.DisplayUnits;
import org.steelyard.model.unit.Quantity;
import org.steelyard.report.html.Html;
import org.steelyard.report.html.Range;
import org.steelyard.report.html.Scale;
import org.steelyard.report.html.Svg;
import org.steelyard.report.text.NumberText;

/** The certified envelope as a dashed outline and the operational one within it, in the units of the type's users. */
final class OperationalPicture {

    private static final double WIDTH = 420;
    private static final double HEIGHT = 330;
    private static final double LEFT = 54;
    private static final double RIGHT = 412;
    private static final double TOP = 24;
    private static final double BOTTOM = 286;
    private static final int CURVE = 16;

    private final CurtailedEnvelope envelope;
    private final AircraftType type;
    private final Scale cg;
    private final Scale mass;

    OperationalPicture(CurtailedEnvelope envelope, AircraftType type) {
        this.envelope = envelope;
        this.type = type;
        Range cgs = new Range();
        Range masses = new Range();
        Stream.of(envelope.certified().forward(), envelope.certified().aft())
                .flatMap(line -> line.points().stream())
                .forEach(point -> {
                    cgs.add(shownCg(point.armM()));
                    masses.add(units().mass().fromKg(point.massKg()));
                });
        cg = cgs.grown(0.06).scale(LEFT, RIGHT);
        mass = masses.grown(0.06).scale(BOTTOM, TOP);
    }

    private DisplayUnits units() {
        return type.geometry().units();
    }

    private double shownCg(double armM) {
        return units().cg() == CgForm.ARM
                ? units().length().fromM(armM)
                : type.geometry().chord().percentAt(armM);
    }

    void draw(Html html) {
        String phase = envelope.certified().phase().label();
        Svg.open(
                html, "picture", WIDTH, HEIGHT, "Certified and operational envelope, " + phase + ", of " + type.name());
        for (double mark : cg.marks(5)) {
            Svg.line(html, "grid", cg.px(mark), TOP, cg.px(mark), BOTTOM);
            Svg.text(html, cg.px(mark), BOTTOM + 16, "middle", NumberText.fixed(mark, cg.decimals(5)));
        }
        for (double mark : mass.marks(6)) {
            Svg.line(html, "grid", LEFT, mass.px(mark), RIGHT, mass.px(mark));
            Svg.text(html, LEFT - 6, mass.px(mark) + 4, "end", NumberText.fixed(mark, mass.decimals(6)));
        }
        Svg.text(html, (LEFT + RIGHT) / 2, BOTTOM + 36, "middle", "CG, " + FindingText.unit(Quantity.CG, type));
        Svg.text(html, 2, 12, "start", phase + " mass, " + units().mass().symbol());
        Svg.path(html, "certified", outline(envelope.certified()));
        Svg.path(html, "envelope", outline(envelope.operational()));
        html.closeBlock();
    }

    private String outline(Envelope of) {
        StringBuilder d = new StringBuilder("M");
        along(d, of.forward(), false);
        along(d, of.aft(), true);
        return d.append('z').toString();
    }

    private void along(StringBuilder d, LimitLine line, boolean down) {
        List<LimitPoint> points = line.points();
        int last = points.size() - 1;
        vertex(d, points.get(down ? last : 0));
        for (int i = 1; i <= last; i++) {
            LimitPoint from = points.get(down ? last + 1 - i : i - 1);
            LimitPoint to = points.get(down ? last - i : i);
            for (int k = 1; k < CURVE && line.straight() == Straightness.MOMENT; k++) {
                double t = (double) k / CURVE;
                double massKg = from.massKg() + t * (to.massKg() - from.massKg());
                double momentKgM = (1 - t) * from.massKg() * from.armM() + t * to.massKg() * to.armM();
                vertex(d, new LimitPoint(massKg, momentKgM / massKg));
            }
            vertex(d, to);
        }
    }

    private void vertex(StringBuilder d, LimitPoint point) {
        d.append(d.length() > 1 ? "L" : "")
                .append(Svg.px(cg.px(shownCg(point.armM()))))
                .append(' ')
                .append(Svg.px(mass.px(units().mass().fromKg(point.massKg()))));
    }
}
