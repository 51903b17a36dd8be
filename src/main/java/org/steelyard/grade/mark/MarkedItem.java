package org.steelyard.grade.mark;

import java.util.Objects;
import org.steelyard.model.input.SheetItem;

/**
 * One item of a marked sheet.
 *
 * @param item which
 * @param outcome how it fared
 * @param points points given
 * @param outOf points for the right figure
 * @param claimed what the student entered; blank if nothing
 * @param right the right figure in the student's unit
 * @param chain from what it follows, in words; blank where it does not
 */
public record MarkedItem(
        SheetItem item, Outcome outcome, double points, double outOf, String claimed, String right, String chain) {

    public MarkedItem {
        Objects.requireNonNull(item);
        Objects.requireNonNull(outcome);
        Objects.requireNonNull(claimed);
        Objects.requireNonNull(right);
        Objects.requireNonNull(chain);
    }
}
