package org.steelyard.report;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Date;
import java.util.Optional;
import org.apache.poi.ooxml.POIXMLProperties.CoreProperties;
import org.apache.poi.ss.SpreadsheetVersion;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** A workbook of a few sheets that are laid out by hand. The same content gives the same bytes. */
final class SmallBook implements AutoCloseable {

    /** The format wants a time; one that never changes keeps the bytes the same. */
    private static final Date STAMP = Date.from(Instant.parse("2000-01-01T00:00:00Z"));

    private final XSSFWorkbook book = new XSSFWorkbook();
    private final WorkbookStyles styles = WorkbookStyles.forPages(book);
    private final WorkbookText text = new WorkbookText(SpreadsheetVersion.EXCEL2007.getMaxTextLength());
    private final String title;

    SmallBook(String title) {
        this.title = title;
    }

    WorkbookStyles styles() {
        return styles;
    }

    /** A new sheet; a name that the format does not take, or has already, is changed until it does. */
    SheetGrid sheet(String name) {
        String safe = org.apache.poi.ss.util.WorkbookUtil.createSafeSheetName(name);
        String unique = safe;
        for (int i = 2; book.getSheet(unique) != null; i++) {
            String mark = " " + i;
            unique = safe.substring(0, Math.min(safe.length(), 31 - mark.length())) + mark;
        }
        return new SheetGrid(book.createSheet(unique), text);
    }

    WorkbookPage page() {
        return new WorkbookPage(text.cell(title));
    }

    void write(Path file) throws IOException {
        CoreProperties core = book.getProperties().getCoreProperties();
        core.setCreator("Steelyard");
        core.setTitle(text.cell(title));
        core.setDescription(Caution.TEXT);
        core.setCreated(Optional.of(STAMP));
        core.setModified(Optional.of(STAMP));
        WholeFile.write(file, book::write);
    }

    @Override
    public void close() throws IOException {
        book.close();
    }
}
