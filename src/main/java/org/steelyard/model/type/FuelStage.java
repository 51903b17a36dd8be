package org.steelyard.model.type;

import java.util.List;
import org.steelyard.model.unit.Require;

/**
 * One stage of the order in which tanks are burnt or filled. The tanks of a stage flow together in the ratio of their
 * shares; one that reaches its {@code untilKg} leaves, and the others go on in their ratio. The stage ends when all
 * have left.
 *
 * @param shares the tanks of the stage, at least one, each once
 */
public record FuelStage(List<TankShare> shares) {

    /**
     * Checks the tanks.
     *
     * @throws IllegalArgumentException if there is none, or one twice
     */
    public FuelStage {
        shares = List.copyOf(shares);
        Require.that(!shares.isEmpty(), "a stage needs at least one tank");
        Require.that(
                shares.stream().map(TankShare::tank).distinct().count() == shares.size(),
                "a stage names each tank once");
    }

    /** The stage where each litre has so many times its mass. */
    FuelStage denser(double factor, List<Tank> before, List<Tank> after) {
        return new FuelStage(shares.stream()
                .map(share -> share.denser(factor, before.get(share.tank()), after.get(share.tank())))
                .toList());
    }
}
