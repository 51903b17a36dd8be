package org.steelyard.read.season;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.steelyard.model.input.InputProblem;
import org.steelyard.read.row.Fixtures;
import org.steelyard.read.table.ReadOptions;

/** What the fuzzer and the corpus found, each kept by its name. */
class FuzzFindingsTest {

    private static final String PLACE = "steelyard_file,steelyard_sheet,steelyard_row,steelyard_map,";

    @TempDir
    private Path folder;

    @Test
    void rejectedRowsWithoutColumnsForFlightAndDateAreRejectedAgain() throws IOException {
        ReadAll read = ReadAll.text(
                folder, "rejected.csv", PLACE + "Tail,TOM,TOCG\ngone.csv,,2,club,SX-BAA,33000,23\n", Fixtures.MAP);
        assertThat(read.reasons())
                .containsExactly(
                        "rejected.csv:2 (for gone.csv:2): there is no column for the flight (expected columns for"
                                + " flight, date and tail)",
                        "rejected.csv:2 (for gone.csv:2): there is no column for the date (expected columns for"
                                + " flight, date and tail)");
    }

    @Test
    void namesWithLineEndsStayOnOneLineOfAMessage() throws IOException {
        ReadAll read = ReadAll.text(
                folder,
                "rejected.csv",
                PLACE + "Flight,Date,Tail,\"TOM\nkg\"\n\"g\none.csv\",,2,club,T1,2026-05-01,SX-BAA,x\n",
                Fixtures.MAP);
        assertThat(read.reasons())
                .isNotEmpty()
                .allMatch(reason -> reason.startsWith("rejected.csv:3 (for g one.csv:2)"))
                .noneMatch(reason -> reason.contains("\n"));
    }

    @Test
    void aHeadingOfThousandsOfCharactersIsCutInMessages() throws IOException {
        String heading = "h".repeat(3_000);
        ReadAll read =
                ReadAll.text(folder, "s.csv", "Flight,Date,Tail," + heading + "," + heading + "\n", Fixtures.MAP);
        assertThat(read.problems())
                .isNotEmpty()
                .allMatch(problem -> problem.length() < 400)
                .anyMatch(problem -> problem.contains("h".repeat(120) + "…'"));
    }

    @Test
    void aFileThatGrowsWhileItIsReadIsSaidToBeOfTwoStates() throws IOException {
        Path file = Files.writeString(
                folder.resolve("s.csv"), "Flight,Date,Tail,TOM,TOCG\nT1,2026-05-01,SX-BAA,33000,23\n");
        ReadOptions options = ReadOptions.of(List.of(Fixtures.MAP));
        SeasonFiles season = SeasonFiles.of(List.of(file), options, Fixtures.TAILS);
        try (SourceFile source = season.open(file)) {
            assertThat(source.nextBatch(1)).isPresent();
            Files.writeString(
                    file, "T2,2026-05-01,SX-BAA,33000,23\n", StandardCharsets.UTF_8, StandardOpenOption.APPEND);
            for (Optional<RawRows> rows = source.nextBatch(1); rows.isPresent(); ) {
                rows = source.nextBatch(1);
            }
            assertThat(source.problems())
                    .extracting(InputProblem::message)
                    .containsExactly("s.csv: the file was written to while it was read, so its rows may be of two"
                            + " states (expected a file that nobody writes to during the run; run it again)");
        }
    }

    @Test
    void longRowsMakeSmallBatches() throws IOException {
        String row = "T1,2026-05-01,SX-BAA,33000,23," + "x".repeat(900_000) + "\n";
        Path file = Files.writeString(folder.resolve("s.csv"), "Flight,Date,Tail,TOM,TOCG,Pilot\n" + row.repeat(8));
        ReadOptions options = ReadOptions.of(List.of(Fixtures.MAP));
        try (SourceFile source = SourceFile.open(file, options, Fixtures.TAILS)) {
            assertThat(source.nextBatch(500).orElseThrow().rows()).hasSizeLessThan(5);
        }
    }
}
