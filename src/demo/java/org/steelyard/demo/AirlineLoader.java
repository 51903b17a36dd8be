package org.steelyard.demo;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.steelyard.balance.Balance;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.input.Field;
import org.steelyard.model.trim.TrimScale;
import org.steelyard.model.type.CabinZone;
import org.steelyard.model.type.CrewRole;
import org.steelyard.model.type.Hold;
import org.steelyard.model.type.MeanChord;
import org.steelyard.model.type.PassengerCategory;
import org.steelyard.model.type.Tank;
import org.steelyard.model.unit.MassMoment;

/** Loads one flight of the airline, passenger by passenger and hold by hold. */
final class AirlineLoader {

    private static final double BAGS_PER_PASSENGER = 0.85;

    /** Tanks are not filled to the brim. */
    private static final double MOST_FULL = 0.98;

    private final Custom custom;
    private final Network.Route route;
    private final Audit audit;
    private final Draws draws;

    AirlineLoader(Custom custom, Network.Route route, Audit audit, Draws draws) {
        this.custom = custom;
        this.route = route;
        this.audit = audit;
        this.draws = draws;
    }

    /** One try: the row fully loaded, or empty if the draw asks for more than the aircraft takes. */
    Optional<DemoRow> attempt(DemoRow bare, LocalDate date) {
        DemoRow row = bare.copy();
        flaps(row);
        crew(row);
        int seated = passengers(row, date.getMonthValue());
        fuel(row);
        return holds(row, seated) && audit.isClean(row) ? Optional.of(row) : Optional.empty();
    }

    private void flaps(DemoRow row) {
        List<String> settings = row.type().trimScales().stream()
                .filter(scale -> scale.phase() == Phase.TAKEOFF)
                .map(TrimScale::flaps)
                .toList();
        row.text(Field.FLAPS, draws.chance(75) ? route.flaps() : draws.pick(settings));
        row.text(Field.LANDING_FLAPS, custom.landingFlaps());
    }

    private void crew(DemoRow row) {
        for (CrewRole role : CrewRole.values()) {
            int standard = row.type().cabin().standardCrew(role);
            int seats = row.type().cabin().crewSeats(role);
            if (draws.chance(12)) {
                Field field = role == CrewRole.FLIGHT ? Field.FLIGHT_CREW : Field.CABIN_CREW;
                row.count(Meaning.of(field), Math.min(seats, standard + draws.between(0, 1)));
            }
        }
        if (draws.chance(25)) {
            row.text(Field.PANTRY, draws.pick(row.type().cabin().pantries()).code());
        }
    }

    private int passengers(DemoRow row, int month) {
        double usual = route.seatsPercent() * Network.seasonFactor(month);
        double full = Math.min(98, Math.max(10, usual + draws.bell(-25, 25))) / 100;
        boolean children = draws.chance(month == 7 || month == 8 ? 80 : 45);
        int seated = 0;
        for (CabinZone zone : row.type().cabin().zones()) {
            int here = (int) Math.min(zone.seats(), Math.rint(zone.seats() * full * draws.bell(0.8, 1.2)));
            int young = children ? Math.min(here, draws.between(0, 3)) : 0;
            row.count(Meaning.persons(zone.id(), PassengerCategory.ADULT), here - young);
            if (young > 0) {
                row.count(Meaning.persons(zone.id(), PassengerCategory.CHILD), young);
            }
            seated += here;
        }
        if (draws.chance(40)) {
            row.count(Meaning.persons("", PassengerCategory.ADULT), seated);
        }
        return seated;
    }

    private void fuel(DemoRow row) {
        double taxiKg = draws.between(custom.leastTaxiKg(), custom.mostTaxiKg());
        double tripKg = Math.rint(route.tripKg() * draws.bell(0.92, 1.1));
        double totalKg = taxiKg + tripKg + draws.between(custom.leastReserveKg(), custom.mostReserveKg());
        double unevenKg = draws.between(-custom.unevenKg(), custom.unevenKg());
        List<Tank> tanks = row.type().fuel().tanks();
        double sideKg = Math.min(MOST_FULL * tanks.get(0).capacityKg(), totalKg / 2) - custom.unevenKg();
        double leftKg = sideKg + unevenKg / 2;
        double rightKg = sideKg - unevenKg / 2;
        row.fuel(Meaning.of(Field.TAXI_FUEL), taxiKg);
        row.fuel(Meaning.of(Field.TRIP_FUEL), tripKg);
        row.fuel(Meaning.at(Field.FUEL, "left"), leftKg);
        row.fuel(Meaning.at(Field.FUEL, "right"), rightKg);
        double centreKg = totalKg - leftKg - rightKg;
        if (tanks.size() > 2 && centreKg > 2 * custom.unevenKg()) {
            row.fuel(Meaning.at(Field.FUEL, "centre"), centreKg);
        }
    }

    private boolean holds(DemoRow row, int seated) {
        double bags = seated * BAGS_PER_PASSENGER * draws.bell(0.8, 1.2);
        double totalKg = bags * row.type().cabin().scheme().bagKg() + route.cargoKg() * draws.bell(0, 2);
        MassMoment before = audit.balance(row).zeroFuel().orElseThrow();
        MeanChord chord = row.type().geometry().chord();
        double armM = chord.armAt(draws.bell(custom.leastTargetPercentMac(), custom.mostTargetPercentMac()));
        Optional<double[]> parts = new HoldSplit(row.type().holds(), before, draws).towards(armM, totalKg);
        boolean byPieces = draws.chance(35);
        parts.ifPresent(partsKg -> {
            for (int i = 0; i < partsKg.length; i++) {
                hold(row, row.type().holds().get(i), partsKg[i], byPieces);
            }
        });
        return parts.isPresent();
    }

    private static void hold(DemoRow row, Hold hold, double massKg, boolean byPieces) {
        double bagKg = row.type().cabin().scheme().bagKg();
        long bags = byPieces ? (long) (massKg * 0.8 / bagKg) : 0;
        if (bags > 0) {
            row.count(Meaning.at(Field.HOLD_BAGS, hold.id()), bags);
        }
        double restKg = massKg - bags * bagKg;
        if (restKg >= 1 || bags == 0) {
            row.mass(Meaning.at(Field.HOLD_MASS, hold.id()), restKg);
        }
    }

    /** What was set in the cockpit: mostly what the scale asks for, sometimes a step or two beside it. */
    void recordTrim(DemoRow row) {
        Balance balance = audit.balance(row);
        balance.takeoffTrim()
                .ifPresent(trim -> trim.settingUnits().ifPresent(setting -> {
                    int steps = draws.chance(80) ? 0 : draws.between(-2, 2);
                    double set = trim.scale()
                            .settingFor(setting + steps * trim.scale().stepUnits());
                    row.put(Meaning.of(Field.RECORDED_TRIM), TrimCell.of(set, row.style()));
                }));
    }
}
