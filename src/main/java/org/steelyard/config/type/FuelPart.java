package org.steelyard.config.type;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.steelyard.config.value.Accepts;
import org.steelyard.config.value.EntryNames;
import org.steelyard.config.value.Keys;
import org.steelyard.config.value.NotAcceptedException;
import org.steelyard.config.value.WrittenNumber;
import org.steelyard.model.limit.ImbalanceLimit;
import org.steelyard.model.type.FuelStage;
import org.steelyard.model.type.FuelSystem;
import org.steelyard.model.type.Tank;
import org.steelyard.model.type.TankPoint;
import org.steelyard.model.type.TankShare;
import org.steelyard.model.unit.VolumeUnit;

/** Reads a type's tanks, the order in which they burn and fill, and the limits on imbalance. */
final class FuelPart {

    private static final String EMPTY = "empty";
    private static final String FULL = "full";

    /** A quantity of fuel, which follows the density where it is written as a volume. */
    private record Contents(double kg, boolean byVolume) {}

    private static final Contents STAND_IN = new Contents(1, false);

    private final Optional<Double> densityKgPerL;
    private final EntryNames names;
    private final List<Tank> tanks;

    private FuelPart(Keys keys) {
        densityKgPerL = keys.require("density", WrittenNumber.DENSITY);
        names = keys.names("tank", "tanks", "id");
        tanks = keys.each("tanks", this::tank);
    }

    static Optional<FuelSystem> read(Keys keys) {
        return new FuelPart(keys).system(keys);
    }

    private Optional<FuelSystem> system(Keys keys) {
        List<FuelStage> burn = keys.each("burn", stage(EMPTY));
        List<FuelStage> fill = keys.each("fill", stage(FULL));
        List<ImbalanceLimit> imbalances = keys.eachIfAny("imbalance", this::imbalance);
        return keys.make(() -> new FuelSystem(tanks, burn, fill, imbalances, densityKgPerL.orElseThrow()));
    }

    private Contents contents(String text) throws NotAcceptedException {
        double kg = WrittenNumber.fuel(densityKgPerL.orElse(1.0)).read(text);
        return new Contents(kg, Arrays.stream(VolumeUnit.values()).anyMatch(unit -> text.endsWith(unit.symbol())));
    }

    private Optional<Tank> tank(Keys keys) {
        keys.take(densityKgPerL);
        String id = keys.text("id");
        String name = keys.text("name");
        Contents capacity = keys.read("capacity", this::contents, STAND_IN);
        List<TankPoint> arms = keys.each("arms", inner -> point(inner, capacity));
        return keys.make(() -> new Tank(id, name, capacity.kg(), arms, capacity.byVolume()));
    }

    private Optional<TankPoint> point(Keys keys, Contents capacity) {
        Contents contents = keys.read("contents", text -> text.equals(FULL) ? capacity : contents(text), STAND_IN);
        double armM = keys.number("arm", WrittenNumber.ARM);
        return keys.make(() -> new TankPoint(contents.kg(), armM, contents.byVolume()));
    }

    private Function<Keys, Optional<FuelStage>> stage(String untilWhat) {
        return keys -> {
            List<TankShare> shares = keys.each("tanks", inner -> share(inner, untilWhat));
            return keys.make(() -> new FuelStage(shares));
        };
    }

    private Optional<TankShare> share(Keys keys, String untilWhat) {
        Optional<Integer> tank = keys.require("tank", names.reference());
        Optional<Contents> capacity = keys.take(tank.flatMap(this::capacity));
        double share = keys.find("share", WrittenNumber::positiveNumber).orElse(1.0);
        Contents empty = new Contents(0, false);
        Contents until = keys.find("until", until(capacity.orElse(new Contents(Double.MAX_VALUE, false))))
                .orElse(untilWhat.equals(FULL) ? capacity.orElse(empty) : empty);
        return keys.make(() -> new TankShare(tank.orElseThrow(), share, until.kg(), until.byVolume()));
    }

    /** Empty where some tank is at fault, and positions in the list of sound ones mean nothing. */
    private Optional<Contents> capacity(int tank) {
        return tanks.size() == names.names().size()
                ? Optional.of(new Contents(
                        tanks.get(tank).capacityKg(), tanks.get(tank).byVolume()))
                : Optional.empty();
    }

    private Accepts<Contents> until(Contents capacity) {
        return text -> {
            if (text.equals(EMPTY)) {
                return new Contents(0, false);
            }
            if (text.equals(FULL)) {
                return capacity;
            }
            Contents until = contents(text);
            if (until.kg() > capacity.kg()) {
                throw new NotAcceptedException("more than the tank holds", "at most its capacity, or full, or empty");
            }
            return until;
        };
    }

    private Optional<ImbalanceLimit> imbalance(Keys keys) {
        Optional<Integer> left = keys.require("left", names.reference());
        Optional<Integer> right = keys.require("right", names.reference());
        double maxKg = keys.number("max", WrittenNumber.MASS);
        return keys.make(() -> new ImbalanceLimit(left.orElseThrow(), right.orElseThrow(), maxKg));
    }
}
