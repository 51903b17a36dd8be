package org.steelyard.remedy;

import java.util.ArrayList;
import java.util.List;
import java.util.NavigableSet;
import java.util.TreeSet;
import java.util.function.DoubleUnaryOperator;
import org.steelyard.balance.Balance;
import org.steelyard.balance.FuelBalance;
import org.steelyard.balance.TrimResult;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.limit.Envelope;
import org.steelyard.model.limit.LimitLine;
import org.steelyard.model.limit.MassLimits;
import org.steelyard.model.loading.Loading;
import org.steelyard.model.trim.TrimTable;
import org.steelyard.model.type.AircraftType;
import org.steelyard.model.type.MeanChord;
import org.steelyard.model.unit.MassMoment;
import org.steelyard.model.unit.Tolerance;

/**
 * By how much the mass and the moment of the traffic load may change. A change shifts every state from zero fuel to
 * landing, and every point of the fuel path, by the same mass and moment; so with the mass left alone all limits of CG
 * together come to one range of moment.
 */
final class Allowance {

    private final List<DoubleUnaryOperator> aftKgM = new ArrayList<>();
    private final List<DoubleUnaryOperator> forwardKgM = new ArrayList<>();
    private final NavigableSet<Double> bends = new TreeSet<>();
    private double mostKg = Double.POSITIVE_INFINITY;
    private double leastKg = Double.NEGATIVE_INFINITY;
    private double referenceM;
    private double toleranceKgM;

    private Allowance() {}

    /**
     * The allowance of a flight.
     *
     * @param loading the flight, whose load is known
     * @param balance its states
     * @param reservePercentMac how far inside the envelopes it must stay, in % MAC
     */
    static Allowance of(Loading loading, Balance balance, double reservePercentMac) {
        Allowance allowance = new Allowance();
        AircraftType type = loading.type();
        MeanChord chord = type.geometry().chord();
        allowance.referenceM = balance.takeoff().armM();
        allowance.toleranceKgM = Tolerance.momentKgM(balance.takeoff().massKg(), chord.lengthM());
        allowance.masses(loading, balance);
        for (Envelope envelope : type.envelopes()) {
            allowance.envelope(envelope, balance, reservePercentMac / 100 * chord.lengthM());
        }
        balance.takeoffTrim().ifPresent(trim -> allowance.trim(trim, chord, balance.takeoff()));
        balance.landingTrim()
                .ifPresent(trim -> allowance.trim(trim, chord, balance.landing().orElseThrow()));
        return allowance;
    }

    private void masses(Loading loading, Balance balance) {
        MassLimits limits = loading.type().limits();
        balance.zeroFuel().ifPresent(state -> atMost(limits.maxZeroFuelKg(), state));
        balance.ramp().ifPresent(state -> atMost(limits.maxRampKg(), state));
        atMost(
                Math.min(
                        limits.maxTakeoffKg(), loading.performance().takeoffKg().orElse(Double.POSITIVE_INFINITY)),
                balance.takeoff());
        balance.landing()
                .ifPresent(state -> atMost(
                        Math.min(
                                limits.maxLandingKg(),
                                loading.performance().landingKg().orElse(Double.POSITIVE_INFINITY)),
                        state));
        atLeast(limits.minFlightKg(), balance.landing().orElse(balance.takeoff()));
    }

    private void atMost(double limitKg, MassMoment state) {
        mostKg = Math.min(mostKg, limitKg - state.massKg());
    }

    private void atLeast(double limitKg, MassMoment state) {
        leastKg = Math.max(leastKg, limitKg - state.massKg());
    }

    private void envelope(Envelope envelope, Balance balance, double reserveM) {
        List<MassMoment> points = envelope.phase() == Phase.FLIGHT
                ? balance.fuel()
                        .map(FuelBalance::path)
                        .map(path -> path.points())
                        .orElse(List.of())
                : balance.state(envelope.phase()).map(List::of).orElse(List.of());
        if (points.isEmpty()) {
            return;
        }
        atMost(envelope.maxMassKg(), points.get(0));
        atLeast(envelope.minMassKg(), points.get(points.size() - 1));
        line(envelope.aft(), points, reserveM, aftKgM);
        line(envelope.forward(), points, reserveM, forwardKgM);
    }

