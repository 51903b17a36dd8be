package org.steelyard.model.loading;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import org.steelyard.model.unit.MassMoment;
import org.steelyard.model.unit.Require;

/** What an input says of the load, from full detail to the finished state alone. */
public sealed interface Load
        permits Load.ByPlace, Load.ByZone, Load.ByHold, Load.Totals, Load.ZeroFuelGiven, Load.TakeoffGiven {

    /**
     * How much the input gives.
     *
     * @return the level
     */
    LoadLevel level();

    /**
     * The passengers zone by zone.
     *
     * @return one for each of the type's zones; empty where they are given in total, or not at all
     */
    Optional<List<ZoneLoad>> zonesIfGiven();

    /**
     * Baggage and cargo hold by hold.
     *
     * @return one for each of the type's holds; empty where they are given in total, or not at all
     */
    Optional<List<HoldLoad>> holdsIfGiven();

    /**
     * The passengers in one figure.
     *
     * @return all of them, as if in one zone; empty where they are given zone by zone, or not at all
     */
    Optional<ZoneLoad> passengersInTotal();

    /**
     * Baggage and cargo in one figure.
     *
     * @return all of it, as if in one hold; empty where it is given hold by hold, or not at all
     */
    Optional<HoldLoad> holdsInTotal();

    /**
     * The state that stands in place of the load that makes it up.
     *
     * @return the zero-fuel or take-off state; empty for a load
     */
    Optional<MassMoment> state();

    /**
     * Whether a state stands in place of the load that makes it up.
     *
     * @return true for a zero-fuel or take-off state
     */
    default boolean isState() {
        return state().isPresent();
    }

    /**
     * Full detail: every zone and hold.
     *
     * @param zones one for each of the type's cabin zones, in its order
     * @param holds one for each of the type's holds, in its order
     */
    record ByPlace(List<ZoneLoad> zones, List<HoldLoad> holds) implements Load {

        public ByPlace {
            zones = List.copyOf(zones);
            holds = List.copyOf(holds);
        }

        @Override
        public LoadLevel level() {
            return LoadLevel.DETAIL;
        }

        @Override
        public Optional<List<ZoneLoad>> zonesIfGiven() {
            return Optional.of(zones);
        }

        @Override
        public Optional<List<HoldLoad>> holdsIfGiven() {
            return Optional.of(holds);
        }

        @Override
        public Optional<ZoneLoad> passengersInTotal() {
            return Optional.empty();
        }

        @Override
        public Optional<HoldLoad> holdsInTotal() {
            return Optional.empty();
        }

        @Override
        public Optional<MassMoment> state() {
            return Optional.empty();
        }
    }

    /**
     * Passengers by zone, but one figure for all baggage and cargo, to be shared out among the holds.
     *
     * @param zones one for each of the type's cabin zones, in its order
     * @param hold all baggage and cargo
     */
    record ByZone(List<ZoneLoad> zones, HoldLoad hold) implements Load {

        public ByZone {
            zones = List.copyOf(zones);
            Objects.requireNonNull(hold);
        }

        @Override
        public LoadLevel level() {
            return LoadLevel.ZONES;
        }

        @Override
        public Optional<List<ZoneLoad>> zonesIfGiven() {
            return Optional.of(zones);
        }

        @Override
        public Optional<List<HoldLoad>> holdsIfGiven() {
            return Optional.empty();
        }

        @Override
        public Optional<ZoneLoad> passengersInTotal() {
            return Optional.empty();
        }

        @Override
        public Optional<HoldLoad> holdsInTotal() {
            return Optional.of(hold);
        }

        @Override
        public Optional<MassMoment> state() {
            return Optional.empty();
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

        public ByHold {
            Objects.requireNonNull(passengers);
            passengersKg.ifPresent(mass -> Require.notNegative("passengersKg", mass));
            holds = List.copyOf(holds);
        }

        @Override
        public LoadLevel level() {
            return LoadLevel.HOLDS;
        }

        @Override
        public Optional<List<ZoneLoad>> zonesIfGiven() {
            return Optional.empty();
        }

        @Override
        public Optional<List<HoldLoad>> holdsIfGiven() {
            return Optional.of(holds);
        }

        @Override
        public Optional<ZoneLoad> passengersInTotal() {
            return Optional.of(new ZoneLoad(passengers, passengersKg));
        }

        @Override
        public Optional<HoldLoad> holdsInTotal() {
            return Optional.empty();
        }

        @Override
        public Optional<MassMoment> state() {
            return Optional.empty();
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

        public Totals {
            Objects.requireNonNull(passengers);
            passengersKg.ifPresent(mass -> Require.notNegative("passengersKg", mass));
            Objects.requireNonNull(hold);
        }

        @Override
        public LoadLevel level() {
            return LoadLevel.TOTALS;
        }

        @Override
        public Optional<List<ZoneLoad>> zonesIfGiven() {
            return Optional.empty();
        }

        @Override
        public Optional<List<HoldLoad>> holdsIfGiven() {
            return Optional.empty();
        }

        @Override
        public Optional<ZoneLoad> passengersInTotal() {
            return Optional.of(new ZoneLoad(passengers, passengersKg));
        }

        @Override
        public Optional<HoldLoad> holdsInTotal() {
            return Optional.of(hold);
        }

        @Override
        public Optional<MassMoment> state() {
            return Optional.empty();
        }
    }

    /**
     * The zero-fuel state as somebody else computed it; nothing is known of what makes it up.
     *
     * @param zeroFuel mass, more than zero, and moment
     */
    record ZeroFuelGiven(MassMoment zeroFuel) implements Load {

        public ZeroFuelGiven {
            Require.positive("zero-fuel massKg", zeroFuel.massKg());
        }

        @Override
        public LoadLevel level() {
            return LoadLevel.ZERO_FUEL_GIVEN;
        }

        @Override
        public Optional<List<ZoneLoad>> zonesIfGiven() {
            return Optional.empty();
        }

        @Override
        public Optional<List<HoldLoad>> holdsIfGiven() {
            return Optional.empty();
        }

        @Override
        public Optional<ZoneLoad> passengersInTotal() {
            return Optional.empty();
        }

        @Override
        public Optional<HoldLoad> holdsInTotal() {
            return Optional.empty();
        }

        @Override
        public Optional<MassMoment> state() {
            return Optional.of(zeroFuel);
        }
    }

    /**
     * The take-off state as somebody else computed it; no other state is known.
     *
     * @param takeoff mass, more than zero, and moment
     */
    record TakeoffGiven(MassMoment takeoff) implements Load {

        public TakeoffGiven {
            Require.positive("take-off massKg", takeoff.massKg());
        }

        @Override
        public LoadLevel level() {
            return LoadLevel.TAKEOFF_GIVEN;
        }

        @Override
        public Optional<List<ZoneLoad>> zonesIfGiven() {
            return Optional.empty();
        }

        @Override
        public Optional<List<HoldLoad>> holdsIfGiven() {
            return Optional.empty();
        }

        @Override
        public Optional<ZoneLoad> passengersInTotal() {
            return Optional.empty();
        }

        @Override
        public Optional<HoldLoad> holdsInTotal() {
            return Optional.empty();
        }

        @Override
        public Optional<MassMoment> state() {
            return Optional.of(takeoff);
        }
    }
}
