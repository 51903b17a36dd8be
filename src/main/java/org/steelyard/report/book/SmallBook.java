package org.steelyard.report.book;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Date;
import java.util.Optional;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.apache.poi.ooxml.POIXMLProperties.CoreProperties;
import org.apache.poi.ss.SpreadsheetVersion;
import org.apache.poi.ss.util.WorkbookUtil;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.steelyard.report.file.OutputMark;
import org.steelyard.report.file.WholeFile;
import org.steelyard.report.text.Caution;

/** A workbook of a few sheets that are laid out by hand. The same content gives the same bytes. */
public final class SmallBook implements AutoCloseable {

    /** The format wants a time; one that never changes keeps the bytes the same. */
    private static final Date STAMP = Date.from(Instant.parse("2000-01-01T00:00:00Z"));

    private final XSSFWorkbook book = new XSSFWorkbook();
    private final WorkbookStyles styles = WorkbookStyles.forPages(book);
    private final WorkbookText text = new WorkbookText(SpreadsheetVersion.EXCEL2007.getMaxTextLength());
    private final String title;

    public SmallBook(String title) {
        this.title = title;
    }

    public WorkbookStyles styles() {
        return styles;
    }

    /** A new sheet; a name that the format does not take, or has already, is changed until it does. */
    public SheetGrid sheet(String name) {
        String safe = WorkbookUtil.createSafeSheetName(name);
        String unique = safe;
        for (int i = 2; book.getSheet(unique) != null; i++) {
            String mark = " " + i;
            unique = safe.substring(0, Math.min(safe.length(), 31 - mark.length())) + mark;
        }
        return new SheetGrid(book.createSheet(unique), text);
    }

    public WorkbookPage page() {
        return new WorkbookPage(text.cell(title));
    }

    public void write(Path file) throws IOException {
        CoreProperties core = book.getProperties().getCoreProperties();
        core.setCreator(OutputMark.CREATOR);
        core.setTitle(text.cell(title));
        core.setDescription(Caution.TEXT);
        core.setCreated(Optional.of(STAMP));
        core.setModified(Optional.of(STAMP));
        ByteArrayOutputStream whole = new ByteArrayOutputStream();
        book.write(whole);
        WholeFile.write(file, out -> restamped(whole.toByteArray(), out));
    }

    /** The same archive with one time for all its entries, in place of the time of day. */
    private static void restamped(byte[] archive, OutputStream out) throws IOException {
        try (ZipInputStream from = new ZipInputStream(new ByteArrayInputStream(archive));
                ZipOutputStream to = new ZipOutputStream(out)) {
            for (ZipEntry entry = from.getNextEntry(); entry != null; entry = from.getNextEntry()) {
                ZipEntry same = new ZipEntry(entry.getName());
                same.setTimeLocal(OutputMark.TIME);
                to.putNextEntry(same);
                from.transferTo(to);
                to.closeEntry();
            }
        }
    }

    @Override
    public void close() throws IOException {
        book.close();
    }
}
