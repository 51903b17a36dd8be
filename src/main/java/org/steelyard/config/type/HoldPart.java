package org.steelyard.config.type;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.steelyard.config.value.EntryNames;
import org.steelyard.config.value.Keys;
import org.steelyard.config.value.WrittenNumber;
import org.steelyard.model.limit.FloorLimit;
import org.steelyard.model.type.Hold;
import org.steelyard.model.type.LoadGroup;

/** Reads a type's holds and the limits on several places together. */
final class HoldPart {

    private HoldPart() {}

    static Optional<Hold> hold(Keys keys) {
        String id = keys.text("id");
        String name = keys.text("name");
        double armM = keys.number("arm", WrittenNumber.ARM);
        double maxKg = keys.number("max", WrittenNumber.MASS);
        Optional<FloorLimit> floor = keys.partIfAny("floor", HoldPart::floor);
        return keys.make(() -> new Hold(id, name, armM, maxKg, floor));
    }

    private static Optional<FloorLimit> floor(Keys keys) {
        double lengthM = keys.number("length", WrittenNumber.LENGTH);
        double widthM = keys.number("width", WrittenNumber.LENGTH);
        OptionalDouble running = optional(keys.find("max-running", WrittenNumber.RUNNING));
        OptionalDouble area = optional(keys.find("max-area", WrittenNumber.AREA));
        return keys.make(() -> new FloorLimit(lengthM, widthM, running, area));
    }

    private static OptionalDouble optional(Optional<Double> value) {
        return value.isPresent() ? OptionalDouble.of(value.get()) : OptionalDouble.empty();
    }

    static Optional<LoadGroup> group(Keys keys, EntryNames holds, EntryNames zones) {
        String id = keys.text("id");
        String name = keys.text("name");
        List<Integer> inHolds = keys.valuesIfAny("holds", holds.reference());
        List<Integer> inZones = keys.valuesIfAny("zones", zones.reference());
        double maxKg = keys.number("max", WrittenNumber.MASS);
        return keys.make(() -> new LoadGroup(id, name, inHolds, inZones, maxKg));
    }
}
