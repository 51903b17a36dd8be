package org.steelyard.read;

import java.io.Closeable;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.steelyard.model.SkipKind;

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

    /** Words for totals, in several languages of those who fly. */
    private static final Set<String> WORDS = Set.of(
            "total", "totals", "grand total", "subtotal", "sub-total", "sub total", "sum", "sums", "average", "mean",
            "count", "summe", "gesamt", "gesamtsumme", "somme", "totale", "totaal", "totalt", "suma", "soma", "razem",
            "celkem", "toplam", "итого", "всего");

    private final KeyCells keys;
    private final SumsAbove sums;
    private final List<MergedArea> merged;

    NoFlights(Table table, Binding binding, long headingRow) {
        this.keys = new KeyCells(binding);
        this.sums = new SumsAbove(table, binding, headingRow, keys);
        this.merged = table.merged();
    }

    /** Why a row is no flight, if it is none; rows are asked about in their order. */
    Optional<LeftOut> reason(RawRow row) throws SourceFault {
        int filled = keys.filled(row);
        if (filled > 1) {
            return keys.areHeadings(row)
                    ? Optional.of(new LeftOut(SkipKind.HEADINGS, "the headings once more"))
                    : Optional.empty();
        }
        if (row.isBlank()) {
            return Optional.empty();
        }
        if (MergedRows.isTitle(row, merged)) {
            return Optional.of(new LeftOut(
                    SkipKind.TITLE, "a title merged across columns: '" + RowProblems.shown(first(row)) + "'"));
        }
        Optional<LeftOut> labelled = labelled(row);
        if (labelled.isPresent()) {
            sums.endSection();
            return labelled;
        }
        return filled == 0 && sums.sumsUp(row)
                ? Optional.of(new LeftOut(
                        SkipKind.TOTALS, "totals: no flight, date and tail, and the sums of the flights above"))
                : Optional.empty();
    }

    private Optional<LeftOut> labelled(RawRow row) {
        int first = firstFilled(row);
        return first >= 0 && isWord(row.cell(first)) && keys.filled(row, first) == 0
                ? Optional.of(new LeftOut(
                        SkipKind.TOTALS,
                        "totals: it begins with '" + RowProblems.shown(Blanks.strip(row.cell(first)))
                                + "' and has no flight, date and tail"))
                : Optional.empty();
    }

    private static String first(RawRow row) {
        return Blanks.strip(row.cell(firstFilled(row)));
    }

    private static int firstFilled(RawRow row) {
        for (int i = 0; i < row.size(); i++) {
            if (!Blanks.isBlank(row.cell(i))) {
                return i;
            }
        }
        return -1;
    }

    private static boolean isWord(String text) {
        String folded = Blanks.fold(text).replace(":", " ").strip();
        return WORDS.contains(folded) || WORDS.stream().anyMatch(word -> folded.startsWith(word + " "));
    }

    @Override
    public void close() throws IOException {
        sums.close();
    }
}
