package org.steelyard.cli;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.steelyard.cli.text.LoadingLine;
import org.steelyard.model.loading.HoldLoad;
import org.steelyard.model.loading.Load;
import org.steelyard.model.loading.Loading;
import org.steelyard.model.loading.Passengers;
import org.steelyard.model.loading.ZoneLoad;
import org.steelyard.samples.EdgeTable;
import org.steelyard.samples.EdgeTopic;
import org.steelyard.samples.SampleJet;

/** Every level of a load is shown, whichever parts are in total. */
class LoadingLineTest {

    private static final EdgeTable EDGES = new EdgeTable(LoadingLineTest.class);
    private static final HoldLoad HOLD = new HoldLoad(150, 2);

    private final Loading jet = SampleJet.loaded().loading();

    @AfterAll
    static void write() {
        EDGES.write();
    }

    @Test
    void passengersByZoneBesideHoldsInTotalAreShown() {
        List<ZoneLoad> zones = jet.load().zonesIfGiven().orElseThrow().stream()
                .map(zone -> new ZoneLoad(Passengers.adults(2), OptionalDouble.empty()))
                .toList();
        EDGES.row(
                EdgeTopic.KINDS_OF_ROW,
                "first flights of a drafted map: 2 persons in each of " + zones.size()
                        + " zones, 150 kg and 2 bags in all",
                2 * zones.size() + " passengers, 150 kg and 2 bags in holds",
                shown(new Load.ByZone(zones, HOLD)));
    }

    @Test
    void holdsByPlaceBesidePassengersInTotalAreShown() {
        List<HoldLoad> holds = jet.load().holdsIfGiven().orElseThrow().stream()
                .map(hold -> HOLD)
                .toList();
        EDGES.row(
                EdgeTopic.KINDS_OF_ROW,
                "first flights of a drafted map: 7 persons in all, 150 kg and 2 bags in each of " + holds.size()
                        + " holds",
                "7 passengers, " + 150 * holds.size() + " kg and " + 2 * holds.size() + " bags in holds",
                shown(new Load.ByHold(Passengers.adults(7), OptionalDouble.empty(), holds)));
    }

    private String shown(Load load) {
        return LoadingLine.cells(jet.with(load, jet.fuel())).get(4);
    }
}
