package org.steelyard.config;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.steelyard.model.AircraftType;
import org.steelyard.model.CabinZone;
import org.steelyard.model.CrewStation;
import org.steelyard.model.Field;
import org.steelyard.model.Hold;
import org.steelyard.model.Tank;

/** The zones, holds, tanks and crew stations of all types, which the columns of an input may be for. */
record Places(Known<String> zones, Known<String> holds, Known<String> tanks, Known<String> stations) {

    /** The places of some types; complete unless another type is at fault. */
    static Places of(Collection<AircraftType> types, boolean complete) {
        return new Places(
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

    private static Known<String> known(
            String noun, Collection<AircraftType> types, Function<AircraftType, List<String>> ids, boolean complete) {
        Set<String> names =
                types.stream().flatMap(type -> ids.apply(type).stream()).collect(Collectors.toSet());
        return new Known<>(noun, Map.of(), names, complete);
    }

    /** What the column of a field may be for. */
    Accepts<String> forField(Field field) {
        return switch (field) {
            case PASSENGERS, PASSENGER_MASS, PASSENGERS_CHANGE -> checkedBy(zones);
            case HOLD_MASS, HOLD_BAGS, BAG_MASS, HOLD_MASS_CHANGE, HOLD_BAGS_CHANGE -> checkedBy(holds);
            case FUEL, FUEL_CHANGE -> checkedBy(tanks);
            case CREW, CREW_MASS -> checkedBy(stations);
            default ->
                text -> {
                    throw new Unfit("the field " + field.key() + " is for the whole flight", "no place");
                };
        };
    }

    private static Accepts<String> checkedBy(Known<String> known) {
        return text -> {
            known.reference().read(Keys.notBlank(text));
            return text;
        };
    }
}
