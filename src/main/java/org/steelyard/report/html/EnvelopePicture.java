package org.steelyard.report.html;

import java.util.BitSet;
import java.util.stream.Stream;
import org.steelyard.check.result.Status;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.limit.Envelope;
import org.steelyard.model.type.AircraftType;
import org.steelyard.model.type.CgForm;
import org.steelyard.model.type.DisplayUnits;
import org.steelyard.report.text.NumberText;
import org.steelyard.report.words.EnvelopeCloud;
import org.steelyard.report.words.Points;

/**
 * The take-off envelope of a type with its flights, in the units of its users: CG to the right, mass upwards. Flights
 * that fall on the same spot, to half a unit of the drawing, are drawn once; flights beyond the edge are drawn on it
 * and counted.
 */
public final class EnvelopePicture {

    private static final double WIDTH = 420;
    private static final double HEIGHT = 330;
    private static final double LEFT = 54;
    private static final double RIGHT = 412;
    private static final double TOP = 24;
    private static final double BOTTOM = 286;
    private static final int LAYERS = 4;
    /** How far beyond the envelope the picture may reach for flights, as a part of the envelope's width. */
    private static final double REACH = 0.5;

    private final EnvelopeCloud cloud;
    private final AircraftType type;
    private final Envelope envelope;
    private final Scale cg;
    private final Scale mass;
    private long beyond;

    public EnvelopePicture(EnvelopeCloud cloud) {
        this.cloud = cloud;
        type = cloud.type();
        envelope = type.envelope(Phase.TAKEOFF).orElseThrow();
        Range cgs = new Range();
        Range masses = new Range();
        Stream.of(envelope.forward(), envelope.aft())
                .flatMap(line -> line.points().stream())
                .forEach(point -> {
                    cgs.add(shownCg(type.geometry().chord().percentAt(point.armM())));
                    masses.add(shownMass(point.massKg()));
                });
        Range cgRoom = cgs.grown(REACH);
        Range massRoom = masses.grown(REACH);
        for (Status status : Status.values()) {
            Points points = cloud.of(status);
            for (int i = 0; i < points.size(); i++) {
                cgs.add(cgRoom.clamp(shownCg(points.x(i))));
                masses.add(massRoom.clamp(shownMass(points.y(i))));
            }
        }
        cg = cgs.grown(0.06).scale(LEFT, RIGHT);
        mass = masses.grown(0.06).scale(BOTTOM, TOP);
    }

    private double shownMass(double massKg) {
        return units().mass().fromKg(massKg);
    }

    private double shownCg(double cgPercentMac) {
        return units().cg() == CgForm.ARM
                ? units().length().fromM(type.geometry().chord().armAt(cgPercentMac))
                : cgPercentMac;
    }

    private DisplayUnits units() {
        return type.geometry().units();
    }

    public void draw(Html html) {
        Svg.open(html, "picture", WIDTH, HEIGHT, "Take-off mass and CG of " + type.name() + " in its envelope");
        axes(html);
        Svg.path(html, "envelope", outline());
        for (Status status : Status.values()) {
            flights(html, status);
        }
        html.closeBlock();
    }

    private void axes(Html html) {
        for (double mark : cg.marks(5)) {
            Svg.line(html, "grid", cg.px(mark), TOP, cg.px(mark), BOTTOM);
            Svg.text(html, cg.px(mark), BOTTOM + 16, "middle", NumberText.fixed(mark, cg.decimals(5)));
        }
        for (double mark : mass.marks(6)) {
            Svg.line(html, "grid", LEFT, mass.px(mark), RIGHT, mass.px(mark));
            Svg.text(html, LEFT - 6, mass.px(mark) + 4, "end", NumberText.fixed(mark, mass.decimals(6)));
        }
        String cgTitle = units().cg() == CgForm.ARM
                ? "take-off CG aft of datum, " + units().length().symbol()
                : "take-off CG, % MAC";
        Svg.text(html, (LEFT + RIGHT) / 2, BOTTOM + 36, "middle", cgTitle);
        Svg.text(html, 2, 12, "start", "take-off mass, " + units().mass().symbol());
    }

    private String outline() {
        return new LimitOutline(
                        point -> cg.px(shownCg(type.geometry().chord().percentAt(point.armM()))),
                        point -> mass.px(shownMass(point.massKg())))
                .of(envelope);
    }

    private void flights(Html html, Status status) {
        Points points = cloud.of(status);
        StatusSymbol mark = StatusSymbol.of(status);
        StringBuilder[] layers = new StringBuilder[LAYERS];
        for (int i = 0; i < LAYERS; i++) {
            layers[i] = new StringBuilder();
        }
        BitSet drawn = new BitSet();
        for (int i = 0; i < points.size(); i++) {
            double cgShown = shownCg(points.x(i));
            double massShown = shownMass(points.y(i));
            if (!cg.contains(cgShown) || !mass.contains(massShown)) {
                beyond++;
            }
            double x = half(cg.px(cg.clamp(cgShown)));
            double y = half(mass.px(mass.clamp(massShown)));
            int spot = (int) (2 * y * 2 * WIDTH + 2 * x);
            if (!drawn.get(spot)) {
                drawn.set(spot);
                mark.at(layers[i % LAYERS], x, y);
            }
        }
        for (StringBuilder layer : layers) {
            if (!layer.isEmpty()) {
                Svg.path(html, "flights " + mark.look(), layer);
            }
        }
    }

    private static double half(double place) {
        return Math.round(place * 2) / 2.0;
    }

    /** Flights that lie beyond the edge; known after drawing. */
    public long beyond() {
        return beyond;
    }
}
