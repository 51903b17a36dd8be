package org.steelyard.run;

import java.util.List;
import org.steelyard.model.input.InputProblem;
import org.steelyard.model.input.ProblemCode;
import org.steelyard.model.input.SkipKind;
import org.steelyard.model.input.SkippedRow;
import org.steelyard.model.loading.Loading;
import org.steelyard.model.loading.Origin;
import org.steelyard.model.policy.DuplicateRule;

/** What is said of flights that stand in more than one row. */
public final class DuplicateText {

    private DuplicateText() {}

    /** A row that agrees cell for cell with another. */
    public static SkippedRow repeats(Loading loading, Origin other) {
        return new SkippedRow(loading.origin(), SkipKind.REPEATED, "the flight stands in " + other + " cell for cell");
    }

    /** A row that differs from another of its flight, and does not stand by the rule. */
    public static InputProblem differs(Loading loading, Origin other, DuplicateRule rule) {
        return new InputProblem(
                loading.origin(),
                "",
                ProblemCode.DUPLICATE,
                "the flight stands in " + other + ", too, with other cells; by the policy '" + rule.label() + "'",
                named(loading),
                "each flight in one row");
    }

    /** A row that counts although its flight stands elsewhere, too. */
    public static String counts(Loading loading, Origin other) {
        return named(loading) + " in row " + loading.origin().row() + " stands in " + other;
    }

    /** What is noted of a file with such rows; nothing where there is none. */
    public static List<String> note(DuplicateRule rule, long sameCells, long otherCells, String first) {
        return first.isEmpty()
                ? List.of()
                : List.of("flights that stand in an earlier row, too, and count again by the policy '" + rule.label()
                        + "': " + sameCells + " cell for cell, " + otherCells + " with other cells; the first: "
                        + first);
    }

    private static String named(Loading loading) {
        return loading.flight().flight() + " " + loading.flight().date() + " "
                + loading.tail().registration();
    }
}
