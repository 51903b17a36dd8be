package org.steelyard.read.season;

import java.util.Optional;
import java.util.Set;
import org.steelyard.read.heading.KeyCells;
import org.steelyard.read.table.RawRow;
import org.steelyard.read.text.Blanks;

/** The words by which a row of totals is known. */
final class TotalsWords {

    /** In several languages of those who fly. */
    private static final Set<String> WORDS = Set.of(
            "total",
            "totals",
            "grand total",
            "subtotal",
            "sub-total",
            "sub total",
            "sum",
            "sums",
            "average",
            "mean",
            "count",
            "summe",
            "gesamt",
            "gesamtsumme",
            "somme",
            "totale",
            "totaal",
            "totalt",
            "suma",
            "soma",
            "razem",
            "celkem",
            "toplam",
            "итого",
            "всего");

    private TotalsWords() {}

    /** The first filled cell of a row that begins with such a word and has no flight, date and tail beside it. */
    static Optional<String> begin(RawRow row, KeyCells keys) {
        int first = row.nextFilled(0);
        return first >= 0 && isWord(row.cell(first)) && keys.filled(row, first) == 0
                ? Optional.of(Blanks.strip(row.cell(first)))
                : Optional.empty();
    }

    /** The first filled cell of a row that is not blank. */
    static String first(RawRow row) {
        return Blanks.strip(row.cell(row.nextFilled(0)));
    }

    private static boolean isWord(String text) {
        String folded = Blanks.fold(text).replace(":", " ").strip();
        return WORDS.contains(folded) || WORDS.stream().anyMatch(word -> folded.startsWith(word + " "));
    }
}
