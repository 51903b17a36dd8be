package org.steelyard.cli.text;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.steelyard.model.loading.Fuel;
import org.steelyard.model.loading.HoldLoad;
import org.steelyard.model.loading.Load;
import org.steelyard.model.loading.Loading;
import org.steelyard.model.loading.Passengers;
import org.steelyard.model.loading.ZoneLoad;
import org.steelyard.model.unit.MassMoment;

/** What a loading says, in the few words that show whether it was understood. */
public final class LoadingLine {

    private LoadingLine() {}

    /** Flight, date, tail, places, load and fuel. */
    public static List<String> cells(Loading loading) {
        String places =
                loading.flight().from().isEmpty() && loading.flight().to().isEmpty()
                        ? ""
                        : loading.flight().from() + "–" + loading.flight().to();
        return List.of(
                loading.flight().flight(),
                loading.flight().date().toString(),
                loading.tail().registration(),
                places,
                load(loading),
                fuel(loading.fuel()));
    }

    private static String load(Loading loading) {
        Load load = loading.load();
        return switch (load.level()) {
            case DETAIL, ZONES, HOLDS, TOTALS -> aboard(load);
            case ZERO_FUEL_GIVEN -> "zero fuel " + state(loading);
            case TAKEOFF_GIVEN -> "take-off " + state(loading);
        };
    }

    private static String aboard(Load load) {
        List<ZoneLoad> zones = load.zonesIfGiven()
                .orElseGet(() -> load.passengersInTotal().stream().toList());
        List<HoldLoad> holds =
                load.holdsIfGiven().orElseGet(() -> load.holdsInTotal().stream().toList());
        int persons = zones.stream()
                .map(ZoneLoad::passengers)
                .mapToInt(LoadingLine::persons)
                .sum();
        return persons(persons) + ", " + holds(holds);
    }

    private static int persons(Passengers passengers) {
        return passengers.male() + passengers.female() + passengers.adult() + passengers.child() + passengers.infant();
    }

    private static String persons(int persons) {
        return persons + (persons == 1 ? " passenger" : " passengers");
    }

    private static String holds(List<HoldLoad> holds) {
        double massKg = holds.stream().mapToDouble(HoldLoad::massKg).sum();
        int bags = holds.stream().mapToInt(HoldLoad::bags).sum();
        return kg(massKg) + (bags > 0 ? " and " + bags + " bags" : "") + " in holds";
    }

    private static String state(Loading loading) {
        MassMoment state = loading.load().state().orElseThrow();
        double cg = loading.tail().type().geometry().chord().percentAt(state.armM());
        return kg(state.massKg()) + String.format(Locale.ROOT, " at %.1f %% MAC", cg);
    }

    private static String fuel(Fuel fuel) {
        OptionalDouble rampKg = fuel.rampKg();
        return rampKg.isEmpty()
                ? "no fuel given"
                : kg(rampKg.getAsDouble())
                        + String.format(Locale.ROOT, " fuel, %,.0f taxi, %,.0f trip", fuel.taxiKg(), fuel.tripKg());
    }

    private static String kg(double massKg) {
        return String.format(Locale.ROOT, "%,.0f kg", massKg);
    }
}
