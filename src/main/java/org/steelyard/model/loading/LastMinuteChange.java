package org.steelyard.model.loading;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.steelyard.model.unit.Require;

/**
 * What changed after the load was closed. The load and the fuel of a loading are those before it; its states are those
 * after it.
 *
 * @param parts each change that the input gives; empty where there was none
 */
public record LastMinuteChange(List<Part> parts) {

    /** Place of a change that is not tied to one zone, hold or tank. */
    public static final int ANYWHERE = -1;

    /** Nothing changed. */
    public static final LastMinuteChange NONE = new LastMinuteChange(List.of());

    /**
     * One change: what comes is positive, what goes negative.
     *
     * @param what passengers, holds or fuel
     * @param place zone, hold or tank, from 0 in the type's order, or {@link #ANYWHERE}
     * @param persons passengers, infants included; 0 for holds and fuel
     * @param seats seats that they take; 0 for holds and fuel
     * @param massKg mass in kg; passengers and bags count at standard mass
     */
    public record Part(LoadPart what, int place, int persons, int seats, double massKg) {

        /**
         * Checks the values.
         *
         * @throws IllegalArgumentException if the mass is not finite
         */
        public Part {
            Objects.requireNonNull(what);
            Require.that(place >= ANYWHERE, "a place counts from 0");
            Require.finite("change massKg", massKg);
        }
    }

    public LastMinuteChange {
        parts = List.copyOf(parts);
    }

    /**
     * Whether nothing changed.
     *
     * @return true without any part
     */
    public boolean isNone() {
        return parts.isEmpty();
    }

    /**
     * The changes of one kind.
     *
     * @param what passengers, holds or fuel
     * @return its parts in their order
     */
    public List<Part> of(LoadPart what) {
        List<Part> found = new ArrayList<>(0);
        for (Part part : parts) {
            if (part.what() == what) {
                found.add(part);
            }
        }
        return found;
    }

    /**
     * How many passengers come and go, both counted.
     *
     * @return persons, not negative
     */
    public int persons() {
        return parts.stream().mapToInt(part -> Math.abs(part.persons())).sum();
    }

    /**
     * How much of the traffic load comes and goes, both counted.
     *
     * @return mass of passengers, baggage and cargo in kg, not negative
     */
    public double trafficLoadKg() {
        return parts.stream()
                .filter(part -> part.what() != LoadPart.FUEL)
                .mapToDouble(part -> Math.abs(part.massKg()))
                .sum();
    }

    /**
     * How much fuel comes and goes, both counted.
     *
     * @return mass in kg, not negative
     */
    public double fuelKg() {
        return of(LoadPart.FUEL).stream()
                .mapToDouble(part -> Math.abs(part.massKg()))
                .sum();
    }
}
