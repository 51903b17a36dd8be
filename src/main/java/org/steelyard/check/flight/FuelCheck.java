package org.steelyard.check.flight;

import java.util.List;
import org.steelyard.balance.FuelBalance;
import org.steelyard.check.text.FindingText;
import org.steelyard.check.text.FixedDecimals;
import org.steelyard.model.finding.Finding;
import org.steelyard.model.finding.FindingCode;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.finding.Severity;
import org.steelyard.model.limit.ImbalanceLimit;
import org.steelyard.model.type.AircraftType;
import org.steelyard.model.type.Tank;
import org.steelyard.model.unit.Amounts;
import org.steelyard.model.unit.Quantity;
import org.steelyard.model.unit.Tolerance;

/** Holds the fuel against the tanks: capacity, balance between sides, and enough for the trip. */
final class FuelCheck {

    private FuelCheck() {}

    static void run(FuelBalance fuel, AircraftType type, Findings findings) {
        List<Tank> tanks = fuel.system().tanks();
        for (int i = 0; i < tanks.size(); i++) {
            double quantityKg = fuel.rampKg().at(i);
            Tank tank = tanks.get(i);
            double capacityKg = tank.capacityKg();
            findings.measure(
                    FindingCode.TANK_CAPACITY,
                    Phase.RAMP,
                    () -> tank.name() + density(fuel, tank, type),
                    Quantity.MASS,
                    quantityKg,
                    capacityKg,
                    capacityKg - quantityKg,
                    Double.NEGATIVE_INFINITY);
        }
        List<ImbalanceLimit> imbalances = fuel.system().imbalances();
        for (int i = 0; i < imbalances.size(); i++) {
            imbalance(fuel, imbalances.get(i), type, findings);
        }
        if (Tolerance.isAboveKg(fuel.shortKg(), 0)) {
            shortage(fuel, findings);
        }
    }

    /** Why a capacity given as a volume is another mass than usual. */
    private static String density(FuelBalance fuel, Tank tank, AircraftType type) {
        double densityKgPerL = fuel.system().densityKgPerL();
        return !tank.byVolume() || densityKgPerL == type.fuel().densityKgPerL()
                ? ""
                : " with fuel of " + FixedDecimals.of(densityKgPerL, 3) + " kg/L";
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

    private static void imbalance(FuelBalance fuel, ImbalanceLimit limit, AircraftType type, Findings findings) {
        int worst = 0;
        double worstKg = 0;
        for (int i = 0; i < fuel.halts().size(); i++) {
            double differenceKg = differenceKg(fuel.halts().get(i), limit);
            if (Tolerance.isAboveKg(differenceKg, worstKg)) {
                worst = i;
                worstKg = differenceKg;
            }
        }
        Amounts worstTanksKg = fuel.halts().get(worst);
        findings.measure(
                FindingCode.FUEL_IMBALANCE,
                phase(fuel, worst),
                () -> tanks(limit, type) + " with " + FindingText.amount(Quantity.MASS, worstTanksKg.sum(), type)
                        + " aboard",
                Quantity.MASS,
                worstKg,
                limit.maxKg(),
                limit.maxKg() - worstKg,
                findings.policy().marginalLoadPercent() / 100 * limit.maxKg());
    }

    private static String tanks(ImbalanceLimit limit, AircraftType type) {
        List<Tank> tanks = type.fuel().tanks();
        return tanks.get(limit.leftTank()).name() + " and "
                + tanks.get(limit.rightTank()).name();
    }

    /** Halts before take-off belong to the ramp. */
    private static Phase phase(FuelBalance fuel, int halt) {
        if (halt == 0 || halt < fuel.takeoffAt()) {
            return Phase.RAMP;
        }
        if (halt == fuel.takeoffAt()) {
            return Phase.TAKEOFF;
        }
        return halt == fuel.halts().size() - 1 ? Phase.LANDING : Phase.FLIGHT;
    }

    private static double differenceKg(Amounts tanksKg, ImbalanceLimit limit) {
        return Math.abs(tanksKg.at(limit.leftTank()) - tanksKg.at(limit.rightTank()));
    }
}
