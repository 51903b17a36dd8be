package org.steelyard.spark.merge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.steelyard.report.output.page.Flights.JET;
import static org.steelyard.report.output.page.Flights.POLICY;
import static org.steelyard.report.output.page.Flights.aft;
import static org.steelyard.report.output.page.Flights.flight;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.steelyard.analyse.column.StatusCount;
import org.steelyard.analyse.figure.Measure;
import org.steelyard.analyse.find.ApartResult;
import org.steelyard.analyse.find.GroupSpread;
import org.steelyard.analyse.season.RecordedTrimGroup;
import org.steelyard.analyse.season.SeasonSummary;
import org.steelyard.analyse.season.SeasonTally;
import org.steelyard.check.result.AuditedFlight;
import org.steelyard.model.finding.Severity;

/** Tails, routes and named columns of which there are more than anybody looks at, on one machine and in parts. */
class LeftOutGroupingsTest {

    private static final int MOST = 50_000;
    private static final List<String> BY = List.of("pilot", "gate");

    /** The first flight is breached; the gates are three. */
    private static Stream<AuditedFlight> flights(int count) {
        return IntStream.range(0, count).mapToObj(i -> {
            var flight = flight("F" + i)
                    .tail("ZZ-" + i, JET)
                    .route("A" + i, "B")
                    .extra("pilot", "pilot " + i)
                    .extra("gate", "gate " + i % 3)
                    .inDetail();
            return (i == 0 ? flight.found(aft(Severity.BREACH, -1)) : flight).build();
        });
    }

    private static SeasonSummary whole(int count) {
        SeasonTally tally = new SeasonTally(POLICY, BY);
        flights(count).forEach(tally::add);
        return tally.summary();
    }

    private static SeasonSummary inParts(int count) {
        MergeableTally one = new MergeableTally(POLICY, BY, NoRanks::new);
        MergeableTally other = new MergeableTally(POLICY, BY, NoRanks::new);
        List<AuditedFlight> all = flights(count).toList();
        for (int i = 0; i < count; i++) {
            (i % 2 == 0 ? one : other).add(all.get(i));
        }
        one.merge(other);
        return one.summary(Map.of(JET.id(), JET), List.of());
    }

    /** Which figure stands where is not looked at here. */
    private static final class NoRanks implements RankSketch {

        private static final long serialVersionUID = 1;

        @Override
        public void add(double value) {}

        @Override
        public void merge(RankSketch other) {}

        @Override
        public double quantile(double rank) {
            return 0;
        }

        @Override
        public double rank(double value) {
            return 0;
        }

        @Override
        public double rankError() {
            return 1;
        }
    }

    private static Map<String, Long> rows(SeasonSummary summary) {
        return summary.statistics().spreads().stream()
                .filter(spread -> spread.measure() == Measure.TAKEOFF_CG)
                .collect(Collectors.groupingBy(GroupSpread::grouping, Collectors.counting()));
    }

    @Test
    void asManyAsTheBoundAreKept() {
        SeasonSummary summary = whole(MOST);
        assertThat(summary.statistics().leftOut()).isEmpty();
        assertThat(summary.routes()).hasSize(MOST);
        assertThat(summary.recordedTrim())
                .filteredOn(group -> group.kind().equals(RecordedTrimGroup.TAIL))
                .hasSize(MOST);
        assertThat(rows(summary))
                .containsEntry("tail", (long) MOST)
                .containsEntry("route", (long) MOST)
                .containsEntry("pilot", (long) MOST)
                .containsEntry("gate", 3L);
        assertThat(summary.statistics().apart())
                .extracting(ApartResult::grouping)
                .containsExactly("tail", "route", "pilot", "gate");
    }

    @Test
    void oneMoreIsTooMany() {
        isLeftOut(whole(MOST + 1));
    }

    @Test
    void oneMoreIsTooManyInPartsToo() {
        isLeftOut(inParts(MOST + 1));
    }

    private static void isLeftOut(SeasonSummary summary) {
        assertThat(summary.statistics().leftOut()).containsExactly("pilot", "route", "tail");
        assertThat(summary.all().flights()).isEqualTo(MOST + 1);
        assertThat(summary.routes()).isEmpty();
        assertThat(summary.tails())
                .hasSize(MOST + 1)
                .first()
                .extracting(StatusCount::group)
                .isEqualTo("ZZ-0");
        assertThat(summary.recordedTrim()).isEmpty();
        assertThat(rows(summary))
                .containsEntry("type", 1L)
                .containsEntry("gate", 3L)
                .containsEntry("month", 1L)
                .doesNotContainKeys("tail", "route", "pilot");
        assertThat(summary.statistics().apart())
                .extracting(ApartResult::grouping)
                .containsExactly("gate");
    }
}
