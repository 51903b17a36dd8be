package org.steelyard.report.output;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.steelyard.model.input.SkipKind;
import org.steelyard.model.input.SkippedRow;

/**
 * The rows of a season that were passed over.
 *
 * @param counts how many for each kind of reason that there is
 * @param first the first of them, in the order of the input; {@code skipped.csv} has all
 */
public record SkippedRows(Map<SkipKind, Long> counts, List<SkippedRow> first) {

    /** No row. */
    public static final SkippedRows NONE = new SkippedRows(Map.of(), List.of());

    public SkippedRows {
        Map<SkipKind, Long> inOrder = new EnumMap<>(SkipKind.class);
        inOrder.putAll(counts);
        counts = Collections.unmodifiableMap(inOrder);
        first = List.copyOf(first);
    }

    /**
     * All of them.
     *
     * @return how many rows
     */
    public long total() {
        return counts.values().stream().mapToLong(Long::longValue).sum();
    }
}
