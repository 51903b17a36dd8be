package org.steelyard.spark;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.apache.parquet.example.data.Group;
import org.apache.parquet.example.data.simple.SimpleGroupFactory;
import org.apache.parquet.hadoop.ParquetWriter;
import org.apache.parquet.hadoop.example.ExampleParquetWriter;
import org.apache.parquet.io.LocalOutputFile;
import org.apache.parquet.schema.LogicalTypeAnnotation;
import org.apache.parquet.schema.MessageType;
import org.apache.parquet.schema.PrimitiveType.PrimitiveTypeName;
import org.apache.parquet.schema.Types;
import org.apache.spark.api.java.JavaSparkContext;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.steelyard.read.table.SeasonUnreadableException;
import org.steelyard.run.SeasonOutcome;
import org.steelyard.samples.WorkbookStandard;

/** The audit on one machine is the other computation here. */
class SparkRunTest {

    private static final Path DEMO = OneSpark.DEMO;

    private static JavaSparkContext spark;

    @TempDir
    private Path folder;

    @BeforeAll
    static void start() {
        spark = OneSpark.context();
    }

    private Path oneMachine(Path season) throws Exception {
        return OneSpark.oneMachine(season, "season", folder.resolve("one"));
    }

    private SeasonOutcome onSpark(Path season, int partitions, long pieceBytes) throws Exception {
        return SparkRun.audit(
                spark,
                OneSpark.request(
                        season.toString(), "season", folder.resolve("spark").toString(), partitions, pieceBytes, false));
    }

    private Path reports() {
        return folder.resolve("spark/season");
    }

    @Test
    void theDemoSeasonComesToTheSameInAnyNumberOfParts() throws Exception {
        Path one = oneMachine(DEMO);
        for (int partitions : new int[] {1, 2, 8}) { // each over the reports of the one before
            onSpark(DEMO, partitions, 1 << 20);

            assertThat(SameAsOneMachine.compare(one, reports()).differences()).isEmpty();
        }
        assertThat(WorkbookStandard.faults(reports().resolve("season.xlsx"))).isEmpty();
        assertThat(reports()).isDirectoryNotContaining("glob:**/.*");
        for (String output : List.of("report.html", "run.json")) {
            assertThat(Files.readString(reports().resolve(output))).contains("simulation, training and analysis only");
        }
    }

    /** A season in one file, with line breaks in cells, rows that stand twice and rows that cannot be used. */
    private Path longFile(String last) throws IOException {
        StringBuilder text = new StringBuilder();
        List<String> months = List.of("04", "05", "06", "07");
        int row = 0;
        for (String month : months) {
            List<String> lines = Files.readAllLines(DEMO.resolve("season-2026-" + month + ".csv"));
            if (month.equals("04")) {
                text.append(lines.get(0)).append(",remark\r\n");
            }
            for (String line : lines.subList(1, lines.size())) {
                row++;
                String remark = row % 7 == 0 ? "\"said\r\n\"\"so, twice\"\"\n\"" : row % 5 == 0 ? "5\" pipe" : "";
                text.append(line).append(',').append(remark).append(row % 3 == 0 ? "\n" : "\r\n");
                if (row % 100 == 0) {
                    text.append(line).append(',').append(row % 200 == 0 ? remark : "other").append('\n');
                }
            }
        }
        Path season = Files.createDirectories(folder.resolve("long"));
        Files.writeString(season.resolve("season-long.csv"), text + last, StandardCharsets.UTF_8);
        return season;
    }

    @ParameterizedTest
    @ValueSource(longs = {5_000, 50_000})
    void aLongTextIsCutIntoPiecesWithoutATrace(long pieceBytes) throws Exception {
        Path season = longFile("");

        SeasonOutcome outcome = onSpark(season, 8, pieceBytes);

        assertThat(SameAsOneMachine.compare(oneMachine(season), reports()).differences())
                .isEmpty();
        assertThat(outcome.facts().rejected()).isPositive();
        assertThat(outcome.facts().skippedRowCount()).isPositive();
        try (var parts = Files.list(reports().resolve("flights.parquet"))) {
            assertThat(parts.count()).isGreaterThan(2);
        }
    }

    @Test
    void aFileThatIsBrokenFarDownIsReadAsFarAsOnOneMachine() throws Exception {
        Path season = longFile("J-1,2026-04-01,\"QI-JBF\" x,A,B\nJ-2,2026-04-01\n");

        SeasonOutcome outcome = onSpark(season, 4, 20_000);

        assertThat(outcome.fileProblems()).hasSize(1);
        assertThat(SameAsOneMachine.compare(oneMachine(season), reports()).differences())
                .isEmpty();
    }

