package org.steelyard.model.limit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LimitLineTest {

    private static LimitLine line(Side side, Straightness straight, double... massesAndArms) {
        List<LimitPoint> points = new java.util.ArrayList<>();
        for (int i = 0; i < massesAndArms.length; i += 2) {
            points.add(new LimitPoint(massesAndArms[i], massesAndArms[i + 1]));
        }
        return new LimitLine(side, straight, points);
    }

    /**
     * Forward limits between two masses, straight in arm. Sources: type certificate data sheet A7SO of a light twin
     * (3,400 lb at 82.0 in, 4,000 lb at 86.4 in) and the handbook text of a light single (1,950 lb at 35.0 in, 2,300 lb
     * at 38.5 in), both read; the answers are computed from them.
     */
    @ParameterizedTest
    @CsvSource({
        "3400, 82.0, 4000, 86.4, 3700, 84.2",
        "1950, 35.0, 2300, 38.5, 2125, 36.75",
        "2780, 80.7, 3400, 82.0, 3090, 81.35"
    })
    void straightInArmAgreesWithDataSheets(double m1, double a1, double m2, double a2, double mass, double limit) {
        assertThat(line(Side.FORWARD, Straightness.ARM, m1, a1, m2, a2).armAtM(mass))
                .isCloseTo(limit, within(1e-9));
    }

    @Test
    void straightInMomentDiffersBetweenVerticesAndAgreesAtThem() {
        LimitLine arm = line(Side.FORWARD, Straightness.ARM, 40000, 18, 70000, 19);
        LimitLine moment = line(Side.FORWARD, Straightness.MOMENT, 40000, 18, 70000, 19);
        assertThat(moment.armAtM(40000)).isEqualTo(arm.armAtM(40000));
        assertThat(moment.armAtM(70000)).isEqualTo(arm.armAtM(70000));
        // halfway the moment is (40000*18 + 70000*19)/2 = 1,025,000 over 55,000
        assertThat(moment.armAtM(55000)).isCloseTo(1_025_000.0 / 55_000, within(1e-12));
        assertThat(arm.armAtM(55000)).isCloseTo(18.5, within(1e-12));
    }

    @Test
    void atAStepTheMoreGenerousLimitHolds() {
        LimitLine forward = line(Side.FORWARD, Straightness.ARM, 40000, 18, 60000, 18, 60000, 18.5, 70000, 19);
        assertThat(forward.armAtM(60000)).isEqualTo(18);
        assertThat(forward.armAtM(60000.001)).isGreaterThan(18.4999);
        LimitLine aft = line(Side.AFT, Straightness.ARM, 40000, 20, 60000, 20, 60000, 19.5, 70000, 19.4);
        assertThat(aft.armAtM(60000)).isEqualTo(20);
        LimitLine first = line(Side.AFT, Straightness.ARM, 40000, 20, 40000, 21, 60000, 20);
        assertThat(first.armAtM(40000)).isEqualTo(21);
    }

    @Test
    void roomIsPositiveInsideZeroOnTheLineNegativeOutside() {
        LimitLine forward = line(Side.FORWARD, Straightness.ARM, 40000, 18, 70000, 18);
        assertThat(forward.roomM(50000, 18.2)).isCloseTo(0.2, within(1e-12));
        assertThat(forward.roomM(50000, 18)).isZero();
        assertThat(forward.roomM(50000, 17.9)).isCloseTo(-0.1, within(1e-12));
        LimitLine aft = line(Side.AFT, Straightness.ARM, 40000, 18, 70000, 18);
        assertThat(aft.roomM(50000, 18.2)).isCloseTo(-0.2, within(1e-12));
    }

    @Test
    void aLineIsNeverExtended() {
        LimitLine line = line(Side.FORWARD, Straightness.ARM, 40000, 18, 70000, 18);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> line.armAtM(39999.9))
                .withMessageContaining("40000");
        assertThatIllegalArgumentException().isThrownBy(() -> line.armAtM(70000.1));
    }

    @Test
    void massesThatFallOrDoNotSpanAreRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> line(Side.AFT, Straightness.ARM, 5, 1, 4, 1))
                .withMessageContaining("must not fall");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> line(Side.AFT, Straightness.ARM, 5, 1, 5, 2))
                .withMessageContaining("span");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> line(Side.AFT, Straightness.ARM, 5, 1))
                .withMessageContaining("two vertices");
    }
}
