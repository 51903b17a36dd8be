package org.steelyard.report.table;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.steelyard.model.unit.Counted;

/**
 * A table as data, which every output lays out in its own way.
 *
 * @param title what it is of
 * @param columns from left to right; the first names the row
 * @param rows cells of each row, one for each column
 * @param order in words, by what the rows are ordered, as {@code greatest share breached first}
 * @param note what is to be known of it; blank for nothing
 * @param none what is said where it has no rows
 * @param all how many rows there are in all, where only the first are here
 */
public record DataTable(
        String title,
        List<Column> columns,
        List<List<TableCell>> rows,
        String order,
        String note,
        String none,
        int all) {

    public DataTable {
        columns = List.copyOf(columns);
        rows = rows.stream().map(List::copyOf).toList();
        for (List<TableCell> row : rows) {
            if (row.size() != columns.size()) {
                throw new IllegalArgumentException(
                        title + ": a row has " + columns.size() + " cells, not " + row.size());
            }
        }
    }

    /** A table without a note. */
    public static DataTable of(String title, List<Column> columns, List<List<TableCell>> rows, String order) {
        return new DataTable(title, columns, rows, order, "", "None.", rows.size());
    }

    public DataTable noting(String words) {
        return new DataTable(title, columns, rows, order, words, none, all);
    }

    /** Says something else where there are no rows. */
    public DataTable orElse(String words) {
        return new DataTable(title, columns, rows, order, note, words, all);
    }

    /** The first rows, where there is no room for all. */
    public DataTable first(int most) {
        return new DataTable(title, columns, rows.subList(0, Math.min(most, rows.size())), order, note, none, all);
    }

    /** Some of the columns, where there is no room for all. */
    public DataTable only(String... keys) {
        return chosen(Arrays.stream(keys).mapToInt(this::index).toArray());
    }

    /** All columns but some. */
    public DataTable without(String... keys) {
        List<String> left = List.of(keys);
        left.forEach(this::index);
        return chosen(IntStream.range(0, columns.size())
                .filter(i -> !left.contains(columns.get(i).key()))
                .toArray());
    }

    private DataTable chosen(int... indexes) {
        return new DataTable(
                title,
                pick(columns, indexes),
                rows.stream().map(row -> pick(row, indexes)).toList(),
                order,
                note,
                none,
                all);
    }

    private static <T> List<T> pick(List<T> from, int... indexes) {
        List<T> picked = new ArrayList<>();
        for (int index : indexes) {
            picked.add(from.get(index));
        }
        return picked;
    }

    /** Place of a column from the left, from 0. */
    public int index(String key) {
        for (int i = 0; i < columns.size(); i++) {
            if (columns.get(i).key().equals(key)) {
                return i;
            }
        }
        throw new IllegalArgumentException(title + " has no column " + key);
    }

    /** How many rows there are that are not here. */
    public int left() {
        return all - rows.size();
    }

    /** What is said below a table that has not all rows; blank where it has. */
    public String leftOut() {
        return left() == 0
                ? ""
                : "The first " + Counted.number(rows.size()) + " of " + Counted.number(all)
                        + (order.isBlank() ? "" : ", " + order) + ".";
    }
}
