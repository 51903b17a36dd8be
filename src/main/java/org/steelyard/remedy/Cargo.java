package org.steelyard.remedy;

import org.steelyard.model.unit.Amounts;

/**
 * One kind of load that can be moved: passengers of a category, bags, or mass that can be divided.
 *
 * @param kind what it is
 * @param unitKg mass of a piece in kg; 1 for what can be divided
 * @param persons persons for each piece or kg, for seats
 * @param amounts how much lies at each place, in pieces or kg, in the order of the places
 */
record Cargo(Kind kind, double unitKg, double persons, Amounts amounts) {

    /** Kinds of load, with what one and several are called. */
    enum Kind {
        MALE("male passenger", "male passengers"),
        FEMALE("female passenger", "female passengers"),
        ADULT("passenger", "passengers"),
        CHILD("child", "children"),
        /** Passengers of a zone whose mass is given, at their mean mass. */
        WEIGHED("passenger", "passengers"),
        /** Passengers whose number is not known or not whole. */
        PASSENGER_MASS("", ""),
        BAG("bag", "bags"),
        LOOSE("", "");

        private final String one;
        private final String several;

        Kind(String one, String several) {
            this.one = one;
            this.several = several;
        }

        boolean cabin() {
            return this != BAG && this != LOOSE;
        }

        /** Whether it comes in pieces. */
        boolean whole() {
            return !one.isEmpty();
        }

        String words(long count) {
            return count + " " + (count == 1 ? one : several);
        }
    }
}
