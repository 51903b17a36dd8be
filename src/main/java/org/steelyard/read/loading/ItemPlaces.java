package org.steelyard.read.loading;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The places that items name, each once, by number. */
final class ItemPlaces {

    private final Map<ItemPlace, Short> numbers = new HashMap<>();
    private final List<ItemPlace> places = new ArrayList<>();

    /** Whether one more can be held: names in place columns are few, unless the column is not one of places. */
    boolean takes(ItemPlace place) {
        return places.size() < Short.MAX_VALUE || numbers.containsKey(place);
    }

    short number(ItemPlace place) {
        return numbers.computeIfAbsent(place, added -> {
            places.add(added);
            return (short) (places.size() - 1);
        });
    }

    ItemPlace at(int number) {
        return places.get(number);
    }
}
