package org.steelyard.check.flight;

import java.util.OptionalDouble;
import org.steelyard.balance.Balance;
import org.steelyard.model.finding.FindingCode;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.limit.MassLimits;
import org.steelyard.model.loading.PerformanceLimits;
import org.steelyard.model.unit.MassMoment;
import org.steelyard.model.unit.Quantity;
import org.steelyard.model.unit.Tolerance;

/** Holds the mass of each state against the type's limits and those of the day. */
final class MassCheck {

    private MassCheck() {}

    static void run(Balance balance, MassLimits limits, PerformanceLimits performance, Findings findings) {
        if (balance.zeroFuel().isPresent()) {
            high(Phase.ZERO_FUEL, balance.zeroFuel().get(), limits.maxZeroFuelKg(), false, findings);
        }
        if (balance.ramp().isPresent()) {
            high(Phase.RAMP, balance.ramp().get(), limits.maxRampKg(), false, findings);
        }
        least(Phase.TAKEOFF, balance.takeoff(), limits.maxTakeoffKg(), performance.takeoffKg(), findings);
        if (balance.landing().isPresent()) {
            least(Phase.LANDING, balance.landing().get(), limits.maxLandingKg(), performance.landingKg(), findings);
        }
        low(balance, limits.minFlightKg(), findings);
    }

    private static void least(
            Phase phase, MassMoment state, double structuralKg, OptionalDouble performanceKg, Findings findings) {
        boolean byPerformance =
                performanceKg.isPresent() && Tolerance.isBelowKg(performanceKg.getAsDouble(), structuralKg);
        high(phase, state, byPerformance ? performanceKg.getAsDouble() : structuralKg, byPerformance, findings);
    }

    private static void high(Phase phase, MassMoment state, double limitKg, boolean byPerformance, Findings findings) {
        findings.measure(
                FindingCode.MASS_HIGH,
                phase,
                () -> (byPerformance ? "performance-limited " : "maximum ") + phase.label() + " mass",
                Quantity.MASS,
                state.massKg(),
                limitKg,
                limitKg - state.massKg(),
                nearbyKg(limitKg, findings));
    }

    private static double nearbyKg(double limitKg, Findings findings) {
        return findings.byChance() ? 0 : findings.policy().marginalMassPercent() / 100 * limitKg;
    }

    /** The lightest state in flight is landing; where it is not known, take-off. */
    private static void low(Balance balance, double minFlightKg, Findings findings) {
        Phase phase = balance.landing().isPresent() ? Phase.LANDING : Phase.TAKEOFF;
        double massKg = balance.landing().orElse(balance.takeoff()).massKg();
        findings.measure(
                FindingCode.MASS_LOW,
                phase,
                () -> "minimum mass in flight",
                Quantity.MASS,
                massKg,
                minFlightKg,
                massKg - minFlightKg,
                nearbyKg(minFlightKg, findings));
    }
}
