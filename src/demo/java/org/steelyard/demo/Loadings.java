package org.steelyard.demo;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.steelyard.model.input.Field;
import org.steelyard.model.loading.Crew;
import org.steelyard.model.loading.FlightIdent;
import org.steelyard.model.loading.FlightSetting;
import org.steelyard.model.loading.Fuel;
import org.steelyard.model.loading.HoldLoad;
import org.steelyard.model.loading.LastMinuteChange;
import org.steelyard.model.loading.Load;
import org.steelyard.model.loading.Loading;
import org.steelyard.model.loading.Origin;
import org.steelyard.model.loading.Passengers;
import org.steelyard.model.loading.PerformanceLimits;
import org.steelyard.model.loading.ZoneLoad;
import org.steelyard.model.type.CabinZone;
import org.steelyard.model.type.Hold;
import org.steelyard.model.type.PassengerCategory;
import org.steelyard.model.unit.Amounts;
import org.steelyard.model.unit.LengthUnit;
import org.steelyard.model.unit.MassMoment;

/** What a row means as a loading: the same that reading its file gives. */
final class Loadings {

    private final DemoRow row;

    private Loadings(DemoRow row) {
        this.row = row;
    }

    static Loading of(DemoRow row) {
        return new Loadings(row).loading();
    }

    private Loading loading() {
        return new Loading(
                new Origin("demo", "", 1),
                new FlightIdent(row.text(Field.FLIGHT), LocalDate.EPOCH, row.text(Field.FROM), row.text(Field.TO)),
                row.tail(),
                new FlightSetting(row.text(Field.FLAPS), "", row.text(Field.LANDING_FLAPS)),
                row.tail().scheme(),
                new Crew(
                        row.count(Meaning.of(Field.FLIGHT_CREW)),
                        row.count(Meaning.of(Field.CABIN_CREW)),
                        row.massKg(Meaning.of(Field.FLIGHT_CREW_MASS)),
                        row.text(Field.PANTRY)),
                load(),
                fuel(),
                LastMinuteChange.NONE,
                new PerformanceLimits(
                        row.massKg(Meaning.of(Field.TAKEOFF_LIMIT)), row.massKg(Meaning.of(Field.LANDING_LIMIT))),
                OptionalDouble.empty(),
                List.of(),
                List.of());
    }

    private Load load() {
        if (row.has(Field.TAKEOFF_MASS)) {
            return new Load.TakeoffGiven(state(Field.TAKEOFF_MASS, Field.TAKEOFF_CG));
        }
        if (row.has(Field.ZERO_FUEL_MASS)) {
            return new Load.ZeroFuelGiven(state(Field.ZERO_FUEL_MASS, Field.ZERO_FUEL_CG));
        }
        if (row.cell(Meaning.of(Field.HOLD_MASS)).isPresent()) {
            return new Load.Totals(passengers(""), OptionalDouble.empty(), hold(""));
        }
        List<ZoneLoad> zones = new ArrayList<>();
        for (CabinZone zone : row.type().cabin().zones()) {
            zones.add(new ZoneLoad(passengers(zone.id()), row.massKg(Meaning.at(Field.PASSENGER_MASS, zone.id()))));
        }
        List<HoldLoad> holds = new ArrayList<>();
        for (Hold hold : row.type().holds()) {
            holds.add(hold(hold.id()));
        }
        return new Load.ByPlace(zones, holds);
    }

    /** A CG in the unit of its file: inches in the club's, % MAC else. */
    private MassMoment state(Field mass, Field cg) {
        double massKg = row.massKg(Meaning.of(mass)).orElseThrow();
        double inCell = row.number(Meaning.of(cg)).orElseThrow();
        double armM = row.style() == Style.CLUB
                ? LengthUnit.IN.toM(inCell)
                : row.type().geometry().chord().armAt(inCell);
        return MassMoment.at(massKg, armM);
    }

    private Passengers passengers(String zone) {
        return new Passengers(
                0,
                0,
                row.count(Meaning.persons(zone, PassengerCategory.ADULT)).orElse(0),
                row.count(Meaning.persons(zone, PassengerCategory.CHILD)).orElse(0),
                row.count(Meaning.persons(zone, PassengerCategory.INFANT)).orElse(0));
    }

    private HoldLoad hold(String hold) {
        return new HoldLoad(
                row.massKg(Meaning.at(Field.HOLD_MASS, hold)).orElse(0),
                row.count(Meaning.at(Field.HOLD_BAGS, hold)).orElse(0));
    }

    private Fuel fuel() {
        if (row.has(Field.TAKEOFF_MASS)) {
            return new Fuel.NotGiven();
        }
        double taxiKg = row.fuelKg(Meaning.of(Field.TAXI_FUEL));
        double tripKg = row.fuelKg(Meaning.of(Field.TRIP_FUEL));
        if (row.cell(Meaning.of(Field.FUEL)).isPresent()) {
            return new Fuel.Total(row.fuelKg(Meaning.of(Field.FUEL)), taxiKg, tripKg);
        }
        double[] tanksKg = row.type().fuel().tanks().stream()
                .mapToDouble(tank -> row.fuelKg(Meaning.at(Field.FUEL, tank.id())))
                .toArray();
        return new Fuel.ByTank(Amounts.of(tanksKg), taxiKg, tripKg);
    }
}
