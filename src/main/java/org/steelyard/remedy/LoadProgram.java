package org.steelyard.remedy;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.steelyard.model.type.LoadGroup;
import org.steelyard.model.unit.Amounts;
import org.steelyard.model.unit.Tolerance;
import org.steelyard.remedy.RemedyStep.Action;

/**
 * What may be done with a load as a linear program: its unknowns are how much of each kind leaves, enters, or is left
 * behind at each place, and how much ballast is put there; its rows are seats, holds, groups, masses and moments.
 *
 * <p>The mass moved alone changes no mass, and then the limits of CG are exactly one range of moment. With load left
 * behind or ballast each limit is a curve of moment against mass; it is replaced by its tangent at the change of mass
 * that the solution before came to, until the solution stays where its tangents are taken.
 */
final class LoadProgram {

    /** A mass that is left behind or added counts this much more than one that is moved. */
    private static final double FIRST = 1e4;

    /** Of two remedies with the same mass the one that moves cargo rather than people. */
    private static final double PEOPLE = 1 + 1e-6;

    /** Of two remedies that are alike in that, too, the one from and to the places that are named first. */
    private static final double ORDER = 1e-9;

    /** Less than this, in pieces or kg, is no step of a remedy. */
    private static final double NO_STEP = 1e-6;

    private static final int TANGENTS = 12;
    private static final double TANGENT_KG = 0.5;

    private enum Role {
        OUT,
        IN,
        LEAVE,
        BALLAST
    }

    private record Part(Role role, int cargo, int place, double unitKg, double persons) {

        /** Change of what lies at the place for one unit. */
        double sign() {
            return role == Role.OUT || role == Role.LEAVE ? -1 : 1;
        }
    }

    private final Manifest manifest;
    private final Allowance allowance;
    private final Action action;
    private final List<Part> parts = new ArrayList<>();
    private LinearProgram program = new LinearProgram();

    private LoadProgram(Manifest manifest, Allowance allowance, Action action) {
        this.manifest = manifest;
        this.allowance = allowance;
        this.action = action;
    }

    /**
     * A way to put the load right.
     *
     * @param steps what to do
     * @param proved whether no way takes less
     */
    record Way(List<RemedyStep> steps, boolean proved) {}

    /**
     * The least that puts the load right.
     *
     * @param action what may be done beside moves: nothing more, leaving load behind, or ballast
     * @return what to do; empty if that is not enough
     */
    static Optional<Way> least(Manifest manifest, Allowance allowance, Action action) {
        return new LoadProgram(manifest, allowance, action).solve();
    }

    private Optional<Way> solve() {
        if (action == Action.MOVE) {
            return Tolerance.isBelowKg(allowance.mostKg(), 0) || Tolerance.isAboveKg(allowance.leastKg(), 0)
                    ? Optional.empty()
                    : solution(0, 0, 0).map(this::way);
        }
        List<Double> ends = stretches();
        for (int i = 1; i < ends.size(); i++) {
            Optional<Way> way = inside(ends.get(i - 1), ends.get(i));
            if (way.isPresent()) {
                return way;
            }
        }
        return Optional.empty();
    }

    private List<Double> stretches() {
        if (action == Action.LEAVE) {
            double loadKg =
                    manifest.places().stream().mapToDouble(Place::massKg).sum();
            return allowance.stretches(Math.min(allowance.mostKg(), 0), Math.max(allowance.leastKg(), -loadKg));
        }
        double roomKg = manifest.places().stream()
                .filter(place -> !place.cabin())
                .mapToDouble(hold -> Math.max(0, hold.mostKg() - hold.massKg()))
                .sum();
        return allowance.stretches(Math.max(allowance.leastKg(), 0), Math.min(allowance.mostKg(), roomKg));
    }

    /** The least within a stretch of changes of mass, from its end that is nearer to none. */
    private Optional<Way> inside(double nearKg, double farKg) {
        double aroundKg = nearKg;
        for (int i = 0; i < TANGENTS; i++) {
            Optional<BranchAndBound.Solution> solution = solution(aroundKg, nearKg, farKg);
            if (solution.isEmpty()) {
                return Optional.empty();
            }
            Amounts values = solution.get().values();
            double deltaKg = total(values, false);
            if (allowance.keeps(deltaKg, total(values, true))) {
                return solution.map(this::way);
            }
            aroundKg = Math.min(Math.max(deltaKg, Math.min(nearKg, farKg)), Math.max(nearKg, farKg));
        }
        return Optional.empty();
    }

    private Optional<BranchAndBound.Solution> solution(double aroundKg, double nearKg, double farKg) {
        program = new LinearProgram();
        parts.clear();
        unknowns();
        conservation();
        capacities();
        limits(aroundKg, nearKg, farKg);
        return BranchAndBound.least(program);
    }