    @Test
    void aSeasonInParquetIsReadThroughTheSameHeadingMaps() throws Exception {
        Path season = Files.createDirectories(folder.resolve("text"));
        List<String> dated = Files.readAllLines(DEMO.resolve("season-2026-05.csv")).stream()
                .filter(line -> !line.contains(",2026-13-"))
                .toList();
        Files.write(season.resolve("season-2026-05.csv"), dated);
        Path parquet = Files.createDirectories(folder.resolve("parquet"));
        write(season.resolve("season-2026-05.csv"), parquet.resolve("season-2026-05.parquet"));
        Path one = oneMachine(season);

        SeasonOutcome outcome = onSpark(parquet, 2, 1 << 20);

        assertThat(outcome.fileProblems()).isEmpty();
        List<String> expected = withoutFile(one.resolve("flights.csv"));
        List<String> found = new ArrayList<>();
        for (List<Object> row : rows(reports().resolve("flights.parquet/part-000000.parquet"))) {
            found.add(row.subList(1, row.size()).toString());
        }
        assertThat(found).hasSizeGreaterThan(300).isEqualTo(expected);
    }

    private static List<String> withoutFile(Path csv) throws IOException {
        List<String> rows = new ArrayList<>();
        try (CSVParser parser = CSVParser.parse(csv, StandardCharsets.UTF_8, CSVFormat.RFC4180)) {
            for (CSVRecord row : parser) {
                if (row.getRecordNumber() > 1) {
                    List<String> cells = new ArrayList<>(row.toList());
                    rows.add(cells.subList(1, cells.size()).toString());
                }
            }
        }
        return rows;
    }

    private static List<List<Object>> rows(Path parquet) throws IOException {
        List<List<Object>> rows = new ArrayList<>();
        var columns = org.steelyard.report.column.FlightList.COLUMNS.inFiles();
        try (var reader = org.apache.parquet.hadoop.ParquetReader.builder(
                        new org.apache.parquet.hadoop.example.GroupReadSupport(),
                        new org.apache.hadoop.fs.Path(parquet.toUri()))
                .build()) {
            for (Group row = reader.read(); row != null; row = reader.read()) {
                List<Object> cells = new ArrayList<>();
                for (int i = 0; i < columns.size(); i++) {
                    boolean none = row.getFieldRepetitionCount(i) == 0;
                    cells.add(none ? "" : plain(row.getValueToString(i, 0), columns.get(i).kind()));
                }
                rows.add(cells);
            }
        }
        return rows;
    }

    private static String plain(String value, org.steelyard.report.column.ListColumn.Kind kind) {
        return kind == org.steelyard.report.column.ListColumn.Kind.NUMBER
                ? org.steelyard.report.text.PlainNumber.of(Double.parseDouble(value))
                : value;
    }

    /** Writes a season as tables have it: dates as dates, numbers as numbers where the whole column is. */
    private static void write(Path csv, Path parquet) throws IOException {
        List<CSVRecord> rows;
        try (CSVParser parser = CSVParser.parse(csv, StandardCharsets.UTF_8, CSVFormat.RFC4180)) {
            rows = parser.getRecords();
        }
        List<CSVRecord> data = rows.subList(1, rows.size());
        Types.MessageTypeBuilder schema = Types.buildMessage();
        boolean[] numbers = new boolean[rows.get(0).size()];
        for (int i = 0; i < numbers.length; i++) {
            int column = i;
            String heading = rows.get(0).get(i);
            numbers[i] = data.stream().allMatch(row -> row.get(column).matches("-?\\d*(\\.\\d+)?"));
            boolean dates = data.stream().allMatch(row -> row.get(column).matches("\\d{4}-\\d\\d-\\d\\d"));
            if (dates) {
                schema.optional(PrimitiveTypeName.INT32)
                        .as(LogicalTypeAnnotation.dateType())
                        .named(heading);
            } else if (numbers[i]) {
                schema.optional(PrimitiveTypeName.DOUBLE).named(heading);
            } else {
                schema.optional(PrimitiveTypeName.BINARY)
                        .as(LogicalTypeAnnotation.stringType())
                        .named(heading);
            }
        }
        MessageType message = schema.named("season");
        SimpleGroupFactory groups = new SimpleGroupFactory(message);
        try (ParquetWriter<Group> writer = ExampleParquetWriter.builder(new LocalOutputFile(parquet))
                .withType(message)
                .build()) {
            for (CSVRecord row : data) {
                Group group = groups.newGroup();
                for (int i = 0; i < numbers.length; i++) {
                    String cell = row.get(i);
                    if (message.getType(i).asPrimitiveType().getPrimitiveTypeName() == PrimitiveTypeName.INT32) {
                        group.add(i, (int) LocalDate.parse(cell).toEpochDay());
                    } else if (!cell.isEmpty() && numbers[i]) {
                        group.add(i, Double.parseDouble(cell));
                    } else if (!cell.isEmpty()) {
                        group.add(i, cell);
                    }
                }
                writer.write(group);
            }
        }
    }

    @Test
    void whatIsReadOnOneMachineOnlyIsToldBeforeAnythingIsWritten() throws Exception {
        Path season = Files.createDirectories(folder.resolve("rejected"));
        Files.copy(oneMachine(DEMO).resolve("rejected.csv"), season.resolve("rejected.csv"));

        assertThatThrownBy(() -> onSpark(season, 2, 1 << 20))
                .isInstanceOf(InputRefused.class)
                .hasMessageContaining("rejected.csv: rejected rows put right are not read here");
        assertThat(reports()).doesNotExist();
        assertThatThrownBy(() -> onSpark(folder.resolve("nothing"), 2, 1 << 20))
                .isInstanceOf(SeasonUnreadableException.class);
    }
}
