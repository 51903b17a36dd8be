package org.steelyard.report.output.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.steelyard.check.result.Status;

class PageSampleTest {

    private static final PageLimits LIMITS = new PageLimits(100, 150, 200);

    /** As many of each status as said, one after the other. */
    private static PageSample sample(PageLimits limits, int breached, int marginal, int clean) {
        PageSample sample = new PageSample(limits);
        for (int place = 0; place < breached + marginal + clean; place++) {
            sample.offer(statusOf(place, breached, marginal), place);
        }
        sample.close();
        return sample;
    }

    private static Status statusOf(int place, int breached, int marginal) {
        return place < breached ? Status.BREACHED : place < breached + marginal ? Status.MARGINAL : Status.CLEAN;
    }

    @ParameterizedTest
    @CsvSource({
        "  10,  10,   10,  10, 10,  10",
        "  10,  10, 1000,  10, 10, 180",
        "1000,  10, 1000, 100, 10,  90",
        "  10, 500, 1000,  10, 140, 50",
        "1000, 500, 1000, 100, 50,  50",
        "1000,   0,    0, 100,  0,   0",
        "   0,   0, 1000,   0,  0, 200",
    })
    void breachesGoBeforeMarginalsAndThoseBeforeTheRest(
            int breached, int marginal, int clean, int breachedKept, int marginalKept, int cleanKept) {
        PageSample sample = sample(LIMITS, breached, marginal, clean);
        assertThat(sample.seen(Status.BREACHED)).isEqualTo(breached);
        assertThat(sample.kept(Status.BREACHED)).isEqualTo(breachedKept);
        assertThat(sample.kept(Status.MARGINAL)).isEqualTo(marginalKept);
        assertThat(sample.kept(Status.CLEAN)).isEqualTo(cleanKept);
        long held = IntStream.range(0, breached + marginal + clean)
                .filter(place -> sample.holds(statusOf(place, breached, marginal), place))
                .count();
        assertThat(held).isEqualTo(breachedKept + marginalKept + cleanKept);
    }

    @Test
    void aFlightTurnedAwayIsNeverHeld() {
        PageSample sample = new PageSample(LIMITS);
        boolean[] taken = new boolean[5000];
        for (int place = 0; place < taken.length; place++) {
            taken[place] = sample.offer(Status.CLEAN, place);
        }
        sample.close();
        long takenAtFirst =
                IntStream.range(0, taken.length).filter(i -> taken[i]).count();
        // expected: k (1 + ln(n / k)) = 200 (1 + ln 25) = 844
        assertThat(takenAtFirst).isBetween(700L, 1000L);
        assertThat(LongStream.range(0, taken.length).filter(place -> sample.holds(Status.CLEAN, place)))
                .hasSize(200)
                .allMatch(place -> taken[(int) (long) place]);
    }

    /** The mean place of k of n drawn at random has a standard error of about n / sqrt(12 k): here 2,041. */
    @Test
    void theSampleIsSpreadOverTheSeason() {
        PageSample sample = sample(LIMITS, 0, 0, 100_000);
        double mean = LongStream.range(0, 100_000)
                .filter(place -> sample.holds(Status.CLEAN, place))
                .average()
                .orElseThrow();
        assertThat(mean).isCloseTo(50_000, within(3 * 2041.0));
    }

    @Test
    void theSameSeasonGivesTheSameSample() {
        PageSample one = sample(LIMITS, 300, 300, 3000);
        PageSample other = sample(LIMITS, 300, 300, 3000);
        assertThat(IntStream.range(0, 3600))
                .allMatch(place ->
                        one.holds(statusOf(place, 300, 300), place) == other.holds(statusOf(place, 300, 300), place));
    }
}
