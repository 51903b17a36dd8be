package org.steelyard.demo;

import java.io.IOException;
import java.io.StringWriter;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/**
 * Writes the key: every breach, marginal and reason to reject that must come of the season, a line each, and the rows
 * that are blank. What it does not list must not come.
 */
final class KeyFile {

    private static final List<String> HEADINGS =
            List.of("file", "row", "flight", "planted", "outcome", "code", "severity", "phase", "column");

    private KeyFile() {}

    static String text(List<PlannedFile> files) throws IOException {
        CSVFormat format = CSVFormat.RFC4180.builder().setRecordSeparator("\n").get();
        StringWriter out = new StringWriter();
        try (CSVPrinter printer = new CSVPrinter(out, format)) {
            printer.printRecord(HEADINGS);
            for (PlannedFile file : files) {
                for (int i = 0; i < file.entries().size(); i++) {
                    for (Expected expected : file.entries().get(i).expected()) {
                        line(printer, file, i, expected);
                    }
                }
            }
        }
        return out.toString();
    }

    private static void line(CSVPrinter printer, PlannedFile file, int position, Expected expected) throws IOException {
        Entry entry = file.entries().get(position);
        printer.print(file.name());
        printer.print(file.rowNumber(position));
        printer.print(expected instanceof Expected.Passed ? "" : entry.flight());
        printer.print(entry.planted());
        if (expected instanceof Expected.Found found) {
            printer.printRecord(
                    "finding",
                    found.code().code(),
                    found.severity().label(),
                    found.phase().label(),
                    "");
        } else if (expected instanceof Expected.Refused refused) {
            printer.printRecord("rejected", refused.code().code(), "", "", refused.column());
        } else {
            printer.printRecord("blank", "", "", "", "");
        }
    }
}
