package org.steelyard.run;

import java.io.IOException;
import java.io.OutputStream;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;
import org.steelyard.model.input.ColumnMap;
import org.steelyard.model.input.SourceForm;
import org.steelyard.model.type.AircraftType;
import org.steelyard.run.FormStyle.Column;

/**
 * A table of one form, to be written in any style as text or as a workbook. A null in a row is a blank cell.
 *
 * @param name name of the table, of its files and of its map
 * @param form what its rows are
 * @param columns its columns
 * @param rows its rows
 */
record FormFiles(String name, SourceForm form, List<Column> columns, List<List<Object>> rows) {

    ColumnMap map(FormStyle style) {
        return style.map(name, columns, form);
    }

    Path csv(Path folder, FormStyle style, AircraftType type) throws IOException {
        String delimiter = String.valueOf(style.delimiter());
        StringBuilder text = new StringBuilder();
        List<String> headings = columns.stream().map(style::heading).toList();
        text.append(String.join(delimiter, headings)).append('\n');
        for (List<Object> row : rows) {
            List<String> cells = new ArrayList<>();
            row.forEach(value -> cells.add(value == null ? "" : style.text(value, type)));
            text.append(String.join(delimiter, cells)).append('\n');
        }
        return Files.writeString(folder.resolve(name + ".csv"), text, StandardCharsets.UTF_8);
    }

    Path xlsx(Path folder, FormStyle style, AircraftType type) throws IOException {
        Path file = folder.resolve(name + ".xlsx");
        try (SXSSFWorkbook workbook = new SXSSFWorkbook();
                OutputStream out = Files.newOutputStream(file)) {
            CellStyle date = workbook.createCellStyle();
            date.setDataFormat((short) 14);
            Sheet sheet = workbook.createSheet("sheet");
            Row headings = sheet.createRow(0);
            for (int i = 0; i < columns.size(); i++) {
                headings.createCell(i).setCellValue(style.heading(columns.get(i)));
            }
            for (List<Object> row : rows) {
                Row cells = sheet.createRow(sheet.getLastRowNum() + 1);
                for (int i = 0; i < row.size(); i++) {
                    if (row.get(i) != null) {
                        set(cells.createCell(i), style.stored(row.get(i), type), date);
                    }
                }
            }
            workbook.write(out);
        }
        return file;
    }

    private static void set(Cell cell, Object value, CellStyle date) {
        if (value instanceof LocalDate day) {
            cell.setCellValue(day);
            cell.setCellStyle(date);
        } else if (value instanceof BigDecimal number) {
            cell.setCellValue(number.doubleValue());
        } else if (value instanceof Integer count) {
            cell.setCellValue(count);
        } else {
            cell.setCellValue(value.toString());
        }
    }
}
