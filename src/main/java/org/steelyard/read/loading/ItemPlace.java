package org.steelyard.read.loading;

import java.util.Comparator;
import org.steelyard.model.input.Field;

/**
 * Where an item says that it lies. Comparable, so that a map of names with the same hash code is searched in order and
 * not one by one.
 *
 * @param kind which of the type's places the name is for
 * @param name name as it stands there; blank for nowhere in particular
 * @param zone zone that stands beside a seat row; blank for none
 */
record ItemPlace(Kind kind, String name, String zone) implements Comparable<ItemPlace> {

    private static final Comparator<ItemPlace> ORDER =
            Comparator.comparing(ItemPlace::kind).thenComparing(ItemPlace::name).thenComparing(ItemPlace::zone);

    /** Kinds of places. */
    enum Kind {
        ZONE("zone", Field.ITEM_ZONE),
        ROW("seat row", Field.ITEM_ROW),
        HOLD("hold", Field.ITEM_HOLD),
        TANK("tank", Field.ITEM_TANK),
        STATION("crew station", Field.ITEM_STATION),
        /** Whichever has the name. */
        NAMED("place", Field.ITEM_PLACE),
        /** Nowhere in particular: the item adds to a total. */
        ANYWHERE("place", Field.ITEM_PLACE);

        private final String word;
        private final Field slot;

        Kind(String word, Field slot) {
            this.word = word;
            this.slot = slot;
        }

        String word() {
            return word;
        }

        /** What its column is. */
        Field slot() {
            return slot;
        }
    }

    static final ItemPlace ANYWHERE = new ItemPlace(Kind.ANYWHERE, "", "");

    @Override
    public int compareTo(ItemPlace other) {
        return ORDER.compare(this, other);
    }
}
