package org.steelyard.bench;

import java.io.File;
import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.IntStream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** What the program is held against: {@code Baseline hello}, {@code csv FILE} or {@code poi FILE}. */
final class Baseline {

    private Baseline() {}

    public static void main(String[] args) throws Exception {
        switch (args[0]) {
            case "hello" -> System.out.println("hello");
            case "csv" -> System.out.println(csv(Path.of(args[1])));
            case "poi" -> System.out.println(poi(new File(args[1])));
            default -> throw new IllegalArgumentException(args[0]);
        }
    }

    /** One thread, Commons CSV, every number of the file parsed and summed, nothing else. */
    private static double csv(Path file) throws IOException {
        int[] numbers = IntStream.range(0, Flights.HEADINGS.size())
                .filter(i -> !Flights.TEXTS.contains(i))
                .toArray();
        double sum = 0;
        try (Reader reader = Files.newBufferedReader(file);
                CSVParser parser = CSVFormat.RFC4180
                        .builder()
                        .setHeader()
                        .setSkipHeaderRecord(true)
                        .get()
                        .parse(reader)) {
            for (CSVRecord row : parser) {
                for (int column : numbers) {
                    String cell = row.get(column);
                    if (!cell.isEmpty()) {
                        sum += Double.parseDouble(cell);
                    }
                }
            }
        }
        return sum;
    }

    /** POI's object model: the file opened, every number summed. */
    private static double poi(File file) throws Exception {
        double sum = 0;
        try (XSSFWorkbook book = new XSSFWorkbook(file)) {
            for (Row row : book.getSheetAt(0)) {
                for (Cell cell : row) {
                    sum += cell.getCellType() == CellType.NUMERIC ? cell.getNumericCellValue() : 0;
                }
            }
        }
        return sum;
    }
}
