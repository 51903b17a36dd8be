package org.steelyard.read.season;

import java.io.Closeable;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.steelyard.read.table.ReadOptions;
import org.steelyard.read.table.RejectedColumns;
import org.steelyard.read.table.SeasonFolder;
import org.steelyard.read.table.SeasonFolder.Skipped;
import org.steelyard.read.table.SourceFault;
import org.steelyard.read.table.Table;
import org.steelyard.read.table.text.CsvTable;
import org.steelyard.read.table.xlsx.XlsxFile;
import org.steelyard.read.table.xlsx.XlsxSheet;

/** The tables of one file: the text itself, or the sheets that users see. */
final class FileTables implements Closeable {

    private final List<Table> tables;
    private final List<Skipped> hidden;
    private final Optional<XlsxFile> workbook;

    private FileTables(List<Table> tables, List<Skipped> hidden, Optional<XlsxFile> workbook) {
        this.tables = List.copyOf(tables);
        this.hidden = List.copyOf(hidden);
        this.workbook = workbook;
    }

    /**
     * Opens a file.
     *
     * @throws SourceFault if it cannot be read at all
     */
    static FileTables open(Path path, ReadOptions options) throws SourceFault {
        return isWorkbook(path) ? workbook(path) : text(path, options);
    }

    static boolean isWorkbook(Path path) {
        return SeasonFolder.endingOf(SeasonFolder.nameOf(path)).equals("xlsx");
    }

    private static FileTables text(Path path, ReadOptions options) throws SourceFault {
        CsvTable table = CsvTable.open(path, options);
        if (table.mentions(RejectedColumns.FILE)) {
            CsvTable rejected = CsvTable.open(path, ReadOptions.of(List.of(RejectedColumns.FINDER)));
            if (RejectedTable.in(rejected).isPresent()) {
                return new FileTables(List.of(rejected), List.of(), Optional.empty());
            }
        }
        return new FileTables(List.of(table), List.of(), Optional.empty());
    }

    private static FileTables workbook(Path path) throws SourceFault {
        XlsxFile workbook = XlsxFile.open(path);
        List<Table> sheets = new ArrayList<>();
        List<Skipped> hidden = new ArrayList<>();
        for (XlsxSheet sheet : workbook.sheets()) {
            if (sheet.hidden()) {
                hidden.add(new Skipped(sheet.name().row(0).toString(), "the sheet is hidden"));
            } else {
                sheets.add(sheet);
            }
        }
        return new FileTables(sheets, hidden, Optional.of(workbook));
    }

    List<Table> tables() {
        return tables;
    }

    /** Sheets that users do not see. */
    List<Skipped> hidden() {
        return hidden;
    }

    @Override
    public void close() throws IOException {
        if (workbook.isPresent()) {
            workbook.get().close();
        }
    }
}
