package org.steelyard.report.output.book;

import java.time.LocalDate;
import java.util.ArrayList;
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

    private record Column<T>(Kind kind, ListColumn.Cell<T> cell, OnSheet<T> there, NumberStyle style, int decimals) {}

    private final List<Column<T>> columns;
    private final List<Column<T>> sentences;
    private final WorkbookStyles styles;

    ListSheet(ColumnList<T> list, WorkbookStyles styles) {
        this.styles = styles;
        columns = list.onSheet().stream().map(this::column).toList();
        sentences = columns.stream()
                .filter(column -> column.kind() == Kind.SENTENCE)
                .toList();
    }

    private Column<T> column(ListColumn<T> column) {
        OnSheet<T> there = column.onSheet().orElseThrow();
        return switch (column.unit()) {
            case NONE, KG, KG_M, ADULTS -> new Column<>(column.kind(), there.cell(), there, styles.whole, 0);
            case PERCENT_MAC, INDEX, CHANCE, BESIDE, INSIDE ->
                new Column<>(column.kind(), there.cell(), there, styles.twoDecimals, 2);
            case TRIM -> new Column<>(column.kind(), there.cell(), there, styles.trim, 2);
        };
    }

    /** The columns of a list as those of a sheet. */
    static <T> List<SheetColumn> columns(ColumnList<T> columns) {
        return columns.onSheet().stream().map(ListSheet::heading).toList();
    }

    private static SheetColumn heading(ListColumn<?> column) {
        OnSheet<?> there = column.onSheet().orElseThrow();
        return new SheetColumn(
                there.heading(), there.widthChars(), column.kind().toTheRight());
    }

    /** Fills the row of an item; its sentences come first, as a row has its height before its cells. */
    void fill(SheetRow row, T item) {
        Cells cells = new Cells(row, item);
        List<String> words = new ArrayList<>(sentences.size());
        int lines = 1;
        for (Column<T> column : sentences) {
            String sentence = cells.sentence(column);
            words.add(sentence);
            lines = Math.max(lines, 1 + sentence.length() / (column.there().widthChars() + NARROW_CHARS));
        }
        row.lines(lines);
        int next = 0;
        for (Column<T> column : columns) {
            if (column.kind() == Kind.SENTENCE) {
                row.data(words.get(next++), styles.wrapped);
            } else {
                cells.add(column);
            }
        }
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
            next.cell().add(item, this);
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
            double shown = column.there().permitted() ? Rounded.down(number, column.decimals()) : number;
            row.number(shown, column.style().styleFor(worst()));
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
