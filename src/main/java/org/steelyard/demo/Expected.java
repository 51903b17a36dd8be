package org.steelyard.demo;

import org.steelyard.model.FindingCode;
import org.steelyard.model.Phase;
import org.steelyard.model.ProblemCode;
import org.steelyard.model.Severity;

/** What must come of a planted row. */
sealed interface Expected permits Expected.Found, Expected.Refused, Expected.Passed {

    /** A finding. */
    record Found(FindingCode code, Severity severity, Phase phase) implements Expected {}

    /** A reason to reject the row; the column is blank for the row as a whole. */
    record Refused(ProblemCode code, String column) implements Expected {}

    /** Nothing: a blank row. */
    record Passed() implements Expected {}
}
