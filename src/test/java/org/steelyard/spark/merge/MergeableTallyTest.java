package org.steelyard.spark.merge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Random;
import org.apache.commons.math3.stat.StatUtils;
import org.assertj.core.api.recursive.comparison.RecursiveComparisonConfiguration;
import org.hipparchus.stat.descriptive.moment.StandardDeviation;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.steelyard.analyse.column.GroupKind;
import org.steelyard.analyse.column.GroupNames;
import org.steelyard.analyse.figure.Measure;
import org.steelyard.analyse.figure.MergeableMoments;
import org.steelyard.analyse.figure.Percentiles;
import org.steelyard.analyse.find.ApartResult;
import org.steelyard.analyse.find.GroupApart;
import org.steelyard.analyse.season.SeasonSummary;
import org.steelyard.analyse.season.SeasonTally;
import org.steelyard.analyse.season.TrimGroup;
import org.steelyard.check.result.AuditedFlight;
import org.steelyard.model.type.AircraftType;
import org.steelyard.samples.PlantedSeason;
import org.steelyard.samples.SampleJet;

/** The one-machine tally holds every figure and is the other computation here. */
class MergeableTallyTest {

    private static final FlightChoice.Sizes SIZES = new FlightChoice.Sizes(10, 20, 100, 100, 100, 5000);
    private static final List<String> BY = List.of("pilot", "gate");

    private static List<AuditedFlight> flights;
    private static SeasonSummary exact;

    /** Holds everything, so that what is left of a difference is the tally's. */
    private static final class Holding implements RankSketch {

        private static final long serialVersionUID = 1;

        private final ArrayList<Double> all = new ArrayList<>();
        private double[] sorted = {};

        @Override
        public void add(double value) {
            all.add(value);
        }

        @Override
        public void merge(RankSketch other) {
            all.addAll(((Holding) other).all);
        }

        @Override
        public double quantile(double rank) {
            double percent = 100 * rank;
            return percent == Math.rint(percent)
                    ? Percentiles.inclusive(sorted(), all.size(), (int) percent)
                    : sorted()[(int) Math.round(rank * all.size()) - 1];
        }

        private double[] sorted() {
            if (sorted.length != all.size()) {
                sorted = all.stream().mapToDouble(Double::doubleValue).sorted().toArray();
            }
            return sorted;
        }

        @Override
        public double rank(double value) {
            int at = Arrays.binarySearch(sorted(), Math.nextUp(value));
            return (at < 0 ? -at - 1 : at) / (double) all.size();
        }

        @Override
        public double rankError() {
            return 0;
        }
    }

    @BeforeAll
    static void season() {
        flights = new ArrayList<>(new PlantedSeason(11, 20, 60)
                .tailAft(0.8)
                .routeWithRearHold(500)
                .drift(24, 600)
                .gates(9)
                .flights());
        flights.addAll(new PlantedSeason(12, 1, 24).routeWithRearHold(9000).flights());
        exact = exact(flights);
    }

    private static SeasonSummary exact(List<AuditedFlight> season) {
        SeasonTally tally = new SeasonTally(PlantedSeason.POLICY, BY);
        season.forEach(tally::add);
        return tally.summary();
    }

    private static SeasonSummary merged(List<AuditedFlight> season, int parts) {
        return merged(season, parts, SampleJet.type());
    }

    static SeasonSummary merged(List<AuditedFlight> season, int parts, AircraftType type) {
        List<MergeableTally> tallies = new ArrayList<>();
        List<FlightChoice<Integer>> choices = new ArrayList<>();
        for (int part = 0; part < parts; part++) {
            tallies.add(new MergeableTally(PlantedSeason.POLICY, BY, Holding::new));
            choices.add(new FlightChoice<>(SIZES));
        }
        for (int place = 0; place < season.size(); place++) {
            int part = (int) ((long) place * parts / season.size());
            int row = place;
            tallies.get(part).add(season.get(place));
            choices.get(part).offer(new PlacedFlight(place, season.get(place)), place, () -> row);
        }
        MergeableTally all = copy(tallies.get(parts - 1));
        FlightChoice<Integer> chosen = copy(choices.get(parts - 1));
        for (int part = 0; part < parts - 1; part++) {
            all.merge(copy(tallies.get(part)));
            chosen.merge(copy(choices.get(part)));
        }
        List<PlacedFlight> shown = chosen.chosen().entrySet().stream()
                .map(entry -> new PlacedFlight(entry.getKey(), season.get(entry.getValue())))
                .toList();
        return all.summary(Map.of(type.id(), type), shown);
    }

    /** As it goes from machine to machine. */
    @SuppressWarnings("unchecked")
    private static <T> T copy(T value) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
            out.writeObject(value);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        try (ObjectInputStream in = new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
            return (T) in.readObject();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (ClassNotFoundException e) {
            throw new IllegalStateException(e);
        }
    }

    private static boolean close(double one, double other, double relative) {
        return Math.abs(one - other) <= relative * Math.max(1, Math.max(Math.abs(one), Math.abs(other)));
    }

