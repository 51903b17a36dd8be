package org.steelyard.config.source;

import org.steelyard.model.unit.OneLine;

/**
 * One thing that is wrong in the configuration.
 *
 * @param file path from the configuration folder, with forward slashes; the folder itself where that is missing
 * @param line line of the file from 1; 0 for the file as a whole
 * @param place path of keys, as {@code holds[2].max} (lists count from 1), or heading of a column; blank for the whole
 *     file or line
 * @param value what stands there; blank if nothing does
 * @param reason what is wrong, in words
 * @param expected what would be accepted, in words
 */
public record ConfigFault(String file, int line, String place, String value, String reason, String expected) {

    /**
     * The fault in one line, with long values cut.
     *
     * @return {@code file:line:place: reason (value '…'; expected …)}
     */
    public String message() {
        String where = OneLine.value(file)
                + (line > 0 ? ":" + line : "")
                + (place.isBlank() ? "" : ":" + OneLine.value(place));
        String given = value.isBlank() ? "" : "value '" + OneLine.value(value) + "'";
        String wanted = expected.isBlank() ? "" : "expected " + OneLine.text(expected);
        String between = given.isEmpty() || wanted.isEmpty() ? "" : "; ";
        String detail = given + between + wanted;
        return where + ": " + OneLine.text(reason) + (detail.isEmpty() ? "" : " (" + detail + ")");
    }
}
