package org.steelyard.remedy;

import java.util.List;
import java.util.Optional;
import org.steelyard.balance.Balancer;
import org.steelyard.check.result.AuditedFlight;
import org.steelyard.check.result.Remedy;
import org.steelyard.check.result.RemedyMeans;
import org.steelyard.model.loading.Load;
import org.steelyard.model.loading.Loading;
import org.steelyard.model.policy.Policy;
import org.steelyard.model.unit.MassUnit;
import org.steelyard.model.unit.Tolerance;
import org.steelyard.remedy.RemedyStep.Action;

/**
 * Looks for what puts a flight right: by load in the order of {@link RemedyMeans}, and by less fuel or fuel filled
 * otherwise. Where both do, both are said: load that is moved before the fuel, the fuel before load that is left behind
 * and before ballast. More fuel is the last resort. Whatever is found goes through balance and checks again before it
 * is said, so nothing is suggested that breaks another limit. What can be divided is in whole kg or lb, in parts of
 * them where no whole amounts do.
 */
public final class RemedySearch {

    private static final Action[] ACTIONS = {Action.MOVE, Action.LEAVE, Action.BALLAST};

    /** Amounts are tried in whole kg or lb, then in tenths, then in hundredths of it. */
    private static final int FINEST = 100;

    private final Trial before;
    private final Policy policy;
    private final Optional<Manifest> manifest;
    private final RemedyText text;

    private RemedySearch(Loading closed, AuditedFlight flight, Policy policy) {
        this.before = new Trial(closed, flight.balance(), flight.assessment());
        this.policy = policy;
        this.manifest = Manifest.of(closed, flight.balance().distribution());
        this.text = new RemedyText(before, manifest, policy);
    }

    /**
     * The remedy of a flight.
     *
     * @param flight the flight as audited
     * @param policy the policy it was audited with
     * @return what to do, or that nothing helps; empty for a flight without a breach of CG, mass, load or trim
     */
    public static Optional<Remedy> of(AuditedFlight flight, Policy policy) {
        if (flight.assessment().findings().stream().noneMatch(Trial::isCurable)) {
            return Optional.empty();
        }
        return Closed.of(flight.loading(), flight.balance())
                .map(closed -> new RemedySearch(closed, flight, policy).search())
                .or(() -> Optional.of(Remedy.none("seat rows are known and changed at the last minute")));
    }

    private Remedy search() {
        if (before.loading().load() instanceof Load.TakeoffGiven) {
            return Remedy.none("only the take-off state is given, so what is aboard is not known");
        }
        double reservePercentMac = policy.remedyReservePercentMac();
        return find(reservePercentMac)
                .or(() -> reservePercentMac > 0 ? find(0) : Optional.empty())
                .orElseGet(() -> Remedy.none(text.whyNone()));
    }

    private Optional<Remedy> find(double reservePercentMac) {
        Optional<Remedy> load = byLoad(reservePercentMac);
        FuelSearch search = new FuelSearch(before, policy, reservePercentMac);
        Optional<Remedy> fuel = search.lessOrOtherwise().map(text::fuel);
        if (load.isPresent() && fuel.isPresent()) {
            return load.get().means() == RemedyMeans.MOVE
                    ? Optional.of(load.get().or(fuel.get()))
                    : Optional.of(fuel.get().or(load.get()));
        }
        return load.or(() -> fuel).or(() -> search.more().map(text::fuel));
    }

    private Optional<Remedy> byLoad(double reservePercentMac) {
        if (manifest.isPresent()) {
            Allowance allowance = Allowance.of(before.loading(), before.balance(), reservePercentMac);
            for (Action action : ACTIONS) {
                Optional<Remedy> remedy = LoadProgram.least(manifest.get(), allowance, action)
                        .flatMap(way -> tried(way, action, reservePercentMac));
                if (remedy.isPresent()) {
                    return remedy;
                }
            }
        }
        return Optional.empty();
    }

    /** In whole amounts if some still do, else as they are; empty if the checks do not agree. */
    private Optional<Remedy> tried(LoadProgram.Way way, Action action, double reservePercentMac) {
        double grainKg = grainKg(before.loading());
        for (int finer = 1; finer <= FINEST; finer *= 10) {
            for (List<RemedyStep> steps : WholeAmounts.of(way.steps(), grainKg / finer, this::mostOf)) {
                Optional<Remedy> remedy = isThere(steps)
                        ? tried(steps, action, way.proved()).filter(found -> keepsReserve(found, reservePercentMac))
                        : Optional.empty();
                if (remedy.isPresent()) {
                    return remedy;
                }
            }
        }
        return tried(way.steps(), action, way.proved());
    }

    /** The checks know nothing of the reserve, and an amount rounded down may use it up. */
    private boolean keepsReserve(Remedy remedy, double reservePercentMac) {
        if (reservePercentMac == 0) {
            return true;
        }
        Loading loading = remedy.loading().orElseThrow();
        return Allowance.of(loading, Balancer.balance(loading, policy), reservePercentMac)
                .keeps(0, 0);
    }

    private Optional<Remedy> tried(List<RemedyStep> steps, Action action, boolean proved) {
        Loading loading = before.loading()
                .with(
                        NewLoad.after(manifest.orElseThrow(), steps),
                        before.loading().fuel());
        Trial after = Trial.of(loading, policy);
        if (!after.cures(before)) {
            return Optional.empty();
        }
        RemedyMeans means = switch (action) {
            case MOVE -> RemedyMeans.MOVE;
            case LEAVE -> RemedyMeans.LEAVE;
            case BALLAST -> RemedyMeans.BALLAST;
        };
        double massKg = steps.stream()
                .filter(step -> step.action() == action)
                .mapToDouble(RemedyStep::massKg)
                .sum();
        return Optional.of(
                new Remedy(means, massKg, text.load(steps, after), Optional.of(loading), proved, Optional.empty()));
    }

    /** What an amount that can be divided is rounded to: whole kg, or lb for users of pounds. */
    static double grainKg(Loading loading) {
        MassUnit unit = loading.type().geometry().units().mass();
        return unit == MassUnit.LB ? unit.toKg(1) : 1;
    }

    private double mostOf(RemedyStep step) {
        return step.cargo() < 0
                ? Double.POSITIVE_INFINITY
                : manifest.orElseThrow().cargoes().get(step.cargo()).amounts().at(step.from());
    }

    /** Rounding several parts of one heap up may take more than is there. */
    private boolean isThere(List<RemedyStep> steps) {
        for (RemedyStep step : steps) {
            double taken = steps.stream()
                    .filter(other -> other.cargo() == step.cargo() && other.from() == step.from())
                    .mapToDouble(RemedyStep::amount)
                    .sum();
            if (step.cargo() >= 0 && Tolerance.isAboveKg(taken, mostOf(step))) {
                return false;
            }
        }
        return true;
    }
}
