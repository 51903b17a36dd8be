package org.steelyard.check;

import java.util.OptionalDouble;
import org.steelyard.balance.FuelBalance;
import org.steelyard.model.MassLimits;
import org.steelyard.model.MassMoment;
import org.steelyard.model.PerformanceLimits;

/** Works out the traffic load allowed. */
final class TrafficLoadCheck {

    private double allowedKg = Double.POSITIVE_INFINITY;
    private LimitingMass limitedBy = LimitingMass.ZERO_FUEL;

    private TrafficLoadCheck() {}

    /**
     * The least of what each limit leaves above the dry operating mass and the fuel aboard in that state.
     *
     * @param dryOperating dry operating mass
     * @param zeroFuel zero-fuel mass
     * @param fuel fuel in each state
     * @param limits the type's limits
     * @param performance limits of the day
     * @return traffic load allowed and aboard
     */
    static TrafficLoad of(
            MassMoment dryOperating,
            MassMoment zeroFuel,
            FuelBalance fuel,
            MassLimits limits,
            PerformanceLimits performance) {
        double dryKg = dryOperating.massKg();
        double takeoffFuelKg = fuel.takeoffKg().sum();
        double landingFuelKg = fuel.landingKg().sum();
        TrafficLoadCheck least = new TrafficLoadCheck();
        least.consider(limits.maxZeroFuelKg() - dryKg, LimitingMass.ZERO_FUEL);
        least.consider(limits.maxTakeoffKg() - takeoffFuelKg - dryKg, LimitingMass.TAKEOFF);
        least.consider(performance.takeoffKg(), takeoffFuelKg + dryKg, LimitingMass.TAKEOFF_PERFORMANCE);
        least.consider(limits.maxLandingKg() - landingFuelKg - dryKg, LimitingMass.LANDING);
        least.consider(performance.landingKg(), landingFuelKg + dryKg, LimitingMass.LANDING_PERFORMANCE);
        least.consider(limits.maxRampKg() - fuel.rampKg().sum() - dryKg, LimitingMass.RAMP);
        return new TrafficLoad(least.allowedKg, zeroFuel.massKg() - dryKg, least.limitedBy);
    }

    private void consider(OptionalDouble limitKg, double withoutLoadKg, LimitingMass limit) {
        if (limitKg.isPresent()) {
            consider(limitKg.getAsDouble() - withoutLoadKg, limit);
        }
    }

    private void consider(double leavesKg, LimitingMass limit) {
        if (leavesKg < allowedKg) {
            allowedKg = leavesKg;
            limitedBy = limit;
        }
    }
}
