package org.steelyard.remedy;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.steelyard.balance.Balance;
import org.steelyard.balance.TrimResult;
import org.steelyard.check.result.AuditedFlight;
import org.steelyard.check.result.Status;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.limit.Envelope;
import org.steelyard.model.type.LoadGroup;
import org.steelyard.model.type.MeanChord;
import org.steelyard.model.unit.MassMoment;
import org.steelyard.model.unit.Tolerance;

/**
 * How much could still be added at each place of a flight that has no breach. Masses, holds, groups and envelopes are
 * in closed form; the end of a trim band, which may bend with mass, is found by halving.
 */
public final class RoomSearch {

    private static final int HALVINGS = 50;

    private final Balance balance;
    private final Manifest manifest;
    private final Allowance allowance;
    private final MeanChord chord;

    private RoomSearch(AuditedFlight flight, Manifest manifest) {
        this.balance = flight.balance();
        this.manifest = manifest;
        this.allowance = Allowance.of(flight.loading(), flight.balance(), 0);
        this.chord = flight.loading().type().geometry().chord();
    }

    /**
     * The room of a flight.
     *
     * @param flight the flight as audited
     * @return its room; empty for a flight with a breach, or one whose load is not known
     */
    public static Optional<Room> of(AuditedFlight flight) {
        if (flight.assessment().status() == Status.BREACHED) {
            return Optional.empty();
        }
        return Manifest.of(flight.loading(), flight.balance().distribution())
                .map(manifest -> new RoomSearch(flight, manifest).room());
    }

    private Room room() {
        List<PlaceRoom> rooms = new ArrayList<>();
        double lastMinuteKg = Double.POSITIVE_INFINITY;
        for (int i = 0; i < manifest.places().size(); i++) {
            Place place = manifest.places().get(i);
            double onKg =
                    free(place.armM(), false, Math.max(0, allowance.mostKg())).kg();
            double offKg =
                    free(place.armM(), true, Math.max(0, -allowance.leastKg())).kg();
            lastMinuteKg = Math.min(lastMinuteKg, Math.min(onKg, offKg));
            rooms.add(at(i, place));
        }
        return new Room(rooms, rooms.isEmpty() ? 0 : lastMinuteKg);
    }

    private record Bound(double kg, RoomLimit limit) {

        Bound least(double otherKg, RoomLimit other) {
            return new Bound(Math.min(kg, Math.max(0, otherKg)), Tolerance.isBelowKg(otherKg, kg) ? other : limit);
        }
    }

    private PlaceRoom at(int index, Place place) {
        double adultKg = manifest.scheme().adultKg();
        double seatsKg = Math.max(0, Math.floor(place.seats() - place.seated() + 1e-9)) * adultKg;
        Bound bound = place.cabin()
                ? new Bound(seatsKg, RoomLimit.SEATS)
                : new Bound(Math.max(0, place.mostKg() - place.massKg()), RoomLimit.PLACE);
        bound = bound.least(groupKg(index), RoomLimit.GROUP).least(allowance.mostKg(), RoomLimit.MASS);
        Bound free = free(place.armM(), false, bound.kg());
        Bound least = free.kg() < bound.kg() ? free : bound;
        int persons = place.cabin() ? (int) Math.floor(least.kg() / adultKg + 1e-9) : 0;
        return new PlaceRoom(place.name(), place.cabin(), least.kg(), persons, least.limit());
    }

    private double groupKg(int index) {
        double roomKg = Double.POSITIVE_INFINITY;
        for (LoadGroup group : manifest.type().groups()) {
            boolean member = index < manifest.zones()
                    ? group.zones().contains(index)
                    : group.holds().contains(index - manifest.zones());
            if (member) {
                double aboardKg = 0;
                for (int zone : group.zones()) {
                    aboardKg += manifest.places().get(zone).massKg();
                }
                for (int hold : group.holds()) {
                    aboardKg += manifest.places().get(manifest.zones() + hold).massKg();
                }
                roomKg = Math.min(roomKg, group.maxKg() - aboardKg);
            }
        }
        return roomKg;
    }

    /** What envelopes and trim let come on or go off at an arm. */
    private Bound free(double armM, boolean off, double mostKg) {
        Bound bound = new Bound(mostKg, RoomLimit.MASS);
        for (Envelope envelope : manifest.type().envelopes()) {
            List<MassMoment> states = envelope.phase() == Phase.FLIGHT
                    ? balance.fuel().orElseThrow().path().points()
                    : List.of(balance.state(envelope.phase()).orElseThrow());
            bound = bound.least(
                    Crossing.mostKg(envelope.forward(), chord, states, armM, off, bound.kg()), RoomLimit.CG);
            bound = bound.least(Crossing.mostKg(envelope.aft(), chord, states, armM, off, bound.kg()), RoomLimit.CG);
        }
        bound = bound.least(trimKg(balance.takeoffTrim(), balance.takeoff(), armM, off, bound.kg()), RoomLimit.TRIM);
        MassMoment landing = balance.landing().orElseThrow();
        return bound.least(trimKg(balance.landingTrim(), landing, armM, off, bound.kg()), RoomLimit.TRIM);
    }

    private double trimKg(Optional<TrimResult> trim, MassMoment state, double armM, boolean off, double mostKg) {
        if (trim.isEmpty()) {
            return mostKg;
        }
        TrimGuard guard = new TrimGuard(trim.get().scale(), chord, state);
        double sign = off ? -1 : 1;
        if (inside(guard, armM, sign * mostKg)) {
            return mostKg;
        }
        double insideKg = 0;
        double outsideKg = mostKg;
        for (int i = 0; i < HALVINGS; i++) {
            double middleKg = (insideKg + outsideKg) / 2;
            if (inside(guard, armM, sign * middleKg)) {
                insideKg = middleKg;
            } else {
                outsideKg = middleKg;
            }
        }
        return insideKg;
    }

    private static boolean inside(TrimGuard guard, double armM, double deltaKg) {
        double deltaKgM = deltaKg * armM;
        double toleranceKgM =
                Tolerance.momentKgM(guard.state().massKg(), guard.chord().lengthM());
        return guard.reaches(deltaKg)
                && deltaKgM <= guard.aftBoundKgM(deltaKg) + toleranceKgM
                && deltaKgM >= guard.forwardBoundKgM(deltaKg) - toleranceKgM;
    }
}
