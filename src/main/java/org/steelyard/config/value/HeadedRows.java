package org.steelyard.config.value;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.steelyard.config.source.ConfigFault;
import org.steelyard.config.source.Faults;
import org.steelyard.config.source.YamlNode;

/** A table of the configuration: a line of headings, then rows, each read like a group of keys. */
public final class HeadedRows {

    /** The headings that a table may have. */
    public record Headings(List<String> required, List<String> optional) {

        private List<String> all() {
            return Stream.concat(required.stream(), optional.stream()).toList();
        }
    }

    private record Column(String name, String unit) {}

    private static final Pattern HEADING = Pattern.compile("(.*?)(?:\\s*\\((.*)\\))?", Pattern.DOTALL);
    private static final int LONGEST_HEADING = 100;
    private static final CSVFormat FORMAT =
            CSVFormat.RFC4180.builder().setIgnoreEmptyLines(false).setTrim(true).get();

    private final String file;
    private final Headings headings;
    private final Faults faults;
    private final List<Column> columns = new ArrayList<>();

    private HeadedRows(String file, Headings headings, Faults faults) {
        this.file = file;
        this.headings = headings;
        this.faults = faults;
    }

    /** The rows of a file; none, and a fault, where its headings are not as they must be. */
    public static List<Keys> rows(String file, String text, Headings headings, Faults faults) {
        return new HeadedRows(file, headings, faults).rows(text);
    }

    private List<Keys> rows(String text) {
        List<CSVRecord> records = records(text);
        if (records.isEmpty()) {
            return List.of();
        }
        if (!readHeadings(records.get(0))) {
            return List.of();
        }
        List<Keys> rows = new ArrayList<>();
        for (CSVRecord record : records.subList(1, records.size())) {
            row(record).ifPresent(rows::add);
        }
        return rows;
    }

    private List<CSVRecord> records(String text) {
        try (CSVParser parser = CSVParser.parse(new StringReader(text), FORMAT)) {
            List<CSVRecord> records = parser.getRecords();
            if (records.isEmpty()) {
                faults.add(file, "the file is empty", "a line of headings and a line for each entry");
            }
            return records;
        } catch (UncheckedIOException e) {
            faults.add(file, "not readable as comma-separated values", "quotes in pairs");
            return List.of();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private boolean readHeadings(CSVRecord record) {
        List<String> names = new ArrayList<>();
        boolean sound = true;
        for (String heading : record) {
            Matcher parts = HEADING.matcher(heading.length() > LONGEST_HEADING ? "" : heading);
            String name = parts.matches() && heading.length() <= LONGEST_HEADING ? parts.group(1) : heading;
            if (!headings.all().contains(name)) {
                sound = faulty(
                        heading, "unknown heading" + Nearest.hint(name, headings.all()), Words.or(headings.all()));
            } else if (names.contains(name)) {
                sound = faulty(heading, "the heading stands twice", "each heading once");
            }
            names.add(name);
            columns.add(new Column(name, Optional.ofNullable(parts.group(2)).orElse("")));
        }
        for (String name : headings.required()) {
            if (!names.contains(name)) {
                sound = faulty("", "the heading '" + name + "' is missing", Words.or(headings.all()));
            }
        }
        return sound;
    }

    private boolean faulty(String heading, String reason, String expected) {
        faults.add(new ConfigFault(file, 1, "", heading, reason, expected));
        return false;
    }

    /** Without line breaks inside cells, the number of a record is its line. */
    private Optional<Keys> row(CSVRecord record) {
        int line = (int) record.getRecordNumber();
        if (record.stream().allMatch(String::isBlank)) {
            return Optional.empty();
        }
        if (record.size() != columns.size()) {
            faults.add(new ConfigFault(
                    file,
                    line,
                    "",
                    "",
                    "the row has " + record.size() + " cells",
                    columns.size() + ", as there are headings"));
            return Optional.empty();
        }
        Map<String, YamlNode> cells = new LinkedHashMap<>();
        for (int i = 0; i < columns.size(); i++) {
            Column column = columns.get(i);
            String unit = column.unit().isEmpty() || record.get(i).isEmpty() ? "" : " " + column.unit();
            cells.put(column.name(), new YamlNode.Text(line, record.get(i) + unit));
        }
        return Optional.of(Keys.of(file, "fleet", new YamlNode.Group(line, cells), faults));
    }
}
