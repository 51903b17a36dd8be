package org.steelyard.demo;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** The tables of what is planted, which lie beside the classes. */
final class PlantedTables {

    private static final CSVFormat FORMAT = CSVFormat.RFC4180
            .builder()
            .setHeader()
            .setSkipHeaderRecord(true)
            .setTrim(true)
            .get();

    private PlantedTables() {}

    static List<CSVRecord> read(String name) throws IOException {
        try (InputStream in = Objects.requireNonNull(PlantedTables.class.getResourceAsStream(name), name);
                Reader reader = new InputStreamReader(in, StandardCharsets.UTF_8);
                CSVParser parser = CSVParser.parse(reader, FORMAT)) {
            return parser.getRecords();
        }
    }

    /** The value that a word stands for. */
    static <T> T find(T[] values, Function<T, String> word, String wanted) {
        return Stream.of(values)
                .filter(value -> word.apply(value).equals(wanted))
                .findAny()
                .orElseThrow(() -> new IllegalStateException("nothing is called '" + wanted + "'"));
    }
}
