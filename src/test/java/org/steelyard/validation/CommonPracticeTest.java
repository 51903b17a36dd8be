package org.steelyard.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.steelyard.balance.Balance;
import org.steelyard.balance.Balancer;
import org.steelyard.balance.LoadChange;
import org.steelyard.check.text.FindingText;
import org.steelyard.model.limit.CgRange;
import org.steelyard.model.limit.Envelope;
import org.steelyard.model.limit.Side;
import org.steelyard.model.loading.Loading;
import org.steelyard.model.trim.TrimPoint;
import org.steelyard.model.trim.TrimPoints;
import org.steelyard.model.trim.TrimScale;
import org.steelyard.model.trim.TrimSlope;
import org.steelyard.model.trim.TrimUnit;
import org.steelyard.model.type.MeanChord;
import org.steelyard.model.unit.MassMoment;
import org.steelyard.samples.RandomAircraft;
import org.steelyard.samples.SampleJet;

/** Facts that everybody in the trade knows: common practice, without a source. */
@Tag("validation")
class CommonPracticeTest {

    @ParameterizedTest
    @CsvSource({"0, 16", "100, 20", "25, 17"})
    void percentMacRunsFromTheLeadingToTheTrailingEdge(double percentMac, double armM) {
        MeanChord chord = new MeanChord(16, 4);
        assertThat(chord.armAt(percentMac)).isCloseTo(armM, within(1e-12));
        assertThat(chord.percentAt(armM)).isCloseTo(percentMac, within(1e-12));
    }

    /** With the CG ahead of the centre of lift the tail carries a down load, the more the farther ahead it is. */
    @Test
    void theTailCarriesADownLoadThatGrowsAsTheCgMovesForward() {
        double tailM = 30;
        MassMoment lift = MassMoment.at(60_000, 17.5);
        double lastDownKg = 0;
        for (double cgM = 17.4; cgM > 16; cgM -= 0.2) {
            // lift and tail load together must act where the weight does
            double tailKg = LoadChange.massToAddKg(lift, cgM, tailM);
            assertThat(tailKg).isNegative().isLessThan(lastDownKg);
            lastDownKg = tailKg;
        }
    }

    @Test
    void fartherForwardNeedsMoreNoseUpAndAScaleThatSaysOtherwiseIsRefused() {
        TrimScale scale = SampleJet.type().trimScales().get(0);
        double before = Double.POSITIVE_INFINITY;
        for (double cgPercentMac = 19; cgPercentMac <= 31; cgPercentMac += 0.5) {
            double units = scale.law().trimUnitsAt(cgPercentMac, 50_000).orElseThrow();
            assertThat(units).isLessThan(before);
            before = units;
        }
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new TrimPoints(List.of(new TrimPoint(20, 1), new TrimPoint(30, 2))))
                .withMessageContaining("sign");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new TrimSlope(new TrimPoint(20, 1), 0.1, new CgRange(10, 30)))
                .withMessageContaining("sign");
    }

    @Test
    void burningFuelMovesTheCgInFlight() {
        int moved = 0;
        for (long seed = 0; seed < 200; seed++) {
            Loading loading = new RandomAircraft(seed).loading();
            Balance balance = Balancer.balance(loading, RandomAircraft.STRICT);
            double shiftM =
                    balance.landing().orElseThrow().armM() - balance.takeoff().armM();
            moved += Math.abs(shiftM) > 1e-6 ? 1 : 0;
        }
        assertThat(moved).isGreaterThan(190);
    }

    /** A transport's permissible range is of the order of 20 to 40 % MAC. */
    @Test
    void theSampleJetIsWhereTransportsAre() {
        MeanChord chord = SampleJet.type().geometry().chord();
        for (Envelope envelope : SampleJet.type().envelopes()) {
            for (Side side : Side.values()) {
                double percentMac = chord.percentAt(envelope.line(side).armAtM(50_000));
                assertThat(percentMac).isBetween(10.0, 45.0);
            }
        }
    }

    /** Some 0.2 unit nose-up near 27.5 % MAC is plausible for the scale of a twin-jet. */
    @Test
    void aSettingALittleAboveNeutralIsSaidAsPilotsSayIt() {
        TrimSlope law = new TrimSlope(new TrimPoint(27.5, 0.2), -0.2, new CgRange(15, 40));
        double units = law.trimUnitsAt(27.5, 60_000).orElseThrow();
        assertThat(FindingText.trim(units, 0.1, TrimUnit.UNITS)).isEqualTo("0.2 UP");
        assertThat(FindingText.trim(law.trimUnitsAt(28.5, 60_000).orElseThrow(), 0.1, TrimUnit.UNITS))
                .isEqualTo("0.0");
        assertThat(FindingText.trim(law.trimUnitsAt(34, 60_000).orElseThrow(), 0.1, TrimUnit.UNITS))
                .isEqualTo("1.1 DN");
    }
}
