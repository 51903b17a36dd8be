package org.steelyard.report.output.csv;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.steelyard.model.input.FormerRow;
import org.steelyard.model.input.InputProblem;
import org.steelyard.model.input.RejectedRow;
import org.steelyard.model.loading.Origin;
import org.steelyard.read.row.RowCheck;
import org.steelyard.read.table.RejectedColumns;
import org.steelyard.report.output.SeasonOutput;
import org.steelyard.report.output.SeasonResult;
import org.steelyard.report.text.CsvFile;
import org.steelyard.report.text.CsvLine;

/**
 * {@code rejected.csv}: the rows that could not be used, each with where it stood, the heading map it was read with and
 * every reason, and then its cells as they stood under their own headings, so that the file can be put right and read
 * again. The columns are the headings of all files in order of first appearance.
 *
 * <p>Cells that have no heading of their own (beyond the last one, or under a blank or repeated one) share the last
 * column, joined by semicolons with a backslash before {@code \} and {@code ;} that belong to a cell. A row that was
 * read from such a file and is rejected again keeps the place, the check and the cells that it came with; its round is
 * one higher.
 *
 * <p>Which headings there are is known only after the last row, and any number of rows can be bad, so rows wait in a
 * file beside the output, not in memory.
 */
public final class RejectedCsv implements SeasonOutput {

    static final String EXTRA_CELLS = RejectedColumns.EXTRA_CELLS;

    private static final int OWN = RejectedColumns.PLACE.size();

    private final Path path;
    private final Path waiting;
    private final OutputStream out;
    private final CsvLine line = new CsvLine();
    private final Map<List<String>, Integer> layouts = new TreeMap<>(RejectedCsv::compare);
    private final List<List<String>> known = new ArrayList<>();
    private final Map<String, Integer> columns = new LinkedHashMap<>();

    public RejectedCsv(Path path, Path waiting) throws IOException {
        this.path = path;
        this.waiting = waiting;
        out = new BufferedOutputStream(Files.newOutputStream(waiting));
    }

    @Override
    public void rejected(RejectedRow row) throws IOException {
        Origin place = row.former().map(FormerRow::origin).orElse(row.origin());
        line.whole(layout(row.headings()))
                .raw(place.file())
                .raw(place.sheet())
                .whole(place.row())
                .raw(row.mapName())
                .whole(row.former().map(former -> former.round() + 1).orElse(1))
                .raw(row.former().map(FormerRow::check).orElseGet(() -> RowCheck.of(row.cells())))
                .raw(row.problems().stream().map(InputProblem::detail).collect(Collectors.joining(" | ")));
        row.cells().forEach(line::raw);
        out.write(line.end());
    }

    private int layout(List<String> headings) {
        Integer number = layouts.get(headings);
        if (number != null) {
            return number;
        }
        for (String heading : headings) {
            if (!heading.isBlank() && !RejectedColumns.isOwn(heading)) {
                columns.putIfAbsent(heading, columns.size());
            }
        }
        layouts.put(headings, known.size());
        known.add(headings);
        return known.size() - 1;
    }

    /** In order, as headings of one hash code would be searched one by one in a table of hashes. */
    private static int compare(List<String> one, List<String> other) {
        return Arrays.compare(one.toArray(String[]::new), other.toArray(String[]::new));
    }

    @Override
    public void finish(SeasonResult result) throws IOException {
        write();
    }

    /** Writes the rows under all headings that they have. */
    public void write() throws IOException {
        out.close();
        List<String> headings = new ArrayList<>(RejectedColumns.PLACE);
        headings.addAll(columns.keySet());
        headings.add(EXTRA_CELLS);
        try (CsvFile file = new CsvFile(path, headings);
                Reader reader = Files.newBufferedReader(waiting, StandardCharsets.UTF_8);
                CSVParser rows = CSVFormat.RFC4180.parse(reader)) {
            for (CSVRecord row : rows) {
                List<String> cells = row.toList();
                write(
                        file,
                        cells.subList(1, 1 + OWN),
                        known.get(Integer.parseInt(cells.get(0))),
                        cells.subList(1 + OWN, cells.size()));
            }
        }
        Files.delete(waiting);
    }

    private void write(CsvFile file, List<String> place, List<String> headings, List<String> cells) throws IOException {
        String[] own = new String[columns.size()];
        List<String> extra = new ArrayList<>();
        for (int i = 0; i < cells.size(); i++) {
            String cell = cells.get(i);
            String heading = i < headings.size() ? headings.get(i) : "";
            Integer column = columns.get(heading);
            if (column != null && own[column] == null) {
                own[column] = cell;
            } else if (heading.equals(EXTRA_CELLS)) {
                carry(extra, cell);
            } else if (!RejectedColumns.PLACE.contains(heading)) {
                carry(extra, cell.replace("\\", "\\\\").replace(";", "\\;"));
            }
        }
        place.forEach(line::text);
        for (String cell : own) {
            line.text(cell == null ? "" : cell);
        }
        file.write(line.text(String.join("; ", extra)));
    }

    private static void carry(List<String> extra, String cell) {
        if (!cell.isEmpty()) {
            extra.add(cell);
        }
    }

    @Override
    public void close() throws IOException {
        out.close();
    }
}
