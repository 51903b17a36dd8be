package org.steelyard.model;

import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * One flight of the input: which aircraft, how it is set, and what is aboard.
 *
 * @param origin where the row stands
 * @param flight which flight
 * @param tail the aircraft
 * @param setting flaps and thrust
 * @param crew crew and pantry
 * @param load passengers, baggage and cargo
 * @param fuel fuel
 * @param performance limits of the day
 * @param recordedTrimUnits the setting that was recorded, in units, nose-up positive, if any
 * @param extras columns carried along
 */
public record Loading(
        Origin origin,
        FlightIdent flight,
        Tail tail,
        FlightSetting setting,
        Crew crew,
        Load load,
        Fuel fuel,
        PerformanceLimits performance,
        OptionalDouble recordedTrimUnits,
        List<Extra> extras) {

    /**
     * Checks that load and fuel fit each other and the type.
     *
     * @throws IllegalArgumentException if there is not one entry for each zone, hold and tank, or a given take-off
     *     state comes with fuel, or any other load without
     */
    public Loading {
        Objects.requireNonNull(origin);
        Objects.requireNonNull(flight);
        Objects.requireNonNull(tail);
        Objects.requireNonNull(setting);
        Objects.requireNonNull(crew);
        Objects.requireNonNull(performance);
        recordedTrimUnits.ifPresent(units -> Require.finite("recordedTrimUnits", units));
        extras = List.copyOf(extras);
        requireFit(tail.type(), load);
        requireFit(tail.type(), load, fuel);
    }

    private static void requireFit(AircraftType type, Load load) {
        if (load instanceof Load.ByPlace byPlace) {
            Require.that(
                    byPlace.zones().size() == type.cabin().zones().size()
                            && byPlace.holds().size() == type.holds().size(),
                    () -> "the load must have one entry for each zone and hold of " + type.id());
        }
    }

    private static void requireFit(AircraftType type, Load load, Fuel fuel) {
        if (fuel instanceof Fuel.ByTank byTank) {
            Require.that(
                    byTank.tanksKg().size() == type.fuel().tanks().size(),
                    () -> "the fuel must have one entry for each tank of " + type.id());
        }
        Require.that(
                load instanceof Load.TakeoffGiven == fuel instanceof Fuel.NotGiven,
                "fuel is given unless the take-off state is");
    }

    /**
     * The type of the aircraft.
     *
     * @return the tail's type
     */
    public AircraftType type() {
        return tail.type();
    }
}
