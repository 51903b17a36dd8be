package org.steelyard.remedy;

import java.util.List;

/**
 * What a flight without a breach could still take.
 *
 * @param places room at each zone, then at each hold
 * @param lastMinuteKg largest mass in kg that may come on or go off at any one place, whichever it is, with the limits
 *     of mass, CG and trim kept: what the sheet stands without being made anew; what a place itself can take is in its
 *     room
 */
public record Room(List<PlaceRoom> places, double lastMinuteKg) {

    public Room {
        places = List.copyOf(places);
    }
}
