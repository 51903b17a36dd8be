package org.steelyard.model;

import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;

/** What an input says of the load, from full detail to the finished state alone. */
public sealed interface Load permits Load.ByPlace, Load.Totals, Load.ZeroFuelGiven, Load.TakeoffGiven {

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
}
