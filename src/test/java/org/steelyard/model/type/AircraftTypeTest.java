package org.steelyard.model.type;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.limit.Envelope;
import org.steelyard.model.trim.TrimPoint;
import org.steelyard.model.trim.TrimPoints;
import org.steelyard.model.trim.TrimScale;
import org.steelyard.model.trim.TrimUnit;
import org.steelyard.samples.Plain;
import org.steelyard.samples.SampleJet;

/** A type's parts must belong together. */
class AircraftTypeTest {

    private static final AircraftType JET = SampleJet.type();

    private static AircraftType with(List<LoadGroup> groups, List<Envelope> envelopes, List<TrimScale> scales) {
        return Plain.aircraftType(
                JET.id(),
                JET.name(),
                JET.geometry(),
                JET.limits(),
                JET.cabin(),
                JET.holds(),
                groups,
                JET.fuel(),
                envelopes,
                scales);
    }

    private static TrimScale scale(Phase phase, String flaps, String rating) {
        TrimPoints law = new TrimPoints(List.of(new TrimPoint(10, 3), new TrimPoint(30, -3)));
        return Plain.trimScale(phase, flaps, rating, TrimUnit.UNITS, law, 0.1, -2, 2);
    }

    @Test
    void aPhaseWithTwoEnvelopesIsRefused() {
        List<Envelope> envelopes = new ArrayList<>(JET.envelopes());
        envelopes.add(envelopes.get(0));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> with(List.of(), envelopes, List.of()))
                .withMessageContaining("at most one envelope");
    }

    @Test
    void aTypeWithoutAnEnvelopeForTakeoffIsRefused() {
        List<Envelope> envelopes = List.of(JET.envelope(Phase.LANDING).orElseThrow());
        assertThatIllegalArgumentException()
                .isThrownBy(() -> with(List.of(), envelopes, List.of()))
                .withMessageContaining("an envelope for take-off");
    }

    @ParameterizedTest
    @CsvSource({"3, 0", "-1, 0", "0, 3", "0, -1"})
    void aGroupThatNamesAPlaceThatIsNotThereIsRefused(int hold, int zone) {
        LoadGroup group = new LoadGroup("far", "far away", List.of(hold), List.of(zone), 100);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> with(List.of(group), JET.envelopes(), List.of()))
                .withMessageContaining("group far names a place");
    }

    @Test
    void aGroupOfTheLastPlacesIsFine() {
        LoadGroup group = new LoadGroup("last", "last", List.of(2), List.of(2), 100);
        assertThat(with(List.of(group), JET.envelopes(), List.of()).groups()).containsExactly(group);
    }

    @Test
    void twoScalesForOneSettingAreRefused() {
        List<TrimScale> scales = List.of(scale(Phase.TAKEOFF, "5", ""), scale(Phase.TAKEOFF, "5", ""));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> with(List.of(), JET.envelopes(), scales))
                .withMessageContaining("at most one trim scale");
    }

    @Test
    void theScaleForTheThrustRatingComesBeforeTheOneForAny() {
        TrimScale any = scale(Phase.TAKEOFF, "5", "");
        TrimScale rated = scale(Phase.TAKEOFF, "5", "24K");
        TrimScale landing = scale(Phase.LANDING, "30", "");
        for (List<TrimScale> scales : List.of(List.of(any, rated, landing), List.of(landing, rated, any))) {
            AircraftType type = with(List.of(), JET.envelopes(), scales);
            assertThat(type.trimScale(Phase.TAKEOFF, "5", "24K")).contains(rated);
            assertThat(type.trimScale(Phase.TAKEOFF, "5", "22K")).contains(any);
            assertThat(type.trimScale(Phase.TAKEOFF, "5", "")).contains(any);
            assertThat(type.trimScale(Phase.TAKEOFF, "15", "24K")).isEmpty();
            assertThat(type.trimScale(Phase.TAKEOFF, "30", "")).isEmpty();
            assertThat(type.trimScale(Phase.LANDING, "30", "24K")).contains(landing);
        }
        AircraftType only = with(List.of(), JET.envelopes(), List.of(rated));
        assertThat(only.trimScale(Phase.TAKEOFF, "5", "22K")).isEmpty();
    }
}
