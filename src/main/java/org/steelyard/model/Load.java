package org.steelyard.model;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/** What an input says of the load, from full detail to the finished state alone. */
public sealed interface Load
        permits Load.ByPlace, Load.ByZone, Load.ByHold, Load.Totals, Load.ZeroFuelGiven, Load.TakeoffGiven {

    /**
     * Full detail: every zone and hold.
     *
     * @param zones one for each of the type's cabin zones, in its order
     * @param holds one for each of the type's holds, in its order
     */
    record ByPlace(List<ZoneLoad> zones, List<HoldLoad> holds) implements Load {

        /** Copies the lists. */
        public ByPlace {
            zones = List.copyOf(zones);
            holds = List.copyOf(holds);
        }
    }

    /**
     * Passengers by zone, but one figure for all baggage and cargo, to be shared out among the holds.
     *
     * @param zones one for each of the type's cabin zones, in its order
     * @param hold all baggage and cargo
     */
    record ByZone(List<ZoneLoad> zones, HoldLoad hold) implements Load {

        /** Copies the list. */
        public ByZone {
            zones = List.copyOf(zones);
            Objects.requireNonNull(hold);
        }
    }

    /**
     * Baggage and cargo by hold, but one figure for all passengers, to be shared out among the zones.
     *
     * @param passengers all passengers
     * @param passengersKg their actual mass together in kg, in place of the scheme's
     * @param holds one for each of the type's holds, in its order
     */
    record ByHold(Passengers passengers, OptionalDouble passengersKg, List<HoldLoad> holds) implements Load {

        /** Checks the mass and copies the list. */
        public ByHold {
            Objects.requireNonNull(passengers);
            passengersKg.ifPresent(mass -> Require.notNegative("passengersKg", mass));
            holds = List.copyOf(holds);
        }
    }

    /**
     * Totals only: to be shared out among zones and holds by the policy's rule.
     *
     * @param passengers all passengers
     * @param passengersKg their actual mass together in kg, in place of the scheme's
     * @param hold all baggage and cargo
     */
    record Totals(Passengers passengers, OptionalDouble passengersKg, HoldLoad hold) implements Load {

        /** Checks that nothing is missing. */
        public Totals {
            Objects.requireNonNull(passengers);
            passengersKg.ifPresent(mass -> Require.notNegative("passengersKg", mass));
            Objects.requireNonNull(hold);
        }
    }

    /**
     * The zero-fuel state as somebody else computed it; nothing is known of what makes it up.
     *
     * @param zeroFuel mass, more than zero, and moment
     */
    record ZeroFuelGiven(MassMoment zeroFuel) implements Load {

        /** Checks the mass. */
        public ZeroFuelGiven {
            Require.positive("zero-fuel massKg", zeroFuel.massKg());
        }
    }

    /**
     * The take-off state as somebody else computed it; no other state is known.
     *
     * @param takeoff mass, more than zero, and moment
     */
    record TakeoffGiven(MassMoment takeoff) implements Load {

        /** Checks the mass. */
        public TakeoffGiven {
            Require.positive("take-off massKg", takeoff.massKg());
        }
    }

    /**
     * The passengers zone by zone.
     *
     * @return one for each of the type's zones; empty where they are given in total, or not at all
     */
    default Optional<List<ZoneLoad>> zonesIfGiven() {
        if (this instanceof ByPlace byPlace) {
            return Optional.of(byPlace.zones());
        }
        return this instanceof ByZone byZone ? Optional.of(byZone.zones()) : Optional.empty();
    }

    /**
     * Baggage and cargo hold by hold.
     *
     * @return one for each of the type's holds; empty where they are given in total, or not at all
     */
    default Optional<List<HoldLoad>> holdsIfGiven() {
        if (this instanceof ByPlace byPlace) {
            return Optional.of(byPlace.holds());
        }
        return this instanceof ByHold byHold ? Optional.of(byHold.holds()) : Optional.empty();
    }

    /**
     * Whether a state stands in place of the load that makes it up.
     *
     * @return true for a zero-fuel or take-off state
     */
    default boolean isState() {
        return this instanceof ZeroFuelGiven || this instanceof TakeoffGiven;
    }
}
