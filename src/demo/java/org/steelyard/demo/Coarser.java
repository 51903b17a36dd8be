package org.steelyard.demo;

import java.util.List;
import org.steelyard.balance.Balance;
import org.steelyard.model.input.Field;
import org.steelyard.model.type.Hold;
import org.steelyard.model.type.PassengerCategory;
import org.steelyard.model.type.Tank;
import org.steelyard.model.unit.MassMoment;

/** Makes of a fully detailed row one that says less, as many exports do. */
final class Coarser {

    private Coarser() {}

    /** Passengers, baggage and fuel in total only. */
    static DemoRow totals(DemoRow row) {
        DemoRow totals = row.copy();
        totals.remove(meaning -> isLoad(meaning) || meaning.field() == Field.FUEL);
        long children = persons(row, PassengerCategory.CHILD);
        totals.count(Meaning.persons("", PassengerCategory.ADULT), persons(row, PassengerCategory.ADULT) + children);
        totals.count(Meaning.persons("", PassengerCategory.INFANT), children % 3);
        totals.count(Meaning.of(Field.HOLD_MASS), sum(row, Field.HOLD_MASS, holds(row)));
        totals.count(Meaning.of(Field.HOLD_BAGS), sum(row, Field.HOLD_BAGS, holds(row)));
        totals.count(Meaning.of(Field.FUEL), sum(row, Field.FUEL, tanks(row)));
        return totals;
    }

    /** The zero-fuel state as somebody else computed it, and the fuel. */
    static DemoRow zeroFuelGiven(DemoRow row, Balance balance) {
        DemoRow given = row.copy();
        given.remove(meaning -> isLoad(meaning) || isCrew(meaning));
        state(given, balance.zeroFuel().orElseThrow(), Field.ZERO_FUEL_MASS, Field.ZERO_FUEL_CG);
        return given;
    }

    /** The take-off state alone. */
    static DemoRow takeoffGiven(DemoRow row, Balance balance) {
        DemoRow given = row.copy();
        given.remove(meaning -> isLoad(meaning) || isCrew(meaning) || isFuel(meaning));
        given.remove(meaning -> meaning.field() == Field.LANDING_FLAPS || meaning.field() == Field.LANDING_LIMIT);
        state(given, balance.takeoff(), Field.TAKEOFF_MASS, Field.TAKEOFF_CG);
        return given;
    }

    private static void state(DemoRow row, MassMoment state, Field mass, Field cg) {
        double percentMac = row.type().geometry().chord().percentAt(state.armM());
        row.mass(Meaning.of(mass), state.massKg());
        row.put(Meaning.of(cg), new Cell.Amount(Math.rint(percentMac * 10) / 10, 1));
    }

    private static boolean isLoad(Meaning meaning) {
        return switch (meaning.field()) {
            case PASSENGERS, PASSENGER_MASS, HOLD_MASS, HOLD_BAGS -> true;
            default -> false;
        };
    }

    private static boolean isCrew(Meaning meaning) {
        return switch (meaning.field()) {
            case FLIGHT_CREW, CABIN_CREW, FLIGHT_CREW_MASS, PANTRY -> true;
            default -> false;
        };
    }

    private static boolean isFuel(Meaning meaning) {
        return switch (meaning.field()) {
            case FUEL, TAXI_FUEL, TRIP_FUEL -> true;
            default -> false;
        };
    }

    private static long persons(DemoRow row, PassengerCategory category) {
        return row.type().cabin().zones().stream()
                .mapToLong(zone -> whole(row, Meaning.persons(zone.id(), category)))
                .sum();
    }

    private static List<String> holds(DemoRow row) {
        return row.type().holds().stream().map(Hold::id).toList();
    }

    private static List<String> tanks(DemoRow row) {
        return row.type().fuel().tanks().stream().map(Tank::id).toList();
    }

    private static long sum(DemoRow row, Field field, List<String> places) {
        return places.stream()
                .mapToLong(place -> whole(row, Meaning.at(field, place)))
                .sum();
    }

    private static long whole(DemoRow row, Meaning meaning) {
        return Math.round(row.number(meaning).orElse(0));
    }
}
