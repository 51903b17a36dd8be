package org.steelyard.balance;

import java.util.ArrayList;
import java.util.List;
import org.steelyard.model.Amounts;
import org.steelyard.model.Fuel;
import org.steelyard.model.FuelSystem;
import org.steelyard.model.MassMoment;
import org.steelyard.model.Tank;

/** Follows the fuel of one flight from the ramp to landing. */
final class FuelBalancer {

    private final FuelSystem system;
    private final MassMoment zeroFuel;

    FuelBalancer(FuelSystem system, MassMoment zeroFuel) {
        this.system = system;
        this.zeroFuel = zeroFuel;
    }

    FuelBalance follow(double[] rampKg, double taxiKg, double tripKg) {
        double[] tanksKg = rampKg.clone();
        double shortTaxiKg = FuelFlow.burn(system.tanks(), system.burnOrder(), tanksKg, taxiKg, () -> {});
        Amounts takeoffKg = Amounts.of(tanksKg);
        List<MassMoment> path = new ArrayList<>();
        path.add(withFuel(tanksKg));
        double shortTripKg =
                FuelFlow.burn(system.tanks(), system.burnOrder(), tanksKg, tripKg, () -> path.add(withFuel(tanksKg)));
        return new FuelBalance(
                Amounts.of(rampKg),
                takeoffKg,
                Amounts.of(tanksKg),
                taxiKg,
                tripKg,
                shortTaxiKg + shortTripKg,
                new FuelPath(path));
    }

    /** The aircraft with so much fuel in its tanks. */
    MassMoment withFuel(double[] tanksKg) {
        double massKg = 0;
        double momentKgM = 0;
        for (int i = 0; i < tanksKg.length; i++) {
            Tank tank = system.tanks().get(i);
            massKg += tanksKg[i];
            momentKgM += tank.momentKgM(tanksKg[i]);
        }
        return new MassMoment(zeroFuel.massKg() + massKg, zeroFuel.momentKgM() + momentKgM);
    }

    /** Fuel in each tank at the ramp: as given, or a total shared out by the type's fill order. */
    static double[] rampKg(FuelSystem system, Fuel fuel) {
        if (fuel instanceof Fuel.ByTank byTank) {
            return byTank.tanksKg().toArray();
        }
        if (fuel instanceof Fuel.Total total) {
            return shared(system, total.totalKg());
        }
        throw new IllegalArgumentException("no fuel is given");
    }

    private static double[] shared(FuelSystem system, double totalKg) {
        double[] tanksKg = new double[system.tanks().size()];
        double tooMuchKg = FuelFlow.fill(system.tanks(), system.fillOrder(), tanksKg, totalKg);
        if (tooMuchKg > 0) {
            double capacityKg = system.capacityKg();
            for (int i = 0; i < tanksKg.length; i++) {
                tanksKg[i] += tooMuchKg * system.tanks().get(i).capacityKg() / capacityKg;
            }
        }
        return tanksKg;
    }
}
