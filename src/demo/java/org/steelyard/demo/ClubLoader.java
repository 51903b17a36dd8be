package org.steelyard.demo;

import java.util.Optional;
import org.steelyard.balance.Balance;
import org.steelyard.model.input.Field;
import org.steelyard.model.type.Tank;
import org.steelyard.model.unit.MassUnit;

/** Loads one flight of the club: pilot, a friend or three, bags, and fuel in gallons. */
final class ClubLoader {

    private final Audit audit;
    private final Draws draws;

    ClubLoader(Audit audit, Draws draws) {
        this.audit = audit;
        this.draws = draws;
    }

    /** One try: the row fully loaded, or empty if the draw asks for more than the aircraft takes. */
    Optional<DemoRow> attempt(DemoRow bare) {
        DemoRow row = bare.copy();
        pounds(row, Meaning.of(Field.FLIGHT_CREW_MASS), draws.between(125, 215));
        boolean friend = draws.chance(60);
        persons(row, "front", friend ? 1 : 0, draws.between(105, 215));
        int behind = friend && draws.chance(45) ? draws.between(1, 2) : 0;
        persons(row, "rear", behind, draws.between(85, 190) * behind);
        pounds(row, Meaning.at(Field.HOLD_MASS, "1"), draws.chance(55) ? draws.between(4, 60) : 0);
        if (draws.chance(20)) {
            pounds(row, Meaning.at(Field.HOLD_MASS, "2"), draws.between(3, 15));
        }
        fuel(row);
        return audit.isClean(row) ? Optional.of(row) : Optional.empty();
    }

    private static void persons(DemoRow row, String zone, int count, int pounds) {
        row.count(Meaning.at(Field.PASSENGERS, zone), count);
        if (count > 0) {
            pounds(row, Meaning.at(Field.PASSENGER_MASS, zone), pounds);
        }
    }

    private static void pounds(DemoRow row, Meaning meaning, int pounds) {
        row.mass(meaning, MassUnit.LB.toKg(pounds));
    }

    private void fuel(DemoRow row) {
        int eachTenths = draws.between(90, 250);
        for (Tank tank : row.type().fuel().tanks()) {
            gallons(row, Meaning.at(Field.FUEL, tank.id()), eachTenths + draws.between(-6, 6));
        }
        gallons(row, Meaning.of(Field.TAXI_FUEL), draws.between(8, 15));
        gallons(row, Meaning.of(Field.TRIP_FUEL), eachTenths * draws.between(50, 150) / 100);
    }

    private static void gallons(DemoRow row, Meaning meaning, int tenths) {
        row.put(meaning, new Cell.Amount(tenths / 10.0, 1));
    }

    /** The take-off mass and the CG in inches alone, as from somebody's own spreadsheet. */
    DemoRow takeoffGiven(DemoRow row) {
        Balance balance = audit.balance(row);
        DemoRow given = Coarser.takeoffGiven(row, balance);
        double inches =
                row.type().geometry().units().length().fromM(balance.takeoff().armM());
        given.put(Meaning.of(Field.TAKEOFF_CG), new Cell.Amount(Math.rint(inches * 10) / 10, 1));
        return given;
    }
}
