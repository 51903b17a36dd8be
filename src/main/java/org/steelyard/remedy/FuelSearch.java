package org.steelyard.remedy;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.steelyard.model.Amounts;
import org.steelyard.model.Fuel;
import org.steelyard.model.FuelStage;
import org.steelyard.model.FuelSystem;
import org.steelyard.model.Loading;
import org.steelyard.model.Policy;
import org.steelyard.model.TankShare;

/**
 * The least change of fuel that puts a flight right, with taxi and trip fuel left as they are: more or less in the
 * tanks of one stage of the fill order, or of a fuel total. The states bend with the fuel, so each amount is tried by
 * balance and checks: {@value #STEPS} amounts to each side, then halved up to the first that does.
 */
final class FuelSearch {

    private static final int STEPS = 48;
    private static final int HALVINGS = 40;

    /**
     * A change of fuel that does.
     *
     * @param changeKg kg of fuel, negative for less
     * @param tanks names of the tanks; blank for a total
     */
    record Found(double changeKg, String tanks, Trial after) {}

    /** Tanks that are changed together, by their shares; none for a fuel total. */
    private record Group(List<TankShare> shares) {}

    private final Trial before;
    private final Policy policy;
    private final double reservePercentMac;
    private final FuelSystem system;

    private FuelSearch(Trial before, Policy policy, double reservePercentMac) {
        this.before = before;
        this.policy = policy;
        this.reservePercentMac = reservePercentMac;
        this.system = before.loading().tanks();
    }

    static Optional<Found> least(Trial before, Policy policy, double reservePercentMac) {
        return new FuelSearch(before, policy, reservePercentMac).run();
    }

    private Optional<Found> run() {
        Optional<Found> least = Optional.empty();
        for (Group group : groups()) {
            for (int sign = -1; sign <= 1; sign += 2) {
                Optional<Found> found = first(group, sign);
                if (found.isPresent()
                        && (least.isEmpty()
                                || Math.abs(found.get().changeKg())
                                        < Math.abs(least.get().changeKg()))) {
                    least = found;
                }
            }
        }
        return least;
    }

    private List<Group> groups() {
        if (before.loading().fuel() instanceof Fuel.Total) {
            return List.of(new Group(List.of()));
        }
        List<Group> groups = new ArrayList<>();
        for (FuelStage stage : system.fillOrder()) {
            groups.add(new Group(stage.shares()));
        }
        return List.copyOf(groups);
    }

    private Optional<Found> first(Group group, int sign) {
        double mostKg = sign > 0 ? system.capacityKg() : fuelKg() - burnKg();
        for (int i = 1; i <= STEPS && mostKg > 0; i++) {
            double changeKg = mostKg * i / STEPS;
            if (trial(group, sign * changeKg).isPresent()) {
                return halved(group, sign, mostKg * (i - 1) / STEPS, changeKg);
            }
        }
        return Optional.empty();
    }

    private Optional<Found> halved(Group group, int sign, double fromKg, double toKg) {
        double tooLittleKg = fromKg;
        double enoughKg = toKg;
        for (int i = 0; i < HALVINGS; i++) {
            double middleKg = (tooLittleKg + enoughKg) / 2;
            if (trial(group, sign * middleKg).isPresent()) {
                enoughKg = middleKg;
            } else {
                tooLittleKg = middleKg;
            }
        }
        double grainKg = RemedySearch.grainKg(before.loading());
        double roundKg = sign * Math.ceil(enoughKg / grainKg - 1e-6) * grainKg;
        double exactKg = sign * enoughKg;
        return trial(group, roundKg)
                .map(after -> new Found(roundKg, names(group), after))
                .or(() -> trial(group, exactKg).map(after -> new Found(exactKg, names(group), after)));
    }

    private double fuelKg() {
        return before.balance().fuel().orElseThrow().rampKg().sum();
    }

    private double burnKg() {
        return before.loading().fuel().taxiKg() + before.loading().fuel().tripKg();
    }

    private Optional<Trial> trial(Group group, double changeKg) {
        Loading loading = before.loading();
        return fuel(group, changeKg)
                .map(fuel -> Trial.of(loading.with(loading.load(), fuel), policy))
                .filter(after -> after.cures(before) && keepsReserve(after));
    }

    private boolean keepsReserve(Trial after) {
        return reservePercentMac == 0
                || Allowance.of(after.loading(), after.balance(), reservePercentMac)
                        .keeps(0, 0);
    }

    private Optional<Fuel> fuel(Group group, double changeKg) {
        Fuel given = before.loading().fuel();
        if (given instanceof Fuel.Total total) {
            double totalKg = total.totalKg() + changeKg;
            return totalKg < burnKg() || totalKg > system.capacityKg()
                    ? Optional.empty()
                    : Optional.of(new Fuel.Total(totalKg, total.taxiKg(), total.tripKg(), total.densityKgPerL()));
        }
        double[] tanksKg = before.balance().fuel().orElseThrow().rampKg().toArray();
        double shares = group.shares().stream().mapToDouble(TankShare::share).sum();
        for (TankShare share : group.shares()) {
            tanksKg[share.tank()] += changeKg * share.share() / shares;
        }
        boolean fits = IntStream.range(0, tanksKg.length)
                .allMatch(i ->
                        tanksKg[i] >= 0 && tanksKg[i] <= system.tanks().get(i).capacityKg());
        return fits
                ? Optional.of(given.inTanks(Amounts.of(tanksKg)))
                : Optional.empty();
    }

    private String names(Group group) {
        List<String> names = group.shares().stream()
                .map(share -> system.tanks().get(share.tank()).name())
                .toList();
        return String.join(" and ", names);
    }
}
