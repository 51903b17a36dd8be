package org.steelyard.read;

import org.steelyard.model.InputProblem;

/** Thrown when there is nothing to read at all; a mistake of the user, with the problem in words. */
public final class SeasonUnreadableException extends Exception {

    private static final long serialVersionUID = 1L;

    private final transient InputProblem problem;

    SeasonUnreadableException(InputProblem problem) {
        super(problem.message());
        this.problem = problem;
    }

    /** What is wrong and what would be accepted. */
    public InputProblem problem() {
        return problem;
    }
}
