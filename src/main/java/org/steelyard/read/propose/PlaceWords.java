package org.steelyard.read.propose;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.steelyard.model.input.Field;
import org.steelyard.model.type.AircraftType;
import org.steelyard.model.type.CabinZone;
import org.steelyard.model.type.Hold;
import org.steelyard.model.type.Tank;

/** The zones, holds and tanks of some types by the words that headings may have for them. */
final class PlaceWords {

    /** The place that a heading names, if it is known, and whether it names one at all. */
    record Found(Optional<String> place, boolean named) {}

    private static final Map<String, String> SAME = Map.ofEntries(
            Map.entry("l", "left"),
            Map.entry("lh", "left"),
            Map.entry("port", "left"),
            Map.entry("r", "right"),
            Map.entry("rh", "right"),
            Map.entry("stbd", "right"),
            Map.entry("starboard", "right"),
            Map.entry("c", "centre"),
            Map.entry("ctr", "centre"),
            Map.entry("center", "centre"),
            Map.entry("mid", "centre"),
            Map.entry("middle", "centre"),
            Map.entry("fwd", "front"),
            Map.entry("forward", "front"),
            Map.entry("aft", "rear"),
            Map.entry("back", "rear"));

    private final Map<List<String>, String> zones = new LinkedHashMap<>();
    private final Map<List<String>, String> holds = new LinkedHashMap<>();
    private final Map<List<String>, String> tanks = new LinkedHashMap<>();

    PlaceWords(Collection<AircraftType> types) {
        for (AircraftType type : types) {
            for (CabinZone zone : type.cabin().zones()) {
                add(zones, zone.id(), zone.name());
            }
            for (Hold hold : type.holds()) {
                add(holds, hold.id(), hold.name());
            }
            for (Tank tank : type.fuel().tanks()) {
                add(tanks, tank.id(), tank.name());
            }
        }
    }

    private static void add(Map<List<String>, String> places, String id, String name) {
        places.putIfAbsent(same(HeadingTokens.of(id).without(List.of())), id);
        List<String> words = same(HeadingTokens.of(name).without(FieldWords.PLAIN));
        if (!words.isEmpty()) {
            places.putIfAbsent(words, id);
        }
    }

    private static List<String> same(List<String> words) {
        List<String> same = new ArrayList<>();
        for (String word : words) {
            same.add(SAME.getOrDefault(word, word));
        }
        return same;
    }

    /** The place that a heading is for: none where it names none, and a name that is not known is no place. */
    Found find(Field field, HeadingTokens words) {
        List<String> rest = same(words.without(FieldWords.PLAIN));
        return new Found(Optional.ofNullable(places(field).get(rest)), !rest.isEmpty());
    }

    /** The places of a field in words. */
    String known(Field field) {
        return String.join(", ", places(field).values().stream().distinct().toList());
    }

    private Map<List<String>, String> places(Field field) {
        return switch (field) {
            case PASSENGERS, PASSENGER_MASS -> zones;
            case HOLD_MASS, HOLD_BAGS -> holds;
            case FUEL -> tanks;
            default -> Map.of();
        };
    }

    /** Whether a field may be for a place. */
    static boolean hasPlaces(Field field) {
        return switch (field) {
            case PASSENGERS, PASSENGER_MASS, HOLD_MASS, HOLD_BAGS, FUEL -> true;
            default -> false;
        };
    }

    /** What a place of the field is called. */
    static String noun(Field field) {
        return switch (field) {
            case PASSENGERS, PASSENGER_MASS -> "zone";
            case FUEL -> "tank";
            default -> "hold";
        };
    }
}
