package org.steelyard.report.type;

import java.util.ArrayList;
import java.util.List;
import org.steelyard.check.text.FindingText;
import org.steelyard.model.limit.Envelope;
import org.steelyard.model.limit.LimitPoint;
import org.steelyard.model.trim.TrimPoint;
import org.steelyard.model.trim.TrimScale;
import org.steelyard.model.trim.TrimTable;
import org.steelyard.model.type.AircraftType;
import org.steelyard.report.html.Axes;
import org.steelyard.report.html.Html;
import org.steelyard.report.html.Range;
import org.steelyard.report.html.Scale;
import org.steelyard.report.html.Svg;
import org.steelyard.report.text.NumberText;

/**
 * A trim scale: CG to the right, nose-up upwards; a line for each mass of its table; the permitted band and the CGs of
 * the envelope shaded.
 */
final class TypeScale {

    private static final double WIDTH = 372;
    private static final double HEIGHT = 292;
    private static final double LEFT = 56;
    private static final double TOP = 24;
    private static final double BOTTOM = 246;
    private static final double DOT = 2.4;
    private static final double LINE_OF_TEXT = 11;

    private final AircraftType type;
    private final TrimScale scale;
    private final TypeUnits units;
    private final List<Double> massesKg;
    private final double right;
    private final Scale cg;
    private final Scale trim;
    private final Range envelopeCgs = new Range();

    TypeScale(AircraftType type, TrimScale scale, Envelope envelope) {
        this.type = type;
        this.scale = scale;
        this.units = new TypeUnits(type);
        this.massesKg = masses();
        this.right = massesKg.size() > 1 ? WIDTH - 66 : WIDTH - 10;
        Range cgs = new Range();
        Range trims = new Range();
        for (double massKg : massesKg) {
            for (TrimPoint point : scale.law().pointsAt(massKg)) {
                cgs.add(units.cgIn(point.cgPercentMac()));
                trims.add(point.trimUnits());
            }
        }
        for (LimitPoint point : vertices(envelope)) {
            envelopeCgs.add(units.cgIn(units.percent(point.armM())));
            cgs.add(units.cgIn(units.percent(point.armM())));
        }
        trims.add(scale.bandLowUnits());
        trims.add(scale.bandHighUnits());
        cg = cgs.grown(0.04).scale(LEFT, right);
        trim = trims.grown(0.06).scale(BOTTOM, TOP);
    }

    private static List<LimitPoint> vertices(Envelope envelope) {
        List<LimitPoint> all = new ArrayList<>(envelope.forward().points());
        all.addAll(envelope.aft().points());
        return all;
    }

    private List<Double> masses() {
        if (!(scale.law() instanceof TrimTable table)) {
            return List.of(type.limits().maxTakeoffKg());
        }
        List<Double> masses = new ArrayList<>();
        for (int i = 0; i < table.massesKg().size(); i++) {
            masses.add(table.massesKg().at(i));
        }
        return masses;
    }

    void draw(Html html) {
        String name = LimitTables.name(scale);
        html.open("figure").element("figcaption", name);
        Svg.open(html, "picture", WIDTH, HEIGHT, name + " of " + type.name());
        shade(html);
        Axes axes = new Axes(cg, trim, 6, 7);
        axes.draw(html, value -> NumberText.fixed(value, cg.decimals(6)), this::mark);
        axes.titles(html, units.cgAxis(), "trim, nose-up upwards");
        for (double end : List.of(scale.bandLowUnits(), scale.bandHighUnits())) {
            Svg.line(html, "limit", LEFT, trim.px(end), right, trim.px(end));
        }
        lines(html);
        html.closeBlock();
        html.closeBlock();
    }

    private String mark(double units) {
        return FindingText.trim(units, Math.pow(10, -trim.decimals(7)), scale.unit());
    }

    /** What the type permits: the band from side to side, and within it the CGs of the envelope. */
    private void shade(Html html) {
        double top = trim.px(scale.bandHighUnits());
        double height = trim.px(scale.bandLowUnits()) - top;
        Svg.rect(html, "allowed", LEFT, top, right - LEFT, height);
        double from = cg.px(envelopeCgs.from());
        Svg.rect(html, "inside", from, top, cg.px(envelopeCgs.to()) - from, height);
    }

    private void lines(Html html) {
        double lastY = Double.NEGATIVE_INFINITY;
        for (int i = massesKg.size() - 1; i >= 0; i--) {
            List<TrimPoint> points = scale.law().pointsAt(massesKg.get(i));
            StringBuilder d = new StringBuilder();
            for (TrimPoint point : points) {
                d.append(d.isEmpty() ? "M" : "L")
                        .append(Svg.px(x(point)))
                        .append(' ')
                        .append(Svg.px(y(point)));
            }
            Svg.path(html, "law", d);
            for (TrimPoint point : points) {
                html.empty(
                        "circle",
                        "class",
                        "vertex take-off",
                        "cx",
                        Svg.px(x(point)),
                        "cy",
                        Svg.px(y(point)),
                        "r",
                        Svg.px(DOT));
            }
            if (massesKg.size() > 1) {
                double textY = Math.max(y(points.get(points.size() - 1)) + 3, lastY + LINE_OF_TEXT);
                html.element(
                        "text",
                        units.massWithUnit(massesKg.get(i)),
                        "class",
                        "small",
                        "x",
                        Svg.px(right + 4),
                        "y",
                        Svg.px(textY));
                lastY = textY;
            }
        }
    }

    private double x(TrimPoint point) {
        return cg.px(units.cgIn(point.cgPercentMac()));
    }

    private double y(TrimPoint point) {
        return trim.px(point.trimUnits());
    }
}
