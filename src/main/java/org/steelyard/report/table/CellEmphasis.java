package org.steelyard.report.table;

import org.steelyard.check.result.Status;
import org.steelyard.model.finding.Severity;

/** What a cell says besides its value. */
public enum CellEmphasis {
    NONE,
    /** A sum of the rows above. */
    TOTAL,
    /** A remark by the way. */
    QUIET,
    CLEAN,
    NOTE,
    MARGINAL,
    BREACH;

    public static CellEmphasis of(Severity severity) {
        return switch (severity) {
            case NOTE -> NOTE;
            case MARGINAL -> MARGINAL;
            case BREACH -> BREACH;
        };
    }

    public static CellEmphasis of(Status status) {
        return switch (status) {
            case CLEAN -> CLEAN;
            case MARGINAL -> MARGINAL;
            case BREACHED -> BREACH;
        };
    }
}
