package org.steelyard.read.loading;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.steelyard.model.input.Field;
import org.steelyard.model.input.ProblemCode;
import org.steelyard.model.type.AircraftType;
import org.steelyard.model.type.CabinZone;
import org.steelyard.model.type.CrewStation;
import org.steelyard.model.type.Hold;
import org.steelyard.model.type.Tank;
import org.steelyard.read.text.KnownNames;

/** Finds the places of one type that load items name, and says what an item there is. */
final class ItemPlan {

    private final AircraftType type;
    private final KnownNames zones;
    private final KnownNames holds;
    private final KnownNames tanks;
    private final KnownNames stations;
    private final Map<String, int[]> rows = new HashMap<>();

    ItemPlan(AircraftType type) {
        this.type = type;
        zones = new KnownNames(type.cabin().zones().stream().map(CabinZone::id).toList());
        holds = new KnownNames(type.holds().stream().map(Hold::id).toList());
        tanks = new KnownNames(type.fuel().tanks().stream().map(Tank::id).toList());
        stations = new KnownNames(
                type.cabin().crewStations().stream().map(CrewStation::id).toList());
        for (int zone = 0; zone < type.cabin().zones().size(); zone++) {
            CabinZone cabin = type.cabin().zones().get(zone);
            for (int row = 0; row < cabin.rows().size(); row++) {
                rows.put(cabin.rows().get(row).id().toUpperCase(Locale.ROOT), new int[] {zone, row});
            }
        }
    }

    AircraftType type() {
        return type;
    }

    /** Where an item lies and what it is. */
    ItemSpot find(LoadItem item) throws ItemRefusal {
        ItemSpot spot = spot(item);
        requireFit(item, spot);
        return spot;
    }

    private ItemSpot spot(LoadItem item) throws ItemRefusal {
        ItemPlace place = item.place();
        return switch (place.kind()) {
            case ANYWHERE -> new ItemSpot(ItemPlace.Kind.ANYWHERE, -1, -1, item.kind());
            case NAMED -> named(item);
            case ROW -> row(item).orElseThrow(() -> noPlace(place));
            case ZONE, HOLD, TANK, STATION -> {
                Optional<ItemSpot> found = at(place.kind(), item);
                yield found.orElseThrow(() -> noPlace(place));
            }
        };
    }

    private Optional<ItemSpot> at(ItemPlace.Kind kind, LoadItem item) {
        int index = names(kind).indexOf(item.place().name());
        return index < 0 ? Optional.empty() : Optional.of(new ItemSpot(kind, index, -1, said(item, kind)));
    }

    private KnownNames names(ItemPlace.Kind kind) {
        return switch (kind) {
            case ZONE -> zones;
            case HOLD -> holds;
            case TANK -> tanks;
            case STATION -> stations;
            case ROW, NAMED, ANYWHERE -> new KnownNames(List.of());
        };
    }

    /** What an item is where it does not say so itself. */
    private static ItemKind said(LoadItem item, ItemPlace.Kind place) {
        if (item.kind() != ItemKind.UNSAID) {
            return item.kind();
        }
        return switch (place) {
            case TANK -> ItemKind.FUEL;
            case STATION -> ItemKind.CREW;
            case HOLD -> item.measure() == LoadItem.Measure.STANDARD ? ItemKind.BAGS : ItemKind.CARGO;
            case ZONE, ROW, NAMED, ANYWHERE -> ItemKind.ADULT;
        };
    }

    /** A row by its name, or by a seat in it as 12C; in a zone without a row table it counts at the zone's arm. */
    private Optional<ItemSpot> row(LoadItem item) throws ItemRefusal {
        ItemPlace place = item.place();
        String name = place.name().toUpperCase(Locale.ROOT);
        int[] row = rows.get(name);
        if (row == null) {
            row = rows.get(name.replaceFirst("(?<=[0-9])[A-Z]{1,2}$", ""));
        }
        int zone = place.zone().isEmpty() ? -1 : zones.indexOf(place.zone());
        if (!place.zone().isEmpty() && zone < 0) {
            throw noPlace(new ItemPlace(ItemPlace.Kind.ZONE, place.zone(), ""));
        }
        if (row == null) {
            boolean without = zone >= 0 && type.cabin().zones().get(zone).rows().isEmpty();
            return without
                    ? Optional.of(new ItemSpot(ItemPlace.Kind.ZONE, zone, -1, said(item, ItemPlace.Kind.ROW)))
                    : Optional.empty();
        }
        if (zone >= 0 && zone != row[0]) {
            String of = zones.known().get(row[0]);
            throw new ItemRefusal(
                    Field.ITEM_ZONE,
                    ProblemCode.CONTRADICTION,
                    "seat row " + place.name() + " of type " + type.id() + " is in zone " + of,
                    place.zone(),
                    of + ", or a blank cell");
        }
        return Optional.of(new ItemSpot(ItemPlace.Kind.ROW, row[0], row[1], said(item, ItemPlace.Kind.ROW)));
    }

