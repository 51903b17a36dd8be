package org.steelyard.run;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** All files of a season's reports, read back by general libraries. */
record WrittenReports(Path folder, XSSFWorkbook book) {

    private static final Pattern DATA =
            Pattern.compile("<script type=\"application/json\" id=\"season-data\">(.*?)</script>", Pattern.DOTALL);
    private static final int HEADINGS = 1;

    static WrittenReports in(Path folder) throws IOException {
        return new WrittenReports(folder, new XSSFWorkbook(Files.newInputStream(folder.resolve("season.xlsx"))));
    }

    /** The same workbook beside other files. */
    WrittenReports beside(Path other) {
        return new WrittenReports(other, book);
    }

    List<CSVRecord> csv(String name) throws IOException {
        CSVFormat format = CSVFormat.RFC4180
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get();
        try (CSVParser rows = CSVParser.parse(folder.resolve(name), StandardCharsets.UTF_8, format)) {
            return rows.getRecords();
        }
    }

    JsonNode run() throws IOException {
        return new ObjectMapper().readTree(folder.resolve("run.json").toFile());
    }

    String page() throws IOException {
        return Files.readString(folder.resolve("report.html"), StandardCharsets.UTF_8);
    }

    JsonNode pageData() throws IOException {
        Matcher data = DATA.matcher(page());
        if (!data.find()) {
            throw new AssertionError("the page holds no data");
        }
        return new ObjectMapper().readTree(data.group(1));
    }

    /** The words of the page in front of its data, elements between bars. */
    String pageWords() throws IOException {
        return page().replaceFirst("(?s)<script.*", "")
                .replaceAll("(?s)<(svg|style).*?</\\1>", "")
                .replaceAll("(?s)<[^>]+>", "|")
                .replaceAll("\\|+", "|")
                .replace("&#39;", "'")
                .replace("&lt;", "<")
                .replace("&gt;", ">")
                .replace("&quot;", "\"")
                .replace("&amp;", "&");
    }

    /** The rows below the headings of a list, each by its headings. */
    List<Map<String, Object>> list(String sheet) {
        return table(book.getSheet(sheet), HEADINGS, 0);
    }

    /** The rows of a table from the row of its headings to the next empty row. */
    static List<Map<String, Object>> table(Sheet sheet, int headings, int firstColumn) {
        return table(sheet, headings, firstColumn, WrittenReports::value);
    }

    /** The same with each cell as a function of it. */
    static List<Map<String, Object>> table(Sheet sheet, int headings, int firstColumn, Function<Cell, Object> valueOf) {
        Map<Integer, String> names = new LinkedHashMap<>();
        for (Cell cell : sheet.getRow(headings)) {
            if (cell.getColumnIndex() >= firstColumn && cell.getCellType() == CellType.STRING) {
                names.put(cell.getColumnIndex(), cell.getStringCellValue());
            }
        }
        List<Map<String, Object>> rows = new ArrayList<>();
        for (int i = headings + 1; i <= sheet.getLastRowNum(); i++) {
            Optional<Row> row = Optional.ofNullable(sheet.getRow(i));
            Map<String, Object> values = new LinkedHashMap<>();
            names.forEach((column, name) -> values.putIfAbsent(
                    name, row.map(found -> found.getCell(column)).map(valueOf).orElse("")));
            if (values.values().stream().allMatch(""::equals)) {
                break;
            }
            rows.add(values);
        }
        return rows;
    }

    static Object value(Cell cell) {
        return switch (cell.getCellType()) {
            case NUMERIC -> cell.getNumericCellValue();
            case STRING -> cell.getStringCellValue();
            case BLANK -> "";
            default -> throw new AssertionError("a cell of kind " + cell.getCellType() + " at " + cell.getAddress());
        };
    }
}
