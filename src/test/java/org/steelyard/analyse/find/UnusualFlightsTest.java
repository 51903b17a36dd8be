package org.steelyard.analyse.find;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.steelyard.analyse.column.FlightCloud;
import org.steelyard.analyse.column.TrimSetting;
import org.steelyard.analyse.figure.ExactValues;
import org.steelyard.analyse.figure.HistogramCells;
import org.steelyard.analyse.figure.Measure;
import org.steelyard.analyse.season.SeasonTally;
import org.steelyard.balance.Balance;
import org.steelyard.balance.Balancer;
import org.steelyard.check.flight.Checker;
import org.steelyard.check.result.AuditedFlight;
import org.steelyard.check.result.Status;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.loading.Fuel;
import org.steelyard.model.loading.Load;
import org.steelyard.model.loading.Loading;
import org.steelyard.model.unit.MassMoment;
import org.steelyard.samples.PlantedSeason;
import org.steelyard.samples.SampleJet;

class UnusualFlightsTest {

    private static SeasonStatistics statistics(List<AuditedFlight> flights) {
        SeasonTally tally = new SeasonTally(PlantedSeason.POLICY);
        flights.forEach(tally::add);
        return tally.summary().statistics();
    }

    private static AuditedFlight audited(SampleJet jet) {
        Loading loading = jet.loading();
        Balance balance = Balancer.balance(loading, PlantedSeason.POLICY);
        return new AuditedFlight(loading, balance, Checker.check(loading, balance, PlantedSeason.POLICY));
    }

    @Test
    void aFlightFarAftIsListedWithTheHoldThatMadeItSo() {
        List<AuditedFlight> flights = new ArrayList<>(new PlantedSeason(11, 5, 10).flights());
        flights.add(audited(SampleJet.loaded().hold(0, 0).hold(2, 3_000)));
        assertThat(statistics(flights).unusual()).first().satisfies(flight -> {
            assertThat(flight.flight().flight()).isEqualTo("S1");
            assertThat(flight.score()).isGreaterThan(UnusualFlight.SCORE);
            assertThat(flight.reason())
                    .startsWith("hold 3: 3,000 kg where 1,0")
                    .contains("are usual (+")
                    .contains("hold 1 +");
        });
    }

    /** The scores of 1 … 20 and 100: median 11, MAD 5; 0.6745 (100 - 11) / 5. */
    @Test
    void theMedianDistanceIsNotWidenedByTheUnusual() {
        double[] values = new double[21];
        for (int i = 0; i < 20; i++) {
            values[i] = i + 1;
        }
        values[20] = 100;
        assertThat(ExactValues.ofSorted(values).medianDistance(11)).isCloseTo(5, within(1e-15));
    }

    @Test
    void withoutDetailTheReasonSaysSo() {
        List<AuditedFlight> flights = new ArrayList<>(new PlantedSeason(12, 5, 10).flights());
        flights.add(audited(SampleJet.loaded()
                .load(new Load.TakeoffGiven(MassMoment.at(54_000, 17.5)))
                .fuel(new Fuel.NotGiven())));
        assertThat(statistics(flights).unusual())
                .singleElement()
                .satisfies(flight -> assertThat(flight.reason())
                        .isEqualTo("The input gives no zones, holds and tanks to tell why."));
    }

    @Test
    void thinnedCloudsKeepEveryBreachAndAreTheSameEachTime() {
        List<AuditedFlight> flights = new ArrayList<>(new PlantedSeason(13, 10, 39).flights());
        for (int i = 0; i < 10; i++) {
            flights.add(50 + i, audited(SampleJet.loaded().hold(2, 3_500)));
        }
        FlightCloud cloud = statistics(flights).cloud();
        long breached = flights.stream()
                .filter(flight -> flight.assessment().status() == Status.BREACHED)
                .count();
        FlightCloud.OfType thin = cloud.byType(60).get(0);
        assertThat(breached).isPositive();
        assertThat(thin.flights()).isEqualTo(400);
        assertThat(thin.thinned()).isTrue();
        assertThat(thin.points()).hasSize((int) Math.max(60, breached));
        assertThat(thin.points().stream().filter(point -> point.status() == Status.BREACHED))
                .hasSize((int) breached);
        assertThat(statistics(flights).cloud().byType(60)).isEqualTo(cloud.byType(60));
        assertThat(cloud.byType(1000).get(0).thinned()).isFalse();
        FlightCloud.Point point = thin.points().get(0);
        AuditedFlight same = flights.get(point.order());
        assertThat(cloud.massKg(point, Phase.TAKEOFF).orElseThrow())
                .isCloseTo(same.balance().takeoff().massKg(), within(0.01));
    }

    @Test
    void histogramCellsCountEveryFlightOnce() {
        FlightCloud cloud = statistics(new PlantedSeason(14, 10, 20).flights()).cloud();
        HistogramCells cells = cloud.cells(new TrimSetting("SAMPLE", "5", ""), Measure.TAKEOFF_TRIM, 0.1);
        assertThat(cells.counts().stream().mapToLong(Long::longValue).sum()).isEqualTo(200);
        assertThat(cloud.cells(new TrimSetting("SAMPLE", "9", ""), Measure.TAKEOFF_TRIM, 0.1)
                        .counts())
                .isEmpty();
    }
}
