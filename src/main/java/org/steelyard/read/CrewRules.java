package org.steelyard.read;

import java.util.Optional;
import org.steelyard.model.AircraftType;
import org.steelyard.model.Crew;
import org.steelyard.model.CrewRole;
import org.steelyard.model.ProblemCode;

/** Builds crew and pantry from the filled cells of a row. */
final class CrewRules {

    private CrewRules() {}

    /** The crew; what is wrong is in the draft. */
    static Crew crew(RowDraft row) {
        requireSeats(row, CrewRole.FLIGHT, Slot.FLIGHT_CREW);
        requireSeats(row, CrewRole.FLIGHT, Slot.FLIGHT_CREW_MASS);
        requireSeats(row, CrewRole.CABIN, Slot.CABIN_CREW);
        return new Crew(
                row.count(Slot.FLIGHT_CREW),
                row.count(Slot.CABIN_CREW),
                row.amount(Slot.FLIGHT_CREW_MASS),
                row.text(Slot.PANTRY));
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
