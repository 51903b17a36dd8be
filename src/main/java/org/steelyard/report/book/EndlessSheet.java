package org.steelyard.report.book;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTWorksheet;
import org.steelyard.report.text.Work;

/**
 * A streamed sheet without end: past the last row that the format has it goes on with the next sheet, under the same
 * headings. Rows leave memory as they are written: one by one through {@link #next}, or many at a time through
 * {@link #begin}, whose cells any thread may fill.
 */
public final class EndlessSheet {

    private static final int NOTE_ROW = 0;
    private static final int HEADING_ROW = 1;
    private static final int FIRST_ROW = 2;
    private static final float ROOM_FOR_FILTERS = 16;
    private static final int CHARS_IN_MEMORY = 1 << 18;

    /** What is compressed at once: small enough to be still near the processor. */
    private static final int CHARS_AT_ONCE = 1 << 15;

    private final StreamedSheets book;
    private final WorkbookStyles styles;
    private final WorkbookText text;
    private final SheetLayout layout;
    private final int maxRows;
    private final List<StreamedSheet> parts = new ArrayList<>();
    private final List<Integer> ends = new ArrayList<>();
    private final Optional<CellStyle> blank;
    private final XmlRows xml = new XmlRows();
    private StreamedSheet part;
    private int nextRow;
    private long rows;

    public EndlessSheet(
            StreamedSheets book, WorkbookStyles styles, WorkbookText text, SheetLayout layout, int maxRows) {
        if (maxRows <= FIRST_ROW) {
            throw new IllegalArgumentException("a sheet needs more than its headings");
        }
        this.book = book;
        this.styles = styles;
        this.text = text;
        this.layout = layout;
        this.maxRows = maxRows;
        blank = Optional.of(styles.blank);
        startPart();
    }

    public SheetLayout layout() {
        return layout;
    }

    /** How many rows were written below the headings, on all sheets. */
    public long rows() {
        return rows;
    }

    /** How many sheets there are. */
    public int parts() {
        return parts.size();
    }

    public List<String> names() {
        return parts.stream().map(each -> each.sheet().getSheetName()).toList();
    }

    /** Makes sure that so many rows come to stand on one sheet. */
    public void keepTogether(int count) {
        if (nextRow > FIRST_ROW && nextRow + count > maxRows) {
            startPart();
        }
    }

    /** The next row. */
    public SheetRow next() {
        rows++;
        return nextHeading();
    }

    /** The next row, which is no row of its own but says what follows. */
    public SheetRow nextHeading() {
        keepTogether(1);
        if (xml.chars() > CHARS_IN_MEMORY) {
            flush();
        }
        return row(xml, nextRow++);
    }

    private SheetRow row(XmlRows to, int rowIndex) {
        to.begin(rowIndex);
        return new SheetRow(to, text, blank);
    }

    /**
     * Keeps a row for each of some items.
     *
     * @param items one for each row
     * @param fill fills the row of an item; called by another thread
     * @return makes the rows and then adds them
     */
    public <T> Work begin(List<T> items, BiConsumer<SheetRow, T> fill) {
        List<Work> works = new ArrayList<>(1);
        int done = 0;
        while (done < items.size()) {
            keepTogether(1);
            flush();
            int count = Math.min(items.size() - done, maxRows - nextRow);
            works.add(begin(part, nextRow, items.subList(done, done + count), fill));
            nextRow += count;
            done += count;
        }
        rows += done;
        return Work.all(works);
    }

    private <T> Work begin(StreamedSheet to, int firstRow, List<T> items, BiConsumer<SheetRow, T> fill) {
        return () -> {
            XmlRows made = new XmlRows();
            DeflatedPart.Maker maker = new DeflatedPart.Maker();
            for (int i = 0; i < items.size(); i++) {
                fill.accept(row(made, firstRow + i), items.get(i));
                if (made.chars() > CHARS_AT_ONCE) {
                    maker.add(made.take());
                }
            }
            DeflatedPart deflated = maker.add(made.take()).made();
            return () -> to.add(deflated);
        };
    }

    /** Sets filters and pages, when all rows are written and the sheets are in order. */
    public void finish(WorkbookPage page, String whenEmpty) {
        if (rows == 0) {
            new SheetRow(begun(nextRow++), text, Optional.empty()).label(whenEmpty, styles.note);
        }
        flush();
        ends.add(nextRow - 1);
        for (int i = 0; i < parts.size(); i++) {
            finishPart(parts.get(i).sheet(), ends.get(i), page);
        }
    }

    private void finishPart(XSSFSheet sheet, int lastRow, WorkbookPage page) {
        int lastColumn = layout.columns().size() - 1;
        CTWorksheet written = sheet.getCTWorksheet();
        (written.isSetDimension() ? written.getDimension() : written.addNewDimension())
                .setRef(new CellRangeAddress(NOTE_ROW, lastRow, 0, Math.max(lastColumn, xml.lastColumn()))
                        .formatAsString());
        sheet.setAutoFilter(new CellRangeAddress(HEADING_ROW, lastRow, 0, lastColumn));
        sheet.setRepeatingRows(new CellRangeAddress(HEADING_ROW, HEADING_ROW, -1, -1));
        if (layout.pagesWide() > 1) {
            sheet.setRepeatingColumns(new CellRangeAddress(-1, -1, 0, layout.frozenColumns() - 1));
            book.book().setPrintArea(book.book().getSheetIndex(sheet), 0, lastColumn, HEADING_ROW, lastRow);
        }
        page.setUp(sheet, layout.pagesWide(), 0);
    }

    private void startPart() {
        if (!parts.isEmpty()) {
            ends.add(nextRow - 1);
            flush();
        }
        part = create(parts.isEmpty() ? layout.name() : layout.name() + " " + (parts.size() + 1));
        parts.add(part);
        widths();
        part.sheet().setDisplayGridlines(false);
        part.sheet().createFreezePane(layout.frozenColumns(), FIRST_ROW);
        headings();
        nextRow = FIRST_ROW;
    }

    private StreamedSheet create(String name) {
        try {
            return book.create(name);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void flush() {
        if (xml.chars() > 0) {
            try {
                part.add(DeflatedPart.of(xml.take()));
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }

    private void widths() {
        part.sheet().setDefaultColumnWidth(14);
        for (int column = 0; column < layout.columns().size(); column++) {
            part.sheet().setColumnWidth(column, layout.columns().get(column).widthChars() * 256);
        }
    }

    private void headings() {
        String note = layout.note() + (parts.size() > 1 ? " Continued from the sheet before." : "");
        begun(NOTE_ROW).height(20);
        new SheetRow(xml, text, Optional.empty()).label(note, styles.note);
        begun(HEADING_ROW).height(ROOM_FOR_FILTERS + 12.75f * layout.headingLines());
        SheetRow headings = new SheetRow(xml, text, Optional.empty());
        for (SheetColumn column : layout.columns()) {
            headings.label(column.heading(), column.numbers() ? styles.headingRight : styles.heading);
        }
    }

    private XmlRows begun(int rowIndex) {
        xml.begin(rowIndex);
        return xml;
    }
}
