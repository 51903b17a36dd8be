package org.steelyard.balance;

import java.util.Optional;
import java.util.OptionalDouble;
import org.steelyard.model.loading.Crew;
import org.steelyard.model.loading.CrewStationLoad;
import org.steelyard.model.type.Cabin;
import org.steelyard.model.type.CrewRole;
import org.steelyard.model.type.CrewStation;
import org.steelyard.model.type.MassScheme;
import org.steelyard.model.type.Pantry;
import org.steelyard.model.type.Tail;
import org.steelyard.model.unit.MassMoment;

/**
 * The dry operating state: basic mass, crew at their stations, pantry. Crew of a role sit where the input says so,
 * station by station; else they fill the role's stations in the type's order, and more crew than seats all count at the
 * last station, which the checks report.
 */
final class DryOperating {

    private static final CrewRole[] ROLES = CrewRole.values();

    private DryOperating() {}

    static MassMoment of(Tail tail, MassScheme scheme, Crew crew) {
        Cabin cabin = tail.type().cabin();
        double massKg = tail.basic().massKg();
        double momentKgM = tail.basic().momentKgM();
        for (CrewRole role : ROLES) {
            MassMoment aboard = isByStation(cabin, crew, role)
                    ? byStation(cabin, scheme, crew, role)
                    : crew(cabin, scheme, crew, role);
            massKg += aboard.massKg();
            momentKgM += aboard.momentKgM();
        }
        MassMoment pantry = pantry(cabin, crew.pantryCode()).load();
        return new MassMoment(massKg + pantry.massKg(), momentKgM + pantry.momentKgM());
    }

    private static boolean isByStation(Cabin cabin, Crew crew, CrewRole role) {
        for (int i = 0; i < cabin.crewStations().size(); i++) {
            if (cabin.crewStations().get(i).role() == role && crew.at(i).isPresent()) {
                return true;
            }
        }
        return false;
    }

    private static MassMoment byStation(Cabin cabin, MassScheme scheme, Crew crew, CrewRole role) {
        double massKg = 0;
        double momentKgM = 0;
        for (int i = 0; i < cabin.crewStations().size(); i++) {
            CrewStation station = cabin.crewStations().get(i);
            Optional<CrewStationLoad> load = crew.at(i);
            if (station.role() == role && load.isPresent()) {
                double hereKg = load.get().actualKg().orElse(load.get().count() * scheme.massKg(role));
                massKg += hereKg;
                momentKgM += hereKg * station.armM();
            }
        }
        return new MassMoment(massKg, momentKgM);
    }

    private static MassMoment crew(Cabin cabin, MassScheme scheme, Crew crew, CrewRole role) {
        int count = crew.count(role).orElse(cabin.standardCrew(role));
        OptionalDouble actualKg = role == CrewRole.FLIGHT ? crew.flightCrewKg() : OptionalDouble.empty();
        double eachKg = actualKg.isPresent() ? actualKg.getAsDouble() / Math.max(count, 1) : scheme.massKg(role);
        int heads = actualKg.isPresent() ? Math.max(count, 1) : count;
        return seat(cabin, role, heads, eachKg);
    }

    private static MassMoment seat(Cabin cabin, CrewRole role, int heads, double eachKg) {
        int left = heads;
        double momentKgM = 0;
        double lastArmM = Double.NaN;
        for (int i = 0; i < cabin.crewStations().size(); i++) {
            CrewStation station = cabin.crewStations().get(i);
            if (station.role() == role) {
                int here = Math.min(left, station.seats());
                momentKgM += here * eachKg * station.armM();
                left -= here;
                lastArmM = station.armM();
            }
        }
        if (left > 0 && Double.isNaN(lastArmM)) {
            throw new IllegalArgumentException("there is no station for " + role.label());
        }
        return new MassMoment(heads * eachKg, left > 0 ? momentKgM + left * eachKg * lastArmM : momentKgM);
    }

    private static Pantry pantry(Cabin cabin, String code) {
        if (code.isBlank()) {
            return cabin.pantries().isEmpty() ? Pantry.NONE : cabin.pantries().get(0);
        }
        for (int i = 0; i < cabin.pantries().size(); i++) {
            if (cabin.pantries().get(i).code().equals(code)) {
                return cabin.pantries().get(i);
            }
        }
        throw new IllegalArgumentException("there is no pantry '" + code + "'");
    }
}
