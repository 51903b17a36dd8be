package org.steelyard.hostile;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.steelyard.balance.Balance;
import org.steelyard.balance.Balancer;
import org.steelyard.check.flight.Checker;
import org.steelyard.check.result.Assessment;
import org.steelyard.config.ConfigFolder;
import org.steelyard.config.ConfigResult;
import org.steelyard.config.Configuration;
import org.steelyard.model.input.ColumnMap;
import org.steelyard.model.input.InputProblem;
import org.steelyard.model.input.RejectedRow;
import org.steelyard.model.loading.Loading;
import org.steelyard.read.row.ParsedRow;
import org.steelyard.read.row.Tails;
import org.steelyard.read.season.RawRows;
import org.steelyard.read.season.SeasonFiles;
import org.steelyard.read.season.SourceFile;
import org.steelyard.read.table.RawRow;
import org.steelyard.read.table.ReadOptions;

/** Reads a season as a run does, and holds what comes of it to what is promised of every season. */
final class SeasonCheck {

    private static final int LONGEST_MESSAGE = 2_000;

    private final Configuration configuration;
    private final Tails tails;
    private final ReadOptions options;

    private SeasonCheck(Configuration configuration) {
        this.configuration = configuration;
        this.tails =
                Tails.of(configuration.tails().values(), configuration.schemes().values());
        this.options = ReadOptions.of(configuration.maps());
    }

    /** Reads by the shipped configuration. */
    static SeasonCheck shipped() {
        return new SeasonCheck(((ConfigResult.Loaded) ConfigFolder.load(Path.of("config"))).configuration());
    }

    /**
     * What came of a season.
     *
     * @param seen rows seen
     * @param accepted flights and load items
     * @param results what each row said, in order
     * @param problems what is wrong with the files
     * @param numbers the numbers of the rows, in order
     */
    record Outcome(int seen, int accepted, List<ParsedRow> results, List<InputProblem> problems, List<Long> numbers) {}

    List<ColumnMap> maps() {
        return configuration.maps();
    }

    /** Reads the files; throws where a promise is not kept. */
    Outcome read(List<Path> files) throws ReflectiveOperationException {
        List<ParsedRow> results = new ArrayList<>();
        List<InputProblem> problems = new ArrayList<>();
        List<Long> numbers = new ArrayList<>();
        int seen = 0;
        int accepted = 0;
        SeasonFiles season = SeasonFiles.of(files, options, tails);
        for (Path file : season.inOrder()) {
            try (SourceFile source = season.open(file)) {
                for (Optional<RawRows> rows = source.nextBatch(2); rows.isPresent(); rows = source.nextBatch(2)) {
                    seen += rows.get().rows().size();
                    List<ParsedRow> parsed = rows.get().parse();
                    for (int i = 0; i < parsed.size(); i++) {
                        RawRow row = rows.get().rows().get(i);
                        numbers.add(row.number());
                        accepted += check(row, parsed.get(i), rows.get()) ? 1 : 0;
                    }
                    results.addAll(parsed);
                }
                problems.addAll(source.problems());
            }
        }
        require(results.size() == seen, "a row is lost");
        problems.forEach(SeasonCheck::checkMessage);
        return new Outcome(seen, accepted, results, problems, numbers);
    }

    private boolean check(RawRow row, ParsedRow parsed, RawRows rows) throws ReflectiveOperationException {
        if (parsed instanceof ParsedRow.Accepted accepted) {
            Loading loading = accepted.loading();
            Finite.require(loading);
            rows.reader().key(row, loading);
            Balance balance = Balancer.balance(loading, configuration.policy());
            Finite.require(balance);
            Assessment assessment = Checker.check(loading, balance, configuration.policy());
            Finite.require(assessment);
            return true;
        }
        if (parsed instanceof ParsedRow.Rejected rejected) {
            checkRejected(row, rejected.row());
        } else if (parsed instanceof ParsedRow.Skipped skipped) {
            checkText(skipped.row().message());
        }
        return parsed instanceof ParsedRow.Item;
    }

    private static void checkRejected(RawRow row, RejectedRow rejected) {
        rejected.problems().forEach(SeasonCheck::checkMessage);
        boolean text = rejected.origin().sheet().isEmpty()
                && rejected.former().isEmpty()
                && !rejected.mapName().isBlank();
        require(
                !text
                        || rejected.cells()
                                .equals(withoutBlanksBeyond(
                                        row, rejected.headings().size())),
                "the cells of a rejected row are others");
    }

    private static List<String> withoutBlanksBeyond(RawRow row, int headings) {
        List<String> cells = row.cells();
        int within = Math.min(headings, cells.size());
        List<String> kept = new ArrayList<>(cells.subList(0, within));
        cells.subList(within, cells.size()).stream()
                .filter(cell -> !cell.chars().allMatch(SeasonCheck::isBlank))
                .forEach(kept::add);
        return kept;
    }

    private static boolean isBlank(int c) {
        return c <= ' '
                || c == 0x7F
                || Character.isWhitespace(c)
                || Character.isSpaceChar(c)
                || c == '\uFEFF'
                || c == '\u200B';
    }

    private static void checkMessage(InputProblem problem) {
        checkText(problem.message());
        require(!problem.origin().file().isBlank(), "no file is named");
    }

    private static void checkText(String message) {
        require(message.length() <= LONGEST_MESSAGE, "the message has " + message.length() + " characters");
        require(message.chars().noneMatch(Character::isISOControl), "the message holds control characters");
    }

    static void require(boolean holds, String otherwise) {
        if (!holds) {
            throw new AssertionError(otherwise);
        }
    }
}
