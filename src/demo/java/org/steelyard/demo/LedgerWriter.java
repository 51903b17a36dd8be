package org.steelyard.demo;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.time.Instant;
import java.util.Date;
import java.util.List;
import java.util.Optional;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.FormulaError;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFFont;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Writes a file of the season as a workbook: a title, headings, and real dates and numbers below. */
final class LedgerWriter {

    private static final Instant STAMP = Instant.parse("2026-09-01T06:00:00Z");
    private static final int HEADING_ROW = 1;

    private final PlannedFile file;
    private final XSSFWorkbook workbook;
    private final CellStyle dates;
    private final CellStyle bold;

    private LedgerWriter(PlannedFile file, XSSFWorkbook workbook) {
        this.file = file;
        this.workbook = workbook;
        this.dates = workbook.createCellStyle();
        dates.setDataFormat(workbook.createDataFormat().getFormat("dd/mm/yyyy"));
        this.bold = workbook.createCellStyle();
        XSSFFont font = workbook.createFont();
        font.setBold(true);
        bold.setFont(font);
    }

    static byte[] bytes(PlannedFile file) throws IOException {
        try (XSSFWorkbook workbook = new XSSFWorkbook();
                ByteArrayOutputStream out = new ByteArrayOutputStream()) {
            new LedgerWriter(file, workbook).fill();
            workbook.getProperties().getCoreProperties().setCreated(Optional.of(Date.from(STAMP)));
            workbook.getProperties().getCoreProperties().setModified(Optional.of(Date.from(STAMP)));
            workbook.write(out);
            return StoredZip.of(out.toByteArray());
        }
    }

    private void fill() {
        Sheet sheet = workbook.createSheet("August");
        sheet.createRow(0).createCell(0).setCellValue("Flight ledger, August 2026");
        Row headings = sheet.createRow(HEADING_ROW);
        for (String heading : file.headings()) {
            org.apache.poi.ss.usermodel.Cell cell = headings.createCell(Math.max(0, headings.getLastCellNum()));
            cell.setCellValue(heading);
            cell.setCellStyle(bold);
        }
        for (int i = 0; i < file.entries().size(); i++) {
            row(
                    sheet.createRow(file.rowNumber(i) - 1),
                    file.cells(file.entries().get(i)));
        }
        sheet.createFreezePane(0, HEADING_ROW + 1);
    }

    private void row(Row row, List<Optional<Cell>> cells) {
        for (int i = 0; i < cells.size(); i++) {
            if (cells.get(i).isPresent()) {
                fill((XSSFCell) row.createCell(i), cells.get(i).get());
            }
        }
    }

    private void fill(XSSFCell target, Cell cell) {
        if (cell instanceof Cell.Text text) {
            target.setCellValue(text.text());
        } else if (cell instanceof Cell.Amount amount) {
            target.setCellValue(amount.value());
        } else if (cell instanceof Cell.Day day) {
            target.setCellValue(day.date());
            target.setCellStyle(dates);
        } else if (cell instanceof Cell.Failed) {
            target.setCellErrorValue(FormulaError.NA);
        } else if (cell instanceof Cell.Uncalculated formula) {
            target.setCellFormula(formula.formula());
        }
    }
}
