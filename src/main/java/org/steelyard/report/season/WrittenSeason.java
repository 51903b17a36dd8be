package org.steelyard.report.season;

import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.steelyard.analyse.change.SeasonSide;
import org.steelyard.analyse.change.SeasonSide.Kind;
import org.steelyard.check.result.Status;
import org.steelyard.model.finding.FindingCode;
import org.steelyard.model.finding.Severity;
import org.steelyard.model.unit.OneLine;
import org.steelyard.report.file.OutputFile;
import org.steelyard.report.file.OutputList;
import org.steelyard.report.file.StagedFolder;

/** Reads the reports of a season back, row by row, for a comparison: {@code flights.csv} and {@code findings.csv}. */
public final class WrittenSeason {

    private static final CSVFormat FORMAT =
            CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();

    private static final String AGAIN = "; run the audit of that season again";

    /** No CG in % MAC and no trim is farther from zero. */
    private static final double MOST = 1e6;

    private WrittenSeason() {}

    /**
     * Whether a folder holds the reports of a season.
     *
     * @param folder any path
     * @return true if it does, whole or damaged: it is no folder of loadings
     */
    public static boolean isAt(Path folder) {
        return isThere(folder, OutputFile.RUN)
                || (isThere(folder, OutputFile.FLIGHTS) && isThere(folder, OutputFile.FINDINGS))
                || (isThere(folder, OutputFile.SEASON) && isThere(folder, OutputFile.PAGE));
    }

    private static boolean isThere(Path folder, OutputFile file) {
        return Files.isRegularFile(folder.resolve(file.fileName()));
    }

    /** Refuses tables that are not as the audit left them. */
    private static void requireWhole(Path folder) throws IOException {
        OutputList list = OutputList.in(folder);
        if (!list.isWhole(OutputFile.RUN.fileName())) {
            throw new IOException(folder.resolve(OutputFile.RUN.fileName()) + " "
                    + (isThere(folder, OutputFile.RUN) ? "is not as an audit writes it" : "is not there")
                    + ", and without it nobody knows whether the tables are whole" + AGAIN);
        }
        for (OutputFile file : List.of(OutputFile.FLIGHTS, OutputFile.FINDINGS)) {
            if (!isThere(folder, file)) {
                throw new IOException(folder.resolve(file.fileName()) + " is not there" + AGAIN);
            }
            if (!list.holds(file.fileName())) {
                throw new IOException(folder.resolve(file.fileName())
                        + " is not what the audit wrote: its size or checksum is not that in "
                        + OutputFile.RUN.fileName() + AGAIN);
            }
        }
    }

    /**
     * Reads a season.
     *
     * @param folder its folder of reports
     * @param by headings of carried columns by which to group, beside tail and route
     * @return its sums
     * @throws IOException if a file cannot be read or is not as an audit writes it
     */
    public static SeasonSide read(Path folder, List<String> by) throws IOException {
        StagedFolder.putRight(folder);
        requireWhole(folder);
        return readTables(folder, by);
    }

    /** Reads both tables, whatever wrote them. */
    static SeasonSide readTables(Path folder, List<String> by) throws IOException {
        SeasonSide side = new SeasonSide();
        Path flights = folder.resolve(OutputFile.FLIGHTS.fileName());
        read(flights, rows -> {
            for (CSVRecord row : rows) {
                side.add(flight(row, by, flights));
            }
        });
        Path findings = folder.resolve(OutputFile.FINDINGS.fileName());
        read(findings, rows -> readFindings(rows, side, findings));
        return side;
    }

    /** What is done with the rows of a file. */
    private interface Rows {
        void read(CSVParser rows) throws IOException;
    }

    /** Reads a table; one that is damaged, or no text, is not as an audit writes it. */
    private static void read(Path file, Rows reader) throws IOException {
        try (CSVParser rows = open(file)) {
            reader.read(rows);
        } catch (UncheckedIOException | CharacterCodingException | IllegalArgumentException e) {
            throw new IOException(
                    file.getFileName() + ": this is not as an audit writes it (expected a whole table in UTF-8; run the"
                            + " audit of that season again)",
                    e);
        }
    }

    private static CSVParser open(Path file) throws IOException {
        Reader reader = Files.newBufferedReader(file, StandardCharsets.UTF_8);
        return CSVParser.builder().setReader(reader).setFormat(FORMAT).get();
    }

