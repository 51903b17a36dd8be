package org.steelyard.read;

import org.steelyard.model.InputProblem;
import org.steelyard.model.Origin;
import org.steelyard.model.ProblemCode;

/**
 * The name of a table.
 *
 * @param file name of its file
 * @param sheet name of its sheet; blank in a text file
 */
record TableName(String file, String sheet) {

    Origin row(long number) {
        return new Origin(file, sheet, number);
    }

    Origin row(RawRow row) {
        return new Origin(file, sheet, row.number(), row.former());
    }

    /** A problem of the whole table, or of the row with which it cannot go on. */
    InputProblem problem(long row, ProblemCode code, String reason, String value, String expected) {
        return new InputProblem(row(row), "", code, reason, RowProblems.shown(value), expected);
    }

    InputProblem unreadable(long row, String reason, String value, String expected) {
        return problem(row, ProblemCode.UNREADABLE, reason, value, expected);
    }
}
