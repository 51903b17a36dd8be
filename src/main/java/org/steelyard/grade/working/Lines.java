package org.steelyard.grade.working;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.steelyard.balance.Balance;
import org.steelyard.balance.Balancer;
import org.steelyard.balance.Distribution;
import org.steelyard.grade.working.Line.Kind;
import org.steelyard.model.loading.Crew;
import org.steelyard.model.loading.Loading;
import org.steelyard.model.loading.Passengers;
import org.steelyard.model.loading.ZoneLoad;
import org.steelyard.model.policy.Policy;
import org.steelyard.model.type.AircraftType;
import org.steelyard.model.type.CabinZone;
import org.steelyard.model.type.CrewRole;
import org.steelyard.model.type.Hold;
import org.steelyard.model.type.MassScheme;
import org.steelyard.model.unit.MassMoment;

/** The lines of a loading up to the zero-fuel state; they add up to what {@link Balancer} computes. */
final class Lines {

    private static final double SAME_KGM = 1e-6;

    private final Loading loading;
    private final Policy policy;
    private final List<Line> lines = new ArrayList<>();

    private Lines(Loading loading, Policy policy) {
        this.loading = loading;
        this.policy = policy;
    }

    static List<Line> of(Loading loading, Policy policy, Balance right) {
        Lines lines = new Lines(loading, policy);
        if (right.dryOperating().isPresent()) {
            lines.dry(right.dryOperating().get());
            lines.traffic(right.distribution().orElseThrow());
        } else {
            right.zeroFuel().ifPresent(state -> lines.add(Kind.STATE, "zero-fuel state", state, 0));
        }
        return lines.lines;
    }

    private void dry(MassMoment dryOperating) {
        Crew crew = loading.crew();
        MassMoment noFlightCrew = dry(new Crew(OptionalInt.of(0), crew.cabinCrew(), noMass(), crew.pantryCode()));
        MassMoment noCrew = dry(new Crew(OptionalInt.of(0), OptionalInt.of(0), noMass(), crew.pantryCode()));
        MassMoment basic = loading.tail().basic();
        add(Kind.BASIC, "basic mass", basic, 0);
        add(Kind.CREW, CrewRole.FLIGHT.label(), dryOperating.minus(noFlightCrew), 0);
        add(Kind.CREW, CrewRole.CABIN.label(), noFlightCrew.minus(noCrew), 0);
        add(Kind.PANTRY, "pantry", noCrew.minus(basic), 0);
    }

    private static OptionalDouble noMass() {
        return OptionalDouble.empty();
    }

    private MassMoment dry(Crew crew) {
        return Balancer.balance(loading.with(crew), policy).dryOperating().orElseThrow();
    }

    private void traffic(Distribution distribution) {
        AircraftType type = loading.type();
        for (int i = 0; i < type.cabin().zones().size(); i++) {
            CabinZone zone = type.cabin().zones().get(i);
            double zoneKg = distribution.zoneKg().at(i);
            double armM = armM(zone, zoneKg, distribution.zoneMomentKgM().at(i));
            lines.add(new Line(Kind.ZONE, zone.name(), zoneKg, armM, childrenKg(i)));
        }
        for (int i = 0; i < type.holds().size(); i++) {
            Hold hold = type.holds().get(i);
            lines.add(new Line(Kind.HOLD, hold.name(), distribution.holdKg().at(i), hold.armM(), 0));
        }
    }

    /** The zone's arm, or the mean arm of those who sit in it where their rows are given. */
    private static double armM(CabinZone zone, double zoneKg, double momentKgM) {
        boolean isAtZone = Math.abs(momentKgM - zoneKg * zone.armM()) <= SAME_KGM;
        return isAtZone ? zone.armM() : momentKgM / zoneKg;
    }

    private double childrenKg(int zone) {
        Optional<List<ZoneLoad>> zones = loading.load().zonesIfGiven();
        if (zones.isEmpty()) {
            return 0;
        }
        ZoneLoad load = zones.get().get(zone);
        MassScheme scheme = loading.scheme();
        Passengers passengers = load.passengers();
        return load.actualKg().isPresent() ? 0 : passengers.child() * (scheme.adultKg() - scheme.childKg());
    }

    private void add(Kind kind, String name, MassMoment part, double childrenKg) {
        if (Math.abs(part.massKg()) > 1e-6) {
            lines.add(new Line(kind, name, part.massKg(), part.armM(), childrenKg));
        }
    }
}
