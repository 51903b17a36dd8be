package org.steelyard.remedy;

import java.util.Optional;
import org.steelyard.balance.FuelFill;
import org.steelyard.model.loading.Fuel;
import org.steelyard.model.loading.Loading;
import org.steelyard.model.policy.Policy;
import org.steelyard.model.type.FuelSystem;
import org.steelyard.model.unit.Amounts;
import org.steelyard.model.unit.Tolerance;

/**
 * The least change of fuel that puts a flight right, with taxi and trip fuel left as they are. Tanks are changed toward
 * the type's fill order: less fuel leaves first what is filled last, more goes first where it is filled first. The
 * states bend with the fuel, so each amount is tried by balance and checks: {@value #STEPS} amounts from the least that
 * the masses ask for, then halved up to the first that does.
 */
final class FuelSearch {

    private static final int STEPS = 48;
    private static final int HALVINGS = 40;
    private static final double SAME_KG = 0.5;

    /** How the tanks are changed. */
    enum Way {
        /** Less or more, toward the fill order. */
        CHANGED,
        /** The whole filled anew by the fill order. */
        FILLED_ANEW
    }

    /**
     * A change of fuel that does.
     *
     * @param way how the tanks are changed
     * @param changeKg kg of fuel, negative for less, zero for the same fuel in other tanks
     */
    record Found(Way way, double changeKg, Trial after) {}

    private final Trial before;
    private final Policy policy;
    private final double reservePercentMac;
    private final FuelSystem system;
    private final Amounts aboardKg;
    private final Allowance allowance;

    FuelSearch(Trial before, Policy policy, double reservePercentMac) {
        this.before = before;
        this.policy = policy;
        this.reservePercentMac = reservePercentMac;
        this.system = before.loading().tanks();
        this.aboardKg = before.balance().fuel().orElseThrow().rampKg();
        this.allowance = Allowance.of(before.loading(), before.balance(), reservePercentMac);
    }

    /** Less fuel that leaves enough for taxi, trip and the policy's reserve, or the same fuel filled in order. */
    Optional<Found> lessOrOtherwise() {
        Optional<Found> less = first(Way.CHANGED, -1);
        if (less.isPresent() || before.loading().fuel() instanceof Fuel.Total || isInOrder()) {
            return less;
        }
        return trial(Way.FILLED_ANEW, 0)
                .map(after -> new Found(Way.FILLED_ANEW, 0, after))
                .or(() -> first(Way.FILLED_ANEW, -1));
    }

    /** More fuel that stays aboard until landing. */
    Optional<Found> more() {
        return first(Way.CHANGED, 1);
    }

    private boolean isInOrder() {
        Amounts inOrderKg = FuelFill.of(system, aboardKg.sum());
        for (int i = 0; i < aboardKg.size(); i++) {
            if (Math.abs(inOrderKg.at(i) - aboardKg.at(i)) > SAME_KG) {
                return false;
            }
        }
        return true;
    }

    private Optional<Found> first(Way way, int sign) {
        double leastKg = Math.max(0, sign < 0 ? -allowance.mostKg() : allowance.leastKg());
        double mostKg = mostKg(sign);
        double failedKg = leastKg;
        for (int i = 0; i <= STEPS && !Tolerance.isAboveKg(leastKg, mostKg); i++) {
            double changeKg = leastKg + (mostKg - leastKg) * i / STEPS;
            if (Tolerance.isAboveKg(changeKg, 0) && trial(way, sign * changeKg).isPresent()) {
                return halved(way, sign, failedKg, changeKg);
            }
            failedKg = changeKg;
        }
        return Optional.empty();
    }

    private double mostKg(int sign) {
        if (sign > 0) {
            return system.capacityKg() - aboardKg.sum();
        }
        double reserveKg = policy.remedyFuelReservePercent()
                / 100
                * before.loading().type().fuel().capacityKg();
        Fuel fuel = before.loading().fuel();
        return aboardKg.sum() - fuel.taxiKg() - fuel.tripKg() - reserveKg;
    }

    private Optional<Found> halved(Way way, int sign, double fromKg, double toKg) {
        double tooLittleKg = fromKg;
        double enoughKg = toKg;
        for (int i = 0; i < HALVINGS && tooLittleKg < enoughKg; i++) {
            double middleKg = (tooLittleKg + enoughKg) / 2;
            if (trial(way, sign * middleKg).isPresent()) {
                enoughKg = middleKg;
            } else {
                tooLittleKg = middleKg;
            }
        }
        double grainKg = RemedySearch.grainKg(before.loading());
        double roundKg = Math.ceil(enoughKg / grainKg - 1e-6) * grainKg;
        double exactKg = sign * enoughKg;
        return Optional.of(sign * roundKg)
                .filter(changeKg -> !Tolerance.isAboveKg(roundKg, mostKg(sign)))
                .flatMap(changeKg -> trial(way, changeKg).map(after -> new Found(way, changeKg, after)))
                .or(() -> trial(way, exactKg).map(after -> new Found(way, exactKg, after)));
    }

    private Optional<Trial> trial(Way way, double changeKg) {
        Loading loading = before.loading();
        Trial after = Trial.of(loading.with(loading.load(), fuel(way, changeKg)), policy);
        return Optional.of(after).filter(one -> one.cures(before) && keepsReserve(one));
    }

    private boolean keepsReserve(Trial after) {
        return reservePercentMac == 0
                || Allowance.of(after.loading(), after.balance(), reservePercentMac)
                        .keeps(0, 0);
    }

    private Fuel fuel(Way way, double changeKg) {
        Fuel given = before.loading().fuel();
        double totalKg = aboardKg.sum() + changeKg;
        if (given instanceof Fuel.Total) {
            return new Fuel.Total(totalKg, given.taxiKg(), given.tripKg(), given.densityKgPerL());
        }
        return given.inTanks(
                way == Way.FILLED_ANEW ? FuelFill.of(system, totalKg) : FuelFill.toward(system, aboardKg, totalKg));
    }
}
