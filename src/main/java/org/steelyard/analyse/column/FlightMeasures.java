package org.steelyard.analyse.column;

import java.util.Optional;
import java.util.OptionalDouble;
import org.steelyard.analyse.figure.Measure;
import org.steelyard.check.result.AuditedFlight;
import org.steelyard.model.unit.MassMoment;

/** The measures of one flight. */
public final class FlightMeasures {

    private FlightMeasures() {}

    /** A measure of a flight, CG in % MAC and trim in units, nose-up positive; empty where it is not known. */
    public static OptionalDouble of(AuditedFlight flight, Measure measure) {
        return switch (measure) {
            case TAKEOFF_CG ->
                OptionalDouble.of(percentMac(flight, flight.balance().takeoff()));
            case ZERO_FUEL_CG -> percentMac(flight, flight.balance().zeroFuel());
            case LANDING_CG -> percentMac(flight, flight.balance().landing());
            case TAKEOFF_TRIM ->
                flight.balance().takeoffTrim().isPresent()
                        ? flight.balance().takeoffTrim().get().trimUnits()
                        : OptionalDouble.empty();
        };
    }

    private static OptionalDouble percentMac(AuditedFlight flight, Optional<MassMoment> state) {
        return state.isPresent() ? OptionalDouble.of(percentMac(flight, state.get())) : OptionalDouble.empty();
    }

    private static double percentMac(AuditedFlight flight, MassMoment state) {
        return flight.loading().type().geometry().chord().percentAt(state.armM());
    }
}
