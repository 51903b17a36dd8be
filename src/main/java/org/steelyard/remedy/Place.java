package org.steelyard.remedy;

/**
 * A zone or hold of a flight.
 *
 * @param cabin true for a zone, false for a hold
 * @param index position among the type's zones or holds
 * @param name name in words
 * @param armM arm in m from the datum, aft positive
 * @param massKg what lies there in kg
 * @param mostKg the most that it may carry in kg; infinite for a zone
 * @param seated persons on its seats
 * @param seats number of seats; 0 for a hold
 */
record Place(
        boolean cabin, int index, String name, double armM, double massKg, double mostKg, double seated, int seats) {}
