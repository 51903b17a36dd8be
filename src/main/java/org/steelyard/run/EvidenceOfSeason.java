package org.steelyard.run;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.steelyard.balance.Balance;
import org.steelyard.balance.Balancer;
import org.steelyard.config.Configuration;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.input.InputProblem;
import org.steelyard.model.loading.Loading;
import org.steelyard.model.trim.TrimScale;
import org.steelyard.model.type.AircraftType;
import org.steelyard.read.row.ParsedRow;
import org.steelyard.read.row.Tails;
import org.steelyard.read.season.RawRows;
import org.steelyard.read.season.SeasonFiles;
import org.steelyard.read.season.SourceFile;
import org.steelyard.read.table.ReadOptions;
import org.steelyard.read.table.SeasonFolder;
import org.steelyard.read.table.SeasonUnreadableException;
import org.steelyard.report.file.OutputList;
import org.steelyard.trim.TrimEvidence;

/** Gathers the evidence of a season, flight by flight in the order of the input. */
final class EvidenceOfSeason {

    private static final int BATCH_ROWS = 500;

    private final Configuration configuration;
    private final Duplicates duplicates;
    private final Map<Key, List<TrimEvidence>> pairs = new TreeMap<>();
    private long rejected;
    private long repeated;

    EvidenceOfSeason(Configuration configuration) {
        this.configuration = configuration;
        this.duplicates = new Duplicates(configuration.policy().duplicates());
    }

    private record Key(String typeId, String flaps, String thrust) implements Comparable<Key> {

        /** Settings by length first, so that 5 comes before 15. */
        private static final Comparator<Key> ORDER = Comparator.comparing(Key::typeId)
                .thenComparing(key -> key.flaps().length())
                .thenComparing(Key::flaps)
                .thenComparing(Key::thrust);

        @Override
        public int compareTo(Key other) {
            return ORDER.compare(this, other);
        }
    }

    ScaleEvidence.Season of(Path season, ReadOptions reading)
            throws SeasonUnreadableException, IOException, InterruptedException {
        Tails tails =
                Tails.of(configuration.tails().values(), configuration.schemes().values());
        List<InputProblem> problems = new ArrayList<>();
        SeasonFolder folder = SeasonFolder.list(season, OutputList.isIn(season));
        problems.addAll(folder.outputsPassedOver());
        SeasonFiles files = SeasonFiles.of(folder.files(), reading, tails);
        duplicates.survey(files);
        for (Path file : files.inOrder()) {
            try (SourceFile source = files.open(file)) {
                source.forEachBatch(BATCH_ROWS, this::take);
                problems.addAll(source.problems());
            }
        }
        List<ScaleEvidence> groups = new ArrayList<>();
        pairs.forEach((key, list) -> groups.add(
                new ScaleEvidence(configuration.types().get(key.typeId()), key.flaps(), key.thrust(), list)));
        return new ScaleEvidence.Season(groups, rejected, repeated, problems);
    }

    private void take(RawRows rows) {
        List<ParsedRow> parsed = rows.parse();
        for (int i = 0; i < parsed.size(); i++) {
            if (parsed.get(i) instanceof ParsedRow.Accepted accepted) {
                Loading loading = accepted.loading();
                Duplicates.Verdict verdict =
                        duplicates.judge(rows.reader().key(rows.rows().get(i), loading), loading.origin());
                switch (verdict.kind()) {
                    case STANDS, COUNTS_AGAIN, COUNTS_TOO -> take(loading);
                    case REPEATS, DIFFERS -> repeated++;
                }
            } else if (parsed.get(i) instanceof ParsedRow.Rejected) {
                rejected++;
            }
        }
    }

    private void take(Loading loading) {
        if (loading.recordedTrimUnits().isEmpty() || loading.setting().flaps().isBlank()) {
            return;
        }
        AircraftType type = loading.type();
        String flaps = loading.setting().flaps();
        String thrust = type.trimScale(Phase.TAKEOFF, flaps, loading.setting().thrustRating())
                .map(TrimScale::thrustRating)
                .orElse(loading.setting().thrustRating());
        Balance balance = Balancer.balance(loading, configuration.policy());
        if (balance.loadIsShared()) {
            return;
        }
        TrimEvidence pair = new TrimEvidence(
                loading.flight().flight() + " " + loading.flight().date() + " "
                        + loading.tail().registration() + " (" + loading.origin() + ")",
                type.geometry().chord().percentAt(balance.takeoff().armM()),
                OptionalDouble.of(balance.takeoff().massKg()),
                loading.recordedTrimUnits().getAsDouble());
        pairs.computeIfAbsent(new Key(type.id(), flaps, thrust), absent -> new ArrayList<>())
                .add(pair);
    }
}
