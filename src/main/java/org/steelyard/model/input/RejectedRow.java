package org.steelyard.model.input;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.steelyard.model.loading.Origin;
import org.steelyard.model.unit.Require;

/**
 * A row that cannot be used, with its original cells and every reason.
 *
 * @param origin where it stands
 * @param mapName heading map that it was read with
 * @param headings headings of its file, as they stand there
 * @param cells its cells as they stand there; may be more or fewer than the headings
 * @param problems at least one
 * @param former the row that it was to put right, if any
 */
public record RejectedRow(
        Origin origin,
        String mapName,
        List<String> headings,
        List<String> cells,
        List<InputProblem> problems,
        Optional<FormerRow> former) {

    /**
     * Checks that there is a reason.
     *
     * @throws IllegalArgumentException if there is none
     */
    public RejectedRow {
        Objects.requireNonNull(origin);
        Objects.requireNonNull(mapName);
        headings = List.copyOf(headings);
        cells = List.copyOf(cells);
        problems = List.copyOf(problems);
        Objects.requireNonNull(former);
        Require.that(!problems.isEmpty(), "a rejected row needs a reason");
    }

    /**
     * A row that was not to put another right.
     *
     * @param origin where it stands
     * @param mapName heading map that it was read with
     * @param headings headings of its file, as they stand there
     * @param cells its cells as they stand there; may be more or fewer than the headings
     * @param problems at least one
     */
    public RejectedRow(
            Origin origin, String mapName, List<String> headings, List<String> cells, List<InputProblem> problems) {
        this(origin, mapName, headings, cells, problems, Optional.empty());
    }
}
