package org.steelyard.validation;

import java.util.Optional;
import java.util.OptionalDouble;
import org.steelyard.balance.Balance;
import org.steelyard.model.limit.MassLimits;
import org.steelyard.model.loading.HoldLoad;
import org.steelyard.model.loading.Passengers;
import org.steelyard.model.loading.PerformanceLimits;
import org.steelyard.model.loading.ZoneLoad;
import org.steelyard.model.type.MassScheme;
import org.steelyard.model.unit.MassMoment;

/** Passengers, bags and crew counted by a scheme of standard masses. */
class StandardMassesTest extends PublishedCases {

    StandardMassesTest() {
        super("standard-masses", 7, 4);
    }

    @Override
    void answer(Given given, Answers answers) {
        MassScheme scheme = PlainAircraft.scheme(
                given.massKg("male", 1),
                given.massKg("female", 1),
                given.massKg("adult", 1),
                given.massKg("child", 1),
                given.massKg("infant", 0),
                given.massKg("bag", 1));
        Passengers passengers = new Passengers(
                given.count("males"),
                given.count("females"),
                given.count("adults"),
                given.count("children"),
                given.count("infants"));
        HoldLoad hold = new HoldLoad(given.massKg("cargo", 0), given.count("bags"));
        answers.mass("total", passengers.massKg(scheme) + hold.massKg(scheme));
        given.massKg("insteadOf").ifPresent(standardKg -> {
            MassScheme standard = PlainAircraft.scheme(1, 1, standardKg, 1, 0, 1);
            answers.mass("excess", passengers.massKg(scheme) - passengers.massKg(standard));
        });
        given.massKg("dry").ifPresent(dryKg -> {
            double maxKg = given.massKg("maxTakeoff", PlainAircraft.VAST_KG);
            PlainAircraft aircraft = new PlainAircraft()
                    .basic(MassMoment.at(dryKg, 0))
                    .scheme(scheme)
                    .limits(new MassLimits(maxKg, maxKg, maxKg, maxKg, 1), PerformanceLimits.NONE)
                    .zone("all", 0, new ZoneLoad(passengers, OptionalDouble.empty()))
                    .hold("all", 0, hold, Optional.empty())
                    .tank("all", 0, given.massKg("takeoffFuel", 0), given.massKg("takeoffFuel", 0));
            Balance balance = aircraft.balance();
            answers.mass("zeroFuel", balance.zeroFuel().orElseThrow().massKg());
            answers.mass("takeoff", balance.takeoff().massKg());
            answers.mass(
                    "underload",
                    aircraft.assessment().trafficLoad().orElseThrow().underloadKg());
        });
    }
}
