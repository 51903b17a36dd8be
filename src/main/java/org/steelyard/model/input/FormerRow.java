package org.steelyard.model.input;

import java.util.Objects;
import org.steelyard.model.loading.Origin;
import org.steelyard.model.unit.Require;

/**
 * The row that another one puts right.
 *
 * @param origin where it stands
 * @param round how many times the row has been rejected by now, from 1
 * @param check what its cells come to, by which a changed row is told from the one that was rejected; blank if unknown
 */
public record FormerRow(Origin origin, int round, String check) {

    /**
     * Checks the values.
     *
     * @throws IllegalArgumentException if the round is below 1
     */
    public FormerRow {
        Objects.requireNonNull(origin);
        Objects.requireNonNull(check);
        Require.that(round >= 1, "rounds count from 1");
    }
}
