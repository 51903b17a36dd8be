package org.steelyard.analyse.part;

import java.util.ArrayList;
import java.util.List;
import org.steelyard.balance.Balance;
import org.steelyard.check.result.AuditedFlight;
import org.steelyard.model.type.AircraftType;
import org.steelyard.model.type.CabinZone;
import org.steelyard.model.type.Hold;
import org.steelyard.model.type.Tail;
import org.steelyard.model.unit.MassMoment;

/**
 * What makes up a take-off mass: basic mass, crew and pantry, each zone, each hold and fuel, all after any last-minute
 * change. Masses and moments of the parts add up to those of take-off.
 */
public final class LoadParts {

    private final List<String> names = new ArrayList<>();
    private final List<String> kinds = new ArrayList<>();
    private final AircraftType type;

    public LoadParts(AircraftType type) {
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
    }

    private void add(String name, String kind) {
        names.add(name);
        kinds.add(kind);
    }

    public AircraftType type() {
        return type;
    }

    public int size() {
        return names.size();
    }

    String name(int part) {
        return names.get(part);
    }

    /** The kind of a part: passengers, holds, fuel and so on. */
    String kind(int part) {
        return kinds.get(part);
    }

    public int indexOf(String name) {
        return names.indexOf(name);
    }

    /** Whether it is known what lies in each zone, hold and tank, and nothing was shared out by a rule. */
    public static boolean areKnown(AuditedFlight flight) {
        return flight.assumed().isEmpty()
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
        for (int i = 0; i < type.cabin().zones().size(); i++) {
            parts.add(
                    new MassMoment(places.zoneKg().at(i), places.zoneMomentKgM().at(i)));
        }
        for (int i = 0; i < type.holds().size(); i++) {
            parts.add(MassMoment.at(places.holdKg().at(i), type.holds().get(i).armM()));
        }
        parts.add(balance.takeoff().minus(zeroFuel));
        return parts;
    }
}
