package org.steelyard.read.row;

import org.steelyard.model.input.PartSlot;
import org.steelyard.model.input.ProblemCode;
import org.steelyard.model.input.Slot;

/** What holds between figures of one row that say the same thing at two levels of detail. */
public final class DetailLevels {

    /** Figures are often rounded to whole units: half a kg for each column compared. */
    private static final double ROUNDING_KG = 0.5;

    private DetailLevels() {}

    /** Notes that two ways of giving something exclude each other. */
    public static void contradiction(RowDraft row, Slot one, Slot other) {
        row.fault(
                one,
                ProblemCode.CONTRADICTION,
                "both " + row.named(one) + " and " + row.named(other) + " are given",
                row.valueOf(one),
                "only one of them; the heading map may declare the other as extra or ignored");
    }

    /** Notes that a column of the row gives a part of the load that load items give, too. */
    public static void besideItems(RowDraft row, Slot slot) {
        row.fault(
                slot,
                ProblemCode.CONTRADICTION,
                slot.label() + " beside load items of the same part of the load",
                row.columnValue(slot),
                "only one of them; a total beside items by place is a check, and the heading map may declare a column as"
                        + " extra or ignored");
    }

    /** Requires that a total agrees with its parts; one without parts cannot stand beside other detail by place. */
    static void agree(RowDraft row, Slot total, Slot parts) {
        if (!row.given(total) || row.bad(total.bit() | parts.bit())) {
            return;
        }
        if (!row.given(parts)) {
            if (row.loaded(total.bit())) {
                lonelyTotal(row, total, parts);
            }
        } else if (!isEqual(row, total, parts)) {
            row.fault(
                    total,
                    ProblemCode.CONTRADICTION,
                    "differs from the sum of " + row.named(parts) + ", which is " + row.sumOf(parts),
                    row.valueOf(total),
                    "the same sum, or one of the two blank");
        }
    }

    private static void lonelyTotal(RowDraft row, Slot total, Slot parts) {
        row.fault(
                total,
                ProblemCode.CONTRADICTION,
                total.label() + ", but other figures of the same load by place",
                row.valueOf(total),
                parts.label() + ", or everything in total");
    }

    private static boolean isEqual(RowDraft row, Slot total, Slot parts) {
        double difference = row.sum(total) - row.sum(parts);
        double roundingKg = parts.isMass() ? ROUNDING_KG * (row.figures(parts) + 1) : 0;
        boolean equal = Math.abs(difference) <= roundingKg;
        return total == PartSlot.ALL_COUNT
                ? equal || Math.abs(difference - row.sum(PartSlot.ZONE_INFANTS)) <= 0
                : equal;
    }
}
