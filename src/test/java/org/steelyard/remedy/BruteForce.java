package org.steelyard.remedy;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.steelyard.balance.Balancer;
import org.steelyard.check.flight.Checker;
import org.steelyard.model.finding.Finding;
import org.steelyard.model.finding.Severity;
import org.steelyard.model.loading.HoldLoad;
import org.steelyard.model.loading.Load;
import org.steelyard.model.loading.Loading;
import org.steelyard.model.loading.Passengers;
import org.steelyard.model.loading.ZoneLoad;
import org.steelyard.model.policy.Policy;
import org.steelyard.model.type.MassScheme;

/** Tries every way to place, and to leave behind, the persons and bags of a small flight: slow and simple. */
final class BruteForce {

    /**
     * The least found.
     *
     * @param leftKg mass left behind
     * @param movedKg mass moved beside that
     */
    record Least(double leftKg, double movedKg) {}

    private final Loading loading;
    private final Policy policy;
    private final Load.ByPlace load;
    private double leastLeftKg = Double.POSITIVE_INFINITY;
    private double leastMovedKg = Double.POSITIVE_INFINITY;

    private BruteForce(Loading loading, Policy policy) {
        this.loading = loading;
        this.policy = policy;
        this.load = (Load.ByPlace) loading.load();
    }

    /** The least mass left behind, and with it the least moved; infinite where nothing is clean. */
    static Least of(Loading loading, Policy policy) {
        BruteForce search = new BruteForce(loading, policy);
        search.run();
        return new Least(search.leastLeftKg, search.leastMovedKg);
    }

    private void run() {
        List<int[]> men = placings(
                3,
                load.zones().stream().mapToInt(zone -> zone.passengers().male()).sum());
        List<int[]> women = placings(
                3,
                load.zones().stream()
                        .mapToInt(zone -> zone.passengers().female())
                        .sum());
        List<int[]> children = placings(
                3,
                load.zones().stream()
                        .mapToInt(zone -> zone.passengers().child())
                        .sum());
        List<int[]> bags =
                placings(2, load.holds().stream().mapToInt(HoldLoad::bags).sum());
        for (int[] man : men) {
            for (int[] woman : women) {
                for (int[] child : children) {
                    for (int[] bag : bags) {
                        consider(man, woman, child, bag);
                    }
                }
            }
        }
    }

    /** Every way to spread so many pieces over places and, last, what is left behind. */
    private static List<int[]> placings(int places, int pieces) {
        List<int[]> all = new ArrayList<>();
        spread(new int[places + 1], 0, pieces, all);
        return all;
    }

    private static void spread(int[] placing, int at, int pieces, List<int[]> all) {
        if (at == placing.length - 1) {
            placing[at] = pieces;
            all.add(placing.clone());
            return;
        }
        for (int here = 0; here <= pieces; here++) {
            placing[at] = here;
            spread(placing, at + 1, pieces - here, all);
        }
    }

    private void consider(int[] men, int[] women, int[] children, int[] bags) {
        MassScheme scheme = loading.type().cabin().scheme();
        double leftKg = men[3] * scheme.maleKg()
                + women[3] * scheme.femaleKg()
                + children[3] * scheme.childKg()
                + bags[2] * scheme.bagKg();
        double goneKg = 0;
        for (int i = 0; i < 3; i++) {
            Passengers before = load.zones().get(i).passengers();
            goneKg += Math.max(0, before.male() - men[i]) * scheme.maleKg()
                    + Math.max(0, before.female() - women[i]) * scheme.femaleKg()
                    + Math.max(0, before.child() - children[i]) * scheme.childKg();
        }
        for (int i = 0; i < 2; i++) {
            goneKg += Math.max(0, load.holds().get(i).bags() - bags[i]) * scheme.bagKg();
        }
        double movedKg = goneKg - leftKg;
        boolean better = leftKg < leastLeftKg - 1e-9 || (leftKg < leastLeftKg + 1e-9 && movedKg < leastMovedKg - 1e-9);
        if (better && isClean(men, women, children, bags)) {
            leastLeftKg = leftKg;
            leastMovedKg = movedKg;
        }
    }

    private boolean isClean(int[] men, int[] women, int[] children, int[] bags) {
        List<ZoneLoad> zones = new ArrayList<>();
        for (int i = 0; i < 3; i++) {
            zones.add(new ZoneLoad(new Passengers(men[i], women[i], 0, children[i], 0), OptionalDouble.empty()));
        }
        Load after = new Load.ByPlace(zones, List.of(new HoldLoad(0, bags[0]), new HoldLoad(0, bags[1])));
        Loading changed = loading.with(after, loading.fuel());
        return Checker.check(changed, Balancer.balance(changed, policy), policy).findings().stream()
                .map(Finding::severity)
                .noneMatch(severity -> severity == Severity.BREACH);
    }
}
