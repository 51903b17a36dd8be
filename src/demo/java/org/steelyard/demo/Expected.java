package org.steelyard.demo;

import org.steelyard.model.finding.FindingCode;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.finding.Severity;
import org.steelyard.model.input.ProblemCode;

/** What must come of a planted row. */
sealed interface Expected permits Expected.Found, Expected.Refused, Expected.Passed {

    /** A finding. */
    record Found(FindingCode code, Severity severity, Phase phase) implements Expected {}

    /** A reason to reject the row; the column is blank for the row as a whole. */
    record Refused(ProblemCode code, String column) implements Expected {}

    /** Nothing: a blank row. */
    record Passed() implements Expected {}
}
