package org.steelyard.report.column;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** The tables of columns in the README of the reports are those of the program: the same rows in the same order. */
class ReadmeColumnsTest {

    private static final Path README = Path.of("reports/README.md");

    static Stream<Arguments> lists() {
        return Stream.of(
                Arguments.of("flights.csv", FlightList.COLUMNS),
                Arguments.of("findings.csv", FindingList.COLUMNS),
                Arguments.of("room.csv", RoomList.COLUMNS),
                Arguments.of("skipped.csv", SkippedList.COLUMNS));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("lists")
    void theReadmeHasEachColumnAndNoOther(String file, ColumnList<?> list) throws IOException {
        List<String> expected =
                list.all().stream().map(column -> row(list, column)).toList();
        assertThat(table(file))
                .as("the table is to be\n" + String.join("\n", expected))
                .containsExactlyElementsOf(expected);
    }

    private static String row(ColumnList<?> list, ListColumn<?> column) {
        String heading = column.onSheet().map(ListColumn.OnSheet::heading).orElse("");
        return "| " + (column.name().isEmpty() ? "" : "`" + column.name() + "`")
                + (list.headings().isEmpty() ? "" : " | " + heading)
                + " | " + column.unit().label()
                + " | " + column.kind().label()
                + " | " + column.meaning() + " |";
    }

    /** Rows of the first table below the heading of a file. */
    private static List<String> table(String file) throws IOException {
        return Files.readAllLines(README, StandardCharsets.UTF_8).stream()
                .dropWhile(line -> !line.equals("## Columns of `" + file + "`"))
                .dropWhile(line -> !line.startsWith("|---"))
                .skip(1)
                .takeWhile(line -> line.startsWith("|"))
                .toList();
    }
}
