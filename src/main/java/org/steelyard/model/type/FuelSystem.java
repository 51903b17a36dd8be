package org.steelyard.model.type;

import java.util.List;
import org.steelyard.model.limit.ImbalanceLimit;
import org.steelyard.model.unit.Require;
import org.steelyard.model.unit.Tolerance;

/**
 * A type's tanks and the order in which they burn and fill.
 *
 * @param tanks at least one
 * @param burnOrder stages; together they can empty every tank
 * @param fillOrder stages for sharing a total among the tanks; together they can fill every tank
 * @param imbalances limits between pairs of tanks
 * @param densityKgPerL density in kg/L by which volumes are the masses that they are here; of a type, the one where
 *     none is given
 */
public record FuelSystem(
        List<Tank> tanks,
        List<FuelStage> burnOrder,
        List<FuelStage> fillOrder,
        List<ImbalanceLimit> imbalances,
        double densityKgPerL) {

    /**
     * Checks the values.
     *
     * @throws IllegalArgumentException if there is no tank, a stage names an unknown one, a tank cannot be emptied or
     *     filled, or the density is not more than zero
     */
    public FuelSystem {
        tanks = List.copyOf(tanks);
        burnOrder = List.copyOf(burnOrder);
        fillOrder = List.copyOf(fillOrder);
        imbalances = List.copyOf(imbalances);
        Require.positive("densityKgPerL", densityKgPerL);
        Require.that(!tanks.isEmpty(), "a type needs at least one tank");
        for (int tank = 0; tank < tanks.size(); tank++) {
            String id = tanks.get(tank).id();
            Require.that(
                    bound(burnOrder, tank, tanks.size(), false) == 0,
                    "the burn order must empty every tank; it never empties " + id);
            Require.that(
                    !Tolerance.isBelowKg(
                            bound(fillOrder, tank, tanks.size(), true),
                            tanks.get(tank).capacityKg()),
                    "the fill order must be able to fill every tank; it does not fill " + id);
        }
    }

    /**
     * The tanks filled with fuel of another density. What was given as a volume is another mass then: a capacity, the
     * contents that have an arm, where a stage ends. What was given as a mass stays one.
     *
     * @param otherKgPerL the density in kg/L, more than zero
     * @return the tanks; these where the density is the same
     * @throws IllegalArgumentException if the density is not more than zero
     */
    public FuelSystem atDensity(double otherKgPerL) {
        if (otherKgPerL == densityKgPerL) {
            return this;
        }
        double factor = otherKgPerL / densityKgPerL;
        List<Tank> after = tanks.stream().map(tank -> tank.denser(factor)).toList();
        return new FuelSystem(
                after,
                burnOrder.stream()
                        .map(stage -> stage.denser(factor, tanks, after))
                        .toList(),
                fillOrder.stream()
                        .map(stage -> stage.denser(factor, tanks, after))
                        .toList(),
                imbalances,
                otherKgPerL);
    }

    private static double bound(List<FuelStage> stages, int tank, int tankCount, boolean highest) {
        double bound = highest ? -1 : Double.MAX_VALUE;
        for (FuelStage stage : stages) {
            for (TankShare share : stage.shares()) {
                Require.that(share.tank() < tankCount, "a stage names tank number " + share.tank() + ", which is not");
                if (share.tank() == tank) {
                    bound = highest ? Math.max(bound, share.untilKg()) : Math.min(bound, share.untilKg());
                }
            }
        }
        return bound;
    }

    /**
     * The whole usable capacity.
     *
     * @return sum over the tanks in kg at the density
     */
    public double capacityKg() {
        return tanks.stream().mapToDouble(Tank::capacityKg).sum();
    }
}
