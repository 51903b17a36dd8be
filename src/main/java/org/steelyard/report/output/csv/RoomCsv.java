package org.steelyard.report.output.csv;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.steelyard.check.result.AuditedFlight;
import org.steelyard.model.loading.Loading;
import org.steelyard.remedy.PlaceRoom;
import org.steelyard.remedy.Room;
import org.steelyard.remedy.RoomSearch;
import org.steelyard.report.output.SeasonOutput;
import org.steelyard.report.output.SeasonResult;
import org.steelyard.report.text.CsvFile;
import org.steelyard.report.text.CsvLine;
import org.steelyard.report.text.Work;

/**
 * {@code room.csv}: for each flight without a breach one line for each zone and hold: how much could still be added
 * there, all else left alone, what forbids more, and the last-minute change that the flight stands at any one place.
 * Flights with a breach, and those that give a state alone, are left out.
 */
public final class RoomCsv implements SeasonOutput {

    private static final List<String> HEADINGS = List.of(
            "file",
            "row",
            "flight",
            "date",
            "tail",
            "type",
            "place",
            "room_kg",
            "room_adults",
            "limited_by",
            "last_minute_kg",
            "sheet");

    private final CsvFile file;

    public RoomCsv(Path path) throws IOException {
        file = new CsvFile(path, HEADINGS);
    }

    @Override
    public Work begin(List<AuditedFlight> flights) {
        return () -> {
            byte[] lines = lines(flights);
            return () -> file.write(lines);
        };
    }

    private static byte[] lines(List<AuditedFlight> flights) {
        CsvLine line = new CsvLine();
        for (AuditedFlight flight : flights) {
            Optional<Room> room = RoomSearch.of(flight);
            if (room.isPresent()) {
                for (PlaceRoom place : room.get().places()) {
                    add(line, flight.loading(), place, room.get().lastMinuteKg());
                }
            }
        }
        return line.take();
    }

    private static void add(CsvLine line, Loading loading, PlaceRoom place, double lastMinuteKg) {
        line.text(loading.origin().file())
                .whole(loading.origin().row())
                .text(loading.flight().flight())
                .text(loading.flight().date().toString())
                .text(loading.tail().registration())
                .text(loading.type().id())
                .text(place.name())
                .number(place.roomKg());
        if (place.cabin()) {
            line.whole(place.persons());
        } else {
            line.blank();
        }
        line.text(place.limitedBy().label())
                .number(lastMinuteKg)
                .text(loading.origin().sheet())
                .next();
    }

    @Override
    public void finish(SeasonResult result) throws IOException {
        file.close();
    }

    @Override
    public void close() throws IOException {
        file.close();
    }
}
