package org.steelyard.check.flight;

import java.util.List;
import org.steelyard.check.result.LimitingMass;
import org.steelyard.check.result.TrafficLoad;
import org.steelyard.model.limit.MassLimits;
import org.steelyard.model.loading.PerformanceLimits;
import org.steelyard.model.unit.Tolerance;

/**
 * The take-off masses that the limits allow with the fuel of one flight, and what follows from the least of them. A
 * limit of another state is carried over to take-off by the fuel between the two:
 *
 * <ul>
 *   <li>zero fuel: maximum zero-fuel mass + take-off fuel;
 *   <li>take-off: the structure's and the day's maximum themselves;
 *   <li>landing: maximum landing mass, the structure's or the day's, + trip fuel;
 *   <li>ramp: maximum ramp mass - taxi fuel.
 * </ul>
 *
 * <p>The traffic load allowed is the least of them less take-off fuel and dry operating mass. All masses in kg.
 * Sources: 14 CFR 121.693; CAT.POL.MAB.105.
 */
public final class LimitingMasses {

    private static final List<LimitingMass> LIMITS = List.of(LimitingMass.values());
    private static final List<LimitingMass> BUT_ZERO_FUEL =
            LIMITS.stream().filter(limit -> limit != LimitingMass.ZERO_FUEL).toList();

    private final MassLimits limits;
    private final PerformanceLimits performance;
    private final double rampFuelKg;
    private final double takeoffFuelKg;
    private final double landingFuelKg;
    private final LimitingMass limitedBy;

    private LimitingMasses(
            MassLimits limits,
            PerformanceLimits performance,
            double rampFuelKg,
            double takeoffFuelKg,
            double landingFuelKg) {
        this.limits = limits;
        this.performance = performance;
        this.rampFuelKg = rampFuelKg;
        this.takeoffFuelKg = takeoffFuelKg;
        this.landingFuelKg = landingFuelKg;
        this.limitedBy = least(LIMITS);
    }

    /**
     * Carries each limit over to take-off.
     *
     * @param limits the type's limits
     * @param performance limits of the day
     * @param rampFuelKg fuel aboard before taxi in kg
     * @param takeoffFuelKg fuel aboard at take-off in kg
     * @param landingFuelKg fuel aboard at landing in kg
     * @return the take-off mass that each limit allows
     */
    public static LimitingMasses of(
            MassLimits limits,
            PerformanceLimits performance,
            double rampFuelKg,
            double takeoffFuelKg,
            double landingFuelKg) {
        return new LimitingMasses(limits, performance, rampFuelKg, takeoffFuelKg, landingFuelKg);
    }

    /** The limit that allows least; of equals the first. */
    private LimitingMass least(List<LimitingMass> among) {
        LimitingMass least = among.get(0);
        for (int i = 1; i < among.size(); i++) {
            if (Tolerance.isBelowKg(takeoffKg(among.get(i)), takeoffKg(least))) {
                least = among.get(i);
            }
        }
        return least;
    }

    /**
     * The take-off mass that one limit allows.
     *
     * @param limit which
     * @return mass in kg; positive infinity where the day sets no such limit
     */
    public double takeoffKg(LimitingMass limit) {
        double tripKg = takeoffFuelKg - landingFuelKg;
        return switch (limit) {
            case ZERO_FUEL -> limits.maxZeroFuelKg() + takeoffFuelKg;
            case TAKEOFF -> limits.maxTakeoffKg();
            case TAKEOFF_PERFORMANCE -> performance.takeoffKg().orElse(Double.POSITIVE_INFINITY);
            case LANDING -> limits.maxLandingKg() + tripKg;
            case LANDING_PERFORMANCE -> performance.landingKg().orElse(Double.POSITIVE_INFINITY) + tripKg;
            case RAMP -> limits.maxRampKg() - (rampFuelKg - takeoffFuelKg);
        };
    }

    /**
     * The take-off mass that all limits allow.
     *
     * @return the least of them in kg
     */
    public double maxTakeoffKg() {
        return takeoffKg(limitedBy);
    }

    /**
     * Which limit allows least.
     *
     * @return the limit; of equal ones the first in the order of {@link LimitingMass}
     */
    public LimitingMass limitedBy() {
        return limitedBy;
    }

    /**
     * The traffic load allowed.
     *
     * @param dryOperatingKg dry operating mass in kg
     * @param actualKg traffic load aboard in kg
     * @return allowed and aboard; their difference is the underload, and so the room for a last-minute change
     */
    public TrafficLoad trafficLoad(double dryOperatingKg, double actualKg) {
        return new TrafficLoad(maxTakeoffKg() - takeoffFuelKg - dryOperatingKg, actualKg, limitedBy);
    }

    /**
     * How much more fuel may be taken with the same load and the same burn. The zero-fuel limit has no say in it.
     *
     * @param takeoffMassKg take-off mass as planned in kg
     * @param tankRoomKg what the tanks can still hold in kg
     * @return fuel in kg; negative if the planned mass is too high already
     */
    public double fuelRoomKg(double takeoffMassKg, double tankRoomKg) {
        double byMassKg = takeoffKg(least(BUT_ZERO_FUEL)) - takeoffMassKg;
        return Math.min(byMassKg, tankRoomKg);
    }
}
