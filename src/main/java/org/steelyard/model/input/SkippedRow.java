package org.steelyard.model.input;

import java.util.Objects;
import org.steelyard.model.loading.Origin;
import org.steelyard.model.unit.OneLine;
import org.steelyard.model.unit.Require;

/**
 * An input row that was passed over, with the reason.
 *
 * @param origin where it stands
 * @param kind kind of reason
 * @param reason the reason in words, without the place
 */
public record SkippedRow(Origin origin, SkipKind kind, String reason) {

    /**
     * Checks that nothing is missing.
     *
     * @throws IllegalArgumentException if the reason is blank
     */
    public SkippedRow {
        Objects.requireNonNull(origin);
        Objects.requireNonNull(kind);
        Require.text("reason", reason);
    }

    /**
     * The row in one line.
     *
     * @return {@code file:row: reason}
     */
    public String message() {
        return origin + ": " + OneLine.text(reason);
    }
}
