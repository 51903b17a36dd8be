package org.steelyard.model.type;

import java.util.List;
import org.steelyard.model.unit.Require;

/**
 * A type's crew, pantry and passenger zones.
 *
 * @param zones cabin zones from front to back; may be empty for a freighter
 * @param crewStations seats of the crew, in the order in which they fill
 * @param flightCrew standard number of flight crew
 * @param cabinCrew standard number of cabin crew
 * @param pantries pantry variations; the first is the standard one; empty where there is none
 * @param scheme standard masses
 */
public record Cabin(
        List<CabinZone> zones,
        List<CrewStation> crewStations,
        int flightCrew,
        int cabinCrew,
        List<Pantry> pantries,
        MassScheme scheme) {

    /**
     * Checks the values.
     *
     * @throws IllegalArgumentException if the standard crew has no seats
     */
    public Cabin {
        zones = List.copyOf(zones);
        crewStations = List.copyOf(crewStations);
        pantries = List.copyOf(pantries);
        Require.that(
                flightCrew >= 0 && flightCrew <= seats(crewStations, CrewRole.FLIGHT),
                "the standard flight crew of " + flightCrew + " needs as many seats");
        Require.that(
                cabinCrew >= 0 && cabinCrew <= seats(crewStations, CrewRole.CABIN),
                "the standard cabin crew of " + cabinCrew + " needs as many seats");
    }

    private static int seats(List<CrewStation> stations, CrewRole role) {
        int seats = 0;
        for (int i = 0; i < stations.size(); i++) {
            seats += stations.get(i).role() == role ? stations.get(i).seats() : 0;
        }
        return seats;
    }

    /**
     * Seats of a role.
     *
     * @param role flight or cabin crew
     * @return how many crew of it can sit
     */
    public int crewSeats(CrewRole role) {
        return seats(crewStations, role);
    }

    /**
     * The standard number of crew of a role.
     *
     * @param role flight or cabin crew
     * @return how many fly where an input does not say
     */
    public int standardCrew(CrewRole role) {
        return role == CrewRole.FLIGHT ? flightCrew : cabinCrew;
    }

    /**
     * Passenger seats.
     *
     * @return sum over the zones
     */
    public int seats() {
        int seats = 0;
        for (int i = 0; i < zones.size(); i++) {
            seats += zones.get(i).seats();
        }
        return seats;
    }
}
