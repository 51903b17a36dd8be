package org.steelyard.check.flight;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import org.steelyard.balance.Distribution;
import org.steelyard.model.finding.Finding;
import org.steelyard.model.finding.FindingCode;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.finding.Severity;
import org.steelyard.model.limit.FloorLimit;
import org.steelyard.model.loading.Crew;
import org.steelyard.model.loading.CrewStationLoad;
import org.steelyard.model.loading.SeatRowLoad;
import org.steelyard.model.loading.ZoneLoad;
import org.steelyard.model.type.AircraftType;
import org.steelyard.model.type.CabinZone;
import org.steelyard.model.type.CrewRole;
import org.steelyard.model.type.CrewStation;
import org.steelyard.model.type.Hold;
import org.steelyard.model.type.LoadGroup;
import org.steelyard.model.type.SeatRow;
import org.steelyard.model.unit.Quantity;
import org.steelyard.model.unit.Tolerance;

/** Holds what lies in zones and holds, alone and together, against seats, masses and floors. */
final class PlaceCheck {

    private final AircraftType type;
    private final Findings findings;
    private final double nearbyShare;

    PlaceCheck(AircraftType type, Findings findings) {
        this.type = type;
        this.findings = findings;
        this.nearbyShare = findings.policy().marginalLoadPercent() / 100;
    }

    void crew(Crew crew) {
        List<CrewStation> stations = type.cabin().crewStations();
        Set<CrewRole> byStation = EnumSet.noneOf(CrewRole.class);
        for (int i = 0; i < stations.size(); i++) {
            CrewStation station = stations.get(i);
            Optional<CrewStationLoad> load = crew.at(i);
            if (load.isPresent()) {
                byStation.add(station.role());
                seats(
                        FindingCode.CREW_SEATS,
                        Phase.DRY_OPERATING,
                        station.role().label() + " at " + station.id(),
                        load.get().count(),
                        station.seats());
            }
        }
        for (CrewRole role : CrewRole.values()) {
            if (byStation.contains(role)) {
                continue;
            }
            int count = crew.count(role).orElse(type.cabin().standardCrew(role));
            seats(
                    FindingCode.CREW_SEATS,
                    Phase.DRY_OPERATING,
                    role.label(),
                    count,
                    type.cabin().crewSeats(role));
        }
    }

    /** Seat rows that are known, as the load was before any last-minute change. */
    void rows(List<ZoneLoad> loads) {
        for (int i = 0; i < loads.size(); i++) {
            for (SeatRowLoad load : loads.get(i).rows()) {
                SeatRow row = type.cabin().zones().get(i).rows().get(load.row());
                seats(FindingCode.ZONE_SEATS, Phase.ZERO_FUEL, "row " + row.id(), load.seated(), row.seats());
            }
        }
    }

    void load(Distribution distribution) {
        List<CabinZone> zones = type.cabin().zones();
        for (int i = 0; i < zones.size(); i++) {
            double seated = distribution.seatedByZone().at(i);
            seats(
                    FindingCode.ZONE_SEATS,
                    Phase.ZERO_FUEL,
                    zones.get(i).name(),
                    seated,
                    zones.get(i).seats());
        }
        List<Hold> holds = type.holds();
        for (int i = 0; i < holds.size(); i++) {
            hold(holds.get(i), distribution.holdKg().at(i));
        }
        for (int i = 0; i < type.groups().size(); i++) {
            LoadGroup group = type.groups().get(i);
            load(FindingCode.GROUP_MASS, group::name, Quantity.MASS, together(group, distribution), group.maxKg());
        }
    }

    private void seats(FindingCode code, Phase phase, String subject, double persons, int seats) {
        if (Tolerance.isOutside(seats - persons, Quantity.COUNT)) {
            findings.add(new Finding(
                    code, Severity.BREACH, phase, subject, Quantity.COUNT, persons, seats, seats - persons));
        }
    }

    private void hold(Hold hold, double massKg) {
        load(FindingCode.HOLD_MASS, hold::name, Quantity.MASS, massKg, hold.maxKg());
        if (hold.floor().isPresent()) {
            FloorLimit floor = hold.floor().get();
            Supplier<String> subject = () -> hold.name() + " floor";
            floor.maxRunningKgPerM()
                    .ifPresent(limit -> load(
                            FindingCode.FLOOR_RUNNING,
                            subject,
                            Quantity.RUNNING_LOAD,
                            floor.runningKgPerM(massKg),
                            limit));
            floor.maxAreaKgPerM2()
                    .ifPresent(limit -> load(
                            FindingCode.FLOOR_AREA, subject, Quantity.AREA_LOAD, floor.areaKgPerM2(massKg), limit));
        }
    }

    private static double together(LoadGroup group, Distribution distribution) {
        double massKg = 0;
        for (int i = 0; i < group.holds().size(); i++) {
            massKg += distribution.holdKg().at(group.holds().get(i));
        }
        for (int i = 0; i < group.zones().size(); i++) {
            massKg += distribution.zoneKg().at(group.zones().get(i));
        }
        return massKg;
    }

    private void load(FindingCode code, Supplier<String> subject, Quantity quantity, double value, double limit) {
        findings.measure(code, Phase.ZERO_FUEL, subject, quantity, value, limit, limit - value, nearbyShare * limit);
    }
}
