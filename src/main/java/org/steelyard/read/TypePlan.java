package org.steelyard.read;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.steelyard.model.AircraftType;
import org.steelyard.model.CabinZone;
import org.steelyard.model.Hold;
import org.steelyard.model.Pantry;
import org.steelyard.model.Phase;
import org.steelyard.model.Tank;
import org.steelyard.model.TrimScale;

/** What each column of one file means for one type, looked up once; or for a row whose tail is unknown. */
final class TypePlan {

    /** The column is for no place, or no type is known. */
    static final int NO_PLACE = -1;

    /** The column is for a place that the type does not have. */
    static final int STRANGE_PLACE = -2;

    private final Optional<AircraftType> type;
    private final int[] places;
    private final Names zones;
    private final Names holds;
    private final Names tanks;
    private final Names flaps;
    private final Names landingFlaps;
    private final Names thrusts;
    private final Names pantries;

    TypePlan(AircraftType type, List<BoundColumn> columns) {
        this.type = Optional.of(type);
        zones = new Names(type.cabin().zones().stream().map(CabinZone::id).toList());
        holds = new Names(type.holds().stream().map(Hold::id).toList());
        tanks = new Names(type.fuel().tanks().stream().map(Tank::id).toList());
        flaps = flaps(type, Phase.TAKEOFF);
        landingFlaps = flaps(type, Phase.LANDING);
        thrusts = new Names(type.trimScales().stream()
                .map(TrimScale::thrustRating)
                .filter(Predicate.not(String::isBlank))
                .toList());
        pantries = new Names(type.cabin().pantries().stream().map(Pantry::code).toList());
        places = columns.stream().mapToInt(this::find).toArray();
    }

    private TypePlan(int columns) {
        type = Optional.empty();
        Names none = new Names(List.of());
        zones = none;
        holds = none;
        tanks = none;
        flaps = none;
        landingFlaps = none;
        thrusts = none;
        pantries = none;
        places = new int[columns];
        Arrays.fill(places, NO_PLACE);
    }

    /** For rows whose tail is unknown: what can be checked without a type. */
    static TypePlan unknownType(int columns) {
        return new TypePlan(columns);
    }

    private static Names flaps(AircraftType type, Phase phase) {
        return new Names(type.trimScales().stream()
                .filter(scale -> scale.phase() == phase)
                .map(TrimScale::flaps)
                .toList());
    }

    private int find(BoundColumn column) {
        if (column.rule().place().isBlank()) {
            return NO_PLACE;
        }
        Optional<Names> names = placesOf(column.slot());
        if (names.isEmpty()) {
            return NO_PLACE;
        }
        int index = names.get().indexOf(column.rule().place());
        return index < 0 ? STRANGE_PLACE : index;
    }

    private Optional<Names> placesOf(Slot slot) {
        return switch (slot) {
            case ZONE_COUNT, ZONE_INFANTS, ZONE_MASS -> Optional.of(zones);
            case HOLD_MASS, HOLD_BAGS -> Optional.of(holds);
            case TANK -> Optional.of(tanks);
            default -> Optional.empty();
        };
    }

    Optional<AircraftType> type() {
        return type;
    }

    /** The zone, hold or tank of a column, or {@link #NO_PLACE} or {@link #STRANGE_PLACE}. */
    int place(BoundColumn column) {
        return places[column.order()];
    }

    int zoneCount() {
        return zones.known().size();
    }

    int holdCount() {
        return holds.known().size();
    }

    int tankCount() {
        return tanks.known().size();
    }

    /** Says that the type lacks the place of a column, and which it has. */
    String strangePlace(BoundColumn column) {
        String kind = switch (column.slot()) {
            case ZONE_COUNT, ZONE_INFANTS, ZONE_MASS -> "zone";
            case TANK -> "tank";
            default -> "hold";
        };
        String has = placesOf(column.slot()).map(Names::toString).orElse("none");
        return "type " + type.map(AircraftType::id).orElse("?") + " has no " + kind + " "
                + column.rule().place() + "; it has " + has;
    }

    /** The names that a text must be one of; empty where any will do. */
    Optional<Names> namesFor(Slot slot) {
        return switch (slot) {
            case FLAPS -> flaps.isEmpty() ? Optional.empty() : Optional.of(flaps);
            case LANDING_FLAPS -> landingFlaps.isEmpty() ? Optional.empty() : Optional.of(landingFlaps);
            case THRUST -> thrusts.isEmpty() ? Optional.empty() : Optional.of(thrusts);
            case PANTRY -> type.isEmpty() ? Optional.empty() : Optional.of(pantries);
            default -> Optional.empty();
        };
    }
}
