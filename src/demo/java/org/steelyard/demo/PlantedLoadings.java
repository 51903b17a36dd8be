package org.steelyard.demo;

import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVRecord;
import org.steelyard.model.finding.FindingCode;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.finding.Severity;
import org.steelyard.model.input.Field;
import org.steelyard.model.type.CabinZone;
import org.steelyard.model.type.Hold;
import org.steelyard.model.type.Tail;
import org.steelyard.model.type.Tank;

/**
 * Loadings that are made to be found, one in each row of {@code planted-loadings.csv}, with what must be found. Masses
 * are in the unit of the file that they go into.
 */
final class PlantedLoadings {

    private final SortedMap<String, Tail> fleet;

    PlantedLoadings(SortedMap<String, Tail> fleet) {
        this.fleet = fleet;
    }

    /** The planted flights of a file. */
    List<Entry> of(String file, Style style) throws IOException {
        List<Entry> entries = new ArrayList<>();
        for (CSVRecord record : PlantedTables.read("planted-loadings.csv")) {
            if (record.get("file").equals(file)) {
                entries.add(entry(record, style));
            }
        }
        return entries;
    }

    private Entry entry(CSVRecord record, Style style) {
        LocalDate date = LocalDate.parse(record.get("date"));
        DemoRow row = new DemoRow(style, fleet.get(record.get("tail")));
        row.put(Meaning.of(Field.DATE), new Cell.Day(date));
        row.text(Field.FLIGHT, record.get("flight"));
        row.text(Field.FROM, record.get("from"));
        row.text(Field.TO, record.get("to"));
        row.text(Field.EXTRA, record.get("pilot"));
        row.text(Field.FLAPS, record.get("flaps"));
        row.text(Field.LANDING_FLAPS, record.get("landing flaps"));
        row.text(Field.PANTRY, record.get("pantry"));
        numbers(row, record);
        return new Entry(row, date, record.get("planted"), expected(record.get("expected")), Entry.Shape.FITTING);
    }

    private static void numbers(DemoRow row, CSVRecord record) {
        number(row, Field.FLIGHT_CREW, record.get("flight crew"));
        number(row, Field.FLIGHT_CREW_MASS, record.get("pilot mass"));
        places(row, Field.PASSENGERS, zones(row), record.get("zones"));
        places(row, Field.PASSENGER_MASS, zones(row), record.get("zone masses"));
        places(row, Field.HOLD_MASS, row.type().holds().stream().map(Hold::id).toList(), record.get("holds"));
        places(row, Field.FUEL, row.type().fuel().tanks().stream().map(Tank::id).toList(), record.get("tanks"));
        number(row, Field.TAXI_FUEL, record.get("taxi"));
        number(row, Field.TRIP_FUEL, record.get("trip"));
        number(row, Field.PASSENGERS, record.get("persons"));
        number(row, Field.HOLD_MASS, record.get("load"));
        number(row, Field.FUEL, record.get("fuel"));
        number(row, Field.ZERO_FUEL_MASS, record.get("zfw"));
        number(row, Field.ZERO_FUEL_CG, record.get("zfw cg"));
        number(row, Field.TAKEOFF_MASS, record.get("tow"));
        number(row, Field.TAKEOFF_CG, record.get("tow cg"));
        number(row, Field.TAKEOFF_LIMIT, record.get("tow limit"));
        number(row, Field.LANDING_LIMIT, record.get("lw limit"));
    }

    private static List<String> zones(DemoRow row) {
        return row.type().cabin().zones().stream().map(CabinZone::id).toList();
    }

    /** Numbers in the type's order, one for each place; a dash leaves one blank. */
    private static void places(DemoRow row, Field field, List<String> places, String text) {
        if (text.isBlank()) {
            return;
        }
        List<String> values = Stream.of(text.split(" ", -1)).toList();
        if (values.size() != places.size()) {
            throw new IllegalStateException(text + " is not for " + places);
        }
        for (int i = 0; i < places.size(); i++) {
            if (!values.get(i).equals("-")) {
                row.put(Meaning.at(field, places.get(i)), amount(values.get(i)));
            }
        }
    }

    private static void number(DemoRow row, Field field, String text) {
        if (!text.isBlank()) {
            row.put(Meaning.of(field), amount(text));
        }
    }

    private static Cell amount(String text) {
        int point = text.indexOf('.');
        return new Cell.Amount(Double.parseDouble(text), point < 0 ? 0 : text.length() - point - 1);
    }

    private static List<Expected> expected(String text) {
        List<Expected> expected = new ArrayList<>();
        for (String part : text.split("; ", -1)) {
            String[] words = part.split(" ", 3);
            expected.add(new Expected.Found(
                    PlantedTables.find(FindingCode.values(), FindingCode::code, words[0]),
                    PlantedTables.find(Severity.values(), Severity::label, words[1]),
                    PlantedTables.find(Phase.values(), Phase::label, words[2])));
        }
        return expected;
    }
}
