package org.steelyard.balance;

import java.util.List;
import org.steelyard.model.type.FuelStage;
import org.steelyard.model.type.Tank;
import org.steelyard.model.type.TankPoint;
import org.steelyard.model.type.TankShare;

/**
 * Fuel burning from, or filling, tanks in stages. Within a stage tanks flow in the ratio of their shares; the flow
 * halts at each point at which a tank leaves the stage or passes a row of its arm table, so that between two halts the
 * moment of the fuel is a linear function of its mass.
 */
final class FuelFlow {

    /** Below this a quantity in kg counts as nothing: far under any scale, far over rounding. */
    private static final double NOTHING_KG = 1e-9;

    private final List<Tank> tanks;
    private final List<FuelStage> stages;
    private final boolean burning;
    private final double[] quantitiesKg;
    private final double[] haltsKg;
    private final Runnable atHalt;

    private FuelFlow(
            List<Tank> tanks, List<FuelStage> stages, boolean burning, double[] quantitiesKg, Runnable atHalt) {
        this.tanks = tanks;
        this.stages = stages;
        this.burning = burning;
        this.quantitiesKg = quantitiesKg;
        this.haltsKg = new double[quantitiesKg.length];
        this.atHalt = atHalt;
    }

    /**
     * Burns fuel.
     *
     * @param quantitiesKg fuel in each tank in kg, changed in place
     * @param amountKg how much to burn in kg
     * @param atHalt called after each step
     * @return how much in kg could not be burnt because the tanks are empty
     */
    static double burn(
            List<Tank> tanks, List<FuelStage> order, double[] quantitiesKg, double amountKg, Runnable atHalt) {
        return new FuelFlow(tanks, order, true, quantitiesKg, atHalt).run(amountKg);
    }

    /**
     * Fills fuel.
     *
     * @param quantitiesKg fuel in each tank in kg, changed in place
     * @param amountKg how much to fill in kg
     * @return how much in kg found no room
     */
    static double fill(List<Tank> tanks, List<FuelStage> order, double[] quantitiesKg, double amountKg) {
        return new FuelFlow(tanks, order, false, quantitiesKg, () -> {}).run(amountKg);
    }

    private double run(double amountKg) {
        double leftKg = amountKg;
        for (int i = 0; i < stages.size() && leftKg > NOTHING_KG; i++) {
            FuelStage stage = stages.get(i);
            double shares = activeShares(stage);
            while (leftKg > NOTHING_KG && shares > 0) {
                leftKg -= step(stage, shares, leftKg);
                atHalt.run();
                shares = activeShares(stage);
            }
        }
        return leftKg > NOTHING_KG ? leftKg : 0;
    }

    private double activeShares(FuelStage stage) {
        List<TankShare> parts = stage.shares();
        double sum = 0;
        for (int i = 0; i < parts.size(); i++) {
            sum += isActive(parts.get(i)) ? parts.get(i).share() : 0;
        }
        return sum;
    }

    private boolean isActive(TankShare share) {
        double quantityKg = quantitiesKg[share.tank()];
        return burning ? quantityKg > share.untilKg() : quantityKg < share.untilKg();
    }

    /** Flows to the nearest halt, at most a given amount; returns how much flowed. */
    private double step(FuelStage stage, double shares, double atMostKg) {
        List<TankShare> parts = stage.shares();
        double flowKg = atMostKg;
        for (int i = 0; i < parts.size(); i++) {
            TankShare share = parts.get(i);
            if (isActive(share)) {
                haltsKg[share.tank()] = haltKg(share);
                double toHaltKg = Math.abs(haltsKg[share.tank()] - quantitiesKg[share.tank()]);
                flowKg = Math.min(flowKg, toHaltKg * shares / share.share());
            }
        }
        for (int i = 0; i < parts.size(); i++) {
            TankShare share = parts.get(i);
            if (isActive(share)) {
                move(share, flowKg * share.share() / shares);
            }
        }
        return flowKg;
    }

    private void move(TankShare share, double partKg) {
        double haltKg = haltsKg[share.tank()];
        double movedKg = quantitiesKg[share.tank()] + (burning ? -partKg : partKg);
        boolean there = Math.abs(movedKg - haltKg) <= NOTHING_KG || (burning ? movedKg < haltKg : movedKg > haltKg);
        quantitiesKg[share.tank()] = there ? haltKg : movedKg;
    }

    /** The next quantity at which this tank makes the flow halt; nobody follows the moment while tanks fill. */
    private double haltKg(TankShare share) {
        double haltKg = share.untilKg();
        if (!burning) {
            return haltKg;
        }
        double quantityKg = quantitiesKg[share.tank()];
        List<TankPoint> table = tanks.get(share.tank()).armTable();
        for (int i = 0; i < table.size() && table.get(i).quantityKg() < quantityKg; i++) {
            haltKg = Math.max(haltKg, table.get(i).quantityKg());
        }
        return haltKg;
    }
}
