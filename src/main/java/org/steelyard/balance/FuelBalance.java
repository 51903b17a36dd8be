package org.steelyard.balance;

import org.steelyard.model.Amounts;

/**
 * The fuel of one flight, tank by tank in the type's order, in kg.
 *
 * @param rampKg before taxi
 * @param takeoffKg after taxi
 * @param landingKg after the trip
 * @param taxiKg taxi fuel as given
 * @param tripKg trip fuel as given
 * @param shortKg how much taxi and trip together burn beyond what is aboard; zero normally
 * @param path mass and moment of the aircraft from take-off to landing
 */
public record FuelBalance(
        Amounts rampKg,
        Amounts takeoffKg,
        Amounts landingKg,
        double taxiKg,
        double tripKg,
        double shortKg,
        FuelPath path) {}
