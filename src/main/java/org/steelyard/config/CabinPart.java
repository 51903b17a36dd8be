package org.steelyard.config;

import java.util.List;
import java.util.Optional;
import org.steelyard.model.Cabin;
import org.steelyard.model.CabinZone;
import org.steelyard.model.CrewRole;
import org.steelyard.model.CrewStation;
import org.steelyard.model.MassMoment;
import org.steelyard.model.MassScheme;
import org.steelyard.model.Pantry;
import org.steelyard.model.SeatRows;

/** Reads a type's cabin: zones, crew, pantry variations and the scheme of standard masses. */
final class CabinPart {

    private CabinPart() {}

    static Optional<Cabin> read(Keys keys, Known<MassScheme> schemes) {
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
        keys.requireAftward("zones", zones.stream().map(CabinZone::armM).toList());
        return keys.make(() -> new Cabin(zones, stations, flightCrew, cabinCrew, pantries, scheme.orElseThrow()));
    }

    private static Optional<CrewStation> station(Keys keys) {
        String id = keys.text("id");
        CrewRole role = keys.read("for", Words.choice(CrewRole::label, List.of(CrewRole.values())), CrewRole.FLIGHT);
        double armM = keys.number("arm", Measure.ARM);
        int seats = keys.count("seats", 1);
        return keys.make(() -> new CrewStation(id, role, armM, seats));
    }

    private static Optional<Pantry> pantry(Keys keys) {
        String code = keys.text("code");
        double massKg = keys.number("mass", Measure.MASS_OR_NONE);
        double armM = keys.number("arm", Measure.ARM);
        return keys.make(() -> new Pantry(code, MassMoment.at(massKg, armM)));
    }

    private static Optional<SeatRows> rows(Keys keys) {
        int count = keys.count("count", 1);
        double pitchM = keys.number("pitch", Measure.LENGTH);
        return keys.make(() -> new SeatRows(count, pitchM));
    }

    private static Optional<CabinZone> zone(Keys keys) {
        String id = keys.text("id");
        String name = keys.text("name");
        double armM = keys.number("arm", Measure.ARM);
        int seats = keys.count("seats", 1);
        Optional<SeatRows> rows = keys.partIfAny("rows", CabinPart::rows);
        return keys.make(() -> new CabinZone(id, name, armM, seats, rows));
    }
}
