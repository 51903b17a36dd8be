package org.steelyard.read;

import java.util.ArrayList;
import java.util.List;
import org.steelyard.model.InputProblem;
import org.steelyard.model.OneLine;
import org.steelyard.model.Origin;
import org.steelyard.model.ProblemCode;

/** Collects every fault of one row; costs nothing while there is none. */
final class RowProblems {

    private final Origin origin;
    private List<InputProblem> problems = List.of();

    RowProblems(Origin origin) {
        this.origin = origin;
    }

    void add(String column, ProblemCode code, String reason, String value, String expected) {
        if (problems.isEmpty()) {
            problems = new ArrayList<>();
        }
        problems.add(new InputProblem(origin, column, code, reason, shown(value), expected));
    }

    boolean isEmpty() {
        return problems.isEmpty();
    }

    List<InputProblem> all() {
        return problems;
    }

    /** A value that fits into a message: one line, not endless. */
    static String shown(String value) {
        return OneLine.value(value);
    }
}
