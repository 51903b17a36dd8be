package org.steelyard.read.table.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.steelyard.config.ConfigFolder;
import org.steelyard.config.ConfigResult;
import org.steelyard.config.Configuration;
import org.steelyard.model.loading.Loading;
import org.steelyard.read.row.ParsedRow;
import org.steelyard.read.row.Tails;
import org.steelyard.read.season.RawRows;
import org.steelyard.read.season.SourceFile;
import org.steelyard.read.table.RawRow;
import org.steelyard.read.table.ReadOptions;

class TypedTableTest {

    private static final List<String> HEADINGS = List.of(
            "flight",
            "date",
            "tail",
            "from",
            "to",
            "flaps",
            "pax A",
            "pax B",
            "pax C",
            "pax D",
            "pax E",
            "pax F",
            "hold 1 kg",
            "hold 2 kg",
            "hold 3 kg",
            "hold 4 kg",
            "hold 5 kg",
            "fuel left kg",
            "fuel centre kg",
            "fuel right kg",
            "taxi kg",
            "trip kg");

    @TempDir
    private Path folder;

    private final Configuration configuration =
            ((ConfigResult.Loaded) ConfigFolder.load(Path.of("config"))).configuration();
    private final Tails tails =
            Tails.of(configuration.tails().values(), configuration.schemes().values());
    private final ReadOptions options = ReadOptions.of(configuration.maps());

    private List<Object> row(String flight) {
        String tail = configuration.tails().values().stream()
                .filter(one -> one.type().id().equals("jet180"))
                .findFirst()
                .orElseThrow()
                .registration();
        List<Object> row = new ArrayList<>(List.of(flight, LocalDate.of(2026, 4, 1), tail, "AMBRP", "CASTL", 5));
        row.addAll(List.of(20, 20L, 20.0, 20, 20, 20, 100.5, 1000, 1000, 500, 0));
        row.addAll(List.of(3800.0, 0, 3800.0, 200, 4000));
        return row;
    }

    private static List<ParsedRow> parsed(SourceFile source) {
        List<ParsedRow> rows = new ArrayList<>();
        for (Optional<RawRows> batch = source.nextBatch(2); batch.isPresent(); batch = source.nextBatch(2)) {
            rows.addAll(batch.get().parse());
        }
        assertThat(source.problems()).isEmpty();
        return rows;
    }

    @Test
    void typedRowsSayWhatTheSameRowsSayAsText() throws IOException {
        List<List<Object>> rows = List.of(row("J-1"), row("J-2"), row("J-3"));
        StringBuilder text = new StringBuilder(String.join(",", HEADINGS)).append('\n');
        rows.forEach(row -> text.append(
                        String.join(",", row.stream().map(String::valueOf).toList()))
                .append('\n'));
        Path csv = Files.writeString(folder.resolve("typed.csv"), text);

        List<Loading> typed = new ArrayList<>();
        List<Loading> plain = new ArrayList<>();
        try (SourceFile source = SourceFile.ofTyped("typed.csv", HEADINGS, rows::iterator, options, tails)) {
            parsed(source).forEach(row -> typed.add(((ParsedRow.Accepted) row).loading()));
        }
        try (SourceFile source = SourceFile.open(csv, options, tails)) {
            parsed(source).forEach(row -> plain.add(((ParsedRow.Accepted) row).loading()));
        }

        assertThat(typed).hasSize(3).isEqualTo(plain);
        assertThat(typed.get(0).origin()).hasToString("typed.csv:2");
    }

    @Test
    void aMissingCellIsBlankAndAFaultNamesItsRow() {
        List<Object> missing = row("J-1");
        missing.set(2, null);

        try (SourceFile source =
                SourceFile.ofTyped("t.parquet", HEADINGS, List.of(missing)::iterator, options, tails)) {
            assertThat(parsed(source))
                    .singleElement()
                    .isInstanceOfSatisfying(
                            ParsedRow.Rejected.class,
                            rejected -> assertThat(
                                            rejected.row().problems().get(0).message())
                                    .startsWith("t.parquet:2:tail: "));
        }
    }

    @Test
    void piecesOfATextAreNumberedAsInTheWhole() throws IOException {
        StringBuilder text = new StringBuilder(String.join(",", HEADINGS)).append('\n');
        for (int i = 1; i <= 3; i++) {
            text.append(String.join(
                            ",", row("J-" + i).stream().map(String::valueOf).toList()))
                    .append('\n');
        }
        Path csv = Files.writeString(folder.resolve("piece.csv"), text);

        try (SourceFile source = SourceFile.open(csv, options, tails)) {
            assertThat(source.form())
                    .hasValueSatisfying(form -> assertThat(form.delimiter()).isEqualTo(','));
            RawRows piece = source.nextBatch(10).orElseThrow().ofPiece(2, 1000);
            assertThat(piece.rows().stream().map(RawRow::number)).containsExactly(1003L, 1004L);
            assertThat(source.lookedAbove()).isFalse();
        }
        try (SourceFile source = SourceFile.open(csv, options, tails)) {
            assertThat(source.readers()).containsOnlyKeys("");
        }
    }
}
