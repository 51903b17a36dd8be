package org.steelyard.report.output.book;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** A workbook read back by the general library. */
public final class WorkbookReadBack implements AutoCloseable {

    static final int HEADING_ROW = 1;
    static final int FIRST_ROW = 2;

    final XSSFWorkbook book;

    public WorkbookReadBack(Path file) {
        try {
            book = new XSSFWorkbook(Files.newInputStream(file));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    List<String> names() {
        return sheets().map(XSSFSheet::getSheetName).toList();
    }

    Stream<XSSFSheet> sheets() {
        return StreamSupport.stream(book.spliterator(), false).map(XSSFSheet.class::cast);
    }

    XSSFSheet sheet(String name) {
        return book.getSheet(name);
    }

    Stream<Cell> cells() {
        return sheets().flatMap(WorkbookReadBack::cells);
    }

    static Stream<Cell> cells(XSSFSheet sheet) {
        List<Cell> cells = new ArrayList<>();
        for (Row row : sheet) {
            row.forEach(cells::add);
        }
        return cells.stream();
    }

    /** All texts of a sheet. */
    public List<String> texts(String name) {
        return cells(sheet(name))
                .filter(cell -> cell.getCellType() == CellType.STRING)
                .map(Cell::getStringCellValue)
                .toList();
    }

    /** A cell of a list by the heading of its column. */
    Cell cell(String name, int row, String heading) {
        Row headings = sheet(name).getRow(HEADING_ROW);
        for (Cell cell : headings) {
            if (cell.getStringCellValue().equals(heading)) {
                return sheet(name)
                        .getRow(row)
                        .getCell(cell.getColumnIndex(), Row.MissingCellPolicy.CREATE_NULL_AS_BLANK);
            }
        }
        throw new AssertionError("sheet " + name + " has no column " + heading);
    }

    String text(String name, int row, String heading) {
        return cell(name, row, heading).getStringCellValue();
    }

    double number(String name, int row, String heading) {
        return cell(name, row, heading).getNumericCellValue();
    }

    /** The row of a sheet laid out by hand that has a text in a column. */
    Row rowWith(String name, int column, String text, int occurrence) {
        int seen = 0;
        for (Row row : sheet(name)) {
            Cell cell = row.getCell(column);
            boolean found = cell != null
                    && cell.getCellType() == CellType.STRING
                    && cell.getStringCellValue().equals(text);
            if (found && ++seen == occurrence) {
                return row;
            }
        }
        throw new AssertionError("sheet " + name + " has no row " + occurrence + " with " + text);
    }

    @Override
    public void close() throws IOException {
        book.close();
    }
}
