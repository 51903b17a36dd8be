package org.steelyard.balance;

import java.util.ArrayList;
import java.util.List;
import org.steelyard.model.loading.Fuel;
import org.steelyard.model.loading.LastMinuteChange;
import org.steelyard.model.loading.LoadPart;
import org.steelyard.model.type.FuelSystem;
import org.steelyard.model.type.Tank;
import org.steelyard.model.unit.Amounts;
import org.steelyard.model.unit.MassMoment;

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
        List<Amounts> halts = new ArrayList<>();
        halts.add(Amounts.of(rampKg));
        double shortTaxiKg = FuelFlow.burn(
                system.tanks(), system.burnOrder(), tanksKg, taxiKg, () -> halts.add(Amounts.of(tanksKg)));
        int takeoffAt = halts.size() - 1;
        List<MassMoment> path = new ArrayList<>();
        path.add(withFuel(tanksKg));
        double shortTripKg = FuelFlow.burn(system.tanks(), system.burnOrder(), tanksKg, tripKg, () -> {
            halts.add(Amounts.of(tanksKg));
            path.add(withFuel(tanksKg));
        });
        return new FuelBalance(system, halts, takeoffAt, taxiKg, tripKg, shortTaxiKg + shortTripKg, new FuelPath(path));
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

    /**
     * Fuel in each tank at the ramp: as given, or a total shared out by the type's fill order. A last-minute change of
     * a tank stands for the tank; one of the total changes a total before it is shared out, and by tank it fills by the
     * fill order or empties by the burn order.
     */
    static double[] rampKg(FuelSystem system, Fuel fuel, LastMinuteChange change) {
        double anywhereKg = 0;
        double[] byTankKg = new double[system.tanks().size()];
        for (LastMinuteChange.Part part : change.of(LoadPart.FUEL)) {
            if (part.place() == LastMinuteChange.ANYWHERE) {
                anywhereKg += part.massKg();
            } else {
                byTankKg[part.place()] += part.massKg();
            }
        }
        double[] tanksKg = fuel instanceof Fuel.ByTank byTank
                ? changed(system, byTank.tanksKg().toArray(), anywhereKg)
                : shared(system, total(fuel) + anywhereKg);
        for (int i = 0; i < tanksKg.length; i++) {
            tanksKg[i] = Math.max(tanksKg[i] + byTankKg[i], 0);
        }
        return tanksKg;
    }

    private static double total(Fuel fuel) {
        if (fuel instanceof Fuel.Total total) {
            return total.totalKg();
        }
        throw new IllegalArgumentException("no fuel is given");
    }

    private static double[] changed(FuelSystem system, double[] tanksKg, double changeKg) {
        if (changeKg > 0) {
            fill(system, tanksKg, changeKg);
        } else if (changeKg < 0) {
            FuelFlow.burn(system.tanks(), system.burnOrder(), tanksKg, -changeKg, () -> {});
        }
        return tanksKg;
    }

    private static double[] shared(FuelSystem system, double totalKg) {
        double[] tanksKg = new double[system.tanks().size()];
        fill(system, tanksKg, totalKg);
        return tanksKg;
    }

    private static void fill(FuelSystem system, double[] tanksKg, double amountKg) {
        double tooMuchKg = FuelFlow.fill(system.tanks(), system.fillOrder(), tanksKg, amountKg);
        if (tooMuchKg > 0) {
            double capacityKg = system.capacityKg();
            for (int i = 0; i < tanksKg.length; i++) {
                tanksKg[i] += tooMuchKg * system.tanks().get(i).capacityKg() / capacityKg;
            }
        }
    }
}
