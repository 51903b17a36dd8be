package org.steelyard.report.output.csv;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Function;
import org.steelyard.check.result.AuditedFlight;
import org.steelyard.report.column.ColumnList;
import org.steelyard.report.column.FindingList;
import org.steelyard.report.column.FlightList;
import org.steelyard.report.column.ListColumn;
import org.steelyard.report.column.RoomList;
import org.steelyard.report.output.SeasonOutput;
import org.steelyard.report.output.SeasonResult;
import org.steelyard.report.text.CsvFile;
import org.steelyard.report.text.CsvLine;
import org.steelyard.report.text.Work;

/**
 * A list of which each flight has its rows, flights in order, at full precision.
 *
 * @param <T> what a row is of
 */
public final class ListCsv<T> implements SeasonOutput {

    private static final int FEW_BYTES = 1 << 7;
    private static final int MANY_BYTES = 1 << 10;

    private final List<ListColumn<T>> columns;
    private final Function<AuditedFlight, List<T>> rows;
    private final int bytesOfFlight;
    private final CsvFile file;

    private ListCsv(Path path, ColumnList<T> columns, Function<AuditedFlight, List<T>> rows, int bytesOfFlight)
            throws IOException {
        this.columns = columns.inFiles();
        this.rows = rows;
        this.bytesOfFlight = bytesOfFlight;
        file = new CsvFile(path, columns.names());
    }

    /** {@code flights.csv}. */
    public static SeasonOutput flights(Path path) throws IOException {
        return new ListCsv<>(path, FlightList.COLUMNS, List::of, MANY_BYTES);
    }

    /** {@code findings.csv}. */
    public static SeasonOutput findings(Path path) throws IOException {
        return new ListCsv<>(path, FindingList.COLUMNS, FindingList::of, FEW_BYTES);
    }

    /** {@code room.csv}. */
    public static SeasonOutput room(Path path) throws IOException {
        return new ListCsv<>(path, RoomList.COLUMNS, RoomList::of, MANY_BYTES);
    }

    @Override
    public Work begin(List<AuditedFlight> flights) {
        return () -> {
            byte[] lines = lines(flights);
            return () -> file.write(lines);
        };
    }

    private byte[] lines(List<AuditedFlight> flights) {
        CsvLine line = new CsvLine(flights.size() * bytesOfFlight);
        for (AuditedFlight flight : flights) {
            for (T row : rows.apply(flight)) {
                for (ListColumn<T> column : columns) {
                    column.cell().add(row, line);
                }
                line.next();
            }
        }
        return line.take();
    }

    @Override
    public void finish(SeasonResult result) throws IOException {
        file.close();
    }

    @Override
    public void close() throws IOException {
        file.close();
    }
}
