package org.steelyard.read.row;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.steelyard.model.input.Field;
import org.steelyard.model.input.PartSlot;
import org.steelyard.model.input.ProblemCode;
import org.steelyard.model.input.Slot;
import org.steelyard.model.loading.HoldLoad;
import org.steelyard.model.loading.Load;
import org.steelyard.model.loading.Passengers;
import org.steelyard.model.loading.ZoneLoad;
import org.steelyard.model.type.AircraftType;
import org.steelyard.model.type.MassScheme;

/**
 * Decides from the filled cells of a row at which level its load is given, and builds it. Passengers and holds are each
 * by place or in total on their own.
 */
public final class LoadRules {

    static final long TAKEOFF = Slot.bits(Field.TAKEOFF_MASS, Field.TAKEOFF_CG);
    static final long ZERO_FUEL = Slot.bits(Field.ZERO_FUEL_MASS, Field.ZERO_FUEL_CG);
    public static final long ZONES = Slot.bits(Field.PASSENGERS, PartSlot.ZONE_INFANTS, Field.PASSENGER_MASS);
    public static final long HOLDS = Slot.bits(Field.HOLD_MASS, Field.HOLD_BAGS, Field.BAG_MASS);
    public static final long ALL_SEATS =
            Slot.bits(PartSlot.ALL_COUNT, PartSlot.ALL_INFANTS, PartSlot.ALL_PASSENGER_MASS);
    public static final long ALL_HOLDS = Slot.bits(PartSlot.ALL_HOLD_MASS, PartSlot.ALL_BAGS, PartSlot.ALL_BAG_MASS);
    private static final long INFANTS = Slot.bits(PartSlot.ZONE_INFANTS, PartSlot.ALL_INFANTS);
    private static final long CABIN = ZONES | ALL_SEATS;
    private static final long BELOW = HOLDS | ALL_HOLDS;

    private LoadRules() {}

    /** The load, or empty with the reason in the draft if the type is not known or something is wrong. */
    public static Optional<Load> load(RowDraft row, MassScheme scheme) {
        if (row.given(TAKEOFF)) {
            forbidBeside(row, TAKEOFF, ZERO_FUEL | CABIN | BELOW);
            return GivenStates.state(row, Field.TAKEOFF_MASS, Field.TAKEOFF_CG).map(Load.TakeoffGiven::new);
        }
        if (row.given(ZERO_FUEL)) {
            forbidBeside(row, ZERO_FUEL, CABIN | BELOW);
            return GivenStates.state(row, Field.ZERO_FUEL_MASS, Field.ZERO_FUEL_CG)
                    .map(Load.ZeroFuelGiven::new);
        }
        if (isNothing(row)) {
            missing(row);
            return Optional.empty();
        }
        requireRoom(row);
        return aboard(row, scheme);
    }

    /** Whether neither passengers nor holds have a figure; infants alone are no load. */
    static boolean isNothing(RowDraft row) {
        return !row.given((CABIN | BELOW) & ~INFANTS);
    }

    private static void missing(RowDraft row) {
        if (!row.itemsRefused()) {
            row.rowFault(
                    ProblemCode.MISSING,
                    "no load is given",
                    "passengers and holds by place or in total (0 for none), or zero-fuel mass and CG,"
                            + " or take-off mass and CG");
        }
    }

