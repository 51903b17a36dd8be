package org.steelyard.check;

import java.util.List;
import org.steelyard.balance.FuelBalance;
import org.steelyard.model.Amounts;
import org.steelyard.model.Finding;
import org.steelyard.model.FindingCode;
import org.steelyard.model.FuelSystem;
import org.steelyard.model.ImbalanceLimit;
import org.steelyard.model.Phase;
import org.steelyard.model.Quantity;
import org.steelyard.model.Severity;
import org.steelyard.model.Tank;
import org.steelyard.model.Tolerance;

/** Holds the fuel against the tanks: capacity, balance between sides, and enough for the trip. */
final class FuelCheck {

    private FuelCheck() {}

    static void run(FuelBalance fuel, FuelSystem system, Findings findings) {
        List<Tank> tanks = system.tanks();
        for (int i = 0; i < tanks.size(); i++) {
            double quantityKg = fuel.rampKg().at(i);
            Tank tank = tanks.get(i);
            double capacityKg = tank.capacityKg();
            findings.measure(
                    FindingCode.TANK_CAPACITY,
                    Phase.RAMP,
                    tank::name,
                    Quantity.MASS,
                    quantityKg,
                    capacityKg,
                    capacityKg - quantityKg,
                    Double.NEGATIVE_INFINITY);
        }
        for (int i = 0; i < system.imbalances().size(); i++) {
            imbalance(fuel, system.imbalances().get(i), tanks, findings);
        }
        if (Tolerance.isAboveKg(fuel.shortKg(), 0)) {
            shortage(fuel, findings);
        }
    }

    private static void shortage(FuelBalance fuel, Findings findings) {
        findings.add(new Finding(
                FindingCode.FUEL_SHORT,
                Severity.BREACH,
                Phase.LANDING,
                "fuel aboard",
                Quantity.MASS,
                fuel.taxiKg() + fuel.tripKg(),
                fuel.rampKg().sum(),
                -fuel.shortKg()));
    }

    /** The greatest difference of ramp, take-off and landing is the one reported. */
    private static void imbalance(FuelBalance fuel, ImbalanceLimit limit, List<Tank> tanks, Findings findings) {
        Phase worst = Phase.RAMP;
        double worstKg = differenceKg(fuel.rampKg(), limit);
        if (Tolerance.isAboveKg(differenceKg(fuel.takeoffKg(), limit), worstKg)) {
            worst = Phase.TAKEOFF;
            worstKg = differenceKg(fuel.takeoffKg(), limit);
        }
        if (Tolerance.isAboveKg(differenceKg(fuel.landingKg(), limit), worstKg)) {
            worst = Phase.LANDING;
            worstKg = differenceKg(fuel.landingKg(), limit);
        }
        findings.measure(
                FindingCode.FUEL_IMBALANCE,
                worst,
                () -> tanks.get(limit.leftTank()).name() + " and "
                        + tanks.get(limit.rightTank()).name(),
                Quantity.MASS,
                worstKg,
                limit.maxKg(),
                limit.maxKg() - worstKg,
                findings.policy().marginalLoadPercent() / 100 * limit.maxKg());
    }

    private static double differenceKg(Amounts tanksKg, ImbalanceLimit limit) {
        return Math.abs(tanksKg.at(limit.leftTank()) - tanksKg.at(limit.rightTank()));
    }
}
