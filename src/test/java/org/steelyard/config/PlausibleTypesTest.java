package org.steelyard.config;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.steelyard.balance.Balance;
import org.steelyard.balance.Balancer;
import org.steelyard.check.flight.Checker;
import org.steelyard.check.result.Assessment;
import org.steelyard.check.result.Status;
import org.steelyard.model.finding.FindingCode;
import org.steelyard.model.finding.Severity;
import org.steelyard.model.loading.Crew;
import org.steelyard.model.loading.FlightIdent;
import org.steelyard.model.loading.FlightSetting;
import org.steelyard.model.loading.Fuel;
import org.steelyard.model.loading.HoldLoad;
import org.steelyard.model.loading.Load;
import org.steelyard.model.loading.Loading;
import org.steelyard.model.loading.Origin;
import org.steelyard.model.loading.Passengers;
import org.steelyard.model.loading.PerformanceLimits;
import org.steelyard.model.loading.ZoneLoad;
import org.steelyard.model.type.Tail;
import org.steelyard.samples.Plain;

/** The invented types behave like aircraft: everyday loads of every tail are clean, one-sided ones are not. */
class PlausibleTypesTest {

    private static final Configuration CONFIGURATION =
            ((ConfigResult.Loaded) ConfigFolder.load(Readme.SHIPPED)).configuration();

    /** Passengers by zone, kg by hold, and fuel: total, taxi, trip in kg; flap settings. */
    @ParameterizedTest
    @CsvSource({
        "jet180, 30 30 30 30 30 30, 0 700 900 600 100, 9000 200 6000, 5, 30",
        "jet180, 30 30 30 30 30 30, 300 900 1000 600 0, 12500 200 9800, 1, 30",
        "jet180, 20 20 20 20 20 20, 0 500 700 400 0, 8000 200 5000, 15, 30",
        "jet180, 12 12 12 12 12 12, 0 300 400 200 0, 7000 200 4000, 5, 30",
        "prop70, 18 18 18 16, 350 500 60, 2300 50 1300, 10, ''",
        "prop70, 12 12 12 10, 150 400 0, 2000 50 900, 15, ''",
        "prop70, 6 6 6 6, 50 200 0, 1500 50 600, 10, ''",
        "single4, 0 0, 5 0, 120 3 50, '', ''",
        "single4, 1 0, 20 0, 130 3 60, '', ''",
        "single4, 1 1, 20 5, 90 3 40, '', ''",
    })
    void everydayLoadsAreClean(String type, String zones, String holds, String fuel, String flaps, String landing) {
        for (Tail tail : tails(type)) {
            Assessment assessment = assess(tail, zones, holds, fuel, flaps, landing);
            assertThat(assessment.status())
                    .as("%s %s", tail.registration(), assessment.findings())
                    .isEqualTo(Status.CLEAN);
        }
    }

    @ParameterizedTest
    @CsvSource({
        "jet180, 5 5 10 10 20 20, 0 0 2000 1800 700, 8000 200 5000, CG_AFT",
        "jet180, 30 30 20 5 0 0, 1200 2000 0 0 0, 9000 200 6000, CG_FORWARD",
        "prop70, 11 11 11 10, 0 930 330, 2300 50 1300, CG_AFT",
        "prop70, 18 12 2 0, 650 0 0, 2300 50 1300, CG_FORWARD",
        "single4, 0 2, 54 22, 80 3 40, CG_AFT",
    })
    void oneSidedLoadsLeaveTheEnvelope(String type, String zones, String holds, String fuel, FindingCode code) {
        for (Tail tail : tails(type)) {
            assertThat(assess(tail, zones, holds, fuel, "", "").findings())
                    .as(tail.registration())
                    .anyMatch(finding -> finding.code() == code && finding.severity() == Severity.BREACH);
        }
    }

    private static List<Tail> tails(String type) {
        List<Tail> tails = CONFIGURATION.tails().values().stream()
                .filter(tail -> tail.type().id().equals(type))
                .toList();
        assertThat(tails).isNotEmpty();
        return tails;
    }

    private static Assessment assess(
            Tail tail, String zones, String holds, String fuel, String flaps, String landingFlaps) {
        List<ZoneLoad> zoneLoads = new ArrayList<>();
        for (double count : numbers(zones)) {
            zoneLoads.add(new ZoneLoad(Passengers.adults((int) count), OptionalDouble.empty()));
        }
        List<HoldLoad> holdLoads = new ArrayList<>();
        for (double massKg : numbers(holds)) {
            holdLoads.add(new HoldLoad(massKg, 0));
        }
        double[] fuels = numbers(fuel);
        Loading loading = Plain.loading(
                new Origin("test", "", 1),
                new FlightIdent("T1", LocalDate.of(2026, 4, 1), "", ""),
                tail,
                new FlightSetting(flaps, "", landingFlaps),
                new Crew(OptionalInt.empty(), OptionalInt.empty(), OptionalDouble.empty(), ""),
                new Load.ByPlace(zoneLoads, holdLoads),
                new Fuel.Total(fuels[0], fuels[1], fuels[2]),
                PerformanceLimits.NONE,
                OptionalDouble.empty(),
                List.of());
        Balance balance = Balancer.balance(loading, CONFIGURATION.policy());
        return Checker.check(loading, balance, CONFIGURATION.policy());
    }

    private static double[] numbers(String text) {
        return Stream.of(text.split(" ", -1)).mapToDouble(Double::parseDouble).toArray();
    }
}
