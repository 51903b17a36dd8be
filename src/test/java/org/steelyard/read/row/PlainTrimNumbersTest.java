package org.steelyard.read.row;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.steelyard.balance.Balancer;
import org.steelyard.check.text.FindingText;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.limit.CgRange;
import org.steelyard.model.loading.Loading;
import org.steelyard.model.policy.Policy;
import org.steelyard.model.policy.SharingRule;
import org.steelyard.model.trim.TrimPoint;
import org.steelyard.model.trim.TrimScale;
import org.steelyard.model.trim.TrimSlope;
import org.steelyard.model.trim.TrimUnit;
import org.steelyard.model.type.AircraftType;
import org.steelyard.model.unit.MassMoment;
import org.steelyard.read.loading.GivenFlight;
import org.steelyard.samples.EdgeTable;
import org.steelyard.samples.EdgeTopic;
import org.steelyard.samples.Plain;
import org.steelyard.samples.SampleJet;

/** Scales numbered from 2 to 10, whose greater numbers are nose-up or nose-down: 6.0 at 25 % MAC, 0.2 for each 1 %. */
class PlainTrimNumbersTest {

    private static final EdgeTable EDGES = new EdgeTable(PlainTrimNumbersTest.class);
    private static final Policy POLICY = Plain.policy(0, 0, 0, 0, SharingRule.BY_CAPACITY);

    @AfterAll
    static void write() {
        EDGES.write();
    }

    private static Tails fleet(TrimUnit.Numbering numbering) {
        boolean down = numbering == TrimUnit.Numbering.PLAIN_NOSE_DOWN;
        AircraftType jet = SampleJet.type();
        TrimScale scale = Plain.trimScale(
                Phase.TAKEOFF,
                "5",
                "",
                new TrimUnit(TrimUnit.Measure.UNITS, numbering),
                new TrimSlope(new TrimPoint(25, down ? -6 : 6), -0.2, new CgRange(15, 35)),
                0.1,
                down ? -10 : 2,
                down ? -2 : 10);
        AircraftType type = Plain.aircraftType(
                jet.id(),
                jet.name(),
                jet.geometry(),
                jet.limits(),
                jet.cabin(),
                jet.holds(),
                jet.groups(),
                jet.fuel(),
                jet.envelopes(),
                List.of(scale));
        return Tails.of(List.of(Plain.tail("QI-AAA", type, MassMoment.at(40_000, 17))), List.of());
    }

    private static Loading read(TrimUnit.Numbering numbering, String... pairs) {
        List<GivenFlight.Given> given = Stream.concat(
                        Stream.of("tail=QI-AAA", "flaps=5", "takeoff-mass=50t"), Stream.of(pairs))
                .map(pair -> pair.split("=", 2))
                .map(pair -> new GivenFlight.Given(pair[0], pair[1]))
                .toList();
        ParsedRow row = GivenFlight.read(given, fleet(numbering));
        assertThat(row).isInstanceOf(ParsedRow.Accepted.class);
        return ((ParsedRow.Accepted) row).loading();
    }

    private static TrimUnit.Numbering numbering(String way) {
        return way.equals("nose-up") ? TrimUnit.Numbering.PLAIN : TrimUnit.Numbering.PLAIN_NOSE_DOWN;
    }

    /** Nose-up numbers: 6.0 - 0.2 × (CG - 25); nose-down numbers: 6.0 + 0.2 × (CG - 25). */
    @ParameterizedTest
    @CsvSource({
        "nose-up, 25, 6.00",
        "nose-up, 30, 5.00",
        "nose-up, 17.5, 7.50",
        "nose-down, 25, 6.00",
        "nose-down, 30, 7.00",
        "nose-down, 17.5, 4.50"
    })
    void aTrimIsShownAsItStandsOnTheScale(String way, String cgPercentMac, String shown) {
        Loading loading = read(numbering(way), "takeoff-cg=" + cgPercentMac + "%");
        EDGES.row(
                EdgeTopic.WORDS,
                "a scale of plain numbers from 2 to 10 that count " + way + ", CG " + cgPercentMac + " % MAC",
                shown,
                Balancer.balance(loading, POLICY)
                        .takeoffTrim()
                        .map(trim -> FindingText.trim(
                                trim.trimUnits().orElseThrow(),
                                0.01,
                                trim.scale().unit()))
                        .orElse("none"));
    }

    /** Inside, nose-up is positive, so a number of a scale that counts nose-down has a minus sign there. */
    @ParameterizedTest
    @CsvSource({"nose-up, 7.5, 7.5", "nose-down, 7.5, -7.5", "nose-down, 7.5 DN, -7.5", "nose-up, 0, 0.0"})
    void aRecordedNumberIsTheScalesOwn(String way, String written, String inside) {
        Loading loading = read(numbering(way), "takeoff-cg=25%", "recorded-trim=" + written);
        EDGES.row(
                EdgeTopic.WORDS,
                "recorded trim '" + written + "' on a scale of plain numbers that count " + way + ", nose-up positive",
                inside,
                String.format(Locale.ROOT, "%.1f", loading.recordedTrimUnits().orElseThrow()));
    }

    @Test
    void theBandOfPlainNumbersDoesNotBeginBelowZero() {
        TrimUnit plain = new TrimUnit(TrimUnit.Measure.UNITS, TrimUnit.Numbering.PLAIN);
        TrimSlope law = new TrimSlope(new TrimPoint(25, 3), -0.2, new CgRange(15, 35));
        assertThatThrownBy(() -> Plain.trimScale(Phase.TAKEOFF, "5", "", plain, law, 0.1, -1, 6))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("the band of a scale of plain numbers must not begin below 0");
    }

    @Test
    void zeroHasNoSign() {
        TrimUnit down = new TrimUnit(TrimUnit.Measure.DEGREES, TrimUnit.Numbering.PLAIN_NOSE_DOWN);
        assertThat(FindingText.trim(0, 0.1, down)).isEqualTo("0.0°");
        assertThat(FindingText.trim(0.01, 0.1, down)).isEqualTo("0.0°");
        assertThat(FindingText.trim(-3, 0.25, down)).isEqualTo("3.00°");
        assertThat(FindingText.trimAmount(-0.5, 0.1, down)).isEqualTo("0.5°");
    }
}
