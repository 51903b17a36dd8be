package org.steelyard.check.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.steelyard.balance.Balancer;
import org.steelyard.balance.FuelPath;
import org.steelyard.check.result.Assessment;
import org.steelyard.check.result.EnvelopeMargin;
import org.steelyard.check.text.FindingText;
import org.steelyard.model.finding.Finding;
import org.steelyard.model.finding.FindingCode;
import org.steelyard.model.limit.LimitLine;
import org.steelyard.model.limit.LimitPoint;
import org.steelyard.model.limit.Side;
import org.steelyard.model.limit.Straightness;
import org.steelyard.model.loading.Fuel;
import org.steelyard.model.loading.Load;
import org.steelyard.model.loading.Loading;
import org.steelyard.model.policy.Policy;
import org.steelyard.model.policy.SharingRule;
import org.steelyard.model.unit.MassMoment;
import org.steelyard.samples.EdgeTable;
import org.steelyard.samples.EdgeTopic;
import org.steelyard.samples.Plain;
import org.steelyard.samples.SampleJet;

/** Above its highest mass an envelope is held against at its top: 60,000 kg and 20 to 30 % MAC for take-off. */
class AboveEnvelopeTest {

    private static final EdgeTable EDGES = new EdgeTable(AboveEnvelopeTest.class);
    private static final Policy STRICT = Plain.policy(0, 0, 0, 0, SharingRule.BY_CAPACITY);

    @AfterAll
    static void write() {
        EDGES.write();
    }

    private static Assessment takeoff(double massKg, double cgPercentMac) {
        Loading loading = SampleJet.loaded()
                .flaps("")
                .load(new Load.TakeoffGiven(MassMoment.at(massKg, 16 + cgPercentMac / 100 * 4)))
                .fuel(new Fuel.NotGiven())
                .loading();
        return Checker.check(loading, Balancer.balance(loading, STRICT), STRICT);
    }

    private static String cgCodes(Assessment assessment) {
        return assessment.findings().stream()
                .filter(one -> one.code() == FindingCode.CG_AFT || one.code() == FindingCode.CG_FORWARD)
                .map(one -> one.code().code() + String.format(Locale.ROOT, " by %.2f %% MAC", -one.margin()))
                .collect(Collectors.joining(", "));
    }

    @Test
    void theCgIsHeldAgainstTheTop() {
        EDGES.row(
                EdgeTopic.ABOVE_ENVELOPE,
                "take-off 61,000 kg at 32 % MAC, envelope 20 to 30 % MAC up to 60,000 kg",
                "cg-aft by 2.00 % MAC",
                cgCodes(takeoff(61_000, 32)));
        EDGES.row(
                EdgeTopic.ABOVE_ENVELOPE,
                "take-off 61,000 kg at 19 % MAC, the same envelope",
                "cg-forward by 1.00 % MAC",
                cgCodes(takeoff(61_000, 19)));
        Assessment inside = takeoff(61_000, 29);
        EDGES.row(EdgeTopic.ABOVE_ENVELOPE, "take-off 61,000 kg at 29 % MAC, the same envelope", "", cgCodes(inside));
        EnvelopeMargin margin = inside.margins().get(0);
        EDGES.row(
                EdgeTopic.ABOVE_ENVELOPE,
                "its room forward, aft and by mass",
                "9.00 and 1.00 % MAC, -1000 kg",
                String.format(
                        Locale.ROOT,
                        "%.2f and %.2f %% MAC, %.0f kg",
                        margin.forwardPercentMac(),
                        margin.aftPercentMac(),
                        margin.massKg()));
    }

    @Test
    void itIsSaid() {
        List<String> said = takeoff(61_000, 32).findings().stream()
                .map(finding -> FindingText.sentence(finding, SampleJet.type()))
                .toList();
        assertThat(said)
                .contains(
                        "take-off CG 32.00 % MAC is 2.00 % MAC behind the envelope's topmost aft limit of 30.00 % MAC")
                .contains("take-off mass 61000 kg is 1000 kg above the masses of the take-off envelope, which end at"
                        + " 60000 kg; at its top the forward limit is 20.00 % MAC and the aft limit 30.00 % MAC");
    }

    /** Below its lowest mass there is nothing to hold it against: what is lighter still is not nearer to its foot. */
    @Test
    void belowThereIsNoRoom() {
        assertThat(takeoff(40_500, 32).margins()).isEmpty();
        assertThat(takeoff(40_500, 32).findings())
                .extracting(Finding::code)
                .contains(FindingCode.MASS_OFF_ENVELOPE)
                .doesNotContain(FindingCode.CG_AFT);
    }

    /** The line ends at 100 kg and 10 m; the path comes from above it. */
    @ParameterizedTest
    @CsvSource({
        // the whole path above: nearest at its rearmost point
        "150, 9.5, 120, 9.8, 0.2, 120",
        "150, 9.9, 120, 9.8, 0.1, 150",
        // across the end: 150 kg at 10.4 m is outside, 90 kg at 9 m is inside
        "150, 10.4, 90, 9, -0.4, 150",
        // nothing burnt
        "150, 10.4, 150, 10.4, -0.4, 150"
    })
    void aPathIsHeldAgainstTheTopToo(
            double fromKg, double fromM, double toKg, double toM, double roomM, double nearestKg) {
        LimitLine aft =
                new LimitLine(Side.AFT, Straightness.ARM, List.of(new LimitPoint(50, 9), new LimitPoint(100, 10)));
        Approach approach = PathApproach.find(
                        new FuelPath(List.of(MassMoment.at(fromKg, fromM), MassMoment.at(toKg, toM))), aft)
                .orElseThrow();
        assertThat(approach.roomM()).isCloseTo(roomM, within(1e-12));
        assertThat(approach.at().massKg()).isEqualTo(nearestKg);
    }
}
