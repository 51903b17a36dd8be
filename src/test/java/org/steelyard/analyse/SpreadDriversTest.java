package org.steelyard.analyse;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.steelyard.analyse.SpreadDrivers.Driver;
import org.steelyard.balance.Balance;
import org.steelyard.balance.Balancer;
import org.steelyard.check.AuditedFlight;
import org.steelyard.check.Checker;
import org.steelyard.model.Fuel;
import org.steelyard.model.Loading;
import org.steelyard.model.MassMoment;
import org.steelyard.samples.PlantedSeason;
import org.steelyard.samples.SampleJet;

class SpreadDriversTest {

    private static List<SpreadDrivers> drivers(List<AuditedFlight> flights) {
        SeasonTally tally = new SeasonTally(PlantedSeason.POLICY);
        flights.forEach(tally::add);
        return tally.summary().statistics().drivers();
    }

    private static AuditedFlight audited(Loading loading) {
        Balance balance = Balancer.balance(loading, PlantedSeason.POLICY);
        return new AuditedFlight(loading, balance, Checker.check(loading, balance, PlantedSeason.POLICY));
    }

    /** Against a second computation in two passes, part by part about the mean CG. */
    @Test
    void sharesAreCovariancesWithTheCgAndAddUpToOne() {
        List<AuditedFlight> flights = new PlantedSeason(7, 10, 20).flights();
        SpreadDrivers found = drivers(flights).get(0);
        LoadParts parts = new LoadParts(SampleJet.type());
        double meanM = flights.stream()
                .mapToDouble(flight -> flight.balance().takeoff().armM())
                .average()
                .orElseThrow();
        double[] products = new double[parts.size()];
        double[] pulls = new double[parts.size()];
        double squares = 0;
        for (AuditedFlight flight : flights) {
            MassMoment takeoff = flight.balance().takeoff();
            double from = takeoff.armM() - meanM;
            squares += from * from;
            List<MassMoment> masses = parts.of(flight);
            double sum = 0;
            for (int j = 0; j < products.length; j++) {
                double pull = (masses.get(j).momentKgM() - masses.get(j).massKg() * meanM) / takeoff.massKg();
                products[j] += pull * from;
                pulls[j] += pull;
                sum += pull;
            }
            assertThat(sum).isCloseTo(from, within(1e-12));
        }
        assertThat(found.flights()).isEqualTo(200);
        assertThat(found.drivers().stream().mapToDouble(Driver::share).sum()).isCloseTo(1, within(1e-9));
        for (Driver driver : found.drivers()) {
            int part = parts.indexOf(driver.part());
            assertThat(driver.share()).as(driver.part()).isCloseTo(products[part] / squares, within(1e-9));
            assertThat(driver.meanPullPercentMac()).isCloseTo(100 * pulls[part] / 200 / 4, within(1e-9));
        }
        assertThat(found.sd()).isCloseTo(100 * Math.sqrt(squares / 199) / 4, within(1e-9));
    }

    @Test
    void trimSharesAndTheScaleAddUpToOne() {
        SpreadDrivers trim = drivers(new PlantedSeason(8, 10, 20).flights()).get(1);
        assertThat(trim.measure()).isEqualTo(Measure.TAKEOFF_TRIM);
        assertThat(trim.flaps()).isEqualTo("5");
        // the sample's scale is one straight line: nothing is left for itself
        assertThat(trim.scaleShare()).isCloseTo(0, within(1e-9));
        assertThat(trim.drivers().stream().mapToDouble(Driver::share).sum()).isCloseTo(1, within(1e-9));
    }

    @Test
    void theOnePartThatVariesExplainsEverything() {
        List<AuditedFlight> flights = new ArrayList<>();
        for (int i = 0; i < 40; i++) {
            flights.add(audited(
                    SampleJet.loaded().hold(2, 500 + 30 * i).hold(0, 1000).loading()));
        }
        SpreadDrivers found = drivers(flights).get(0);
        assertThat(found.drivers().get(0).part()).isEqualTo("hold 3");
        assertThat(found.sentence()).startsWith("SAMPLE: hold 3 explains ").contains("% of the spread of take-off CG");
        assertThat(found.drivers().get(0).share()).isGreaterThan(0.9);
        assertThat(found.kinds()).startsWith("holds ");
    }

    @Test
    void flightsWithoutFullDetailDoNotCountAndAreCounted() {
        List<AuditedFlight> flights = new ArrayList<>(new PlantedSeason(9, 5, 10).flights());
        for (int i = 0; i < 7; i++) {
            flights.add(audited(
                    SampleJet.loaded().fuel(new Fuel.Total(8000, 200, 5000)).loading()));
        }
        SpreadDrivers found = drivers(flights).get(0);
        assertThat(found.flights()).isEqualTo(50);
        assertThat(found.without()).isEqualTo(7);
        assertThat(drivers(flights.subList(0, 29))).isEmpty();
    }
}
