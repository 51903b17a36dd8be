package org.steelyard.report.output.csv;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.steelyard.check.result.AuditedFlight;
import org.steelyard.report.text.CsvLine;
import org.steelyard.report.text.OutputColumn;

/**
 * The rows of {@code flights.csv} and {@code findings.csv} as values, for other formats. A cell is a {@code String}, a
 * {@code Long}, a {@code Double} or null where the file has none.
 */
public final class OutputRows {

    private OutputRows() {}

    /** The columns of flights. */
    public static List<OutputColumn> flightColumns() {
        return FlightsCsv.columns();
    }

    /** The cells of one flight. */
    public static List<Object> flight(AuditedFlight flight) {
        return FlightsCsv.cells(flight);
    }

    /** The columns of findings. */
    public static List<OutputColumn> findingColumns() {
        return FindingsCsv.columns();
    }

    /** The cells of each finding of one flight. */
    public static List<List<Object>> findings(AuditedFlight flight) {
        return FindingsCsv.cells(flight);
    }

    /**
     * A row as a line of the CSV file.
     *
     * @param cells its cells
     * @return the line with its end
     */
    public static String line(List<Object> cells) {
        CsvLine line = new CsvLine();
        for (Object cell : cells) {
            if (cell instanceof String text) {
                line.text(text);
            } else if (cell instanceof Long number) {
                line.whole(number);
            } else if (cell instanceof Double number) {
                line.number(number);
            } else {
                line.blank();
            }
        }
        return new String(line.end(), StandardCharsets.UTF_8);
    }
}