    private static SeasonSide.Flight flight(CSVRecord row, List<String> by, Path file) throws IOException {
        Map<String, String> groups = new LinkedHashMap<>();
        groups.put("tail", cell(row, "tail", file));
        String from = cell(row, "from", file);
        String to = cell(row, "to", file);
        groups.put("route", from.isBlank() && to.isBlank() ? "" : known(from) + "–" + known(to));
        Map<String, String> extras = extras(cell(row, "extras", file));
        by.forEach(name -> groups.put(name, extras.getOrDefault(name.toLowerCase(Locale.ROOT), "")));
        return new SeasonSide.Flight(
                cell(row, "type", file),
                cell(row, "flaps", file),
                cell(row, "trim_thrust", file),
                groups,
                number(row, "tow_cg_pct_mac", file).orElseThrow(() -> unreadable(row, "tow_cg_pct_mac", "", file)),
                number(row, "trim_units", file),
                status(row, file));
    }

    private static String known(String place) {
        return place.isBlank() ? "?" : place;
    }

    private static String cell(CSVRecord row, String column, Path file) throws IOException {
        if (!row.isMapped(column) || !row.isSet(column)) {
            throw unreadable(row, column, "", file);
        }
        return row.get(column);
    }

    private static OptionalDouble number(CSVRecord row, String column, Path file) throws IOException {
        String cell = cell(row, column, file);
        if (cell.isEmpty()) {
            return OptionalDouble.empty();
        }
        try {
            double number = Double.parseDouble(cell);
            if (Math.abs(number) <= MOST) {
                return OptionalDouble.of(number);
            }
        } catch (NumberFormatException e) {
            throw unreadable(row, column, cell, file);
        }
        throw unreadable(row, column, cell, file);
    }

    private static Status status(CSVRecord row, Path file) throws IOException {
        String label = cell(row, "status", file);
        for (Status status : Status.values()) {
            if (status.label().equals(label)) {
                return status;
            }
        }
        throw unreadable(row, "status", label, file);
    }

    private static IOException unreadable(CSVRecord row, String column, String value, Path file) {
        return new IOException(file.getFileName() + ":" + (row.getRecordNumber() + 1) + ":" + column
                + ": this is not as an audit writes it (value '" + OneLine.value(value)
                + "'; run the audit of that season again)");
    }

    /** Names in small letters; a backslash stands before signs that belong to a name or value. */
    static Map<String, String> extras(String cell) {
        Map<String, String> extras = new HashMap<>();
        for (String pair : split(cell, ';')) {
            List<String> sides = split(pair.strip(), '=');
            if (sides.size() == 2) {
                extras.put(plain(sides.get(0)).toLowerCase(Locale.ROOT), plain(sides.get(1)));
            }
        }
        return extras;
    }

    private static List<String> split(String text, char at) {
        List<String> parts = new ArrayList<>();
        StringBuilder part = new StringBuilder();
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '\\' && i + 1 < text.length()) {
                part.append(c).append(text.charAt(++i));
            } else if (c == at) {
                parts.add(part.toString());
                part.setLength(0);
            } else {
                part.append(c);
            }
        }
        parts.add(part.toString());
        return parts;
    }

    private static String plain(String text) {
        return text.replaceAll("\\\\(.)", "$1");
    }

    /** Findings of one flight stand together; each kind counts once for it. */
    private static void readFindings(CSVParser rows, SeasonSide side, Path file) throws IOException {
        String flight = "";
        String type = "";
        Set<Kind> kinds = new HashSet<>();
        for (CSVRecord row : rows) {
            String key = cell(row, "file", file) + "\n" + cell(row, "sheet", file) + "\n" + cell(row, "row", file);
            if (!key.equals(flight)) {
                side.found(type, kinds);
                kinds.clear();
                flight = key;
                type = cell(row, "type", file);
            }
            kinds.add(kind(row, file));
        }
        side.found(type, kinds);
    }

    private static Kind kind(CSVRecord row, Path file) throws IOException {
        String code = cell(row, "code", file);
        String severity = cell(row, "severity", file);
        for (FindingCode known : FindingCode.values()) {
            for (Severity serious : Severity.values()) {
                if (known.code().equals(code) && serious.label().equals(severity)) {
                    return new Kind(known, serious);
                }
            }
        }
        throw unreadable(row, "code", severity + " " + code, file);
    }
}
