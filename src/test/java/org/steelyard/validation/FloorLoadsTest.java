package org.steelyard.validation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.steelyard.model.finding.FindingCode;
import org.steelyard.model.limit.FloorLimit;
import org.steelyard.model.loading.HoldLoad;

/** Running and area loads of packages, pallets and bearers. */
class FloorLoadsTest extends PublishedCases {

    FloorLoadsTest() {
        super("floor-loads", 12, 0);
    }

    @Override
    void answer(Given given, Answers answers) {
        OptionalDouble runningKgPerM = given.inside(Dimension.RUNNING_LOAD, "maxRunning");
        OptionalDouble areaKgPerM2 = given.inside(Dimension.AREA_LOAD, "maxArea");
        List<String> allowed = new ArrayList<>();
        for (Given each : given.list("packages")) {
            String name = each.word("name");
            FloorLimit floor = new FloorLimit(
                    each.lengthM("length").orElseThrow(),
                    each.lengthM("width").orElseThrow(),
                    runningKgPerM,
                    areaKgPerM2);
            answers.mass(name + "Max", floor.maxKg());
            each.massKg("mass").ifPresent(massKg -> {
                answers.mass(name + "Room", floor.maxKg() - massKg);
                answers.inside(Dimension.RUNNING_LOAD, name + "Running", floor.runningKgPerM(massKg));
                answers.inside(Dimension.AREA_LOAD, name + "Area", floor.areaKgPerM2(massKg));
                if (isAllowed(floor, massKg)) {
                    allowed.add(name);
                }
            });
        }
        answers.word("allowed", allowed.isEmpty() ? "none" : String.join(",", allowed));
    }

    private static boolean isAllowed(FloorLimit floor, double massKg) {
        return new PlainAircraft()
                .hold("floor", 0, new HoldLoad(massKg, 0), Optional.of(floor)).assessment().findings().stream()
                        .noneMatch(finding -> finding.code() == FindingCode.FLOOR_RUNNING
                                || finding.code() == FindingCode.FLOOR_AREA);
    }
}
