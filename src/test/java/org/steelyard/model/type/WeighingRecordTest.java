package org.steelyard.model.type;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.steelyard.model.unit.MassMoment;

class WeighingRecordTest {

    private static final ScaleReading NOSE = new ScaleReading("nose", 1010, 10, 2);
    private static final ScaleReading MAINS = new ScaleReading("mains", 9000, 0, 12);

    @Test
    void theBasicStateIsTheNetOfAllScalesAndCorrections() {
        MassMoment basic = new WeighingRecord(List.of(NOSE, MAINS), List.of(MassMoment.at(-500, 10))).basic();
        assertThat(basic.massKg()).isEqualTo(9500);
        assertThat(basic.momentKgM()).isEqualTo(1000 * 2 + 9000 * 12 - 500 * 10);
        assertThat(basic.armM()).isCloseTo(105_000.0 / 9500, within(1e-12));
    }

    @Test
    void theLateralCgIsTheSameSum() {
        MassMoment across = new WeighingRecord(
                        List.of(new ScaleReading("left", 4000, 0, -2), new ScaleReading("right", 4100, 0, 2)),
                        List.of())
                .basic();
        assertThat(across.momentKgM()).isEqualTo(200);
    }

    @Test
    void tooFewScalesOrNothingOnThemIsRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new WeighingRecord(List.of(MAINS), List.of()))
                .withMessageContaining("two scales, not 1");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new WeighingRecord(List.of(NOSE, MAINS), List.of(MassMoment.at(-10_000, 10))))
                .withMessageContaining("basic massKg must be more than zero");
    }

    @Test
    void aReadingThatNoScaleShowsIsRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new ScaleReading(" ", 1, 0, 1))
                .withMessageContaining("weighing point");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new ScaleReading("nose", -1, 0, 1))
                .withMessageContaining("readingKg");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new ScaleReading("nose", 1, -1, 1))
                .withMessageContaining("tareKg");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new ScaleReading("nose", 1, 0, Double.NaN))
                .withMessageContaining("armM");
    }
}
