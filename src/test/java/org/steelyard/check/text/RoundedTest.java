package org.steelyard.check.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.steelyard.balance.Balance;
import org.steelyard.balance.Balancer;
import org.steelyard.check.flight.Checker;
import org.steelyard.check.type.TypeReview;
import org.steelyard.model.finding.Severity;
import org.steelyard.model.limit.FloorLimit;
import org.steelyard.model.loading.Loading;
import org.steelyard.model.type.AircraftType;
import org.steelyard.model.type.Hold;
import org.steelyard.samples.Draws;
import org.steelyard.samples.EdgeTable;
import org.steelyard.samples.EdgeTopic;
import org.steelyard.samples.Plain;
import org.steelyard.samples.RandomAircraft;
import org.steelyard.samples.SampleJet;

/** What is permitted is rounded down, what is needed up. */
class RoundedTest {

    private static final EdgeTable EDGES = new EdgeTable(RoundedTest.class);

    @ParameterizedTest
    @CsvSource({
        "1497.6, 0, 1497, 1498",
        "1497, 0, 1497, 1497",
        "0.085, 2, 0.08, 0.09",
        "0.29, 2, 0.29, 0.29",
        "677.0000000000001, 0, 677, 677",
        "676.9999999999999, 0, 677, 677",
        "-0.4, 0, -1, 0",
        "-0.00000000000001, 2, 0, 0",
        "-1.21, 1, -1.3, -1.2",
        "0.1234, 3, 0.123, 0.124"
    })
    void downIsNeverAboveAndUpNeverBelow(double amount, int decimals, double down, double up) {
        assertThat(Rounded.down(amount, decimals)).isEqualTo(down);
        assertThat(Rounded.up(amount, decimals)).isEqualTo(up);
    }

    private static AircraftType withFloor(double lengthM, double maxRunningKgPerM) {
        AircraftType jet = SampleJet.type();
        Hold first = jet.holds().get(0);
        FloorLimit floor = new FloorLimit(lengthM, 1.2, OptionalDouble.of(maxRunningKgPerM), OptionalDouble.empty());
        Hold limited = new Hold(first.id(), first.name(), first.armM(), 3_000, Optional.of(floor));
        return Plain.aircraftType(
                jet.id(),
                jet.name(),
                jet.geometry(),
                jet.limits(),
                jet.cabin(),
                List.of(limited, jet.holds().get(1), jet.holds().get(2)),
                jet.groups(),
                jet.fuel(),
                jet.envelopes(),
                jet.trimScales());
    }

    private static String aboutTheFloor(AircraftType type) {
        return TypeReview.of(type, List.of()).stream()
                .filter(remark ->
                        remark.about().equals("hold " + type.holds().get(0).id()))
                .map(remark -> remark.sentence().replaceAll(".*carries ([\\d,]+ kg).*", "$1"))
                .findFirst()
                .orElse("nothing");
    }

    @Test
    void whatAFloorCarriesIsNeverRoundedUp() {
        EDGES.row(
                EdgeTopic.ROUNDED_LIMIT,
                "a floor of 2.08 m for 720 kg/m carries 1,497.6 kg",
                "1,497 kg",
                aboutTheFloor(withFloor(2.08, 720)));
        EDGES.row(
                EdgeTopic.ROUNDED_LIMIT,
                "a floor of 3.2 m for 700 kg/m carries 2,240 kg (3.2 × 700 is 2240.0000000000005 in doubles)",
                "2,240 kg",
                aboutTheFloor(withFloor(3.2, 700)));
        EDGES.row(
                EdgeTopic.ROUNDED_LIMIT,
                "a floor of 3.75 m for 800 kg/m carries 3,000 kg, as much as the hold's limit: nothing to say",
                "nothing",
                aboutTheFloor(withFloor(3.75, 800)));
    }

    private static String breach(Loading loading) {
        Balance balance = Balancer.balance(loading, RandomAircraft.STRICT);
        return Checker.check(loading, balance, RandomAircraft.STRICT).findings().stream()
                .filter(finding -> finding.severity() == Severity.BREACH)
                .map(finding -> FindingText.sentence(finding, loading.type()))
                .findFirst()
                .orElse("nothing");
    }

    /** The sample jet's take-off mass is 53,200 kg. */
    @Test
    void whatIsOutsideNeverLooksAsIfItWereOnTheLimit() {
        EDGES.row(
                EdgeTopic.ROUNDED_LIMIT,
                "0.3 kg above a take-off mass limited to 53,199.7 kg",
                "take-off mass 53200.0 kg is 0.3 kg above the performance-limited take-off mass of 53199.7 kg",
                breach(SampleJet.loaded().takeoffLimit(53_199.7).loading()));
        EDGES.row(
                EdgeTopic.ROUNDED_LIMIT,
                "12.4 kg above a take-off mass limited to 53,187.6 kg: 13 kg have to go",
                "take-off mass 53200 kg is 13 kg above the performance-limited take-off mass of 53188 kg",
                breach(SampleJet.loaded().takeoffLimit(53_187.6).loading()));
    }

    /**
     * The figure of a sentence is put right by, so a limit raised by it is kept, and one raised by a kilogram less is
     * not.
     */
    @Test
    void whatASentenceSaysIsEnoughAndNoMoreThanItsLastDigit() {
        SplittableRandom random = new SplittableRandom(31);
        for (int i = 0; i < Draws.of(500); i++) {
            double limitKg = 53_200 - random.nextDouble(1, 2_000);
            String sentence = breach(SampleJet.loaded().takeoffLimit(limitKg).loading());
            double saidKg = Double.parseDouble(sentence.replaceAll(".* is ([\\d.]+) kg above.*", "$1"));
            assertThat(saidKg).as("limit %s: %s", limitKg, sentence).isBetween(53_200 - limitKg, 53_201 - limitKg);
        }
    }

    @AfterAll
    static void write() {
        EDGES.write();
    }
}
