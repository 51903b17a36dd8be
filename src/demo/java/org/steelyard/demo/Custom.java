package org.steelyard.demo;

/**
 * How a type of the airline is flown; masses in kg.
 *
 * @param leastTaxiKg least taxi fuel
 * @param mostTaxiKg most taxi fuel
 * @param leastReserveKg least fuel left at landing
 * @param mostReserveKg most fuel left at landing
 * @param unevenKg largest difference that refuelling leaves between left and right
 * @param landingFlaps usual landing flap setting; blank where none is noted
 * @param leastTargetPercentMac most forward zero-fuel CG that loaders aim for
 * @param mostTargetPercentMac most aft one
 */
record Custom(
        int leastTaxiKg,
        int mostTaxiKg,
        int leastReserveKg,
        int mostReserveKg,
        int unevenKg,
        String landingFlaps,
        double leastTargetPercentMac,
        double mostTargetPercentMac) {

    static final Custom JET = new Custom(120, 260, 2300, 3600, 60, "30", 17, 33);
    static final Custom PROP = new Custom(30, 70, 550, 900, 25, "", 19, 32);
}
