package org.steelyard.report.column;

import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/**
 * All columns of a list.
 *
 * @param all in the order of files, with those that a file or a sheet alone has
 * @param headings the headings of the sheet from left to right
 * @param <T> what a row is of
 */
public record ColumnList<T>(List<ListColumn<T>> all, List<String> headings) {

    /**
     * Copies both.
     *
     * @throws IllegalArgumentException if two columns share a name, or the headings are not those of the columns
     */
    public ColumnList {
        all = List.copyOf(all);
        headings = List.copyOf(headings);
        Set<String> names = new HashSet<>();
        Set<String> onSheet = new HashSet<>();
        for (ListColumn<T> column : all) {
            if (!column.name().isEmpty() && !names.add(column.name())) {
                throw new IllegalArgumentException("two columns are named " + column.name());
            }
            column.onSheet().ifPresent(there -> onSheet.add(there.heading()));
        }
        if (headings.size() != onSheet.size() || !onSheet.equals(Set.copyOf(headings))) {
            throw new IllegalArgumentException("the headings of the sheet are not those of its columns: " + onSheet);
        }
    }

    /** A list that has no sheet. */
    static <T> ColumnList<T> ofFile(Stream<ListColumn<T>> columns) {
        return new ColumnList<>(columns.map(ListColumn::inFilesOnly).toList(), List.of());
    }

    /** The columns that files have, in their order. */
    public List<ListColumn<T>> inFiles() {
        return all.stream().filter(column -> !column.name().isEmpty()).toList();
    }

    /** Names of the columns that files have, in their order. */
    public List<String> names() {
        return inFiles().stream().map(ListColumn::name).toList();
    }

    /** The columns that the sheet has, from left to right. */
    public List<ListColumn<T>> onSheet() {
        return all.stream()
                .filter(column -> column.onSheet().isPresent())
                .sorted(Comparator.comparingInt(column ->
                        headings.indexOf(column.onSheet().orElseThrow().heading())))
                .toList();
    }
}
