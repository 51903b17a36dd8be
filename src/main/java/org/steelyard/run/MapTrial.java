package org.steelyard.run;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.steelyard.model.input.ColumnMap;
import org.steelyard.model.input.InputProblem;
import org.steelyard.model.loading.Loading;
import org.steelyard.read.row.ParsedRow;
import org.steelyard.read.row.Tails;
import org.steelyard.read.season.SourceFile;
import org.steelyard.read.table.ReadOptions;

/**
 * What comes of reading a file by one heading map, before anything is computed.
 *
 * @param accepted rows that can be read
 * @param rejected rows that cannot
 * @param first the first loadings, at most five
 * @param problems the first problems of the file and of its rows, at most five
 */
public record MapTrial(long accepted, long rejected, List<Loading> first, List<InputProblem> problems) {

    private static final int FIRST = 5;
    private static final int BATCH_ROWS = 500;

    public MapTrial {
        first = List.copyOf(first);
        problems = List.copyOf(problems);
    }

    /**
     * Reads a file.
     *
     * @param file the file
     * @param map the map
     * @param tails the fleet
     * @return what came of it
     */
    public static MapTrial of(Path file, ColumnMap map, Tails tails) {
        Tally tally = new Tally();
        ReadOptions options =
                new ReadOptions(List.of(map), Optional.of(map.name()), Optional.empty(), Optional.empty());
        try (SourceFile source = SourceFile.open(file, options, tails)) {
            source.forEachBatch(BATCH_ROWS, batch -> batch.parse().forEach(tally::add));
            source.problems().forEach(tally::add);
        }
        return new MapTrial(tally.accepted, tally.rejected, tally.first, tally.problems);
    }

    private static final class Tally {

        private final List<Loading> first = new ArrayList<>();
        private final List<InputProblem> problems = new ArrayList<>();
        private long accepted;
        private long rejected;

        void add(ParsedRow row) {
            if (row instanceof ParsedRow.Accepted good) {
                accepted++;
                if (first.size() < FIRST) {
                    first.add(good.loading());
                }
            } else if (row instanceof ParsedRow.Rejected bad) {
                rejected++;
                bad.row().problems().forEach(this::add);
            }
        }

        void add(InputProblem problem) {
            if (problems.size() < FIRST) {
                problems.add(problem);
            }
        }
    }
}
