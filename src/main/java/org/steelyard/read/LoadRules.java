package org.steelyard.read;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.steelyard.model.AircraftType;
import org.steelyard.model.HoldLoad;
import org.steelyard.model.Load;
import org.steelyard.model.Passengers;
import org.steelyard.model.ProblemCode;
import org.steelyard.model.ZoneLoad;

/** Decides from the filled cells of a row at which level its load is given, and builds it. */
final class LoadRules {

    static final long TAKEOFF = Slot.bits(Slot.TAKEOFF_MASS, Slot.TAKEOFF_CG);
    private static final long ZERO_FUEL = Slot.bits(Slot.ZERO_FUEL_MASS, Slot.ZERO_FUEL_CG);
    private static final long INFANTS = Slot.bits(Slot.ZONE_INFANTS, Slot.ALL_INFANTS);
    private static final long PLACES =
            Slot.bits(Slot.ZONE_COUNT, Slot.ZONE_INFANTS, Slot.ZONE_MASS, Slot.HOLD_MASS, Slot.HOLD_BAGS);
    private static final long TOTALS =
            Slot.bits(Slot.ALL_COUNT, Slot.ALL_INFANTS, Slot.ALL_PASSENGER_MASS, Slot.ALL_HOLD_MASS, Slot.ALL_BAGS);
    private static final long CABIN =
            INFANTS | Slot.bits(Slot.ZONE_COUNT, Slot.ZONE_MASS, Slot.ALL_COUNT, Slot.ALL_PASSENGER_MASS);
    private static final long HOLDS = Slot.bits(Slot.HOLD_MASS, Slot.HOLD_BAGS, Slot.ALL_HOLD_MASS, Slot.ALL_BAGS);

    private LoadRules() {}

    /** The load, or empty with the reason in the draft if the type is not known or something is wrong. */
    static Optional<Load> load(RowDraft row) {
        if (row.given(TAKEOFF)) {
            forbidBeside(row, TAKEOFF, ZERO_FUEL | TOTALS | PLACES);
            return GivenStates.state(row, Slot.TAKEOFF_MASS, Slot.TAKEOFF_CG).map(Load.TakeoffGiven::new);
        }
        if (row.given(ZERO_FUEL)) {
            forbidBeside(row, ZERO_FUEL, TOTALS | PLACES);
            return GivenStates.state(row, Slot.ZERO_FUEL_MASS, Slot.ZERO_FUEL_CG)
                    .map(Load.ZeroFuelGiven::new);
        }
        if (!row.given((PLACES | TOTALS) & ~INFANTS)) {
            row.rowFault(
                    ProblemCode.MISSING,
                    "no load is given",
                    "passengers and holds by place or in total (0 for none), or zero-fuel mass and CG,"
                            + " or take-off mass and CG");
            return Optional.empty();
        }
        requireRoom(row);
        return row.given(PLACES) ? byPlace(row) : totals(row);
    }

    private static void forbidBeside(RowDraft row, long state, long others) {
        if (row.loaded(others)) {
            Levels.contradiction(row, row.firstOf(state), row.firstOf(others));
        }
    }

    /** A type without cabin zones or holds cannot take what belongs there. */
    private static void requireRoom(RowDraft row) {
        if (row.plan().type().isEmpty()) {
            return;
        }
        if (row.plan().zoneCount() == 0 && row.loaded(CABIN)) {
            noRoom(row, row.firstOf(CABIN), "seats for passengers");
        }
        if (row.plan().holdCount() == 0 && row.loaded(HOLDS)) {
            noRoom(row, row.firstOf(HOLDS), "holds");
        }
    }

    private static void noRoom(RowDraft row, Slot slot, String what) {
        String type = row.plan().type().map(AircraftType::id).orElse("");
        row.fault(
                slot,
                ProblemCode.OUT_OF_RANGE,
                "type " + type + " has no " + what,
                row.valueOf(slot),
                "a blank cell or 0");
    }

    private static Optional<Load> byPlace(RowDraft row) {
        Levels.agree(row, Slot.ALL_COUNT, Slot.ZONE_COUNT);
        Levels.agree(row, Slot.ALL_INFANTS, Slot.ZONE_INFANTS);
        Levels.agree(row, Slot.ALL_PASSENGER_MASS, Slot.ZONE_MASS);
        Levels.agree(row, Slot.ALL_HOLD_MASS, Slot.HOLD_MASS);
        Levels.agree(row, Slot.ALL_BAGS, Slot.HOLD_BAGS);
        if (row.plan().type().isEmpty() || row.bad(PLACES | TOTALS)) {
            return Optional.empty();
        }
        List<ZoneLoad> zones = zones(row);
        List<HoldLoad> holds = new ArrayList<>();
        for (int hold = 0; hold < row.plan().holdCount(); hold++) {
            double massKg = row.holdKg(hold);
            int bags = row.holdBags(hold);
            holds.add(massKg == 0 && bags == 0 ? HoldLoad.EMPTY : new HoldLoad(massKg, bags));
        }
        return row.bad(PLACES) ? Optional.empty() : Optional.of(new Load.ByPlace(zones, holds));
    }

    private static List<ZoneLoad> zones(RowDraft row) {
        List<ZoneLoad> zones = new ArrayList<>();
        for (int zone = 0; zone < row.plan().zoneCount(); zone++) {
            Passengers passengers = row.zonePassengers(zone);
            OptionalDouble actualKg = row.zoneKg(zone);
            requireWeight(row, passengers, actualKg, Slot.ZONE_MASS, Slot.ZONE_COUNT);
            zones.add(new ZoneLoad(passengers, actualKg));
        }
        return zones;
    }

    private static void requireWeight(
            RowDraft row, Passengers passengers, OptionalDouble actualKg, Slot mass, Slot count) {
        if (passengers.seated() > 0 && actualKg.isPresent() && actualKg.getAsDouble() == 0 && !row.bad(mass.bit())) {
            row.fault(
                    mass,
                    ProblemCode.CONTRADICTION,
                    "an actual mass of 0 for " + passengers.seated() + " " + row.named(count),
                    "0",
                    "their mass, or a blank cell for standard masses");
        }
    }

    private static Optional<Load> totals(RowDraft row) {
        Passengers passengers = row.allPassengers();
        OptionalDouble actualKg = row.amount(Slot.ALL_PASSENGER_MASS);
        requireWeight(row, passengers, actualKg, Slot.ALL_PASSENGER_MASS, Slot.ALL_COUNT);
        if (row.plan().type().isEmpty() || row.bad(TOTALS)) {
            return Optional.empty();
        }
        HoldLoad hold = new HoldLoad(row.sum(Slot.ALL_HOLD_MASS), (int) row.sum(Slot.ALL_BAGS));
        return Optional.of(new Load.Totals(passengers, actualKg, hold));
    }
}
