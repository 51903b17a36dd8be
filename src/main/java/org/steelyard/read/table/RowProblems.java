package org.steelyard.read.table;

import java.util.ArrayList;
import java.util.List;
import org.steelyard.model.input.InputProblem;
import org.steelyard.model.input.ProblemCode;
import org.steelyard.model.loading.Origin;
import org.steelyard.model.unit.OneLine;

/** Collects every fault of one row; costs nothing while there is none. */
public final class RowProblems {

    private final Origin origin;
    private List<InputProblem> problems = List.of();

    public RowProblems(Origin origin) {
        this.origin = origin;
    }

    public void add(String column, ProblemCode code, String reason, String value, String expected) {
        if (problems.isEmpty()) {
            problems = new ArrayList<>();
        }
        problems.add(new InputProblem(origin, column, code, reason, shown(value), expected));
    }

    public boolean isEmpty() {
        return problems.isEmpty();
    }

    public List<InputProblem> all() {
        return problems;
    }

    /** A value that fits into a message: one line, not endless. */
    public static String shown(String value) {
        return OneLine.value(value);
    }
}
