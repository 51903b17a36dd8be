package org.steelyard.model.loading;

import java.util.Objects;
import java.util.OptionalDouble;
import org.steelyard.model.unit.Amounts;
import org.steelyard.model.unit.Require;

/** What an input says of the fuel. All masses in kg, not negative; ramp fuel includes taxi and trip fuel. */
public sealed interface Fuel permits Fuel.ByTank, Fuel.Total, Fuel.NotGiven {

    /**
     * Fuel burnt before take-off.
     *
     * @return taxi fuel in kg; zero where nothing is known of the fuel
     */
    double taxiKg();

    /**
     * Fuel burnt from take-off to landing.
     *
     * @return trip fuel in kg; zero where nothing is known of the fuel
     */
    double tripKg();

    /**
     * The density that the input gives.
     *
     * @return density in kg/L, more than zero; empty where it is the type's
     */
    OptionalDouble densityKgPerL();

    /**
     * The same burn and density with fuel tank by tank.
     *
     * @param tanksKg fuel at the ramp in each of the type's tanks, in its order, in kg, not negative
     * @return the fuel
     * @throws IllegalArgumentException if an amount is negative
     */
    default ByTank inTanks(Amounts tanksKg) {
        return new ByTank(tanksKg, taxiKg(), tripKg(), densityKgPerL());
    }

    /**
     * Fuel at the ramp.
     *
     * @return all of it in kg; empty where nothing is known of the fuel
     */
    OptionalDouble rampKg();

    /**
     * Fuel tank by tank.
     *
     * @param tanksKg fuel at the ramp in each of the type's tanks, in its order, in kg
     * @param taxiKg burnt before take-off in kg
     * @param tripKg burnt from take-off to landing in kg
     * @param densityKgPerL density in kg/L, where the input gives one
     */
    record ByTank(Amounts tanksKg, double taxiKg, double tripKg, OptionalDouble densityKgPerL) implements Fuel {

        public ByTank {
            Objects.requireNonNull(tanksKg);
            for (int i = 0; i < tanksKg.size(); i++) {
                Require.notNegative("fuel in a tank", tanksKg.at(i));
            }
            Require.notNegative("taxiKg", taxiKg);
            Require.notNegative("tripKg", tripKg);
            densityKgPerL.ifPresent(density -> Require.positive("densityKgPerL", density));
        }

        /**
         * Fuel of the type's density.
         *
         * @param tanksKg fuel at the ramp in each tank in kg
         * @param taxiKg burnt before take-off in kg
         * @param tripKg burnt from take-off to landing in kg
         */
        public ByTank(Amounts tanksKg, double taxiKg, double tripKg) {
            this(tanksKg, taxiKg, tripKg, OptionalDouble.empty());
        }

        @Override
        public OptionalDouble rampKg() {
            return OptionalDouble.of(tanksKg.sum());
        }
    }

    /**
     * One figure for all fuel: to be shared out among the tanks by the type's fill order.
     *
     * @param totalKg fuel at the ramp in kg
     * @param taxiKg burnt before take-off in kg
     * @param tripKg burnt from take-off to landing in kg
     * @param densityKgPerL density in kg/L, where the input gives one
     */
    record Total(double totalKg, double taxiKg, double tripKg, OptionalDouble densityKgPerL) implements Fuel {

        public Total {
            Require.notNegative("totalKg", totalKg);
            Require.notNegative("taxiKg", taxiKg);
            Require.notNegative("tripKg", tripKg);
            densityKgPerL.ifPresent(density -> Require.positive("densityKgPerL", density));
        }

        /**
         * Fuel of the type's density.
         *
         * @param totalKg fuel at the ramp in kg
         * @param taxiKg burnt before take-off in kg
         * @param tripKg burnt from take-off to landing in kg
         */
        public Total(double totalKg, double taxiKg, double tripKg) {
            this(totalKg, taxiKg, tripKg, OptionalDouble.empty());
        }

        @Override
        public OptionalDouble rampKg() {
            return OptionalDouble.of(totalKg);
        }
    }

    /** Nothing is known of the fuel; goes with a given take-off state. */
    record NotGiven() implements Fuel {

        @Override
        public double taxiKg() {
            return 0;
        }

        @Override
        public double tripKg() {
            return 0;
        }

        @Override
        public OptionalDouble densityKgPerL() {
            return OptionalDouble.empty();
        }

        @Override
        public OptionalDouble rampKg() {
            return OptionalDouble.empty();
        }
    }
}
