package org.steelyard.analyse.part;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.steelyard.analyse.figure.Measure;
import org.steelyard.analyse.part.SpreadDrivers.Driver;
import org.steelyard.analyse.season.SeasonTally;
import org.steelyard.balance.Balance;
import org.steelyard.balance.Balancer;
import org.steelyard.check.flight.Checker;
import org.steelyard.check.result.AuditedFlight;
import org.steelyard.model.loading.Fuel;
import org.steelyard.model.loading.HoldLoad;
import org.steelyard.model.loading.LastMinuteChange;
import org.steelyard.model.loading.Load;
import org.steelyard.model.loading.LoadPart;
import org.steelyard.model.loading.Loading;
import org.steelyard.model.loading.Passengers;
import org.steelyard.model.loading.SeatRowLoad;
import org.steelyard.model.loading.ZoneLoad;
import org.steelyard.model.type.AircraftType;
import org.steelyard.model.type.Cabin;
import org.steelyard.model.type.CabinZone;
import org.steelyard.model.type.FuelStage;
import org.steelyard.model.type.FuelSystem;
import org.steelyard.model.type.SeatRow;
import org.steelyard.model.unit.MassMoment;
import org.steelyard.samples.EdgeTable;
import org.steelyard.samples.EdgeTopic;
import org.steelyard.samples.Plain;
import org.steelyard.samples.PlantedSeason;
import org.steelyard.samples.SampleJet;

class SpreadDriversTest {

    private static final EdgeTable EDGES = new EdgeTable(SpreadDriversTest.class);

    @AfterAll
    static void write() {
        EDGES.write();
    }

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

    private static AircraftType withRows() {
        AircraftType type = SampleJet.type();
        List<CabinZone> zones = new ArrayList<>(type.cabin().zones());
        zones.set(1, new CabinZone("B", "zone B", 17, 30, List.of(new SeatRow("1", 13, 15), new SeatRow("2", 21, 15))));
        return Plain.aircraftType(
                type.id(),
                type.name(),
                type.geometry(),
                type.limits(),
                cabin(type, zones),
                type.holds(),
                type.groups(),
                type.fuel(),
                type.envelopes(),
                type.trimScales());
    }

    private static AircraftType withOnePlaceOfEach() {
        AircraftType type = SampleJet.type();
        return Plain.aircraftType(
                type.id(),
                type.name(),
                type.geometry(),
                type.limits(),
                cabin(type, List.of(Plain.cabinZone("A", "zone A", 15, 30))),
                List.of(type.holds().get(2)),
                List.of(),
                new FuelSystem(
                        List.of(type.fuel().tanks().get(0)),
                        List.of(new FuelStage(List.of(Plain.tankShare(0, 1, 0)))),
                        List.of(new FuelStage(List.of(Plain.tankShare(0, 1, 5_000)))),
                        List.of(),
                        0.8),
                type.envelopes(),
                type.trimScales());
    }

    private static Cabin cabin(AircraftType type, List<CabinZone> zones) {
        return new Cabin(
                zones,
                type.cabin().crewStations(),
                2,
                2,
                List.of(),
                type.cabin().scheme());
    }

    private static AuditedFlight audited(AircraftType type, Load load, Fuel fuel, LastMinuteChange change) {
        Loading loading = SampleJet.loaded().loading();
        return audited(Plain.loading(
                loading.origin(),
                loading.flight(),
                Plain.tail("TEST-1", type, MassMoment.at(40_000, 17)),
                loading.setting(),
                loading.scheme(),
                loading.crew(),
                load,
                fuel,
                change,
                loading.performance(),
                loading.recordedTrimUnits(),
                loading.extras()));
    }

    /** Ten persons in zone B, of whom from 0 to 10 sit in row 1 and the others in row 2; nothing else varies. */
    private static AuditedFlight seated(AircraftType type, int inFront) {
        ZoneLoad rows = new ZoneLoad(
                Passengers.adults(10),
                OptionalDouble.empty(),
                List.of(
                        new SeatRowLoad(0, inFront, 100.0 * inFront),
                        new SeatRowLoad(1, 10 - inFront, 1000 - 100.0 * inFront)));
        Load load = new Load.ByPlace(
                List.of(ZoneLoad.EMPTY, rows, ZoneLoad.EMPTY),
                List.of(new HoldLoad(1000, 0), new HoldLoad(0, 0), new HoldLoad(1000, 0)));
        return audited(type, load, SampleJet.loaded().loading().fuel(), LastMinuteChange.NONE);
    }

    private static String shares(SpreadDrivers drivers) {
        return drivers.drivers().stream()
                .filter(driver -> Math.abs(driver.share()) > 1e-9)
                .map(driver -> String.format(Locale.ROOT, "%s %.0f %%", driver.part(), 100 * driver.share()))
                .collect(Collectors.joining(", "));
    }

    @Test
    void personsWhoChangeSeatRowsAreTheirZonesDoing() {
        AircraftType type = withRows();
        List<AuditedFlight> flights = new ArrayList<>();
        for (int i = 0; i < 44; i++) {
            flights.add(seated(type, i % 11));
        }
        EDGES.row(
                EdgeTopic.DRIVERS,
                "10 persons of one zone, 0 to 10 of them in row 1 at 13 m, the others in row 2 at 21 m; nothing else varies",
                "passengers zone B 100 %",
                shares(drivers(flights).get(0)));
    }

    /** One tank, one hold, one zone: what is given in total lies there. */
    @Test
    void aTotalWithOnePlaceToGoToIsDetail() {
        AircraftType type = withOnePlaceOfEach();
        List<AuditedFlight> flights = new ArrayList<>();
        for (int i = 0; i < 40; i++) {
            Load load = new Load.Totals(Passengers.adults(20), OptionalDouble.empty(), new HoldLoad(50.0 * i, 0));
            flights.add(audited(type, load, new Fuel.Total(4000, 200, 3000), LastMinuteChange.NONE));
        }
        SpreadDrivers found = drivers(flights).get(0);
        EDGES.row(
                EdgeTopic.DRIVERS,
                "one zone, one hold, one tank, each given in total; 40 flights with 0 to 1,950 kg in the hold",
                "40 flights count, 0 do not: hold 3",
                found.flights() + " flights count, " + found.without() + " do not: "
                        + found.drivers().get(0).part());
    }

    @Test
    void aLastMinuteChangeBelongsToThePlaceWhereItIs() {
        List<AuditedFlight> flights = new ArrayList<>();
        for (int i = 0; i < 40; i++) {
            LastMinuteChange change =
                    new LastMinuteChange(List.of(new LastMinuteChange.Part(LoadPart.HOLDS, 2, 0, 0, 20.0 * i)));
            Loading loading = SampleJet.loaded().loading();
            flights.add(audited(SampleJet.type(), loading.load(), loading.fuel(), change));
        }
        EDGES.row(
                EdgeTopic.DRIVERS,
                "the same load closed 40 times; 0 to 780 kg come into hold 3 at the last minute",
                "hold 3",
                drivers(flights).get(0).drivers().get(0).part());
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
