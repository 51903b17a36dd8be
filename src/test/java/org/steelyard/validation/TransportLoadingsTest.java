package org.steelyard.validation;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.steelyard.balance.Balance;
import org.steelyard.balance.Distribution;
import org.steelyard.check.result.Assessment;
import org.steelyard.model.finding.FindingCode;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.finding.Severity;
import org.steelyard.model.limit.MassLimits;
import org.steelyard.model.loading.HoldLoad;
import org.steelyard.model.loading.Loading;
import org.steelyard.model.loading.Passengers;
import org.steelyard.model.loading.PerformanceLimits;
import org.steelyard.model.loading.ZoneLoad;
import org.steelyard.model.type.CabinZone;
import org.steelyard.model.type.Hold;
import org.steelyard.model.type.MeanChord;
import org.steelyard.model.unit.MassMoment;

/** Whole loadings, from empty to landing, through type, loading, balance and checks. */
class TransportLoadingsTest extends PublishedCases {

    TransportLoadingsTest() {
        super("transport-loadings", 7, 0);
    }

    @Override
    void answer(Given given, Answers answers) {
        PlainAircraft aircraft = aircraft(given);
        Loading loading = aircraft.loading();
        Balance balance = aircraft.balance();
        for (Phase phase : List.of(Phase.ZERO_FUEL, Phase.TAKEOFF, Phase.LANDING)) {
            String stem = phase == Phase.ZERO_FUEL ? "zeroFuel" : phase == Phase.TAKEOFF ? "takeoff" : "landing";
            MassMoment state = balance.state(phase).orElseThrow();
            answers.state(stem, stem + "Cg", state);
            given.chord().ifPresent(chord -> answers.number(stem + "PercentMac", chord.percentAt(state.armM())));
        }
        answers.length("basicCg", loading.tail().basic().armM());
        places(loading, balance.distribution().orElseThrow(), answers);
        findings(aircraft.assessment(), answers);
    }

    static PlainAircraft aircraft(Given given) {
        PlainAircraft aircraft =
                new PlainAircraft().basic(basic(given)).operating(MassMoment.at(given.massKg("crew", 0), 0));
        for (Given zone : given.list("zones")) {
            int count = zone.count("passengers");
            double eachKg = zone.massKg("each").orElseThrow();
            aircraft.zone(
                    zone.word("id"),
                    zone.lengthM("arm").orElseThrow(),
                    new ZoneLoad(Passengers.adults(count), OptionalDouble.of(count * eachKg)));
        }
        for (Given hold : given.list("holds")) {
            MassMoment load = hold.item("arm");
            aircraft.hold(hold.word("id"), load.armM(), new HoldLoad(load.massKg(), 0), Optional.empty());
        }
        List<Given> tanks = given.list("tanks");
        for (Given tank : tanks) {
            MassMoment fuel = tank.item("arm");
            aircraft.tank(tank.word("id"), fuel.armM(), fuel.massKg(), fuel.massKg());
        }
        List<String> ids = tanks.stream().map(tank -> tank.word("id")).toList();
        List<Integer> order =
                given.words("burnOrder").stream().map(ids::indexOf).toList();
        aircraft.burn(given.massKg("taxi", 0), given.massKg("trip", 0), order);
        double landingKg = given.massKg("maxLanding", PlainAircraft.VAST_KG);
        aircraft.limits(
                new MassLimits(PlainAircraft.VAST_KG, PlainAircraft.VAST_KG, landingKg, PlainAircraft.VAST_KG, 1),
                PerformanceLimits.NONE);
        given.chord().ifPresent(aircraft::chord);
        given.chord()
                .ifPresent(chord -> aircraft.envelope(
                        limit(given, chord, "forwardPercentMac"), limit(given, chord, "aftPercentMac")));
        return aircraft;
    }

    private static OptionalDouble limit(Given given, MeanChord chord, String name) {
        OptionalDouble percentMac = given.number(name);
        return percentMac.isPresent() ? OptionalDouble.of(chord.armAt(percentMac.getAsDouble())) : percentMac;
    }

    private static MassMoment basic(Given given) {
        return new MassMoment(
                given.massKg("basic").orElseThrow(),
                given.momentKgM("basicMoment").orElse(0));
    }

    private static void places(Loading loading, Distribution distribution, Answers answers) {
        int i = 0;
        for (CabinZone zone : loading.type().cabin().zones()) {
            answers.state(
                    zone.id(),
                    zone.id() + "Cg",
                    MassMoment.at(distribution.zoneKg().at(i++), zone.armM()));
        }
        i = 0;
        MassMoment holds = MassMoment.ZERO;
        for (Hold hold : loading.type().holds()) {
            MassMoment load = MassMoment.at(distribution.holdKg().at(i++), hold.armM());
            answers.state(hold.id(), hold.id() + "Cg", load);
            holds = holds.plus(load);
        }
        answers.state("holds", "holdsCg", holds);
        distribution.passengers().ifPresent(count -> answers.number("passengers", count));
    }

    private static void findings(Assessment assessment, Answers answers) {
        String found = assessment.findings().stream()
                .filter(finding -> finding.severity() != Severity.NOTE)
                .map(finding -> finding.severity().label() + " "
                        + finding.code().code() + " " + finding.phase().label())
                .collect(Collectors.joining(", "));
        answers.word("findings", found.isEmpty() ? "none" : found);
        assessment.findings().stream()
                .filter(finding -> finding.code() == FindingCode.MASS_HIGH && finding.phase() == Phase.LANDING)
                .forEach(finding -> answers.mass("aboveLanding", -finding.margin()));
    }
}
