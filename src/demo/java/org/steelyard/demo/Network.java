package org.steelyard.demo;

import java.util.List;

/** The invented airline's routes from its base at Port Amber, and who flies them. */
final class Network {

    static final String BASE = "AMBRP";

    /**
     * A route from the base and back.
     *
     * @param place code of the other end; five letters, so that no real airport is meant
     * @param number first of the two flight numbers
     * @param tripKg usual trip fuel
     * @param seatsPercent usual part of the seats that is taken
     * @param cargoKg usual cargo
     * @param flaps usual take-off flap setting there and back
     */
    record Route(String place, int number, int tripKg, int seatsPercent, int cargoKg, String flaps) {}

    static final List<Route> JET = List.of(
            new Route("HIMOR", 101, 3900, 78, 600, "5"),
            new Route("CASTL", 121, 5100, 84, 400, "5"),
            new Route("VERDA", 141, 6400, 88, 300, "1"),
            new Route("NORHK", 161, 7900, 74, 900, "1"),
            new Route("SOLIS", 181, 9600, 86, 200, "1"),
            new Route("SHORT", 191, 2900, 66, 700, "15"));

    static final List<Route> PROP = List.of(
            new Route("SALTM", 301, 620, 72, 120, "10"),
            new Route("GULLH", 311, 480, 64, 160, "15"),
            new Route("THORQ", 321, 900, 80, 90, "10"),
            new Route("MARRB", 331, 760, 70, 200, "10"),
            new Route("FENNH", 341, 1050, 76, 60, "10"));

    static final List<String> CLUB = List.of("ORIEL", "SUNDP", "LANTI", "KELPS", BASE);

    static final List<String> PILOTS = List.of(
            "kestrel7",
            "puffin12",
            "blueheron",
            "saltwind",
            "tern_two",
            "oldskerry",
            "fulmar",
            "gannet44",
            "nightjar",
            "seafret",
            "windlass",
            "marlin3",
            "curlew9",
            "halyard");

    static final List<String> MEMBERS = List.of("Renée K", "Zoë", "Søren B", "Jörg", "Maud", "Íris", "Tobias", "Wim");

    private Network() {}

    /** How full the flights are in a month, against the usual: fullest in August. */
    static double seasonFactor(int month) {
        return switch (month) {
            case 4 -> 0.86;
            case 5 -> 0.92;
            case 6 -> 0.98;
            case 7 -> 1.05;
            case 8 -> 1.08;
            default -> 0.94;
        };
    }
}