    /** A path as a whole, and each of its points alone, whose bounds bend where a vertex is passed and nowhere else. */
    private void line(LimitLine line, List<MassMoment> points, double reserveM, List<DoubleUnaryOperator> bounds) {
        if (points.size() > 1) {
            bounds.add(new MomentGuard(line, points, reserveM)::boundKgM);
        }
        for (MassMoment point : points) {
            bounds.add(new MomentGuard(line, List.of(point), reserveM)::boundKgM);
            line.points().forEach(vertex -> bends.add(vertex.massKg() - point.massKg()));
        }
    }

    private void trim(TrimResult result, MeanChord chord, MassMoment state) {
        TrimGuard guard = new TrimGuard(result.scale(), chord, state);
        if (guard.endIsLimit() && result.scale().law() instanceof TrimTable table) {
            atMost(table.maxMassKg(), state);
            atLeast(table.minMassKg(), state);
        }
        aftKgM.add(guard::aftBoundKgM);
        forwardKgM.add(guard::forwardBoundKgM);
    }

    /** An arm in m near those of all limits, from which moments may be counted whatever the datum. */
    double referenceM() {
        return referenceM;
    }

    /** The greatest change of mass in kg that no limit of mass and no envelope forbids; may be negative. */
    double mostKg() {
        return mostKg;
    }

    /** The least change of mass in kg; more than zero where the flight is too light. */
    double leastKg() {
        return leastKg;
    }

    /**
     * The changes of mass from one to another in stretches, nearest to none first, within each of which no state passes
     * a vertex of its limits.
     *
     * @param fromKg the change nearest to none
     * @param toKg the change farthest from none, of the same sign
     * @return the ends of the stretches in order, at least one; none if the order is the other way
     */
    List<Double> stretches(double fromKg, double toKg) {
        List<Double> ends = new ArrayList<>();
        if (Tolerance.isBelowKg(Math.abs(toKg), Math.abs(fromKg))) {
            return ends;
        }
        ends.add(fromKg);
        NavigableSet<Double> between = toKg < fromKg ? bends.descendingSet() : bends;
        for (double bend : between) {
            double before = ends.get(ends.size() - 1);
            boolean apart =
                    Tolerance.isAboveKg(Math.abs(bend - before), 0) && Tolerance.isAboveKg(Math.abs(toKg - bend), 0);
            if (apart && (bend - before) * (toKg - bend) > 0) {
                ends.add(bend);
            }
        }
        ends.add(toKg);
        return ends;
    }

    /** For each limit aft the greatest change of moment in kg·m with a change of mass. */
    List<DoubleUnaryOperator> aftKgM() {
        return List.copyOf(aftKgM);
    }

    /** For each limit forward the least change of moment in kg·m with a change of mass. */
    List<DoubleUnaryOperator> forwardKgM() {
        return List.copyOf(forwardKgM);
    }

    /** The greatest change of moment in kg·m with a change of mass. */
    double highestKgM(double deltaKg) {
        double highest = Double.POSITIVE_INFINITY;
        for (DoubleUnaryOperator bound : aftKgM) {
            highest = Math.min(highest, bound.applyAsDouble(deltaKg));
        }
        return highest;
    }

    /** The least change of moment in kg·m with a change of mass. */
    double lowestKgM(double deltaKg) {
        double lowest = Double.NEGATIVE_INFINITY;
        for (DoubleUnaryOperator bound : forwardKgM) {
            lowest = Math.max(lowest, bound.applyAsDouble(deltaKg));
        }
        return lowest;
    }

    /** Whether a change keeps every limit of mass and CG. */
    boolean keeps(double deltaKg, double deltaKgM) {
        return !Tolerance.isAboveKg(deltaKg, mostKg)
                && !Tolerance.isBelowKg(deltaKg, leastKg)
                && deltaKgM <= highestKgM(deltaKg) + toleranceKgM
                && deltaKgM >= lowestKgM(deltaKg) - toleranceKgM;
    }
}
