package org.steelyard.read.season;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.steelyard.model.input.ColumnMap;
import org.steelyard.model.input.InputProblem;
import org.steelyard.model.input.RejectedRow;
import org.steelyard.model.loading.Loading;
import org.steelyard.read.loading.ItemBook;
import org.steelyard.read.row.Fixtures;
import org.steelyard.read.row.ParsedRow;
import org.steelyard.read.table.ReadOptions;

/** Drives the reading of one file as a run does, and counts that no row is lost. */
public record ReadAll(
        List<Loading> accepted,
        List<RejectedRow> rejected,
        int blank,
        List<String> skippedRows,
        int seen,
        String mapName,
        List<String> headings,
        List<String> problems,
        List<String> notes,
        List<String> skippedSheets) {

    public static ReadAll of(Path path, ReadOptions options) {
        return of(path, options, Corrections.NONE);
    }

    static ReadAll of(Path path, ReadOptions options, Corrections corrections) {
        List<Loading> accepted = new ArrayList<>();
        List<RejectedRow> rejected = new ArrayList<>();
        int blank = 0;
        int seen = 0;
        List<String> skippedRows = new ArrayList<>();
        try (SourceFile source = SourceFile.open(path, options, Fixtures.TAILS, ItemBook.NONE, corrections)) {
            Optional<RawRows> batch = source.nextBatch(3);
            while (batch.isPresent()) {
                seen += batch.get().rows().size();
                for (ParsedRow row : batch.get().parse()) {
                    if (row instanceof ParsedRow.Accepted good) {
                        accepted.add(good.loading());
                    } else if (row instanceof ParsedRow.Rejected bad) {
                        rejected.add(bad.row());
                    } else if (row instanceof ParsedRow.Skipped skipped) {
                        skippedRows.add(skipped.row().message());
                    } else {
                        blank++;
                    }
                }
                batch = source.nextBatch(3);
            }
            assertThat(accepted.size() + rejected.size() + blank + skippedRows.size())
                    .isEqualTo(seen);
            return new ReadAll(
                    accepted,
                    rejected,
                    blank,
                    skippedRows,
                    seen,
                    source.map().map(ColumnMap::name).orElse(""),
                    source.headings(),
                    source.problems().stream().map(InputProblem::message).toList(),
                    source.notes(),
                    source.skipped().stream()
                            .map(one -> one.name() + ": " + one.reason())
                            .toList());
        }
    }

    public static ReadAll of(Path path, ColumnMap... maps) {
        return of(path, ReadOptions.of(List.of(maps)));
    }

    /** Reads text as a file of the given name. */
    public static ReadAll text(Path folder, String name, String text, ColumnMap... maps) throws IOException {
        return of(Files.writeString(folder.resolve(name), text, StandardCharsets.UTF_8), maps);
    }

    /** Every reason of every rejected row, in one line each. */
    public List<String> reasons() {
        return rejected.stream()
                .flatMap(row -> row.problems().stream())
                .map(InputProblem::message)
                .toList();
    }

    public List<String> flights() {
        return accepted.stream().map(loading -> loading.flight().flight()).toList();
    }
}