    private void unknowns() {
        for (int c = 0; c < manifest.cargoes().size(); c++) {
            Cargo cargo = manifest.cargoes().get(c);
            for (int p = 0; p < manifest.places().size(); p++) {
                double here = cargo.amounts().at(p);
                double order = ORDER * (c * manifest.places().size() + p);
                double moved = cargo.unitKg() * ((cargo.kind().cabin() ? PEOPLE : 1) + order);
                if (manifest.places().get(p).cabin() == cargo.kind().cabin()) {
                    if (here > 0) {
                        add(Role.OUT, c, p, moved, here);
                        if (action == Action.LEAVE) {
                            add(Role.LEAVE, c, p, FIRST * moved, here);
                        }
                    }
                    add(Role.IN, c, p, cargo.unitKg() * order, cargo.amounts().sum());
                }
            }
        }
        if (action == Action.BALLAST) {
            for (int p = manifest.zones(); p < manifest.places().size(); p++) {
                Place hold = manifest.places().get(p);
                parts.add(new Part(Role.BALLAST, -1, p, 1, 0));
                program.unknown(FIRST * (1 + ORDER * p), Math.max(0, hold.mostKg() - hold.massKg()), false);
            }
        }
    }

    private void add(Role role, int cargo, int place, double cost, double upper) {
        Cargo what = manifest.cargoes().get(cargo);
        parts.add(new Part(role, cargo, place, what.unitKg(), what.persons()));
        program.unknown(cost, upper, what.kind().whole());
    }

    private void conservation() {
        for (int c = 0; c < manifest.cargoes().size(); c++) {
            double[] balance = new double[parts.size()];
            for (int j = 0; j < balance.length; j++) {
                Part part = parts.get(j);
                boolean moves = part.role() == Role.OUT || part.role() == Role.IN;
                balance[j] = part.cargo() == c && moves ? part.sign() : 0;
            }
            program.equal(balance, 0);
            if (action == Action.LEAVE) {
                noMoreThanThere(c);
            }
        }
    }

    private void noMoreThanThere(int cargo) {
        for (int p = 0; p < manifest.places().size(); p++) {
            double here = manifest.cargoes().get(cargo).amounts().at(p);
            if (here > 0) {
                double[] leaving = new double[parts.size()];
                for (int j = 0; j < leaving.length; j++) {
                    Part part = parts.get(j);
                    leaving[j] = part.cargo() == cargo && part.place() == p && part.sign() < 0 ? 1 : 0;
                }
                program.atMost(leaving, here);
            }
        }
    }

    private void capacities() {
        for (int p = 0; p < manifest.places().size(); p++) {
            Place place = manifest.places().get(p);
            double[] row = new double[parts.size()];
            for (int j = 0; j < row.length; j++) {
                Part part = parts.get(j);
                double each = place.cabin() ? part.persons() : part.unitKg();
                row[j] = part.place() == p ? part.sign() * each : 0;
            }
            program.atMost(row, place.cabin() ? place.seats() - place.seated() : place.mostKg() - place.massKg());
        }
        for (LoadGroup group : manifest.type().groups()) {
            group(group);
        }
    }

    private void group(LoadGroup group) {
        double roomKg = group.maxKg();
        boolean[] member = new boolean[manifest.places().size()];
        for (int hold : group.holds()) {
            member[manifest.zones() + hold] = true;
        }
        for (int zone : group.zones()) {
            member[zone] = true;
        }
        for (int p = 0; p < member.length; p++) {
            roomKg -= member[p] ? manifest.places().get(p).massKg() : 0;
        }
        double[] row = new double[parts.size()];
        for (int j = 0; j < row.length; j++) {
            Part part = parts.get(j);
            row[j] = member[part.place()] ? part.sign() * part.unitKg() : 0;
        }
        program.atMost(row, roomKg);
    }

    private void limits(double aroundKg, double nearKg, double farKg) {
        double[] massKg = new double[parts.size()];
        double[] momentKgM = new double[parts.size()];
        for (int j = 0; j < massKg.length; j++) {
            Part part = parts.get(j);
            massKg[j] = part.sign() * part.unitKg();
            momentKgM[j] = massKg[j] * manifest.places().get(part.place()).armM();
        }
        if (action == Action.MOVE) {
            moment(momentKgM, massKg, 1, allowance.highestKgM(0), allowance.referenceM());
            moment(momentKgM, massKg, -1, -allowance.lowestKgM(0), allowance.referenceM());
            return;
        }
        program.atMost(massKg, Math.max(nearKg, farKg));
        program.atMost(times(massKg, -1), -Math.min(nearKg, farKg));
        double middleKg = (nearKg + farKg) / 2;
        double stepKg = Math.min(TANGENT_KG, Math.abs(farKg - nearKg) / 4);
        double towardsKg = aroundKg > middleKg ? -stepKg : stepKg;
        for (DoubleUnaryOperator bound : sharpest(allowance.aftKgM(), 1, nearKg, farKg)) {
            tangent(momentKgM, massKg, 1, bound, aroundKg, towardsKg);
        }
        for (DoubleUnaryOperator bound : sharpest(allowance.forwardKgM(), -1, nearKg, farKg)) {
            tangent(momentKgM, massKg, -1, bound, aroundKg, towardsKg);
        }
    }

