package org.steelyard.read.row;

import java.util.Optional;
import java.util.OptionalDouble;
import org.steelyard.model.input.Field;
import org.steelyard.model.input.PartSlot;
import org.steelyard.model.input.ProblemCode;
import org.steelyard.model.input.Slot;
import org.steelyard.model.loading.Fuel;
import org.steelyard.model.unit.Amounts;

/** Decides from the filled cells of a row how its fuel is given, and builds it. */
public final class FuelRules {

    private static final long ABOARD = Slot.bits(Field.FUEL, PartSlot.ALL_FUEL);
    private static final long BURNT = Slot.bits(Field.TAXI_FUEL, Field.TRIP_FUEL);

    private FuelRules() {}

    /** The fuel, or empty with the reason in the draft if the type is not known or something is wrong. */
    public static Optional<Fuel> fuel(RowDraft row, OptionalDouble densityKgPerL) {
        if (row.given(LoadRules.TAKEOFF)) {
            if (row.loaded(ABOARD | BURNT)) {
                DetailLevels.contradiction(row, row.firstOf(LoadRules.TAKEOFF), row.firstOf(ABOARD | BURNT));
            }
            return Optional.of(new Fuel.NotGiven());
        }
        requireAll(row);
        if (row.given(Field.FUEL)) {
            DetailLevels.agree(row, PartSlot.ALL_FUEL, Field.FUEL);
        }
        if (row.plan().type().isEmpty() || row.bad(ABOARD | BURNT)) {
            return Optional.empty();
        }
        double taxiKg = row.sum(Field.TAXI_FUEL);
        double tripKg = row.sum(Field.TRIP_FUEL);
        return Optional.of(
                row.given(Field.FUEL)
                        ? new Fuel.ByTank(Amounts.of(row.tankKg()), taxiKg, tripKg, densityKgPerL)
                        : new Fuel.Total(row.sum(PartSlot.ALL_FUEL), taxiKg, tripKg, densityKgPerL));
    }

    private static void requireAll(RowDraft row) {
        if (!row.given(ABOARD) && !row.itemsRefused()) {
            Slot slot = row.columns().has(Field.FUEL) ? Field.FUEL : PartSlot.ALL_FUEL;
            row.fault(
                    slot,
                    ProblemCode.MISSING,
                    "no fuel is given",
                    "",
                    "fuel by tank or in total at the ramp, 0 for none");
        }
        if (!row.given(Field.TAXI_FUEL) && row.columns().has(Field.TAXI_FUEL)) {
            row.fault(Field.TAXI_FUEL, ProblemCode.MISSING, "taxi fuel is missing", "", "a mass, 0 for none");
        }
        if (!row.given(Field.TRIP_FUEL)) {
            String column = row.columns().has(Field.TRIP_FUEL) ? "" : "; the file has no column for it";
            row.fault(Field.TRIP_FUEL, ProblemCode.MISSING, "trip fuel is missing" + column, "", "a mass, 0 for none");
        }
    }
}
