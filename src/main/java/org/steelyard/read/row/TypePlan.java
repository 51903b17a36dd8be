package org.steelyard.read.row;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.input.BlankLoad;
import org.steelyard.model.input.Slot;
import org.steelyard.model.trim.FlapName;
import org.steelyard.model.trim.TrimScale;
import org.steelyard.model.trim.TrimUnit;
import org.steelyard.model.type.AircraftType;
import org.steelyard.model.type.CabinZone;
import org.steelyard.model.type.CrewStation;
import org.steelyard.model.type.Hold;
import org.steelyard.model.type.Pantry;
import org.steelyard.model.type.Tank;
import org.steelyard.read.heading.BoundColumn;
import org.steelyard.read.text.KnownNames;

/** What each column of one file means for one type, looked up once; or for a row whose tail is unknown. */
public final class TypePlan {

    /** The column is for no place, or no type is known. */
    static final int NO_PLACE = -1;

    /** The column is for a place that the type does not have. */
    static final int STRANGE_PLACE = -2;

    private final Optional<AircraftType> type;
    private final int[] places;
    private final BlankPlaces blankPlaces;
    private final KnownNames zones;
    private final KnownNames holds;
    private final KnownNames tanks;
    private final KnownNames flaps;
    private final KnownNames landingFlaps;
    private final KnownNames thrusts;
    private final KnownNames pantries;
    private final KnownNames stations;
    private final KnownNames schemes;
    private final TrimUnit.Numbering trimNumbering;

    public TypePlan(AircraftType type, List<BoundColumn> columns, KnownNames schemes, BlankLoad blank) {
        this.type = Optional.of(type);
        trimNumbering = type.trimUnit(Phase.TAKEOFF).map(TrimUnit::numbering).orElse(TrimUnit.Numbering.UP_DN);
        this.schemes = schemes;
        stations = new KnownNames(
                type.cabin().crewStations().stream().map(CrewStation::id).toList());
        zones = new KnownNames(type.cabin().zones().stream().map(CabinZone::id).toList());
        holds = new KnownNames(type.holds().stream().map(Hold::id).toList());
        tanks = new KnownNames(type.fuel().tanks().stream().map(Tank::id).toList());
        flaps = flaps(type, Phase.TAKEOFF);
        landingFlaps = flaps(type, Phase.LANDING);
        thrusts = new KnownNames(type.trimScales().stream()
                .map(TrimScale::thrustRating)
                .filter(Predicate.not(String::isBlank))
                .toList());
        pantries = new KnownNames(
                type.cabin().pantries().stream().map(Pantry::code).toList());
        places = columns.stream().mapToInt(this::find).toArray();
        blankPlaces = new BlankPlaces(columns, blank, this::place);
    }

    private TypePlan(int columns, KnownNames schemes) {
        type = Optional.empty();
        trimNumbering = TrimUnit.Numbering.UP_DN;
        this.schemes = schemes;
        KnownNames none = new KnownNames(List.of());
        stations = none;
        zones = none;
        holds = none;
        tanks = none;
        flaps = none;
        landingFlaps = none;
        thrusts = none;
        pantries = none;
        places = new int[columns];
        Arrays.fill(places, NO_PLACE);
        blankPlaces = BlankPlaces.NONE;
    }

    /** For rows whose tail is unknown: what can be checked without a type. */
    public static TypePlan unknownType(int columns, KnownNames schemes) {
        return new TypePlan(columns, schemes);
    }

    private static KnownNames flaps(AircraftType type, Phase phase) {
        return new KnownNames(type.trimScales().stream()
                .filter(scale -> scale.phase() == phase)
                .map(TrimScale::flaps)
                .toList());
    }

    private int find(BoundColumn column) {
        if (column.rule().place().isBlank()) {
            return NO_PLACE;
        }
        Optional<KnownNames> names = placesOf(column.slot());
        if (names.isEmpty()) {
            return NO_PLACE;
        }
        int index = names.get().indexOf(column.rule().place());
        return index < 0 ? STRANGE_PLACE : index;
    }

    private Optional<KnownNames> placesOf(Slot slot) {
        if (slot.isTotal()) {
            return Optional.empty();
        }
        return switch (slot.field()) {
            case PASSENGERS, PASSENGER_MASS, PASSENGERS_CHANGE -> Optional.of(zones);
            case HOLD_MASS, HOLD_BAGS, BAG_MASS, HOLD_MASS_CHANGE, HOLD_BAGS_CHANGE -> Optional.of(holds);
            case FUEL, FUEL_CHANGE -> Optional.of(tanks);
            case CREW, CREW_MASS -> Optional.of(stations);
            default -> Optional.empty();
        };
    }

    public Optional<AircraftType> type() {
        return type;
    }

    /** The zone, hold or tank of a column, or {@link #NO_PLACE} or {@link #STRANGE_PLACE}. */
    public int place(BoundColumn column) {
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

    int stationCount() {
        return stations.known().size();
    }

    /** Says that the type lacks the place of a column, and which it has. */
    String strangePlace(BoundColumn column) {
        String kind = switch (column.rule().field()) {
            case PASSENGERS, PASSENGER_MASS, PASSENGERS_CHANGE -> "zone";
            case FUEL, FUEL_CHANGE -> "tank";
            case CREW, CREW_MASS -> "crew station";
            default -> "hold";
        };
        String has = placesOf(column.slot()).map(KnownNames::toString).orElse("none");
        return "type " + type.map(AircraftType::id).orElse("?") + " has no " + kind + " "
                + column.rule().place() + "; it has " + has;
    }

    /**
     * A text of a row as the type writes it; empty where it must be one of {@link #namesFor} and is not. Settings that
     * the type has no scale for are kept as they are: mass and CG are known without.
     */
    Optional<String> known(Slot slot, String text) {
        return switch (slot.field()) {
            case FLAPS -> Optional.of(setting(flaps, FlapName.of(text)));
            case LANDING_FLAPS -> Optional.of(setting(landingFlaps, FlapName.of(text)));
            case THRUST -> Optional.of(setting(thrusts, text));
            default -> {
                Optional<KnownNames> names = namesFor(slot);
                yield names.isEmpty() ? Optional.of(text) : names.get().find(text);
            }
        };
    }

    private static String setting(KnownNames names, String text) {
        return names.find(text).orElse(text);
    }

    /** The names that a text must be one of; empty where any will do. */
    Optional<KnownNames> namesFor(Slot slot) {
        return switch (slot.field()) {
            case SCHEME -> Optional.of(schemes);
            case PANTRY -> type.isEmpty() ? Optional.empty() : Optional.of(pantries);
            default -> Optional.empty();
        };
    }

    public BlankPlaces blankPlaces() {
        return blankPlaces;
    }

    /** How the settings of the type's take-off scales are written. */
    TrimUnit.Numbering trimNumbering() {
        return trimNumbering;
    }
}
