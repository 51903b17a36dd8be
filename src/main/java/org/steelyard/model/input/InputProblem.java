package org.steelyard.model.input;

import java.util.Objects;
import org.steelyard.model.loading.Origin;
import org.steelyard.model.unit.OneLine;
import org.steelyard.model.unit.Require;

/**
 * Why a cell, a row or a file cannot be used: a value, not a stop.
 *
 * @param origin file, sheet and row; row 0 for the whole file
 * @param column heading of the column; blank for the whole row
 * @param code kind
 * @param reason what is wrong, in words
 * @param value what stands there; blank if nothing does
 * @param expected what would be accepted, in words
 */
public record InputProblem(
        Origin origin, String column, ProblemCode code, String reason, String value, String expected) {

    public InputProblem {
        Objects.requireNonNull(origin);
        Objects.requireNonNull(column);
        Objects.requireNonNull(code);
        Require.text("reason", reason);
        Objects.requireNonNull(value);
        Objects.requireNonNull(expected);
    }

    /**
     * The problem without its place, on one line and with long values cut ({@link OneLine}).
     *
     * @return {@code column: reason (value '…'; expected …)}
     */
    public String detail() {
        String where = column.isBlank() ? "" : OneLine.value(column) + ": ";
        String given = value.isBlank() ? "" : "value '" + OneLine.value(value) + "'";
        String wanted = expected.isBlank() ? "" : "expected " + OneLine.text(expected);
        String between = given.isEmpty() || wanted.isEmpty() ? "" : "; ";
        String tail = given + between + wanted;
        return where + OneLine.text(reason) + (tail.isEmpty() ? "" : " (" + tail + ")");
    }

    /**
     * The problem in one line.
     *
     * @return {@code file:row:column: reason (value '…'; expected …)}
     */
    public String message() {
        return origin + (column.isBlank() ? ": " : ":") + detail();
    }
}