    private static RecursiveComparisonConfiguration within12Digits() {
        return RecursiveComparisonConfiguration.builder()
                .withEqualsForType((one, other) -> close(one, other, 1e-12), Double.class)
                .withEqualsForType(
                        (one, other) ->
                                one.isPresent() == other.isPresent() && close(one.orElse(0), other.orElse(0), 1e-12),
                        OptionalDouble.class)
                .withIgnoredFields("statistics.cloud", "statistics.drift", "worst")
                .build();
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 8})
    void aSeasonInPartsComesToWhatItComesToAsAWhole(int parts) {
        SeasonSummary merged = merged(flights, parts);

        assertThat(exact.statistics().spreads()).hasSizeGreaterThan(150);
        assertThat(exact.statistics().apart().stream()
                        .mapToInt(result -> result.apart().size())
                        .sum())
                .isPositive();
        assertThat(exact.statistics().unusual()).isNotEmpty();
        assertThat(exact.statistics().drivers()).isNotEmpty();
        assertThat(merged).usingRecursiveComparison(within12Digits()).isEqualTo(exact);
        assertThat(merged.statistics().drift())
                .usingRecursiveComparison(within12Digits())
                .isEqualTo(exact.statistics().drift());
        assertThat(merged.worst()).isEqualTo(exact.worst());
        assertThat(merged.statistics().cloud().byType(5000))
                .isEqualTo(exact.statistics().cloud().byType(5000));
    }

    @Test
    void groupsOfManyFlightsKeepCountsAndMomentsExactAndRanksOfTheSketch() {
        List<AuditedFlight> many = new ArrayList<>();
        while (many.size() <= MergeableTally.exactUpTo()) {
            many.addAll(flights);
        }
        SeasonSummary held = exact(many);
        SeasonSummary merged = merged(many, 3);

        assertThat(merged.statistics().spreads())
                .usingRecursiveComparison(within12Digits())
                .isEqualTo(held.statistics().spreads());
        assertThat(merged.statistics().unusual())
                .usingRecursiveComparison(RecursiveComparisonConfiguration.builder()
                        .withEqualsForType((one, other) -> close(one, other, 1e-3), Double.class)
                        .build())
                .isEqualTo(held.statistics().unusual());
        for (int kind = 0; kind < held.statistics().apart().size(); kind++) {
            ApartResult one = held.statistics().apart().get(kind);
            ApartResult other = merged.statistics().apart().get(kind);
            assertThat(other.tested()).isEqualTo(one.tested());
            assertThat(other.apart().stream().map(GroupApart::sentence))
                    .isEqualTo(one.apart().stream().map(GroupApart::sentence).toList());
        }
        TrimGroup group = merged.trim().get(0);
        assertThat(merged.statistics()
                        .cloud()
                        .cells(group.setting(), Measure.TAKEOFF_TRIM, 0.1)
                        .counts())
                .isEqualTo(held.statistics()
                        .cloud()
                        .cells(group.setting(), Measure.TAKEOFF_TRIM, 0.1)
                        .counts());
    }

    /** Values that lie close together far from zero are where sums of squares lose their digits. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 25, 1e3, 1e6})
    void momentsDoNotDependOnThePartsHoweverCloseTheValuesLie(double about) {
        Random random = new Random(7);
        double[] values = random.doubles(20_000, about - 1e-3, about + 1e-3).toArray();
        MergeableMoments whole = new MergeableMoments();
        MergeableMoments parts = new MergeableMoments();
        for (int part = 19; part >= 0; part--) {
            MergeableMoments one = new MergeableMoments();
            Arrays.stream(values, part * 1000, part * 1000 + 1000).forEach(one::add);
            parts.merge(one);
        }
        Arrays.stream(values).forEach(whole::add);

        assertThat(parts.mean()).isEqualTo(whole.mean());
        double sd = whole.sd().orElseThrow();
        assertThat(parts.sd().orElseThrow()).isCloseTo(sd, within(1e-12 * sd));
        assertThat(parts.mean()).isCloseTo(StatUtils.mean(values), within(1e-12 * Math.max(1, about)));
        double[] moved = Arrays.stream(values).map(x -> x - about).toArray();
        assertThat(parts.sd().orElseThrow()).isCloseTo(new StandardDeviation().evaluate(moved), within(1e-15));
        assertThat(parts.min()).isEqualTo(StatUtils.min(values));
        assertThat(parts.max()).isEqualTo(StatUtils.max(values));
    }

    @Test
    void aColumnWithTooManyGroupsIsLeftOutWhateverTheParts() {
        MergeableTally one = new MergeableTally(PlantedSeason.POLICY, List.of("pilot"), Holding::new);
        MergeableTally two = copy(one);
        one.add(flights.get(0));
        two.add(flights.get(1));
        for (int i = 0; i < GroupNames.MOST_GROUPS / 2; i++) {
            one.groups(GroupKind.named("pilot").id()).add("A" + i);
            two.groups(GroupKind.named("pilot").id()).add("B" + i);
        }
        assertThat(one.leftOut()).isEmpty();
        one.merge(two);

        assertThat(one.leftOut()).containsExactly("pilot");
        assertThat(one.groups(GroupKind.named("pilot").id())).isEmpty();
        assertThat(one.flights()).isEqualTo(2);
    }
}
