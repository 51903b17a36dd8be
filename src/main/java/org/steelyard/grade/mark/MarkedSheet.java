package org.steelyard.grade.mark;

import java.util.List;
import java.util.Objects;
import org.steelyard.grade.working.Exercise;
import org.steelyard.model.input.StudentSheet;

/**
 * A marked sheet.
 *
 * @param sheet what the student handed in
 * @param exercise what was asked
 * @param items every item of the scheme that the exercise asks for, in order
 * @param diagnosis why figures are wrong
 * @param passPercent share of the points that passes
 * @param handedIn how often the student handed in the exercise
 */
public record MarkedSheet(
        StudentSheet sheet,
        Exercise exercise,
        List<MarkedItem> items,
        Diagnosis diagnosis,
        double passPercent,
        HandedIn handedIn) {

    private static final double CLEAN = 1e-9;

    public MarkedSheet {
        Objects.requireNonNull(sheet);
        Objects.requireNonNull(exercise);
        items = List.copyOf(items);
        Objects.requireNonNull(diagnosis);
        Objects.requireNonNull(handedIn);
    }

    /**
     * The sheet among others of the same student and exercise.
     *
     * @param among how often the student handed it in
     * @return with the same marks
     */
    public MarkedSheet with(HandedIn among) {
        return new MarkedSheet(sheet, exercise, items, diagnosis, passPercent, among);
    }

    /**
     * The points of the sheet.
     *
     * @return the sum over its items
     */
    public double points() {
        return items.stream().mapToDouble(MarkedItem::points).sum();
    }

    /**
     * What could be had.
     *
     * @return the sum over its items
     */
    public double outOf() {
        return items.stream().mapToDouble(MarkedItem::outOf).sum();
    }

    /**
     * The share of the points.
     *
     * @return in %, 0 where nothing was asked
     */
    public double percent() {
        return outOf() == 0 ? 0 : 100 * points() / outOf();
    }

    /**
     * Whether it passes.
     *
     * @return true from the pass mark on
     */
    public boolean passed() {
        return percent() >= passPercent - CLEAN;
    }
}
