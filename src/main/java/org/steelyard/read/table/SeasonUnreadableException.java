package org.steelyard.read.table;

import java.util.List;
import java.util.stream.Collectors;
import org.steelyard.model.input.InputProblem;

/** There is nothing to read where a season should be. */
public final class SeasonUnreadableException extends Exception {

    private static final long serialVersionUID = 1L;

    private final transient List<InputProblem> problems;

    /**
     * With its reasons.
     *
     * @param problems what is wrong, at least one
     */
    public SeasonUnreadableException(List<InputProblem> problems) {
        super(problems.stream().map(InputProblem::message).collect(Collectors.joining("; ")));
        this.problems = List.copyOf(problems);
    }

    public SeasonUnreadableException(InputProblem problem) {
        this(List.of(problem));
    }

    /** What is wrong, and what is expected. */
    public List<InputProblem> problems() {
        return problems;
    }
}
