package org.steelyard.report.type;

import java.util.List;
import java.util.stream.Stream;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.limit.Envelope;
import org.steelyard.model.limit.LimitPoint;
import org.steelyard.model.limit.MassLimits;
import org.steelyard.model.type.AircraftType;
import org.steelyard.report.html.Axes;
import org.steelyard.report.html.Html;
import org.steelyard.report.html.LimitOutline;
import org.steelyard.report.html.Range;
import org.steelyard.report.html.Scale;
import org.steelyard.report.html.Svg;
import org.steelyard.report.text.NumberText;

/**
 * All envelopes of a type in one drawing, with their vertices and the limits of mass: mass upwards, CG to the right,
 * below as the type's users speak of it, above the other way.
 */
final class TypeEnvelopes {

    private static final double WIDTH = 760;
    private static final double HEIGHT = 490;
    private static final double LEFT = 58;
    private static final double RIGHT = 640;
    private static final double TOP = 58;
    private static final double BOTTOM = 424;
    private static final double DOT = 2.6;
    private static final double KEY = 128;
    private static final double LINE_OF_TEXT = 11;

    private final AircraftType type;
    private final TypeUnits units;
    private final Scale cg;
    private final Scale mass;

    TypeEnvelopes(AircraftType type) {
        this.type = type;
        this.units = new TypeUnits(type);
        Range cgs = new Range();
        Range masses = new Range();
        type.envelopes()
                .forEach(envelope -> vertices(envelope).forEach(point -> {
                    cgs.add(cgIn(point));
                    masses.add(units.massIn(point.massKg()));
                }));
        masses.add(units.massIn(type.limits().maxRampKg()));
        cg = cgs.grown(0.05).scale(LEFT, RIGHT);
        mass = masses.grown(0.05).scale(BOTTOM, TOP);
    }

    private static Stream<LimitPoint> vertices(Envelope envelope) {
        return Stream.of(envelope.forward(), envelope.aft()).flatMap(line -> line.points().stream());
    }

    void draw(Html html) {
        Svg.open(html, "picture wide", WIDTH, HEIGHT, "Envelopes of " + type.name());
        Axes axes = new Axes(cg, mass, 10, 8);
        axes.draw(html);
        axes.titles(html, units.cgAxis(), "mass, " + units.massUnit());
        above(html);
        limits(html);
        LimitOutline outline =
                new LimitOutline(point -> cg.px(cgIn(point)), point -> mass.px(units.massIn(point.massKg())));
        for (Envelope envelope : type.envelopes()) {
            Svg.path(html, "phase " + look(envelope.phase()), outline.of(envelope));
        }
        for (Envelope envelope : type.envelopes()) {
            dots(html, envelope);
        }
        key(html);
        html.closeBlock();
    }

    static String look(Phase phase) {
        return switch (phase) {
            case ZERO_FUEL -> "zero-fuel";
            case TAKEOFF -> "take-off";
            case FLIGHT -> "in-flight";
            case LANDING -> "landing";
            case DRY_OPERATING, RAMP -> throw new IllegalArgumentException(phase + " has no envelope");
        };
    }

    private double cgIn(LimitPoint point) {
        return units.cgIn(units.percent(point.armM()));
    }

    /** The arm that stands for a CG in % MAC, or the other way round. */
    private void above(Html html) {
        Scale arm = new Scale(units.otherCg(cg.from()), units.otherCg(cg.to()), LEFT, RIGHT);
        for (double mark : arm.marks(8)) {
            Svg.line(html, "tick", arm.px(mark), TOP - 5, arm.px(mark), TOP);
            Svg.text(html, arm.px(mark), TOP - 9, "middle", NumberText.fixed(mark, arm.decimals(8)));
        }
        Svg.text(html, (LEFT + RIGHT) / 2, TOP - 28, "middle", units.otherCgAxis());
        Svg.line(html, "tick", LEFT, TOP, RIGHT, TOP);
    }

    private record Limit(String name, double massKg) {}

    /** The limits of mass, from the highest down; names that would touch are moved apart. */
    private void limits(Html html) {
        MassLimits limits = type.limits();
        List<Limit> all = List.of(
                new Limit("max ramp", limits.maxRampKg()),
                new Limit("max take-off", limits.maxTakeoffKg()),
                new Limit("max landing", limits.maxLandingKg()),
                new Limit("max zero-fuel", limits.maxZeroFuelKg()),
                new Limit("minimum", limits.minFlightKg()));
        double lastY = 0;
        for (Limit limit : all) {
            double y = mass.px(mass.clamp(units.massIn(limit.massKg())));
            Svg.line(html, "limit", LEFT, y, RIGHT, y);
            double textY = Math.max(y + 4, lastY + LINE_OF_TEXT + 1);
            html.element(
                    "text",
                    limit.name() + " " + units.mass(limit.massKg()),
                    "class",
                    "small",
                    "x",
                    Svg.px(RIGHT + 6),
                    "y",
                    Svg.px(textY));
            lastY = textY;
        }
    }

    private void dots(Html html, Envelope envelope) {
        vertices(envelope)
                .forEach(point -> html.empty(
                        "circle",
                        "class",
                        "vertex " + look(envelope.phase()),
                        "cx",
                        Svg.px(cg.px(cgIn(point))),
                        "cy",
                        Svg.px(mass.px(units.massIn(point.massKg()))),
                        "r",
                        Svg.px(DOT)));
    }

    private void key(Html html) {
        double x = LEFT;
        for (Envelope envelope : type.envelopes()) {
            Svg.line(html, "phase " + look(envelope.phase()), x, HEIGHT - 10, x + 34, HEIGHT - 10);
            Svg.text(html, x + 40, HEIGHT - 6, "start", envelope.phase().label());
            x += KEY;
        }
    }
}
