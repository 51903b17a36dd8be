package org.steelyard.balance;

import java.util.List;
import java.util.Objects;
import org.steelyard.model.type.FuelSystem;
import org.steelyard.model.unit.Amounts;

/**
 * The fuel of one flight, tank by tank in the type's order, in kg.
 *
 * @param system the tanks, with fuel of the flight's density
 * @param halts what is in the tanks at the ramp, at each point at which the flow of fuel changes, at take-off and at
 *     landing, in this order; between two neighbours each tank changes linearly with the fuel aboard, so every
 *     difference between tanks is greatest at one of them
 * @param takeoffAt position of take-off among them, from 0
 * @param taxiKg taxi fuel as given
 * @param tripKg trip fuel as given
 * @param shortKg how much taxi and trip together burn beyond what is aboard; zero normally
 * @param path mass and moment of the aircraft from take-off to landing
 */
public record FuelBalance(
        FuelSystem system,
        List<Amounts> halts,
        int takeoffAt,
        double taxiKg,
        double tripKg,
        double shortKg,
        FuelPath path) {

    public FuelBalance {
        Objects.requireNonNull(system);
        halts = List.copyOf(halts);
        Objects.requireNonNull(path);
    }

    /**
     * Before taxi.
     *
     * @return fuel in each tank in kg
     */
    public Amounts rampKg() {
        return halts.get(0);
    }

    /**
     * After taxi.
     *
     * @return fuel in each tank in kg
     */
    public Amounts takeoffKg() {
        return halts.get(takeoffAt);
    }

    /**
     * After the trip.
     *
     * @return fuel in each tank in kg
     */
    public Amounts landingKg() {
        return halts.get(halts.size() - 1);
    }
}
