package org.steelyard.report.grade;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.steelyard.grade.make.MadeExercise;
import org.steelyard.model.input.Field;
import org.steelyard.model.loading.Fuel;
import org.steelyard.model.loading.Load;
import org.steelyard.model.loading.Loading;
import org.steelyard.model.loading.ZoneLoad;
import org.steelyard.model.type.AircraftType;
import org.steelyard.model.type.PassengerCategory;
import org.steelyard.model.unit.MassUnit;
import org.steelyard.report.text.CsvFile;
import org.steelyard.report.text.CsvLine;

/** {@code given.csv}: the loadings whose figures the exercises ask for, under headings that say what they mean. */
final class GivenCsv {

    private static final double CLEAN = 1e6;

    private final AircraftType type;
    private final MassUnit unit;

    private GivenCsv(AircraftType type) {
        this.type = type;
        this.unit = type.geometry().units().mass();
    }

    static void write(List<MadeExercise> exercises, Path file) throws IOException {
        GivenCsv given = new GivenCsv(exercises.get(0).asked().type());
        try (CsvFile csv = new CsvFile(file, given.headings())) {
            for (MadeExercise one : exercises) {
                csv.write(given.line(one.asked()));
            }
        }
    }

    private String mass(Field field, String place) {
        return field.key() + (place.isEmpty() ? "" : "." + place) + " (" + unit.symbol() + ")";
    }

    private List<String> headings() {
        List<String> headings = new ArrayList<>(List.of("flight", "date", "tail", "flaps", "pantry"));
        type.cabin().zones().forEach(zone -> {
            headings.add(Field.PASSENGERS.key() + "." + zone.id());
            headings.add(Field.PASSENGERS.key() + "." + zone.id() + "." + PassengerCategory.CHILD.label());
        });
        type.holds().forEach(hold -> headings.add(mass(Field.HOLD_MASS, hold.id())));
        type.fuel().tanks().forEach(tank -> headings.add(mass(Field.FUEL, tank.id())));
        headings.add(mass(Field.TAXI_FUEL, ""));
        headings.add(mass(Field.TRIP_FUEL, ""));
        return headings;
    }

    private CsvLine line(Loading loading) {
        Load.ByPlace load = (Load.ByPlace) loading.load();
        Fuel.ByTank fuel = (Fuel.ByTank) loading.fuel();
        CsvLine line = new CsvLine()
                .text(loading.flight().flight())
                .text(loading.flight().date().toString())
                .text(loading.tail().registration())
                .text(loading.setting().flaps())
                .text(loading.crew().pantryCode());
        for (ZoneLoad zone : load.zones()) {
            line.whole(zone.passengers().adult()).whole(zone.passengers().child());
        }
        load.holds().forEach(hold -> line.number(number(hold.massKg(type.cabin().scheme()))));
        for (int i = 0; i < fuel.tanksKg().size(); i++) {
            line.number(number(fuel.tanksKg().at(i)));
        }
        return line.number(number(fuel.taxiKg())).number(number(fuel.tripKg()));
    }

    private double number(double massKg) {
        return Math.round(unit.fromKg(massKg) * CLEAN) / CLEAN;
    }
}
