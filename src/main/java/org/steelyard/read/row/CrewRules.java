package org.steelyard.read.row;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.steelyard.model.input.Field;
import org.steelyard.model.input.ProblemCode;
import org.steelyard.model.input.Slot;
import org.steelyard.model.loading.Crew;
import org.steelyard.model.loading.CrewStationLoad;
import org.steelyard.model.type.AircraftType;
import org.steelyard.model.type.CrewRole;
import org.steelyard.model.type.CrewStation;

/** Builds crew and pantry from the filled cells of a row. */
public final class CrewRules {

    private static final long STATIONS = Slot.bits(Field.CREW, Field.CREW_MASS);

    private CrewRules() {}

    /** The crew; what is wrong is in the draft. */
    public static Crew crew(RowDraft row) {
        requireSeats(row, CrewRole.FLIGHT, Field.FLIGHT_CREW);
        requireSeats(row, CrewRole.FLIGHT, Field.FLIGHT_CREW_MASS);
        requireSeats(row, CrewRole.CABIN, Field.CABIN_CREW);
        List<Optional<CrewStationLoad>> stations = stations(row);
        boolean flight = isByStation(row, CrewRole.FLIGHT);
        boolean cabin = isByStation(row, CrewRole.CABIN);
        if (flight) {
            agree(row, Field.FLIGHT_CREW, CrewRole.FLIGHT);
            if (row.given(Field.FLIGHT_CREW_MASS)) {
                DetailLevels.contradiction(row, Field.FLIGHT_CREW_MASS, row.firstOf(STATIONS));
            }
        }
        if (cabin) {
            agree(row, Field.CABIN_CREW, CrewRole.CABIN);
        }
        return new Crew(
                flight ? OptionalInt.empty() : row.count(Field.FLIGHT_CREW),
                cabin ? OptionalInt.empty() : row.count(Field.CABIN_CREW),
                flight ? OptionalDouble.empty() : row.amount(Field.FLIGHT_CREW_MASS),
                row.text(Field.PANTRY),
                flight || cabin ? stations : List.of());
    }

    /** Crew at each station; a role of which one station has crew is given by station, the others of it are empty. */
    private static List<Optional<CrewStationLoad>> stations(RowDraft row) {
        List<Optional<CrewStationLoad>> loads = new ArrayList<>();
        List<CrewStation> stations = stationsOf(row);
        for (int i = 0; i < stations.size(); i++) {
            OptionalDouble actualKg = row.stationKg(i);
            int count = row.stationCount(i);
            if (actualKg.isPresent() && (actualKg.getAsDouble() > 0) != (count > 0)) {
                Slot slot = row.given(Field.CREW_MASS) ? Field.CREW_MASS : Field.CREW;
                row.fault(
                        slot,
                        ProblemCode.CONTRADICTION,
                        "crew of " + count + " with a mass of " + (actualKg.getAsDouble() > 0 ? "more than 0" : "0")
                                + " at station " + stations.get(i).id(),
                        row.valueOf(slot),
                        "count and mass of those who sit there, or no mass for standard masses");
            }
            loads.add(
                    isByStation(row, stations.get(i).role())
                            ? Optional.of(new CrewStationLoad(count, actualKg))
                            : Optional.empty());
        }
        return loads;
    }

    private static List<CrewStation> stationsOf(RowDraft row) {
        return row.plan().type().map(type -> type.cabin().crewStations()).orElse(List.of());
    }

    private static boolean isByStation(RowDraft row, CrewRole role) {
        List<CrewStation> stations = stationsOf(row);
        for (int i = 0; i < stations.size(); i++) {
            boolean used = row.stationCount(i) > 0 || row.stationKg(i).orElse(0) > 0;
            if (stations.get(i).role() == role && used) {
                return true;
            }
        }
        return false;
    }

    /** A number of crew beside crew by station is a check. */
    private static void agree(RowDraft row, Slot total, CrewRole role) {
        List<CrewStation> stations = stationsOf(row);
        int sum = 0;
        for (int i = 0; i < stations.size(); i++) {
            sum += stations.get(i).role() == role ? row.stationCount(i) : 0;
        }
        if (row.given(total) && !row.bad(total.bit() | STATIONS) && (int) row.sum(total) != sum) {
            row.fault(
                    total,
                    ProblemCode.CONTRADICTION,
                    "differs from the " + role.label() + " by station, who are " + sum,
                    row.valueOf(total),
                    "the same number, or one of the two blank");
        }
    }

    private static void requireSeats(RowDraft row, CrewRole role, Slot slot) {
        Optional<AircraftType> type = row.plan().type();
        if (row.loaded(slot.bit()) && type.isPresent() && type.get().cabin().crewSeats(role) == 0) {
            row.fault(
                    slot,
                    ProblemCode.OUT_OF_RANGE,
                    "type " + type.get().id() + " has no seat for " + role.label(),
                    row.valueOf(slot),
                    "a blank cell or 0");
        }
    }
}
