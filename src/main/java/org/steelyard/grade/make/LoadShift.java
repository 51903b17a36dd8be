package org.steelyard.grade.make;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.steelyard.balance.Balance;
import org.steelyard.balance.Balancer;
import org.steelyard.check.flight.Checker;
import org.steelyard.check.result.Status;
import org.steelyard.grade.text.FigureText;
import org.steelyard.grade.working.Candidates;
import org.steelyard.model.loading.HoldLoad;
import org.steelyard.model.loading.Load;
import org.steelyard.model.loading.Loading;
import org.steelyard.model.policy.Policy;
import org.steelyard.model.type.Hold;

/**
 * A load moved from one hold to another.
 *
 * @param fromHold index of the hold that it leaves
 * @param toHold index of the hold that takes it
 * @param massKg how much, in whole steps of the type's mass unit
 */
public record LoadShift(int fromHold, int toHold, double massKg) {

    /**
     * The least mass that brings a loading inside, between the two holds where it is least.
     *
     * @param loading a loading by place
     * @param policy the operator's rules
     * @return empty if no mass between two holds does
     */
    public static Optional<LoadShift> leastFor(Loading loading, Policy policy) {
        Optional<LoadShift> best = Optional.empty();
        List<Hold> holds = loading.type().holds();
        for (int from = 0; from < holds.size(); from++) {
            for (int to = 0; to < holds.size(); to++) {
                Optional<LoadShift> one = from == to ? Optional.empty() : least(loading, policy, from, to);
                if (one.isPresent()
                        && best.map(b -> one.get().massKg() < b.massKg()).orElse(true)) {
                    best = one;
                }
            }
        }
        return best;
    }

    private static Optional<LoadShift> least(Loading loading, Policy policy, int from, int to) {
        double stepKg = Candidates.massStepKg(loading.type().geometry().units());
        long most = (long) Math.floor(heldKg(loading, from) / stepKg);
        long step = Math.max(1, most / 64);
        for (long steps = step; steps <= most; steps += step) {
            if (new LoadShift(from, to, steps * stepKg).isInside(loading, policy)) {
                return Optional.of(new LoadShift(from, to, fewest(loading, policy, from, to, steps - step, steps)));
            }
        }
        return Optional.empty();
    }

    /** Between a number of steps that is too few and one that is enough. */
    private static double fewest(Loading loading, Policy policy, int from, int to, long few, long enough) {
        double stepKg = Candidates.massStepKg(loading.type().geometry().units());
        long low = few;
        long high = enough;
        while (high - low > 1) {
            long middle = (low + high) / 2;
            boolean inside = new LoadShift(from, to, middle * stepKg).isInside(loading, policy);
            low = inside ? low : middle;
            high = inside ? middle : high;
        }
        return high * stepKg;
    }

    private static double heldKg(Loading loading, int hold) {
        return loading.load() instanceof Load.ByPlace byPlace
                ? byPlace.holds().get(hold).massKg(loading.scheme())
                : 0;
    }

    private boolean isInside(Loading loading, Policy policy) {
        Loading moved = after(loading);
        Balance balance = Balancer.balance(moved, policy);
        return Checker.check(moved, balance, policy).status() != Status.BREACHED;
    }

    /**
     * The loading with the load moved.
     *
     * @param loading a loading by place
     * @return the same with the other holds
     */
    public Loading after(Loading loading) {
        Load.ByPlace byPlace = (Load.ByPlace) loading.load();
        List<HoldLoad> holds = new ArrayList<>(byPlace.holds());
        holds.set(fromHold, new HoldLoad(Math.max(0, heldKg(loading, fromHold) - massKg), 0));
        holds.set(toHold, new HoldLoad(heldKg(loading, toHold) + massKg, 0));
        return loading.with(new Load.ByPlace(byPlace.zones(), holds), loading.fuel());
    }

    /**
     * The shift in words.
     *
     * @param loading the loading
     * @return mass, from where, to where
     */
    public String words(Loading loading) {
        Objects.requireNonNull(loading);
        FigureText text = new FigureText(loading.type());
        return text.mass(massKg) + " from "
                + loading.type().holds().get(fromHold).name() + " to "
                + loading.type().holds().get(toHold).name();
    }
}
