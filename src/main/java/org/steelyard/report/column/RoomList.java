package org.steelyard.report.column;

import static org.steelyard.report.column.ListColumn.number;
import static org.steelyard.report.column.ListColumn.text;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.steelyard.check.result.AuditedFlight;
import org.steelyard.model.loading.Loading;
import org.steelyard.remedy.PlaceRoom;
import org.steelyard.remedy.RoomSearch;

/**
 * The columns of the list of rooms: for each flight without a breach one row for each zone and hold. Flights with a
 * breach, and those that give a state alone, are left out. New columns come at the end.
 */
public final class RoomList {

    /**
     * A place of a flight.
     *
     * @param loading the flight
     * @param place what it could still take
     * @param lastMinuteKg last-minute change that the flight stands at any one place, in kg
     */
    public record PlaceOfFlight(Loading loading, PlaceRoom place, double lastMinuteKg) {}

    public static final ColumnList<PlaceOfFlight> COLUMNS = ColumnList.ofFile(Stream.concat(
            LoadingColumns.first(PlaceOfFlight::loading),
            Stream.of(
                    text("place", "the zone or hold", of -> of.place().name()),
                    number(
                            "room_kg",
                            ListUnit.KG,
                            "what it could still take, all else left alone, with every limit kept",
                            of -> OptionalDouble.of(of.place().roomKg())),
                    ListColumn.of(
                            "room_adults",
                            ListUnit.ADULTS,
                            ListColumn.Kind.WHOLE,
                            "how many adults of standard mass that is, in a zone",
                            (of, cells) -> {
                                if (of.place().cabin()) {
                                    cells.whole(of.place().persons());
                                } else {
                                    cells.blank();
                                }
                            }),
                    text(
                            "limited_by",
                            "what forbids more",
                            of -> of.place().limitedBy().label()),
                    number(
                            "last_minute_kg",
                            ListUnit.KG,
                            "last-minute change that the flight stands at any one place, by mass, CG and trim; what a"
                                    + " place itself can take is in `room_kg`",
                            of -> OptionalDouble.of(of.lastMinuteKg())),
                    LoadingColumns.SHEET.of(PlaceOfFlight::loading))));

    private RoomList() {}

    /** The places of a flight; none of one that is left out. */
    public static List<PlaceOfFlight> of(AuditedFlight flight) {
        return RoomSearch.of(flight).stream()
                .flatMap(room -> room.places().stream()
                        .map(place -> new PlaceOfFlight(flight.loading(), place, room.lastMinuteKg())))
                .toList();
    }
}
