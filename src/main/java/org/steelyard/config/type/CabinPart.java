package org.steelyard.config.type;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.steelyard.config.value.Keys;
import org.steelyard.config.value.KnownValues;
import org.steelyard.config.value.Words;
import org.steelyard.config.value.WrittenNumber;
import org.steelyard.model.type.Cabin;
import org.steelyard.model.type.CabinZone;
import org.steelyard.model.type.CrewRole;
import org.steelyard.model.type.CrewStation;
import org.steelyard.model.type.MassScheme;
import org.steelyard.model.type.Pantry;
import org.steelyard.model.type.SeatRow;
import org.steelyard.model.unit.MassMoment;

/** Reads a type's cabin: zones, crew, pantry variations and the scheme of standard masses. */
final class CabinPart {

    private static final int MOST_ROWS = 1000;

    private CabinPart() {}

    static Optional<Cabin> read(Keys keys, KnownValues<MassScheme> schemes) {
        Optional<MassScheme> scheme =
                keys.take(keys.require("scheme", schemes.reference()).flatMap(found -> found));
        int flightCrew = keys.count("flight-crew", 0);
        int cabinCrew = keys.count("cabin-crew", 0);
        keys.names("crew station", "crew-stations", "id");
        List<CrewStation> stations = keys.eachIfAny("crew-stations", CabinPart::station);
        keys.names("pantry", "pantries", "code");
        List<Pantry> pantries = keys.eachIfAny("pantries", CabinPart::pantry);
        keys.names("zone", "zones", "id");
        List<CabinZone> zones = keys.eachIfAny("zones", CabinPart::zone);
        requireRowsOnce(keys, zones);
        keys.requireAftward("zones", zones.stream().map(CabinZone::armM).toList());
        return keys.make(() -> new Cabin(zones, stations, flightCrew, cabinCrew, pantries, scheme.orElseThrow()));
    }

    private static Optional<CrewStation> station(Keys keys) {
        String id = keys.text("id");
        CrewRole role = keys.read("for", Words.choice(CrewRole::label, List.of(CrewRole.values())), CrewRole.FLIGHT);
        double armM = keys.number("arm", WrittenNumber.ARM);
        int seats = keys.count("seats", 1);
        return keys.make(() -> new CrewStation(id, role, armM, seats));
    }

    private static Optional<Pantry> pantry(Keys keys) {
        String code = keys.text("code");
        double massKg = keys.number("mass", WrittenNumber.MASS_OR_NONE);
        double armM = keys.number("arm", WrittenNumber.ARM);
        return keys.make(() -> new Pantry(code, MassMoment.at(massKg, armM)));
    }

    private static Optional<CabinZone> zone(Keys keys) {
        String id = keys.text("id");
        String name = keys.text("name");
        double armM = keys.number("arm", WrittenNumber.ARM);
        int seats = keys.count("seats", 1);
        List<SeatRow> rows = keys.eachIfAny("rows", inner -> rows(inner, armM)).stream()
                .flatMap(List::stream)
                .toList();
        return keys.make(() -> new CabinZone(id, name, armM, seats, rows));
    }

    /** Rows that follow each other at one pitch; without an arm they count at the zone's. */
    private static Optional<List<SeatRow>> rows(Keys keys, double zoneArmM) {
        int first = keys.count("first", 1);
        int last = keys.find("last", WrittenNumber.count(1)).orElse(first);
        Optional<Double> armM = keys.find("arm", WrittenNumber.ARM);
        Optional<Double> pitchM = keys.find("pitch", WrittenNumber.LENGTH);
        int seats = keys.count("seats", 1);
        if (last < first) {
            keys.fault("last", "the last row comes before the first", "a number from " + first + " on");
        } else if (armM.isPresent() && last > first && pitchM.isEmpty() && !keys.has("pitch")) {
            keys.fault("pitch", "the key is missing", "the distance from row to row, as '0.79 m'");
        } else if (armM.isEmpty() && pitchM.isPresent() && !keys.has("arm")) {
            keys.fault("arm", "the key is missing", "the arm of the first row, as '12.4 m'");
        }
        List<SeatRow> rows = new ArrayList<>();
        for (int row = first; row <= Math.min(last, first + MOST_ROWS); row++) {
            double rowArmM = armM.orElse(zoneArmM) + (row - first) * pitchM.orElse(0.0);
            rows.add(new SeatRow(Integer.toString(row), rowArmM, seats));
        }
        return keys.make(() -> rows);
    }

    /** A row number belongs to one row of the whole cabin. */
    private static void requireRowsOnce(Keys keys, List<CabinZone> zones) {
        Map<String, String> owners = new HashMap<>();
        for (int i = 0; i < zones.size(); i++) {
            for (SeatRow row : zones.get(i).rows()) {
                String before = owners.putIfAbsent(row.id(), zones.get(i).id());
                if (before != null) {
                    keys.fault(
                            "zones",
                            i + 1,
                            "rows",
                            "seat row " + row.id() + " stands twice, first in zone " + before,
                            "each row once");
                    return;
                }
            }
        }
    }
}
