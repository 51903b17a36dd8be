package org.steelyard.report.output.book;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import org.apache.poi.ss.usermodel.CellStyle;
import org.steelyard.check.result.Status;
import org.steelyard.check.text.Rounded;
import org.steelyard.model.finding.Severity;
import org.steelyard.report.book.SheetColumn;
import org.steelyard.report.book.SheetRow;
import org.steelyard.report.book.WorkbookStyles;
import org.steelyard.report.book.WorkbookStyles.NumberStyle;
import org.steelyard.report.column.ColumnList;
import org.steelyard.report.column.ListColumn;
import org.steelyard.report.column.ListColumn.Kind;
import org.steelyard.report.column.ListColumn.OnSheet;
import org.steelyard.report.column.ListUnit;
import org.steelyard.report.text.ListCells;
import org.steelyard.report.words.WorkbookWords;

/**
 * The rows of a list on its sheet; how a cell looks follows from kind and unit of its column.
 *
 * @param <T> what a row is of
 */
final class ListSheet<T> {

    /** So many signs more than a column is wide go on a line, as most are narrower than a digit. */
    private static final int NARROW_CHARS = 4;

    private record Column<T>(Kind kind, ListUnit unit, OnSheet<T> there) {

        static <T> Column<T> of(ListColumn<T> column) {
            return new Column<>(column.kind(), column.unit(), column.onSheet().orElseThrow());
        }
    }

    private final List<Column<T>> columns;
    private final WorkbookStyles styles;

    ListSheet(ColumnList<T> columns, WorkbookStyles styles) {
        this.columns = columns.onSheet().stream().map(Column::of).toList();
        this.styles = styles;
    }

    /** The columns of a list as those of a sheet. */
    static <T> List<SheetColumn> columns(ColumnList<T> columns) {
        return columns.onSheet().stream()
                .map(Column::of)
                .map(column -> new SheetColumn(
                        column.there().heading(),
                        column.there().widthChars(),
                        column.kind().toTheRight()))
                .toList();
    }

    /** Fills the row of an item; its sentences come first, as a row has its height before its cells. */
    void fill(SheetRow row, T item) {
        Cells cells = new Cells(row, item);
        List<String> sentences = new ArrayList<>(2);
        int lines = 1;
        for (Column<T> column : columns) {
            if (column.kind() == Kind.SENTENCE) {
                String sentence = cells.sentence(column);
                sentences.add(sentence);
                lines = Math.max(lines, 1 + sentence.length() / (column.there().widthChars() + NARROW_CHARS));
            }
        }
        row.lines(lines);
        Iterator<String> sentence = sentences.iterator();
        for (Column<T> column : columns) {
            if (column.kind() == Kind.SENTENCE) {
                row.data(sentence.next(), styles.wrapped);
            } else {
                cells.add(column);
            }
        }
    }

    private NumberStyle style(ListUnit unit) {
        return switch (unit) {
            case NONE, KG, KG_M, ADULTS -> styles.whole;
            case TRIM -> styles.trim;
            case PERCENT_MAC, INDEX, CHANCE, BESIDE, INSIDE -> styles.twoDecimals;
        };
    }

    private static int decimals(ListUnit unit) {
        return switch (unit) {
            case NONE, KG, KG_M, ADULTS -> 0;
            case TRIM, PERCENT_MAC, INDEX, CHANCE, BESIDE, INSIDE -> 2;
        };
    }

    private final class Cells implements ListCells {

        private final SheetRow row;
        private final T item;
        private Column<T> column;
        private String sentence = "";

        Cells(SheetRow row, T item) {
            this.row = row;
            this.item = item;
        }

        String sentence(Column<T> of) {
            add(of);
            return sentence;
        }

        void add(Column<T> next) {
            column = next;
            next.there().cell().add(item, this);
        }

        private Severity worst() {
            return column.there().worst().apply(item);
        }

        @Override
        public ListCells text(String text) {
            switch (column.kind()) {
                case SENTENCE -> sentence = WorkbookWords.sentence(text);
                case SETTING -> setting(text);
                case TEXT, MARK, DATE, WHOLE, NUMBER -> row.data(text, styles.text);
            }
            return this;
        }

        private void setting(String text) {
            if (text.isEmpty()) {
                row.skip(1);
            } else {
                row.label(text, styles.settingBySeverity.styleFor(worst()));
            }
        }

        @Override
        public ListCells whole(long number) {
            row.number(number, styles.rowNumber);
            return this;
        }

        @Override
        public ListCells number(double number) {
            double shown = column.there().permitted() ? Rounded.down(number, decimals(column.unit())) : number;
            row.number(shown, style(column.unit()).styleFor(worst()));
            return this;
        }

        @Override
        public ListCells figure(double number, int decimals) {
            row.number(number, styles.decimals(decimals));
            return this;
        }

        @Override
        public ListCells blank() {
            row.skip(1);
            return this;
        }

        @Override
        public ListCells date(LocalDate date) {
            row.date(date, styles);
            return this;
        }

        @Override
        public ListCells status(Status status) {
            return mark(WorkbookWords.status(status), styles.status(status));
        }

        @Override
        public ListCells severity(Severity severity) {
            return mark(WorkbookWords.severity(severity), styles.severity(severity));
        }

        private ListCells mark(String words, CellStyle style) {
            row.label(words, style);
            return this;
        }
    }
}
