package org.steelyard.run;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.steelyard.model.input.SkipKind;
import org.steelyard.model.input.SkippedRow;
import org.steelyard.report.output.SkippedRows;

/** Counts the rows that were passed over and keeps the first. */
final class SkippedRowsTally {

    private static final int KEPT = 200;

    private final Map<SkipKind, Long> counts = new EnumMap<>(SkipKind.class);
    private final List<SkippedRow> first = new ArrayList<>();

    void add(SkippedRow row) {
        counts.merge(row.kind(), 1L, Long::sum);
        if (first.size() < KEPT) {
            first.add(row);
        }
    }

    SkippedRows all() {
        return new SkippedRows(counts, first);
    }
}
