package org.steelyard.analyse.find;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.steelyard.analyse.find.DriftChart.Shift;
import org.steelyard.analyse.season.SeasonTally;
import org.steelyard.samples.PlantedSeason;

/**
 * What is planted in a made season is found, and a season with nothing in it gives no more alarms than stated. The gate
 * runs 30 seeds; {@code -Dsteelyard.alarmSeeds=200} runs as many as src/test/README.md reports.
 */
@Tag("validation")
class PlantedTruthTest {

    private static final int SEEDS = Integer.getInteger("steelyard.alarmSeeds", 30);

    private static SeasonStatistics statistics(PlantedSeason season) {
        SeasonTally tally = new SeasonTally(PlantedSeason.POLICY);
        season.flights().forEach(tally::add);
        return tally.summary().statistics();
    }

    private static ApartResult apart(SeasonStatistics statistics, String grouping) {
        return statistics.apart().stream()
                .filter(result -> result.grouping().equals(grouping))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aTailEightTenthsOfAPercentAftIsFoundAndItsBasicMassNamed() {
        SeasonStatistics found = statistics(new PlantedSeason(1, 26, 24).tailAft(0.8));
        assertThat(apart(found, "tail").apart()).singleElement().satisfies(tail -> {
            assertThat(tail.group()).isEqualTo("TAIL-3");
            assertThat(tail.differencePercentMac()).isCloseTo(0.8, within(0.35));
            assertThat(tail.lowPercentMac()).isLessThan(0.8);
            assertThat(tail.highPercentMac()).isGreaterThan(0.8);
            assertThat(tail.reasons().get(0).part()).isEqualTo("basic mass of the tail");
            assertThat(tail.sentence())
                    .contains("TAIL-3 flies")
                    .contains("farther aft")
                    .contains("basic mass");
        });
        assertThat(apart(found, "route").apart()).isEmpty();
        assertThat(apart(found, "pilot").apart()).isEmpty();
    }

    @Test
    void aRouteWithAHeavyRearHoldIsFoundAndTheHoldNamed() {
        SeasonStatistics found = statistics(new PlantedSeason(2, 26, 24).routeWithRearHold(800));
        assertThat(apart(found, "route").apart()).singleElement().satisfies(route -> {
            assertThat(route.group()).isEqualTo("FROM5–TO");
            assertThat(route.differencePercentMac()).isPositive();
            assertThat(route.reasons().get(0).part()).isEqualTo("hold 3");
        });
        assertThat(apart(found, "tail").apart()).isEmpty();
    }

    @Test
    void aDriftFromWeekThirtyIsFoundWithItsWeekAndCause() {
        SeasonStatistics found = statistics(new PlantedSeason(3, 26, 24).drift(30, 500));
        assertThat(found.drift()).singleElement().satisfies(chart -> {
            Shift shift = chart.shift().orElseThrow();
            assertThat(shift.fromWeek()).isIn("2026-W29", "2026-W30", "2026-W31");
            assertThat(shift.afterPercentMac()).isGreaterThan(shift.beforePercentMac());
            assertThat(shift.reasons().get(0).part()).isEqualTo("hold 3");
            assertThat(chart.weeks()).hasSize(26);
        });
    }

    @Test
    void aWeekFarOffIsASignalOfItsChart() {
        List<DriftChart> charts =
                statistics(new PlantedSeason(5, 20, 24).drift(33, 1400)).drift();
        assertThat(charts)
                .singleElement()
                .satisfies(chart -> assertThat(chart.signals())
                        .extracting(DriftChart.Week::week)
                        .containsExactly("2026-W33"));
    }

    /**
     * Of 200 seasons at most 18 give an alarm if one in twenty does: 99.5 % of the binomial; of 30 at most 6. Flights
     * come in groups of 300, from which one in 1,500 is unusual if normal, by CG or by trim.
     */
    @Test
    void aSeasonWithNothingInItAlarmsNoMoreOftenThanStated() {
        int[] alarms = new int[2];
        long flights = 0;
        long unusual = 0;
        for (int seed = 0; seed < SEEDS; seed++) {
            SeasonStatistics nothing = statistics(new PlantedSeason(1000 + seed, 20, 15));
            alarms[0] +=
                    nothing.apart().stream().allMatch(result -> result.apart().isEmpty()) ? 0 : 1;
            DriftChart chart = nothing.drift().get(0);
            alarms[1] += chart.signals().isEmpty() && chart.shift().isEmpty() ? 0 : 1;
            flights += chart.flights();
            unusual += nothing.unusual().size();
        }
        String seen = SEEDS + " seasons: alarms by groups apart (tail, route or pilot), drift "
                + Arrays.toString(alarms) + "; unusual " + unusual + " of " + flights;
        int most = SEEDS >= 200 ? SEEDS * 18 / 200 : 6;
        assertThat(Arrays.stream(alarms).max().orElseThrow()).as(seen).isLessThanOrEqualTo(most);
        assertThat(unusual / (double) flights).as(seen).isLessThanOrEqualTo(1 / 750.0);
        if (SEEDS > 30) {
            System.out.println(seen);
        }
    }
}