    /** A name without the kind of its place: of the places that have it, the one where such an item can lie. */
    private ItemSpot named(LoadItem item) throws ItemRefusal {
        List<ItemSpot> found = new ArrayList<>();
        List<ItemSpot> fitting = new ArrayList<>();
        for (ItemPlace.Kind kind : ItemPlace.Kind.values()) {
            Optional<ItemSpot> spot = kind == ItemPlace.Kind.ROW ? row(item) : at(kind, item);
            if (spot.isPresent()) {
                found.add(spot.get());
                if (fits(spot.get().where(), spot.get().kind(), item.measure())) {
                    fitting.add(spot.get());
                }
            }
        }
        if (found.isEmpty()) {
            throw noPlace(item.place());
        }
        List<ItemSpot> best = fitting.isEmpty() ? found : fitting;
        Optional<ItemSpot> hold =
                item.kind() == ItemKind.BAGS || item.kind() == ItemKind.CARGO ? hold(best) : Optional.empty();
        if (best.size() > 1 && hold.isEmpty()) {
            throw new ItemRefusal(
                    Field.ITEM_PLACE,
                    ProblemCode.CONTRADICTION,
                    "type " + type.id() + " has a " + best.get(0).where().word() + " and a "
                            + best.get(1).where().word() + " of this name",
                    item.place().name(),
                    "a kind of item that fits one of them, or a column for each kind of place");
        }
        return hold.orElse(best.get(0));
    }

    /** Bags and cargo whose place is named like a hold and something else lie in the hold. */
    private static Optional<ItemSpot> hold(List<ItemSpot> spots) {
        return spots.stream()
                .filter(spot -> spot.where() == ItemPlace.Kind.HOLD)
                .findFirst();
    }

    private static boolean fits(ItemPlace.Kind where, ItemKind kind, LoadItem.Measure measure) {
        boolean bulk = kind == ItemKind.BAGS || kind == ItemKind.CARGO;
        return switch (where) {
            case ZONE, ROW -> (kind.category().isPresent() || bulk) && measure != LoadItem.Measure.LITRE;
            case HOLD -> bulk && measure != LoadItem.Measure.LITRE;
            case TANK -> kind == ItemKind.FUEL && measure != LoadItem.Measure.STANDARD;
            case STATION -> kind == ItemKind.CREW && measure != LoadItem.Measure.LITRE;
            case NAMED, ANYWHERE -> kind != ItemKind.CREW;
        };
    }

    private void requireFit(LoadItem item, ItemSpot spot) throws ItemRefusal {
        if (fits(spot.where(), spot.kind(), item.measure())) {
            return;
        }
        if (item.measure() == LoadItem.Measure.LITRE && spot.kind() != ItemKind.FUEL) {
            throw new ItemRefusal(
                    Field.ITEM_MASS,
                    ProblemCode.CONTRADICTION,
                    "a volume for " + spot.kind().word(),
                    "",
                    "a mass; only fuel is given by volume");
        }
        if (spot.kind() == ItemKind.FUEL && item.measure() == LoadItem.Measure.STANDARD) {
            throw new ItemRefusal(
                    Field.ITEM_MASS, ProblemCode.MISSING, "fuel without its mass", "", "a mass or volume, 0 for none");
        }
        throw new ItemRefusal(
                Field.ITEM_KIND,
                ProblemCode.CONTRADICTION,
                spot.kind().word() + " cannot be "
                        + (spot.where() == ItemPlace.Kind.ANYWHERE
                                ? "given without a place"
                                : "in a " + spot.where().word()),
                item.kind() == ItemKind.UNSAID ? "" : item.kind().word(),
                "passengers in zones and seat rows, bags and cargo in holds or zones, fuel in tanks,"
                        + " crew at crew stations");
    }

    private ItemRefusal noPlace(ItemPlace place) {
        String has = switch (place.kind()) {
            case ZONE -> zones.toString();
            case HOLD -> holds.toString();
            case TANK -> tanks.toString();
            case STATION -> stations.toString();
            case ROW -> rowsInWords();
            case NAMED, ANYWHERE ->
                "zones " + zones + "; holds " + holds + "; tanks " + tanks + "; crew stations " + stations
                        + "; seat rows " + rowsInWords();
        };
        return new ItemRefusal(
                place.kind().slot(),
                ProblemCode.UNKNOWN_NAME,
                "type " + type.id() + " has no such " + place.kind().word(),
                place.name(),
                "one of " + has);
    }

    private String rowsInWords() {
        List<String> spans = new ArrayList<>();
        for (CabinZone zone : type.cabin().zones()) {
            if (!zone.rows().isEmpty()) {
                String first = zone.rows().get(0).id();
                String last = zone.rows().get(zone.rows().size() - 1).id();
                spans.add(first.equals(last) ? first : first + " to " + last);
            }
        }
        return spans.isEmpty() ? "none: its file has no row table" : String.join(", ", spans);
    }
}
