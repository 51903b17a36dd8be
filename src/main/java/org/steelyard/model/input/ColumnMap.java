package org.steelyard.model.input;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.steelyard.model.unit.Require;

/**
 * How the headings of a source become fields.
 *
 * @param name name of the map
 * @param filePatterns names of files that it is for, with * for any characters and ? for one; may be empty
 * @param charset name of the text encoding; blank to go by the byte order mark, and UTF-8 without one
 * @param delimiter character between cells; empty to find it in the heading line
 * @param decimalComma whether numbers are written with a decimal comma
 * @param grouping what stands between groups of three digits
 * @param unknownColumns what becomes of columns without a rule
 * @param columns rules, each heading once
 * @param form what each row of the source is
 * @param scheme id of the scheme of standard masses by which the rows count, unless they name one themselves; blank for
 *     that of the tail or type
 * @param mergedCells what the rows under a merged cell of a workbook have from it
 * @param blank what a blank load cell means, where its column does not say
 */
public record ColumnMap(
        String name,
        List<String> filePatterns,
        String charset,
        Optional<Character> delimiter,
        boolean decimalComma,
        DigitGrouping grouping,
        UnknownColumns unknownColumns,
        List<ColumnRule> columns,
        SourceForm form,
        String scheme,
        MergedCells mergedCells,
        BlankLoad blank) {

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
     * @throws IllegalArgumentException if the name is blank, there is no rule, one is for a field that the form does
     *     not have, or one sign would both group digits and part decimals
     */
    public ColumnMap {
        Require.text("map name", name);
        filePatterns = List.copyOf(filePatterns);
        Objects.requireNonNull(charset);
        Objects.requireNonNull(delimiter);
        Objects.requireNonNull(unknownColumns);
        Require.that(
                !grouping.isSign(decimalComma ? ',' : '.'),
                "the sign between groups of digits must not be the decimal sign");
        columns = List.copyOf(columns);
        Objects.requireNonNull(form);
        Objects.requireNonNull(scheme);
        Objects.requireNonNull(mergedCells);
        Objects.requireNonNull(blank);
        Require.that(!columns.isEmpty(), "a heading map needs at least one column");
        for (ColumnRule rule : columns) {
            Require.that(
                    rule.field().suits(form),
                    "field " + rule.field().key() + " cannot stand in a map of the form " + form.key());
        }
    }
}
