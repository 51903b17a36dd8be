package org.steelyard.samples;

import org.steelyard.model.loading.Fuel;
import org.steelyard.model.loading.Loading;
import org.steelyard.model.type.AircraftType;
import org.steelyard.model.type.FuelSystem;
import org.steelyard.model.type.Tail;

/** A sample aircraft with other tanks, or tanks in another order. */
public final class OtherTanks {

    private OtherTanks() {}

    /** The same flight on an aircraft with other tanks, and with other fuel. */
    public static Loading on(Loading loading, FuelSystem tanks, Fuel fuel) {
        Tail tail = loading.tail();
        return Plain.loading(
                loading.origin(),
                loading.flight(),
                Plain.tail(tail.registration(), on(tail.type(), tanks), tail.basic()),
                loading.setting(),
                loading.crew(),
                loading.load(),
                fuel,
                loading.performance(),
                loading.recordedTrimUnits(),
                loading.extras());
    }

    /** The same type with other tanks. */
    public static AircraftType on(AircraftType type, FuelSystem tanks) {
        return new AircraftType(
                type.id(),
                type.name(),
                type.geometry(),
                type.limits(),
                type.cabin(),
                type.holds(),
                type.groups(),
                tanks,
                type.envelopes(),
                type.trimScales(),
                type.movements());
    }
}
