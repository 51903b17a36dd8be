package org.steelyard.analyse;

import java.util.ArrayList;
import java.util.List;
import org.steelyard.balance.Balance;
import org.steelyard.check.AuditedFlight;
import org.steelyard.model.AircraftType;
import org.steelyard.model.CabinZone;
import org.steelyard.model.Fuel;
import org.steelyard.model.Hold;
import org.steelyard.model.Load;
import org.steelyard.model.MassMoment;
import org.steelyard.model.Tail;

/**
 * What makes up a take-off mass: basic mass, crew and pantry, each zone, each hold, fuel, and what is left of the
 * take-off state after all of these, as a last-minute change. Masses and moments of the parts add up to those of
 * take-off.
 */
final class LoadParts {

    private final List<String> names = new ArrayList<>();
    private final List<String> kinds = new ArrayList<>();
    private final AircraftType type;

    LoadParts(AircraftType type) {
        this.type = type;
        add("basic mass of the tail", "basic mass");
        add("crew and pantry", "crew and pantry");
        for (CabinZone zone : type.cabin().zones()) {
            add("passengers " + zone.name(), "passengers");
        }
        for (Hold hold : type.holds()) {
            add(hold.name(), "holds");
        }
        add("fuel", "fuel");
        add("last-minute changes", "last-minute changes");
    }

    private void add(String name, String kind) {
        names.add(name);
        kinds.add(kind);
    }

    AircraftType type() {
        return type;
    }

    int size() {
        return names.size();
    }

    String name(int part) {
        return names.get(part);
    }

    /** The kind of a part: passengers, holds, fuel and so on. */
    String kind(int part) {
        return kinds.get(part);
    }

    int indexOf(String name) {
        return names.indexOf(name);
    }

    /** Whether zones, holds and tanks are all given, and nothing was shared out by a rule. */
    static boolean areKnown(AuditedFlight flight) {
        return flight.loading().load() instanceof Load.ByPlace
                && flight.loading().fuel() instanceof Fuel.ByTank
                && flight.balance().dryOperating().isPresent()
                && flight.balance().zeroFuel().isPresent()
                && flight.balance().distribution().isPresent();
    }

    /** The parts of a flight that has them all. */
    List<MassMoment> of(AuditedFlight flight) {
        Balance balance = flight.balance();
        Tail tail = flight.loading().tail();
        MassMoment dryOperating = balance.dryOperating().orElseThrow();
        MassMoment zeroFuel = balance.zeroFuel().orElseThrow();
        var places = balance.distribution().orElseThrow();
        List<MassMoment> parts = new ArrayList<>(names.size());
        parts.add(tail.basic());
        parts.add(dryOperating.minus(tail.basic()));
        int i = 0;
        for (CabinZone zone : type.cabin().zones()) {
            parts.add(MassMoment.at(places.zoneKg().at(i++), zone.armM()));
        }
        i = 0;
        for (Hold hold : type.holds()) {
            parts.add(MassMoment.at(places.holdKg().at(i++), hold.armM()));
        }
        parts.add(balance.takeoff().minus(zeroFuel));
        MassMoment sum = MassMoment.ZERO;
        for (MassMoment part : parts) {
            sum = sum.plus(part);
        }
        parts.add(balance.takeoff().minus(sum));
        return parts;
    }
}
