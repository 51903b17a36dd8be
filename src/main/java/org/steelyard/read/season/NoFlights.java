package org.steelyard.read.season;

import java.io.Closeable;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.steelyard.model.input.SkipKind;
import org.steelyard.read.heading.Binding;
import org.steelyard.read.heading.KeyCells;
import org.steelyard.read.table.MergedArea;
import org.steelyard.read.table.RawRow;
import org.steelyard.read.table.RowProblems;
import org.steelyard.read.table.SkipReason;
import org.steelyard.read.table.SourceFault;
import org.steelyard.read.table.Table;

/**
 * Rows below the headings that are no flights, and no faults either:
 *
 * <ul>
 *   <li>the headings once more, as on a printed page;
 *   <li>a title: the row's only filled cell is merged across columns;
 *   <li>totals: the first filled cell begins with a word for them, and flight, date and tail are blank beside it; or
 *       flight, date and tail are blank, and every number is the sum of the flights above, of all or of those since the
 *       last totals.
 * </ul>
 *
 * Whatever else lacks a flight is left to the parser, which rejects it with the reason.
 */
final class NoFlights implements Closeable {

    private final KeyCells keys;
    private final SumsAbove sums;
    private final List<MergedArea> merged;

    NoFlights(Table table, Binding binding, long headingRow) {
        this.keys = new KeyCells(binding);
        this.sums = new SumsAbove(table, binding, headingRow, keys);
        this.merged = table.merged();
    }

    /** Why a row is no flight, if it is none; rows are asked about in their order. */
    Optional<SkipReason> reason(RawRow row) throws SourceFault {
        int filled = keys.filled(row);
        if (filled > 0 && keys.areHeadings(row)) {
            return Optional.of(new SkipReason(SkipKind.HEADINGS, "the headings once more"));
        }
        if (filled > 1) {
            return Optional.empty();
        }
        if (row.isBlank()) {
            return Optional.empty();
        }
        if (MergedRows.isTitle(row, merged)) {
            return Optional.of(new SkipReason(
                    SkipKind.TITLE,
                    "a title merged across columns: '" + RowProblems.shown(TotalsWords.first(row)) + "'"));
        }
        Optional<SkipReason> labelled = labelled(row);
        if (labelled.isPresent()) {
            sums.endSection();
            return labelled;
        }
        return filled == 0 && sums.sumsUp(row)
                ? Optional.of(new SkipReason(
                        SkipKind.TOTALS, "totals: no flight, date and tail, and the sums of the flights above"))
                : Optional.empty();
    }

    /** Whether a row was held against the sums of those above it. */
    boolean lookedAbove() {
        return sums.lookedAbove();
    }

    private Optional<SkipReason> labelled(RawRow row) {
        return TotalsWords.begin(row, keys)
                .map(word -> new SkipReason(
                        SkipKind.TOTALS,
                        "totals: it begins with '" + RowProblems.shown(word) + "' and has no flight, date and tail"));
    }

    @Override
    public void close() throws IOException {
        sums.close();
    }
}
