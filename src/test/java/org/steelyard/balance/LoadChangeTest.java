package org.steelyard.balance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.steelyard.model.unit.MassMoment;

class LoadChangeTest {

    private static final MassMoment STATE = MassMoment.at(10_000, 20);

    @Test
    void movingALoadChangesTheMomentAndNotTheMass() {
        assertThat(LoadChange.move(STATE, 100, 15, 25)).isEqualTo(new MassMoment(10_000, 201_000));
        assertThat(LoadChange.move(STATE, 100, 25, 15)).isEqualTo(new MassMoment(10_000, 199_000));
    }

    @Test
    void aWantedCgNeedsAMassToMoveWithASignForItsDirection() {
        assertThat(LoadChange.massToMoveKg(STATE, 20.1, 15, 25)).isCloseTo(100, within(1e-9));
        assertThat(LoadChange.massToMoveKg(STATE, 19.9, 15, 25)).isCloseTo(-100, within(1e-9));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> LoadChange.massToMoveKg(STATE, 20.1, 15, 15))
                .withMessageContaining("15.0 m");
    }

    @Test
    void aWantedCgNeedsAMassToAddOrToTakeOff() {
        assertThat(LoadChange.massToAddKg(STATE, 21, 31)).isCloseTo(1000, within(1e-9));
        assertThat(LoadChange.massToAddKg(STATE, 19, 29)).isCloseTo(-1000, within(1e-9));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> LoadChange.massToAddKg(STATE, 21, 21))
                .withMessageContaining("never");
    }

    @Test
    void ballastOfAGivenMassHasAnArm() {
        assertThat(LoadChange.armToAddAtM(STATE, 21, 1000)).isCloseTo(31, within(1e-9));
        assertThat(LoadChange.armToAddAtM(STATE, 19, -1000)).isCloseTo(29, within(1e-9));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> LoadChange.armToAddAtM(STATE, 21, 0))
                .withMessageContaining("zero");
    }
}
