package org.steelyard.read.loading;

import java.util.List;

/**
 * One item of a load, or several alike summed up.
 *
 * @param place where it lies
 * @param kind what it is
 * @param measure whether its amount is a mass, a volume or nothing, so that it counts at standard mass
 * @param pieces persons or bags
 * @param amount kg or litres
 */
record LoadItem(ItemPlace place, ItemKind kind, Measure measure, int pieces, double amount) {

    /** What is known of its mass. */
    enum Measure {
        STANDARD,
        KG,
        LITRE;

        static final List<Measure> ALL = List.of(values());
    }
}
