package org.steelyard.read;

import java.util.List;
import org.steelyard.model.InputProblem;

/** Ends the reading of a file; {@link SourceFile} turns it into its problems. */
final class SourceFault extends Exception {

    private static final long serialVersionUID = 1L;

    private final transient List<InputProblem> problems;

    SourceFault(List<InputProblem> problems) {
        super(problems.get(0).message());
        this.problems = List.copyOf(problems);
    }

    SourceFault(InputProblem problem) {
        this(List.of(problem));
    }

    SourceFault(InputProblem problem, Throwable cause) {
        this(problem);
        initCause(cause);
    }

    List<InputProblem> problems() {
        return problems;
    }
}
