package org.steelyard.read.season;

import java.io.Closeable;
import java.io.IOException;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import org.steelyard.model.input.Field;
import org.steelyard.read.heading.Binding;
import org.steelyard.read.heading.BoundColumn;
import org.steelyard.read.heading.KeyCells;
import org.steelyard.read.table.CellKind;
import org.steelyard.read.table.RawRow;
import org.steelyard.read.table.RowStream;
import org.steelyard.read.table.SourceFault;
import org.steelyard.read.table.Table;
import org.steelyard.read.text.Blanks;
import org.steelyard.read.text.Grouping;
import org.steelyard.read.text.NumberGrammar;

/**
 * Whether the numbers of a row without flight, date and tail are the sums of the flights above it: of all, or of those
 * since the last such row. The rows above are read once more for it, at most once in all, and only where a table has
 * such a row at all. Numbers agree to half of the last decimal shown.
 */
final class SumsAbove implements Closeable {

    private static final double RELATIVE = 1e-9;
    private static final int LEAST_FLIGHTS = 2;

    private final Table table;
    private final Binding binding;
    private final long headingRow;
    private final KeyCells keys;
    private final double[] all;
    private final double[] section;
    private Optional<RowStream> again = Optional.empty();
    private long flights;
    private long sectionFlights;

    SumsAbove(Table table, Binding binding, long headingRow, KeyCells keys) {
        this.table = table;
        this.binding = binding;
        this.headingRow = headingRow;
        this.keys = keys;
        this.all = new double[binding.columns().all().size()];
        this.section = new double[all.length];
    }

    /** Whether a row sums up those above it; rows are asked about in their order. */
    boolean sumsUp(RawRow row) throws SourceFault {
        if (!holdsNumbers(row)) {
            return false;
        }
        readTo(row.number());
        boolean ofAll = flights >= LEAST_FLIGHTS && agrees(row, all);
        boolean ofSection = sectionFlights >= LEAST_FLIGHTS && agrees(row, section);
        boolean sums = ofAll || ofSection;
        if (sums) {
            endSection();
        }
        return sums;
    }

    /** Whether the rows above were ever read. */
    boolean lookedAbove() {
        return again.isPresent();
    }

    /** Says that a row sums up what is above it, so that the next section begins. */
    void endSection() {
        Arrays.fill(section, 0);
        sectionFlights = 0;
    }

    private boolean holdsNumbers(RawRow row) {
        return binding.columns().all().stream()
                .anyMatch(column -> isSummed(column) && !Blanks.isBlank(row.cell(column.index())));
    }

    private static boolean isSummed(BoundColumn column) {
        Field.Kind kind = column.rule().field().kind();
        return kind == Field.Kind.COUNT || kind == Field.Kind.MASS || kind == Field.Kind.FUEL;
    }

    private void readTo(long number) throws SourceFault {
        if (again.isEmpty()) {
            again = Optional.of(table.rows(binding.map()));
        }
        Optional<RawRow> row = again.get().next();
        while (row.isPresent() && row.get().number() < number) {
            if (row.get().number() > headingRow && isFlight(row.get())) {
                add(row.get());
            }
            row = again.get().next();
        }
    }

    private boolean isFlight(RawRow row) {
        return keys.filled(row) > 0 && TotalsWords.begin(row, keys).isEmpty();
    }

    private void add(RawRow row) {
        flights++;
        sectionFlights++;
        for (BoundColumn column : binding.columns().all()) {
            double value = isSummed(column) ? number(row, column.index()) : 0;
            if (!Double.isNaN(value)) {
                all[column.order()] += value;
                section[column.order()] += value;
            }
        }
    }

    private boolean agrees(RawRow row, double[] sums) {
        boolean one = false;
        for (BoundColumn column : binding.columns().all()) {
            String text = Blanks.strip(row.cell(column.index()));
            if (!isSummed(column) || text.isEmpty()) {
                continue;
            }
            double sum = sums[column.order()];
            if (!isSumFormula(row, column.index()) && !agrees(number(row, column.index()), text, sum)) {
                return false;
            }
            one |= sum != 0;
        }
        return one;
    }

    private static boolean isSumFormula(RawRow row, int column) {
        String formula = row.cell(column).toUpperCase(Locale.ROOT);
        return row.kind(column) == CellKind.UNCALCULATED
                && (formula.startsWith("=SUM(") || formula.startsWith("=SUBTOTAL("));
    }

    private static boolean agrees(double value, String text, double sum) {
        int point = Math.max(text.indexOf('.'), text.indexOf(','));
        double halfOfLast = point < 0 ? 0.5 : 0.5 * Math.pow(10, point + 1 - text.length());
        return Math.abs(value - sum) <= Math.min(halfOfLast, 0.5) + RELATIVE * Math.abs(sum);
    }

    private double number(RawRow row, int column) {
        String text = Blanks.strip(row.cell(column));
        if (text.isEmpty()) {
            return 0;
        }
        if (row.kind(column).isNumber()) {
            return NumberGrammar.parse(text, '.', true);
        }
        char decimal = binding.map().decimalComma() ? ',' : '.';
        return NumberGrammar.parse(Grouping.without(text, decimal, binding.map().grouping()), decimal, false);
    }

    @Override
    public void close() throws IOException {
        if (again.isPresent()) {
            again.get().close();
        }
    }
}
