package org.steelyard.report.type;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.limit.Envelope;
import org.steelyard.model.limit.LimitPoint;
import org.steelyard.model.type.AircraftType;
import org.steelyard.model.type.CabinZone;
import org.steelyard.model.type.CrewStation;
import org.steelyard.model.type.Hold;
import org.steelyard.model.type.Pantry;
import org.steelyard.model.type.Tail;
import org.steelyard.model.type.Tank;
import org.steelyard.report.html.Html;
import org.steelyard.report.html.Range;
import org.steelyard.report.html.Scale;
import org.steelyard.report.html.Svg;
import org.steelyard.report.text.NumberText;

/**
 * Where everything sits along the aircraft, nose to the left: a strip for each kind of place over one scale of arms.
 */
final class TypeStations {

    private static final double WIDTH = 760;
    private static final double LEFT = 96;
    private static final double RIGHT = 744;
    private static final double TOP = 4;
    private static final double STRIP = 30;
    private static final double CHAR = 7;

    private record Place(String name, double armM, String look) {}

    private record Strip(String name, List<Place> places) {}

    private final AircraftType type;
    private final TypeUnits units;
    private final List<Strip> strips = new ArrayList<>();
    private final Scale arm;
    private final double bottom;

    TypeStations(AircraftType type, List<Tail> tails) {
        this.type = type;
        this.units = new TypeUnits(type);
        strip(
                "crew",
                type.cabin().crewStations().stream().map(TypeStations::place).toList());
        strip("pantry", pantries());
        strip("zones", type.cabin().zones().stream().map(TypeStations::place).toList());
        strip("holds", type.holds().stream().map(TypeStations::place).toList());
        strip(
                "full tanks",
                type.fuel().tanks().stream().map(TypeStations::place).toList());
        strip(
                "basic CG",
                tails.stream()
                        .map(tail -> new Place("", tail.basic().armM(), "tail-cg"))
                        .toList());
        Range arms = new Range();
        strips.forEach(strip -> strip.places().forEach(place -> arms.add(units.armIn(place.armM()))));
        arms.add(units.armIn(type.geometry().chord().armAt(0)));
        arms.add(units.armIn(type.geometry().chord().armAt(100)));
        arm = arms.grown(0.03).scale(LEFT, RIGHT);
        bottom = TOP + STRIP * (strips.size() + 1);
    }

    private void strip(String name, List<Place> places) {
        if (!places.isEmpty()) {
            strips.add(new Strip(name, List.copyOf(places)));
        }
    }

    private static Place place(CrewStation station) {
        return new Place(station.id(), station.armM(), "station");
    }

    private List<Place> pantries() {
        List<Place> places = new ArrayList<>();
        for (Pantry pantry : type.cabin().pantries()) {
            if (pantry.load().massKg() > 0) {
                places.add(new Place("", pantry.load().armM(), "station"));
            }
        }
        return places;
    }

    private static Place place(CabinZone zone) {
        return new Place(zone.id(), zone.armM(), "station");
    }

    private static Place place(Hold hold) {
        return new Place(hold.id(), hold.armM(), "station");
    }

    private static Place place(Tank tank) {
        return new Place(
                tank.id(), tank.armTable().get(tank.armTable().size() - 1).armM(), "station");
    }

    void draw(Html html) {
        Svg.open(html, "picture wide", WIDTH, bottom + 44, "Arms of the places of " + type.name());
        chordBehind(html);
        for (double mark : arm.marks(12)) {
            Svg.line(html, "grid", arm.px(mark), TOP, arm.px(mark), bottom);
            Svg.text(html, arm.px(mark), bottom + 16, "middle", NumberText.fixed(mark, arm.decimals(12)));
        }
        Svg.text(
                html,
                (LEFT + RIGHT) / 2,
                bottom + 36,
                "middle",
                "arm aft of datum, " + units.lengthUnit() + ", nose to the left");
        double y = TOP + STRIP / 2;
        for (Strip strip : strips) {
            Svg.text(html, LEFT - 10, y + 4, "end", strip.name());
            Svg.line(html, "tick", LEFT, y, RIGHT, y);
            places(html, strip, y);
            y += STRIP;
        }
        chord(html, y);
        html.closeBlock();
    }

    /** Names at one place or too near to each other are put into one. */
    private void places(Html html, Strip strip, double y) {
        double lastEnd = Double.NEGATIVE_INFINITY;
        List<Place> sorted = strip.places().stream()
                .sorted(Comparator.comparingDouble(Place::armM))
                .toList();
        for (int i = 0; i < sorted.size(); i++) {
            Place place = sorted.get(i);
            double x = arm.px(units.armIn(place.armM()));
            html.empty("circle", "class", place.look(), "cx", Svg.px(x), "cy", Svg.px(y), "r", "4");
            List<String> names = new ArrayList<>(List.of(place.name()));
            while (i + 1 < sorted.size() && sorted.get(i + 1).armM() == place.armM()) {
                i++;
                names.add(sorted.get(i).name());
            }
            String name = String.join(", ", names);
            double half = name.length() * CHAR / 2;
            if (!name.isBlank()) {
                double at = Math.max(x, lastEnd + half);
                Svg.text(html, at, y - 7, "middle", name);
                lastEnd = at + half + CHAR;
            }
        }
    }

    private void chordBehind(Html html) {
        double from = arm.px(units.armIn(type.geometry().chord().armAt(0)));
        double to = arm.px(units.armIn(type.geometry().chord().armAt(100)));
        Svg.rect(html, "allowed", from, TOP, to - from, bottom - TOP);
        Range cgs = new Range();
        Envelope takeoff = type.envelope(Phase.TAKEOFF).orElseThrow();
        List<LimitPoint> points = new ArrayList<>(takeoff.forward().points());
        points.addAll(takeoff.aft().points());
        points.forEach(point -> cgs.add(arm.px(units.armIn(point.armM()))));
        Svg.rect(html, "inside", cgs.from(), TOP, cgs.to() - cgs.from(), bottom - TOP);
    }

    private void chord(Html html, double y) {
        double from = arm.px(units.armIn(type.geometry().chord().armAt(0)));
        double to = arm.px(units.armIn(type.geometry().chord().armAt(100)));
        Svg.text(html, LEFT - 10, y + 4, "end", "MAC");
        Svg.line(html, "chord", from, y, to, y);
        Svg.text(html, from, y - 6, "middle", "0 %");
        Svg.text(html, to, y - 6, "middle", "100 %");
    }
}
