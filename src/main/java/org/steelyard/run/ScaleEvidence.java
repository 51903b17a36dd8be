package org.steelyard.run;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.steelyard.balance.Balance;
import org.steelyard.balance.Balancer;
import org.steelyard.config.Configuration;
import org.steelyard.config.PairsFile;
import org.steelyard.model.AircraftType;
import org.steelyard.model.InputProblem;
import org.steelyard.model.Loading;
import org.steelyard.model.Phase;
import org.steelyard.model.Policy;
import org.steelyard.model.TrimScale;
import org.steelyard.read.ParsedRow;
import org.steelyard.read.RawRows;
import org.steelyard.read.ReadOptions;
import org.steelyard.read.SeasonFiles;
import org.steelyard.read.SeasonFolder;
import org.steelyard.read.SeasonUnreadableException;
import org.steelyard.read.SourceFile;
import org.steelyard.read.Tails;
import org.steelyard.trim.TrimEvidence;

/**
 * Pairs of CG and setting of one type, flap setting and thrust rating, from which a scale can be fitted.
 *
 * @param type the type
 * @param flaps take-off flap setting
 * @param thrustRating thrust rating, blank for any
 * @param pairs the pairs
 */
public record ScaleEvidence(AircraftType type, String flaps, String thrustRating, List<TrimEvidence> pairs) {

    private static final int BATCH_ROWS = 500;

    /** Copies the list. */
    public ScaleEvidence {
        pairs = List.copyOf(pairs);
    }

    /** The scale that the type has already for the setting. */
    public Optional<TrimScale> present() {
        return type.trimScale(Phase.TAKEOFF, flaps, thrustRating);
    }

    /**
     * What a season holds.
     *
     * @param groups evidence by type, flap setting and thrust rating, in order of their names
     * @param rejected rows that could not be used
     * @param problems files that could not be read
     */
    public record Season(List<ScaleEvidence> groups, long rejected, List<InputProblem> problems) {

        /** Copies the lists. */
        public Season {
            groups = List.copyOf(groups);
            problems = List.copyOf(problems);
        }
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

    /**
     * Gathers the recorded settings of a season with the take-off CG and mass of their flights, but for flights whose
     * load was shared out from totals: their CG is only assumed. Scales for a thrust rating are kept apart where the
     * type has such scales; where it has none, all ratings are one.
     *
     * @param season file or folder
     * @param reading how files are read
     * @param configuration types, fleet and policy
     * @return the evidence
     * @throws SeasonUnreadableException if there is nothing to read
     * @throws IOException if a file cannot be closed
     */
    public static Season of(Path season, ReadOptions reading, Configuration configuration)
            throws SeasonUnreadableException, IOException {
        Tails tails =
                Tails.of(configuration.tails().values(), configuration.schemes().values());
        Map<Key, List<TrimEvidence>> pairs = new TreeMap<>();
        List<InputProblem> problems = new ArrayList<>();
        long rejected = 0;
        SeasonFiles files = SeasonFiles.of(SeasonFolder.list(season).files(), reading, tails);
        for (Path file : files.inOrder()) {
            try (SourceFile source = files.open(file)) {
                for (Optional<RawRows> rows = source.nextBatch(BATCH_ROWS);
                        rows.isPresent();
                        rows = source.nextBatch(BATCH_ROWS)) {
                    rejected += take(rows.get(), configuration.policy(), pairs);
                }
                problems.addAll(source.problems());
            }
        }
        List<ScaleEvidence> groups = new ArrayList<>();
        pairs.forEach((key, list) -> groups.add(
                new ScaleEvidence(configuration.types().get(key.typeId()), key.flaps(), key.thrust(), list)));
        return new Season(groups, rejected, problems);
    }

    private static long take(RawRows rows, Policy policy, Map<Key, List<TrimEvidence>> pairs) {
        long rejected = 0;
        for (ParsedRow row : rows.parse()) {
            if (row instanceof ParsedRow.Accepted accepted) {
                take(accepted.loading(), policy, pairs);
            } else if (row instanceof ParsedRow.Rejected) {
                rejected++;
            }
        }
        return rejected;
    }

    private static void take(Loading loading, Policy policy, Map<Key, List<TrimEvidence>> pairs) {
        if (loading.recordedTrimUnits().isEmpty() || loading.setting().flaps().isBlank()) {
            return;
        }
        AircraftType type = loading.type();
        String flaps = loading.setting().flaps();
        String thrust = type.trimScale(Phase.TAKEOFF, flaps, loading.setting().thrustRating())
                .map(TrimScale::thrustRating)
                .orElse(loading.setting().thrustRating());
        Balance balance = Balancer.balance(loading, policy);
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

    /**
     * The evidence of a file of pairs.
     *
     * @param pairs its pairs
     * @param file its name
     * @param type the type that they are of
     * @param flaps take-off flap setting
     * @param thrustRating thrust rating, blank for any
     * @return the evidence
     */
    public static ScaleEvidence of(
            List<PairsFile.Pair> pairs, String file, AircraftType type, String flaps, String thrustRating) {
        return new ScaleEvidence(
                type,
                flaps,
                thrustRating,
                pairs.stream()
                        .map(pair -> new TrimEvidence(
                                file + ":" + pair.line(), pair.cgPercentMac(), pair.massKg(), pair.settingUnits()))
                        .toList());
    }
}
