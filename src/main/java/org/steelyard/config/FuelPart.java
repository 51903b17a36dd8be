package org.steelyard.config;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.steelyard.model.FuelStage;
import org.steelyard.model.FuelSystem;
import org.steelyard.model.ImbalanceLimit;
import org.steelyard.model.Tank;
import org.steelyard.model.TankPoint;
import org.steelyard.model.TankShare;

/** Reads a type's tanks, the order in which they burn and fill, and the limits on imbalance. */
final class FuelPart {

    private static final String EMPTY = "empty";
    private static final String FULL = "full";

    private final Optional<Double> densityKgPerL;
    private final Names names;
    private final List<Tank> tanks;

    private FuelPart(Keys keys) {
        densityKgPerL = keys.require("density", Measure.DENSITY);
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

    private Measure fuel() {
        return Measure.fuel(densityKgPerL.orElse(1.0));
    }

    private Optional<Tank> tank(Keys keys) {
        keys.take(densityKgPerL);
        String id = keys.text("id");
        String name = keys.text("name");
        double capacityKg = keys.number("capacity", fuel());
        List<TankPoint> arms = keys.each("arms", inner -> point(inner, capacityKg));
        return keys.make(() -> new Tank(id, name, capacityKg, arms));
    }

    private Optional<TankPoint> point(Keys keys, double capacityKg) {
        Accepts<Double> contents = text -> text.equals(FULL) ? Double.valueOf(capacityKg) : fuel().read(text);
        double quantityKg = keys.number("contents", contents);
        double armM = keys.number("arm", Measure.ARM);
        return keys.make(() -> new TankPoint(quantityKg, armM));
    }

    private Function<Keys, Optional<FuelStage>> stage(String untilWhat) {
        return keys -> {
            List<TankShare> shares = keys.each("tanks", inner -> share(inner, untilWhat));
            return keys.make(() -> new FuelStage(shares));
        };
    }

    private Optional<TankShare> share(Keys keys, String untilWhat) {
        Optional<Integer> tank = keys.require("tank", names.reference());
        Optional<Double> capacityKg = keys.take(tank.flatMap(this::capacityKg));
        double share = keys.find("share", Measure::positiveNumber).orElse(1.0);
        double untilKg = keys.find("until", until(capacityKg.orElse(Double.MAX_VALUE)))
                .orElse(untilWhat.equals(FULL) ? capacityKg.orElse(0.0) : 0.0);
        return keys.make(() -> new TankShare(tank.orElseThrow(), share, untilKg));
    }

    /** Empty where some tank is at fault, and positions in the list of sound ones mean nothing. */
    private Optional<Double> capacityKg(int tank) {
        return tanks.size() == names.names().size()
                ? Optional.of(tanks.get(tank).capacityKg())
                : Optional.empty();
    }

    private Accepts<Double> until(double capacityKg) {
        return text -> {
            if (text.equals(EMPTY)) {
                return 0.0;
            }
            if (text.equals(FULL)) {
                return capacityKg;
            }
            double untilKg = fuel().read(text);
            if (untilKg > capacityKg) {
                throw new Unfit("more than the tank holds", "at most its capacity, or full, or empty");
            }
            return untilKg;
        };
    }

    private Optional<ImbalanceLimit> imbalance(Keys keys) {
        Optional<Integer> left = keys.require("left", names.reference());
        Optional<Integer> right = keys.require("right", names.reference());
        double maxKg = keys.number("max", Measure.MASS);
        return keys.make(() -> new ImbalanceLimit(left.orElseThrow(), right.orElseThrow(), maxKg));
    }
}
