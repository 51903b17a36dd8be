package org.steelyard.report.output.csv;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.apache.commons.csv.DuplicateHeaderMode;

/** Reads an output back with the CSV library. */
public final class Csv {

    private Csv() {}

    public static List<CSVRecord> records(Path file) throws IOException {
        CSVFormat format = CSVFormat.RFC4180
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .setDuplicateHeaderMode(DuplicateHeaderMode.DISALLOW)
                .get();
        try (CSVParser parser = CSVParser.parse(file, StandardCharsets.UTF_8, format)) {
            List<CSVRecord> records = parser.getRecords();
            for (CSVRecord record : records) {
                if (!record.isConsistent()) {
                    throw new IOException(file + ": line " + record.getRecordNumber() + " does not fit its headings");
                }
            }
            return records;
        }
    }
}
