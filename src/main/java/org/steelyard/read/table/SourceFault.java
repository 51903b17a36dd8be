package org.steelyard.read.table;

import java.util.List;
import org.steelyard.model.input.InputProblem;

/** Ends the reading of a file; {@code SourceFile} turns it into its problems. */
public final class SourceFault extends Exception {

    private static final long serialVersionUID = 1L;

    private final transient List<InputProblem> problems;

    public SourceFault(List<InputProblem> problems) {
        super(problems.get(0).message());
        this.problems = List.copyOf(problems);
    }

    public SourceFault(InputProblem problem) {
        this(List.of(problem));
    }

    public SourceFault(InputProblem problem, Throwable cause) {
        this(problem);
        initCause(cause);
    }

    public List<InputProblem> problems() {
        return problems;
    }
}
