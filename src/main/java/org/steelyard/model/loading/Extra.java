package org.steelyard.model.loading;

import java.util.Objects;
import org.steelyard.model.unit.Require;

/**
 * A column carried along untouched for grouping, as the pilot's name.
 *
 * @param name name of the column
 * @param value its text, trimmed; may be blank
 */
public record Extra(String name, String value) {

    /**
     * Checks the name.
     *
     * @throws IllegalArgumentException if the name is blank
     */
    public Extra {
        Require.text("extra column", name);
        Objects.requireNonNull(value);
    }
}
