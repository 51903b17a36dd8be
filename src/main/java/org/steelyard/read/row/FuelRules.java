package org.steelyard.read.row;

import java.util.Optional;
import java.util.OptionalDouble;
import org.steelyard.model.input.ProblemCode;
import org.steelyard.model.loading.Fuel;
import org.steelyard.model.unit.Amounts;
import org.steelyard.read.heading.Slot;

/** Decides from the filled cells of a row how its fuel is given, and builds it. */
public final class FuelRules {

    private static final long ABOARD = Slot.bits(Slot.TANK, Slot.ALL_FUEL);
    private static final long BURNT = Slot.bits(Slot.TAXI_FUEL, Slot.TRIP_FUEL);

    private FuelRules() {}

    /** The fuel, or empty with the reason in the draft if the type is not known or something is wrong. */
    public static Optional<Fuel> fuel(RowDraft row, OptionalDouble densityKgPerL) {
        if (row.given(LoadRules.TAKEOFF)) {
            if (row.loaded(ABOARD | BURNT)) {
                Levels.contradiction(row, row.firstOf(LoadRules.TAKEOFF), row.firstOf(ABOARD | BURNT));
            }
            return Optional.of(new Fuel.NotGiven());
        }
        requireAll(row);
        if (row.given(Slot.TANK)) {
            Levels.agree(row, Slot.ALL_FUEL, Slot.TANK);
        }
        if (row.plan().type().isEmpty() || row.bad(ABOARD | BURNT)) {
            return Optional.empty();
        }
        double taxiKg = row.sum(Slot.TAXI_FUEL);
        double tripKg = row.sum(Slot.TRIP_FUEL);
        return Optional.of(
                row.given(Slot.TANK)
                        ? new Fuel.ByTank(Amounts.of(row.tankKg()), taxiKg, tripKg, densityKgPerL)
                        : new Fuel.Total(row.sum(Slot.ALL_FUEL), taxiKg, tripKg, densityKgPerL));
    }

    private static void requireAll(RowDraft row) {
        if (!row.given(ABOARD) && !row.itemsRefused()) {
            Slot slot = row.columns().has(Slot.TANK) ? Slot.TANK : Slot.ALL_FUEL;
            row.fault(
                    slot,
                    ProblemCode.MISSING,
                    "no fuel is given",
                    "",
                    "fuel by tank or in total at the ramp, 0 for none");
        }
        if (!row.given(Slot.TAXI_FUEL) && row.columns().has(Slot.TAXI_FUEL)) {
            row.fault(Slot.TAXI_FUEL, ProblemCode.MISSING, "taxi fuel is missing", "", "a mass, 0 for none");
        }
        if (!row.given(Slot.TRIP_FUEL)) {
            String column = row.columns().has(Slot.TRIP_FUEL) ? "" : "; the file has no column for it";
            row.fault(Slot.TRIP_FUEL, ProblemCode.MISSING, "trip fuel is missing" + column, "", "a mass, 0 for none");
        }
    }
}
