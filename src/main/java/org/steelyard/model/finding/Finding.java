package org.steelyard.model.finding;

import java.util.Objects;
import org.steelyard.model.unit.Quantity;
import org.steelyard.model.unit.Require;

/**
 * One thing that a check found.
 *
 * @param code kind
 * @param severity how serious
 * @param phase state of the flight that it concerns
 * @param subject the limit or place concerned, in words: a hold's name, or what sets the limit
 * @param quantity what the numbers measure and in which unit they are
 * @param value the flight's figure
 * @param limit the limit that it is held against
 * @param margin room to the limit in the same unit: positive inside, zero on the limit, negative outside
 */
public record Finding(
        FindingCode code,
        Severity severity,
        Phase phase,
        String subject,
        Quantity quantity,
        double value,
        double limit,
        double margin) {

    /**
     * Checks the numbers.
     *
     * @throws IllegalArgumentException if one is not finite
     */
    public Finding {
        Objects.requireNonNull(code);
        Objects.requireNonNull(severity);
        Objects.requireNonNull(phase);
        Objects.requireNonNull(subject);
        Objects.requireNonNull(quantity);
        Require.finite("value", value);
        Require.finite("limit", limit);
        Require.finite("margin", margin);
    }

    /**
     * A finding without numbers.
     *
     * @param code kind
     * @param severity how serious
     * @param phase state of the flight that it concerns
     * @param subject what it concerns, in words
     * @return the finding
     */
    public static Finding plain(FindingCode code, Severity severity, Phase phase, String subject) {
        return new Finding(code, severity, phase, subject, Quantity.NONE, 0, 0, 0);
    }
}
