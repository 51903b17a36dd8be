package org.steelyard.cli.option;

import org.steelyard.run.SeasonOutcome;

/** What can make a finished audit end with exit code 1. */
public enum FailOn {
    /** A flight is outside a limit. */
    BREACH,
    /** A flight is close to a limit. */
    MARGINAL,
    /** A row or a file could not be used. */
    REJECTED;

    public boolean isFoundIn(SeasonOutcome outcome) {
        return switch (this) {
            case BREACH -> outcome.summary().all().breached() > 0;
            case MARGINAL -> outcome.summary().all().marginal() > 0;
            case REJECTED ->
                outcome.facts().rejected() > 0 || !outcome.fileProblems().isEmpty();
        };
    }
}
