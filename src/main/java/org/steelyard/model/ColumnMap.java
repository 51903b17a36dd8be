package org.steelyard.model;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * How the headings of a source become fields.
 *
 * @param name name of the map
 * @param filePatterns names of files that it is for, with * for any characters and ? for one; may be empty
 * @param charset name of the text encoding; blank to go by the byte order mark, and UTF-8 without one
 * @param delimiter character between cells; empty to find it in the heading line
 * @param decimalComma whether numbers are written with a decimal comma
 * @param unknownColumns what becomes of columns without a rule
 * @param columns rules, each heading once
 * @param mergedCells what the rows under a merged cell of a workbook have from it
 */
public record ColumnMap(
        String name,
        List<String> filePatterns,
        String charset,
        Optional<Character> delimiter,
        boolean decimalComma,
        UnknownColumns unknownColumns,
        List<ColumnRule> columns,
        MergedCells mergedCells) {

    /** What the rows under a merged cell of a workbook have from it. */
    public enum MergedCells {
        /** Nothing: the value counts for its first row, and the others are rejected if the column means something. */
        FIRST_ROW("first row"),
        /** Its text or date; never its number, which would count more than once. */
        FILL_DOWN("fill down");

        private final String label;

        MergedCells(String label) {
            this.label = label;
        }

        /**
         * How the rule is written.
         *
         * @return its words
         */
        public String label() {
            return label;
        }
    }

    /** What becomes of columns that have no rule. */
    public enum UnknownColumns {
        /** They are carried along under their headings. */
        KEEP,
        /** They are left out; the run's facts list them. */
        LEAVE_OUT
    }

    /**
     * Checks the rules.
     *
     * @throws IllegalArgumentException if the name is blank or there is no rule
     */
    public ColumnMap {
        Require.text("map name", name);
        filePatterns = List.copyOf(filePatterns);
        Objects.requireNonNull(charset);
        Objects.requireNonNull(delimiter);
        Objects.requireNonNull(unknownColumns);
        columns = List.copyOf(columns);
        Objects.requireNonNull(mergedCells);
        Require.that(!columns.isEmpty(), "a heading map needs at least one column");
    }

    /**
     * A map under which a merged cell counts for its first row.
     *
     * @param name name of the map
     * @param filePatterns names of files that it is for, with * for any characters and ? for one; may be empty
     * @param charset name of the text encoding; blank to go by the byte order mark, and UTF-8 without one
     * @param delimiter character between cells; empty to find it in the heading line
     * @param decimalComma whether numbers are written with a decimal comma
     * @param unknownColumns what becomes of columns without a rule
     * @param columns rules, each heading once
     */
    public ColumnMap(
            String name,
            List<String> filePatterns,
            String charset,
            Optional<Character> delimiter,
            boolean decimalComma,
            UnknownColumns unknownColumns,
            List<ColumnRule> columns) {
        this(name, filePatterns, charset, delimiter, decimalComma, unknownColumns, columns, MergedCells.FIRST_ROW);
    }
}
