package org.steelyard.report.type;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.steelyard.model.type.AircraftType;
import org.steelyard.model.type.Tank;
import org.steelyard.model.type.TankPoint;
import org.steelyard.report.html.Axes;
import org.steelyard.report.html.Html;
import org.steelyard.report.html.Range;
import org.steelyard.report.html.Scale;
import org.steelyard.report.html.Svg;

/** The arm of what is in each tank against how much it is; tanks with the same table share a line. */
final class TypeTanks {

    private static final double WIDTH = 372;
    private static final double HEIGHT = 292;
    private static final double LEFT = 56;
    private static final double RIGHT = 352;
    private static final double TOP = 24;
    private static final double BOTTOM = 246;
    private static final int STEPS = 60;
    private static final double DOT = 2.4;

    private final AircraftType type;
    private final TypeUnits units;
    private final Map<List<TankPoint>, List<Tank>> tanks = new LinkedHashMap<>();
    private final Scale contents;
    private final Scale arm;

    TypeTanks(AircraftType type) {
        this.type = type;
        this.units = new TypeUnits(type);
        Range contentsIn = new Range();
        Range arms = new Range();
        contentsIn.add(0);
        for (Tank tank : type.fuel().tanks()) {
            tanks.computeIfAbsent(tank.armTable(), table -> new ArrayList<>()).add(tank);
            for (TankPoint point : tank.armTable()) {
                contentsIn.add(units.massIn(point.quantityKg()));
                arms.add(units.armIn(point.armM()));
            }
        }
        contents = contentsIn.scale(LEFT, RIGHT);
        arm = arms.grown(0.12).scale(BOTTOM, TOP);
    }

    void draw(Html html) {
        html.open("figure").element("figcaption", "Arm of the fuel in each tank");
        Svg.open(html, "picture", WIDTH, HEIGHT, "Tanks of " + type.name());
        Axes axes = new Axes(contents, arm, 5, 6);
        axes.draw(html);
        axes.titles(html, "contents of the tank, " + units.massUnit(), "arm, " + units.lengthUnit());
        tanks.values().forEach(same -> curve(html, same));
        html.closeBlock();
        html.closeBlock();
    }

    private void curve(Html html, List<Tank> same) {
        Tank tank = same.get(0);
        StringBuilder d = new StringBuilder();
        double fullKg = tank.armTable().get(tank.armTable().size() - 1).quantityKg();
        for (int i = 1; i <= STEPS; i++) {
            double massKg = fullKg * i / STEPS;
            d.append(i == 1 ? "M" : "L")
                    .append(Svg.px(contents.px(units.massIn(massKg))))
                    .append(' ')
                    .append(Svg.px(arm.px(units.armIn(tank.momentKgM(massKg) / massKg))));
        }
        Svg.path(html, "law", d);
        for (TankPoint point : tank.armTable()) {
            html.empty(
                    "circle",
                    "class",
                    "vertex take-off",
                    "cx",
                    Svg.px(contents.px(units.massIn(point.quantityKg()))),
                    "cy",
                    Svg.px(arm.px(units.armIn(point.armM()))),
                    "r",
                    Svg.px(DOT));
        }
        String names = String.join(", ", same.stream().map(Tank::id).toList());
        double fullY = arm.px(units.armIn(tank.momentKgM(fullKg) / fullKg));
        Svg.text(html, contents.px(units.massIn(fullKg)) - 6, fullY - 7, "end", names);
    }
}