    /** The bounds that no other is sharper than at both ends of a stretch: few of the many along a fuel path. */
    private static List<DoubleUnaryOperator> sharpest(
            List<DoubleUnaryOperator> bounds, int side, double nearKg, double farKg) {
        double insideKg = (farKg - nearKg) / 1024;
        double[] near = new double[bounds.size()];
        double[] far = new double[bounds.size()];
        for (int i = 0; i < near.length; i++) {
            near[i] = side * bounds.get(i).applyAsDouble(nearKg + insideKg);
            far[i] = side * bounds.get(i).applyAsDouble(farKg - insideKg);
        }
        List<DoubleUnaryOperator> sharpest = new ArrayList<>();
        for (int i = 0; i < near.length; i++) {
            boolean blunt = false;
            for (int j = 0; j < near.length; j++) {
                boolean asSharp = near[j] <= near[i] && far[j] <= far[i];
                boolean sharper = near[j] < near[i] || far[j] < far[i] || j < i;
                blunt |= j != i && asSharp && sharper;
            }
            if (!blunt) {
                sharpest.add(bounds.get(i));
            }
        }
        return sharpest;
    }

    /** The tangent, taken a little inside the stretch, as a limit may step at its end. */
    private void tangent(
            double[] momentKgM,
            double[] massKg,
            int side,
            DoubleUnaryOperator bound,
            double aroundKg,
            double towardsKg) {
        double nearKg = aroundKg + towardsKg / 1024;
        double at = bound.applyAsDouble(nearKg);
        double slopeM = (bound.applyAsDouble(aroundKg + towardsKg) - at) / (aroundKg + towardsKg - nearKg);
        if (Double.isFinite(at) && Double.isFinite(slopeM)) {
            moment(momentKgM, massKg, side, side * (at - slopeM * nearKg), slopeM);
        }
    }

    /** {@code side (moment - slope mass) ≤ bound}. */
    private void moment(double[] momentKgM, double[] massKg, int side, double bound, double slopeM) {
        if (Double.isFinite(bound)) {
            double[] row = new double[parts.size()];
            for (int j = 0; j < row.length; j++) {
                row[j] = side * (momentKgM[j] - slopeM * massKg[j]);
            }
            program.atMost(row, bound);
        }
    }

    private static double[] times(double[] values, double factor) {
        double[] product = new double[values.length];
        for (int j = 0; j < values.length; j++) {
            product[j] = values[j] * factor;
        }
        return product;
    }

    private double total(Amounts values, boolean moment) {
        double total = 0;
        for (int j = 0; j < values.size(); j++) {
            Part part = parts.get(j);
            double arm = moment ? manifest.places().get(part.place()).armM() : 1;
            total += part.sign() * part.unitKg() * values.at(j) * arm;
        }
        return total;
    }

    private Way way(BranchAndBound.Solution solution) {
        List<RemedyStep> steps = new ArrayList<>();
        for (int c = 0; c < manifest.cargoes().size(); c++) {
            moves(c, solution.values(), steps);
        }
        for (int j = 0; j < parts.size(); j++) {
            Part part = parts.get(j);
            double amount = solution.values().at(j);
            if (amount > NO_STEP && part.role() == Role.LEAVE) {
                Cargo.Kind kind = manifest.cargoes().get(part.cargo()).kind();
                steps.add(new RemedyStep(Action.LEAVE, kind, part.cargo(), amount, part.unitKg(), part.place(), -1));
            } else if (amount > NO_STEP && part.role() == Role.BALLAST) {
                steps.add(new RemedyStep(Action.BALLAST, Cargo.Kind.LOOSE, -1, amount, 1, -1, part.place()));
            }
        }
        return new Way(steps, solution.proved());
    }

    /** What leaves and what enters, matched from front to back. */
    private void moves(int cargo, Amounts values, List<RemedyStep> steps) {
        double[] change = new double[manifest.places().size()];
        for (int j = 0; j < parts.size(); j++) {
            Part part = parts.get(j);
            if (part.cargo() == cargo && (part.role() == Role.OUT || part.role() == Role.IN)) {
                change[part.place()] += part.sign() * values.at(j);
            }
        }
        Cargo what = manifest.cargoes().get(cargo);
        int to = 0;
        for (int from = 0; from < change.length; from++) {
            while (change[from] < -NO_STEP) {
                while (to < change.length && change[to] <= NO_STEP) {
                    to++;
                }
                if (to == change.length) {
                    break;
                }
                double amount = Math.min(-change[from], change[to]);
                change[from] += amount;
                change[to] -= amount;
                steps.add(new RemedyStep(Action.MOVE, what.kind(), cargo, amount, what.unitKg(), from, to));
            }
        }
    }
}
