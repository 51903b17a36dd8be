package org.steelyard.read.table;

import org.steelyard.model.input.InputProblem;
import org.steelyard.model.input.ProblemCode;
import org.steelyard.model.loading.Origin;

/**
 * The name of a table.
 *
 * @param file name of its file
 * @param sheet name of its sheet; blank in a text file
 */
public record TableName(String file, String sheet) {

    public Origin row(long number) {
        return new Origin(file, sheet, number);
    }

    public Origin row(RawRow row) {
        return new Origin(file, sheet, row.number(), row.former());
    }

    /** A problem of the whole table, or of the row with which it cannot go on. */
    public InputProblem problem(long row, ProblemCode code, String reason, String value, String expected) {
        return new InputProblem(row(row), "", code, reason, RowProblems.shown(value), expected);
    }

    public InputProblem unreadable(long row, String reason, String value, String expected) {
        return problem(row, ProblemCode.UNREADABLE, reason, value, expected);
    }
}