    private static void forbidBeside(RowDraft row, long state, long others) {
        if (row.loaded(others)) {
            DetailLevels.contradiction(row, row.firstOf(state), row.firstOf(others));
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
        if (row.plan().holdCount() == 0 && row.loaded(BELOW)) {
            noRoom(row, row.firstOf(BELOW), "holds");
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

    private static Optional<Load> aboard(RowDraft row, MassScheme scheme) {
        boolean byZone = row.given(ZONES);
        boolean byHold = row.given(HOLDS);
        boolean strayInfants = byZone && row.loaded(PartSlot.ALL_INFANTS.bit()) && !row.given(PartSlot.ZONE_INFANTS);
        if (byZone) {
            DetailLevels.agree(row, PartSlot.ALL_COUNT, Field.PASSENGERS);
            DetailLevels.agree(row, PartSlot.ALL_PASSENGER_MASS, Field.PASSENGER_MASS);
            if (!strayInfants || scheme.infantKg() > 0) {
                DetailLevels.agree(row, PartSlot.ALL_INFANTS, PartSlot.ZONE_INFANTS);
            }
        }
        if (byHold) {
            DetailLevels.agree(row, PartSlot.ALL_HOLD_MASS, Field.HOLD_MASS);
            DetailLevels.agree(row, PartSlot.ALL_BAGS, Field.HOLD_BAGS);
            DetailLevels.agree(row, PartSlot.ALL_BAG_MASS, Field.BAG_MASS);
        }
        if (row.plan().type().isEmpty() || row.bad(CABIN | BELOW)) {
            return Optional.empty();
        }
        boolean zonesApart = byZone || !row.loaded(ALL_SEATS);
        boolean holdsApart = byHold || !row.loaded(ALL_HOLDS);
        boolean nothingByPlace = !byZone && !byHold;
        Optional<Load> load = nothingByPlace
                ? Optional.of(totals(row))
                : zonesApart && holdsApart
                        ? Optional.of(new Load.ByPlace(zones(row, strayInfants), holds(row)))
                        : zonesApart ? Optional.of(byZone(row, strayInfants)) : Optional.of(byHold(row));
        return row.bad(CABIN | BELOW) ? Optional.empty() : load;
    }

    private static Load byZone(RowDraft row, boolean strayInfants) {
        return new Load.ByZone(zones(row, strayInfants), allHolds(row));
    }

    private static Load byHold(RowDraft row) {
        return new Load.ByHold(allPassengers(row), row.amount(PartSlot.ALL_PASSENGER_MASS), holds(row));
    }

    private static Load totals(RowDraft row) {
        return new Load.Totals(allPassengers(row), row.amount(PartSlot.ALL_PASSENGER_MASS), allHolds(row));
    }

    private static List<HoldLoad> holds(RowDraft row) {
        List<HoldLoad> holds = new ArrayList<>();
        for (int hold = 0; hold < row.plan().holdCount(); hold++) {
            holds.add(hold(row, row.holdKg(hold), row.holdBags(hold), row.bagKg(hold), Field.BAG_MASS));
        }
        return holds;
    }

    private static HoldLoad allHolds(RowDraft row) {
        int bags = (int) row.sum(PartSlot.ALL_BAGS);
        return hold(
                row, row.sum(PartSlot.ALL_HOLD_MASS), bags, row.amount(PartSlot.ALL_BAG_MASS), PartSlot.ALL_BAG_MASS);
    }

    /** Bags count by their actual mass where it is given, else each at standard mass. */
    private static HoldLoad hold(RowDraft row, double massKg, int bags, OptionalDouble bagKg, Slot bagMass) {
        if (bags > 0 && bagKg.isPresent() && bagKg.getAsDouble() == 0 && !row.bad(bagMass.bit())) {
            row.fault(
                    bagMass,
                    ProblemCode.CONTRADICTION,
                    "an actual mass of 0 for " + bags + " bags",
                    "0",
                    "their mass, or a blank cell for standard masses");
        }
        double allKg = massKg + bagKg.orElse(0);
        int counted = bagKg.isPresent() ? 0 : bags;
        return allKg == 0 && counted == 0 ? HoldLoad.EMPTY : new HoldLoad(allKg, counted);
    }

    /** Infants without a zone have no mass of their own; they count among the first passengers there are. */
    private static List<ZoneLoad> zones(RowDraft row, boolean strayInfants) {
        List<ZoneLoad> zones = new ArrayList<>();
        int infants = strayInfants ? (int) row.sum(PartSlot.ALL_INFANTS) : 0;
        for (int zone = 0; zone < row.plan().zoneCount(); zone++) {
            Passengers passengers = row.zonePassengers(zone);
            OptionalDouble actualKg = row.zoneKg(zone);
            requireWeight(row, passengers, actualKg, Field.PASSENGER_MASS, Field.PASSENGERS);
            if (infants > 0 && passengers.seated() > 0) {
                passengers = passengers.plus(new Passengers(0, 0, 0, 0, infants));
                infants = 0;
            }
            zones.add(new ZoneLoad(passengers, actualKg, row.seatRows(zone)));
        }
        if (infants > 0) {
            row.fault(
                    PartSlot.ALL_INFANTS,
                    ProblemCode.CONTRADICTION,
                    "infants, but nobody on a seat",
                    row.valueOf(PartSlot.ALL_INFANTS),
                    "a blank cell or 0");
        }
        return zones;
    }

    private static Passengers allPassengers(RowDraft row) {
        Passengers passengers = row.allPassengers();
        OptionalDouble actualKg = row.amount(PartSlot.ALL_PASSENGER_MASS);
        requireWeight(row, passengers, actualKg, PartSlot.ALL_PASSENGER_MASS, PartSlot.ALL_COUNT);
        return passengers;
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
}
