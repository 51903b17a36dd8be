package org.steelyard.read.propose;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.ObjIntConsumer;
import java.util.function.Predicate;
import org.steelyard.read.table.CellKind;
import org.steelyard.read.table.RowProblems;

/** The filled cells of one column, and how many of them are of some kind. */
final class ColumnCells {

    /** One filled cell; comparable, as a map finds those of one hash code one by one otherwise. */
    record Cell(String text, CellKind kind) implements Comparable<Cell> {

        private static final Comparator<Cell> ORDER =
                Comparator.comparing(Cell::text).thenComparing(Cell::kind);

        @Override
        public int compareTo(Cell other) {
            return ORDER.compare(this, other);
        }
    }

    private final List<String> samples = new ArrayList<>();
    private final Map<Cell, Integer> counts = new LinkedHashMap<>();
    private int filled;

    /** Adds the cell of the next row, blank or not; the first five stay as samples. */
    void add(String text, CellKind kind, int mostSamples) {
        if (samples.size() < mostSamples) {
            samples.add(text);
        }
        if (!text.isEmpty() && kind != CellKind.ERROR && kind != CellKind.UNCALCULATED) {
            counts.merge(new Cell(text, kind), 1, Integer::sum);
            filled++;
        }
    }

    List<String> samples() {
        return samples;
    }

    int filled() {
        return filled;
    }

    Set<Cell> distinct() {
        return counts.keySet();
    }

    /** Every distinct cell with how often it stands there. */
    void each(ObjIntConsumer<Cell> consumer) {
        counts.forEach(consumer::accept);
    }

    int count(Predicate<Cell> fits) {
        return counts.entrySet().stream()
                .filter(entry -> fits.test(entry.getKey()))
                .mapToInt(Map.Entry::getValue)
                .sum();
    }

    /** At most three cells that do not fit, in their order. */
    String strange(Predicate<Cell> fits) {
        List<String> strange = counts.keySet().stream()
                .filter(fits.negate())
                .limit(3)
                .map(cell -> "'" + RowProblems.shown(cell.text()) + "'")
                .toList();
        return String.join(", ", strange);
    }
}
