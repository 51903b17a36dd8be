package org.steelyard.validation;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.steelyard.balance.LoadChange;
import org.steelyard.model.type.MeanChord;
import org.steelyard.model.type.Tank;
import org.steelyard.model.type.TankPoint;
import org.steelyard.model.unit.MassMoment;
import org.steelyard.samples.Plain;

/** A tank's own table, and the moment of what burns out of it. */
class FuelTablesTest extends PublishedCases {

    FuelTablesTest() {
        super("fuel-tables", 6, 1);
    }

    @Override
    void answer(Given given, Answers answers) {
        if (given.massKg("takeoff").isPresent()) {
            states(given, answers);
            return;
        }
        List<TankPoint> rows = new ArrayList<>();
        for (Given row : given.list("table")) {
            double massKg =
                    row.massKg("mass").orElseGet(() -> row.massKg("volume").orElseThrow());
            OptionalDouble momentKgM = row.momentKgM("moment");
            rows.add(Plain.tankPoint(
                    massKg,
                    momentKgM.isPresent()
                            ? momentKgM.getAsDouble() / massKg
                            : row.lengthM("arm").orElseThrow()));
        }
        Tank tank = Plain.tank("case", "case", rows.get(rows.size() - 1).quantityKg(), rows);
        MassMoment burnt = contents(tank, given.massKg("from").orElseThrow())
                .minus(contents(tank, given.massKg("to").orElseThrow()));
        answers.state("burnt", "burntArm", burnt);
        given.massKg("at")
                .ifPresent(
                        massKg -> answers.length("arm", contents(tank, massKg).armM()));
    }

    private static MassMoment contents(Tank tank, double massKg) {
        return new MassMoment(massKg, tank.momentKgM(massKg));
    }

    private static void states(Given given, Answers answers) {
        MeanChord chord = given.chord().orElseThrow();
        MassMoment takeoff = state(given, chord, "takeoff", "takeoff");
        MassMoment landing = state(given, chord, "landing", "landing");
        answers.state("burnt", "burntArm", takeoff.minus(landing));
        double addedKg = given.massKg("added").orElseThrow();
        answers.length(
                "addedAtTakeoff", LoadChange.armToAddAtM(takeoff, wanted(given, chord, "afterTakeoff"), addedKg));
        answers.length(
                "addedAtLanding", LoadChange.armToAddAtM(landing, wanted(given, chord, "afterLanding"), addedKg));
    }

    private static MassMoment state(Given given, MeanChord chord, String mass, String position) {
        return MassMoment.at(given.massKg(mass).orElseThrow(), wanted(given, chord, position));
    }

    private static double wanted(Given given, MeanChord chord, String position) {
        return chord.armAt(given.number(position + "PercentMac").orElseThrow());
    }
}
