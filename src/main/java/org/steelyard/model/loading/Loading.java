package org.steelyard.model.loading;

import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;
import org.steelyard.model.type.AircraftType;
import org.steelyard.model.type.CabinZone;
import org.steelyard.model.type.FuelSystem;
import org.steelyard.model.type.MassScheme;
import org.steelyard.model.type.Tail;
import org.steelyard.model.unit.Require;

/**
 * One flight of the input: which aircraft, how it is set, and what is aboard.
 *
 * @param origin where the row stands
 * @param flight which flight
 * @param tail the aircraft
 * @param setting flaps and thrust
 * @param scheme standard masses by which it counts
 * @param crew crew and pantry
 * @param load passengers, baggage and cargo, before a last-minute change
 * @param fuel fuel, before a last-minute change
 * @param change what changed at the last minute
 * @param performance limits of the day
 * @param recordedTrimUnits the setting that was recorded, in units, nose-up positive, if any
 * @param extras columns carried along
 * @param blanksAsNone headings of the places whose load cells are blank and were counted as nothing, though nobody has
 *     said that they are
 */
public record Loading(
        Origin origin,
        FlightIdent flight,
        Tail tail,
        FlightSetting setting,
        MassScheme scheme,
        Crew crew,
        Load load,
        Fuel fuel,
        LastMinuteChange change,
        PerformanceLimits performance,
        OptionalDouble recordedTrimUnits,
        List<Extra> extras,
        List<String> blanksAsNone) {

    /**
     * Checks that load and fuel fit each other and the type.
     *
     * @throws IllegalArgumentException if there is not one entry for each zone, hold, tank and, if any, crew station, a
     *     seat row or a changed place is not there, or a given take-off state comes with fuel or a change, or any other
     *     load without fuel
     */
    public Loading {
        Objects.requireNonNull(origin);
        Objects.requireNonNull(flight);
        Objects.requireNonNull(tail);
        Objects.requireNonNull(setting);
        Objects.requireNonNull(scheme);
        Objects.requireNonNull(crew);
        Objects.requireNonNull(change);
        Objects.requireNonNull(performance);
        recordedTrimUnits.ifPresent(units -> Require.finite("recordedTrimUnits", units));
        extras = List.copyOf(extras);
        blanksAsNone = List.copyOf(blanksAsNone);
        requireFit(tail.type(), load);
        requireFit(tail.type(), load, fuel);
        requireFit(tail.type(), crew);
        requireFit(tail.type(), load, change);
    }

    private static void requireFit(AircraftType type, Load load) {
        List<CabinZone> zones = type.cabin().zones();
        int holds = type.holds().size();
        Require.that(
                load.zonesIfGiven().map(given -> given.size() == zones.size()).orElse(true)
                        && load.holdsIfGiven()
                                .map(given -> given.size() == holds)
                                .orElse(true),
                () -> "the load must have one entry for each zone and hold of " + type.id());
        List<ZoneLoad> given = load.zonesIfGiven().orElse(List.of());
        for (int i = 0; i < given.size(); i++) {
            CabinZone zone = zones.get(i);
            int rows = zone.rows().size();
            Require.that(
                    given.get(i).rows().stream().allMatch(row -> row.row() < rows),
                    () -> "zone " + zone.id() + " of " + type.id() + " has " + rows + " seat rows");
        }
    }

    private static void requireFit(AircraftType type, Crew crew) {
        Require.that(
                crew.stations().isEmpty()
                        || crew.stations().size() == type.cabin().crewStations().size(),
                () -> "the crew must have one entry for each station of " + type.id());
    }

    private static void requireFit(AircraftType type, Load load, LastMinuteChange change) {
        Require.that(
                change.isNone() || !(load instanceof Load.TakeoffGiven),
                "a given take-off state does not change any more");
        for (LastMinuteChange.Part part : change.parts()) {
            int places = switch (part.what()) {
                case PASSENGERS -> type.cabin().zones().size();
                case HOLDS -> type.holds().size();
                case FUEL -> type.fuel().tanks().size();
            };
            Require.that(
                    part.place() < places && places > 0,
                    () -> "a change names a place that " + type.id() + " does not have");
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

    /**
     * The tanks of the type, filled with fuel of the flight's density.
     *
     * @return the tanks
     */
    public FuelSystem tanks() {
        return fuel.densityKgPerL().isPresent()
                ? type().fuel().atDensity(fuel.densityKgPerL().getAsDouble())
                : type().fuel();
    }

    /**
     * The same flight as it was before the last-minute change.
     *
     * @return the loading without its change
     */
    public Loading beforeChange() {
        return copy(tail, crew, load, fuel, LastMinuteChange.NONE, recordedTrimUnits);
    }

    /**
     * The same flight with another load and fuel, and the same last-minute change. A setting that was recorded for it
     * says nothing of this one, and is left out.
     *
     * @param other the load before the change
     * @param otherFuel the fuel before the change
     * @return the loading, without a recorded setting
     * @throws IllegalArgumentException if load and fuel do not fit each other, the type or the change
     */
    public Loading with(Load other, Fuel otherFuel) {
        return copy(tail, crew, other, otherFuel, change, OptionalDouble.empty());
    }

    /**
     * The same flight with another crew.
     *
     * @param other crew and pantry
     * @return the loading
     * @throws IllegalArgumentException if the crew does not fit the type
     */
    public Loading with(Crew other) {
        return copy(tail, other, load, fuel, change, recordedTrimUnits);
    }

    /**
     * The same flight on another aircraft; the standard masses stay those by which it counts.
     *
     * @param other the aircraft
     * @return the loading
     * @throws IllegalArgumentException if load, fuel, crew or change do not fit its type
     */
    public Loading with(Tail other) {
        return copy(other, crew, load, fuel, change, recordedTrimUnits);
    }

    private Loading copy(
            Tail otherTail,
            Crew otherCrew,
            Load otherLoad,
            Fuel otherFuel,
            LastMinuteChange otherChange,
            OptionalDouble otherTrimUnits) {
        return new Loading(
                origin,
                flight,
                otherTail,
                setting,
                scheme,
                otherCrew,
                otherLoad,
                otherFuel,
                otherChange,
                performance,
                otherTrimUnits,
                extras,
                blanksAsNone);
    }
}
