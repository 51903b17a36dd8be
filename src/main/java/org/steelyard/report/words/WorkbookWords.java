package org.steelyard.report.words;

import org.steelyard.check.result.Status;
import org.steelyard.model.finding.Severity;

/** The words and signs of the workbook. The signs differ in shape and are in every common font. */
public final class WorkbookWords {

    public static final String DISC = "● ";
    public static final String DIAMOND = "◇ ";
    public static final String CROSS = "✕ ";
    public static final String DOT = "• ";

    private WorkbookWords() {}

    public static String status(Status status) {
        return switch (status) {
            case CLEAN -> DISC + status.label();
            case MARGINAL -> DIAMOND + status.label();
            case BREACHED -> CROSS + status.label();
        };
    }

    public static String severity(Severity severity) {
        return switch (severity) {
            case NOTE -> DOT + severity.label();
            case MARGINAL -> DIAMOND + severity.label();
            case BREACH -> CROSS + severity.label();
        };
    }

    /** With a capital letter and a full stop. */
    public static String sentence(String text) {
        if (text.isBlank()) {
            return text;
        }
        String stop = text.endsWith(".") ? "" : ".";
        int first = text.codePointAt(0);
        return Character.toString(Character.toTitleCase(first)) + text.substring(Character.charCount(first)) + stop;
    }
}
