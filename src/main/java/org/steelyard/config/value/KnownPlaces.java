package org.steelyard.config.value;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.steelyard.model.input.Field;
import org.steelyard.model.type.AircraftType;
import org.steelyard.model.type.CabinZone;
import org.steelyard.model.type.CrewStation;
import org.steelyard.model.type.Hold;
import org.steelyard.model.type.Tank;

/** The zones, holds, tanks and crew stations of all types, which the columns of an input may be for. */
public record KnownPlaces(
        KnownValues<String> zones, KnownValues<String> holds, KnownValues<String> tanks, KnownValues<String> stations) {

    /** The places of some types; complete unless another type is at fault. */
    public static KnownPlaces of(Collection<AircraftType> types, boolean complete) {
        return new KnownPlaces(
                known(
                        "zone",
                        types,
                        type -> type.cabin().zones().stream().map(CabinZone::id).toList(),
                        complete),
                known("hold", types, type -> type.holds().stream().map(Hold::id).toList(), complete),
                known(
                        "tank",
                        types,
                        type -> type.fuel().tanks().stream().map(Tank::id).toList(),
                        complete),
                known(
                        "crew station",
                        types,
                        type -> type.cabin().crewStations().stream()
                                .map(CrewStation::id)
                                .toList(),
                        complete));
    }

    private static KnownValues<String> known(
            String noun, Collection<AircraftType> types, Function<AircraftType, List<String>> ids, boolean complete) {
        Set<String> names =
                types.stream().flatMap(type -> ids.apply(type).stream()).collect(Collectors.toSet());
        return new KnownValues<>(noun, Map.of(), names, complete);
    }

    /** What the column of a field may be for. */
    public Accepts<String> forField(Field field) {
        return switch (field) {
            case PASSENGERS, PASSENGER_MASS, PASSENGERS_CHANGE -> checkedBy(zones);
            case HOLD_MASS, HOLD_BAGS, BAG_MASS, HOLD_MASS_CHANGE, HOLD_BAGS_CHANGE -> checkedBy(holds);
            case FUEL, FUEL_CHANGE -> checkedBy(tanks);
            case CREW, CREW_MASS -> checkedBy(stations);
            default ->
                text -> {
                    throw new NotAcceptedException("the field " + field.key() + " is for the whole flight", "no place");
                };
        };
    }

    private static Accepts<String> checkedBy(KnownValues<String> known) {
        return text -> {
            known.reference().read(Keys.notBlank(text));
            return text;
        };
    }
}
