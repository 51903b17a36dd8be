package org.steelyard.remedy;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.steelyard.balance.Balance;
import org.steelyard.balance.Balancer;
import org.steelyard.check.flight.Checker;
import org.steelyard.check.result.AuditedFlight;
import org.steelyard.check.result.TrafficLoad;
import org.steelyard.check.text.FindingText;
import org.steelyard.model.finding.Finding;
import org.steelyard.model.loading.Loading;
import org.steelyard.model.policy.Policy;
import org.steelyard.samples.Draws;
import org.steelyard.samples.PoundAircraft;
import org.steelyard.samples.PoundAircraft.Writing;
import org.steelyard.samples.RandomAircraft;

/** The unit of a type's figures and the place of its datum are ways to write it down: no answer depends on them. */
class AnotherWritingTest {

    private static final Policy POLICY = RandomAircraft.STRICT;

    /** Limits near the loading, some exactly on it, and a CG that is often outside. */
    private static PoundAircraft drawn(long seed) {
        PoundAircraft aircraft = new PoundAircraft(seed);
        aircraft.flaps = aircraft.random.nextInt(3) == 0 ? "2" : "1";
        aircraft.maxTakeoffLb = aircraft.takeoffLb() + aircraft.random.nextInt(-60, 60);
        aircraft.maxRampLb = aircraft.maxTakeoffLb + aircraft.random.nextInt(0, 40);
        aircraft.maxLandingLb = aircraft.landingLb() + aircraft.random.nextInt(-60, 60);
        aircraft.maxZeroFuelLb = aircraft.zeroFuelLb() + aircraft.random.nextInt(-30, 60);
        aircraft.stepLb = aircraft.takeoffLb() + aircraft.random.nextInt(-2, 3) * 40L;
        aircraft.maxHoldLb[1] = aircraft.holdsLb[1] + aircraft.random.nextInt(-20, 100);
        aircraft.groupLb = aircraft.holdsLb[0] + aircraft.holdsLb[1] + aircraft.random.nextInt(0, 60);
        aircraft.widerIn = aircraft.random.nextInt(2) * 8;
        aircraft.balance(aircraft.random.nextInt(208, 230));
        return aircraft;
    }

    private static List<String> answers(Loading loading) {
        Balance balance = Balancer.balance(loading, POLICY);
        AuditedFlight flight = new AuditedFlight(loading, balance, Checker.check(loading, balance, POLICY));
        List<String> answers = new ArrayList<>();
        answers.add(flight.assessment().status().name());
        for (Finding finding : flight.assessment().findings()) {
            answers.add(finding.severity() + " " + FindingText.sentence(finding, loading.type()));
        }
        answers.add("setting "
                + balance.takeoffTrim()
                        .map(trim -> trim.settingUnits().toString())
                        .orElse(""));
        answers.add("allowed by "
                + flight.assessment().trafficLoad().map(TrafficLoad::limitedBy).orElseThrow());
        answers.add(RemedySearch.of(flight, POLICY)
                .map(remedy -> remedy.means() + " " + remedy.sentence())
                .orElse("no remedy"));
        return answers;
    }

    @Test
    void verdictsSettingsAndRemediesAreTheSame() {
        for (long seed = 1; seed <= Draws.of(400); seed++) {
            PoundAircraft aircraft = drawn(seed);
            List<String> expected = answers(aircraft.loading(Writing.POUNDS));
            for (Writing writing : Writing.values()) {
                assertThat(answers(aircraft.loading(writing)))
                        .as("seed %d, %s", seed, writing)
                        .isEqualTo(expected);
            }
        }
    }
}
