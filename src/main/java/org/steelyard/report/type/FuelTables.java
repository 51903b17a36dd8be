package org.steelyard.report.type;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.steelyard.model.limit.ImbalanceLimit;
import org.steelyard.model.type.AircraftType;
import org.steelyard.model.type.FuelStage;
import org.steelyard.model.type.FuelSystem;
import org.steelyard.model.type.Tank;
import org.steelyard.model.type.TankPoint;
import org.steelyard.model.type.TankShare;
import org.steelyard.model.unit.Tolerance;
import org.steelyard.report.text.NumberText;
import org.steelyard.report.text.PlainNumber;

/** A type's tanks with their arms, and the order in which they burn and fill, in words. */
final class FuelTables {

    private final FuelSystem fuel;
    private final TypeUnits units;

    FuelTables(AircraftType type) {
        this.fuel = type.fuel();
        this.units = new TypeUnits(type);
    }

    List<TypeTable> tables() {
        return List.of(tanks(), order());
    }

    private TypeTable tanks() {
        List<List<String>> rows = new ArrayList<>();
        for (Tank tank : fuel.tanks()) {
            for (TankPoint point : tank.armTable()) {
                boolean first = point.equals(tank.armTable().get(0));
                boolean full = !Tolerance.isBelowKg(point.quantityKg(), tank.capacityKg());
                rows.add(List.of(
                        first ? tank.id() : "",
                        first ? tank.name() : "",
                        full ? "full" : "",
                        units.mass(point.quantityKg()),
                        NumberText.fixed(point.quantityKg() / fuel.densityKgPerL(), 0),
                        units.arm(point.armM()),
                        units.percentText(point.armM())));
            }
        }
        String note = String.format(
                Locale.ROOT,
                "%s in all, at %.3f kg/L. Between two rows the moment is linear in the quantity.",
                units.massWithUnit(fuel.capacityKg()),
                fuel.densityKgPerL());
        return new TypeTable(
                "Tanks",
                List.of(
                        "id",
                        "name",
                        "",
                        "#contents, " + units.massUnit(),
                        "#L",
                        "#arm, " + units.lengthUnit(),
                        "#% MAC"),
                rows,
                note);
    }

    private TypeTable order() {
        List<List<String>> rows = new ArrayList<>();
        stages("burn", fuel.burnOrder(), rows);
        stages("fill", fuel.fillOrder(), rows);
        for (ImbalanceLimit limit : fuel.imbalances()) {
            rows.add(List.of(
                    "imbalance",
                    "",
                    id(limit.leftTank()) + " and " + id(limit.rightTank()) + ": at most "
                            + units.massWithUnit(limit.maxKg()) + " apart"));
        }
        return new TypeTable("Order of the tanks", List.of("what", "#step", "tanks"), rows, "");
    }

    private String id(int tank) {
        return fuel.tanks().get(tank).id();
    }

    private void stages(String what, List<FuelStage> stages, List<List<String>> rows) {
        for (int i = 0; i < stages.size(); i++) {
            List<String> parts = new ArrayList<>();
            boolean even = stages.get(i).shares().stream()
                            .mapToDouble(TankShare::share)
                            .distinct()
                            .count()
                    == 1;
            for (TankShare share : stages.get(i).shares()) {
                String part = even ? "" : " (" + PlainNumber.of(share.share()) + " parts)";
                parts.add(id(share.tank()) + part + " " + until(share));
            }
            rows.add(List.of(i == 0 ? what : "", String.valueOf(i + 1), String.join(", ", parts)));
        }
    }

    private String until(TankShare share) {
        if (share.untilKg() == 0) {
            return "until empty";
        }
        boolean full = !Tolerance.isBelowKg(
                share.untilKg(), fuel.tanks().get(share.tank()).capacityKg());
        return full ? "until full" : "until " + units.massWithUnit(share.untilKg());
    }
}
