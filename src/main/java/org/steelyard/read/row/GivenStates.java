package org.steelyard.read.row;

import java.util.Optional;
import org.steelyard.model.input.ProblemCode;
import org.steelyard.model.input.Slot;
import org.steelyard.model.type.AircraftType;
import org.steelyard.model.unit.MassMoment;
import org.steelyard.read.heading.BoundColumn;
import org.steelyard.read.text.ColumnUnits;

/** A state that somebody else computed: a mass and its CG, both of which must be given. */
final class GivenStates {

    /** The CGs that make sense, in words; outside a limit is a finding, not a fault of the input. */
    static final String SENSIBLE = "a CG from -100 to 200 % MAC";

    private static final double LEAST_PERCENT_MAC = -100;
    private static final double MOST_PERCENT_MAC = 200;

    private GivenStates() {}

    static boolean isSensible(double cgPercentMac) {
        return cgPercentMac >= LEAST_PERCENT_MAC && cgPercentMac <= MOST_PERCENT_MAC;
    }

    /** The state, or empty with the reason in the draft if the type is not known or something is wrong. */
    static Optional<MassMoment> state(RowDraft row, Slot mass, Slot cg) {
        requireBoth(row, mass, cg);
        Optional<AircraftType> type = row.plan().type();
        if (type.isEmpty() || row.bad(mass.bit() | cg.bit())) {
            return Optional.empty();
        }
        BoundColumn column = row.column(cg);
        MassMoment state = ColumnUnits.state(type.get(), row.sum(mass), row.unit(column), row.sum(cg));
        double cgPercentMac = type.get().geometry().chord().percentAt(state.armM());
        if (!isSensible(cgPercentMac)) {
            row.fault(
                    column,
                    ProblemCode.OUT_OF_RANGE,
                    "out of range",
                    row.valueOf(cg),
                    SENSIBLE + " of type " + type.get().id() + ", in the unit of the column ("
                            + row.unit(column).symbol() + ")");
            return Optional.empty();
        }
        return Optional.of(state);
    }

    private static void requireBoth(RowDraft row, Slot mass, Slot cg) {
        if (!row.given(cg)) {
            missing(row, cg, mass);
        }
        if (!row.given(mass)) {
            missing(row, mass, cg);
        }
    }

    private static void missing(RowDraft row, Slot slot, Slot other) {
        row.fault(
                slot,
                ProblemCode.MISSING,
                "missing beside " + row.named(other),
                "",
                slot.label() + " and " + other.label() + " together");
    }
}
