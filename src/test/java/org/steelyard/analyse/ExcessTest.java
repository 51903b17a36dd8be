package org.steelyard.analyse;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.steelyard.model.Finding;
import org.steelyard.model.FindingCode;
import org.steelyard.model.Phase;
import org.steelyard.model.Policy;
import org.steelyard.model.Quantity;
import org.steelyard.model.Severity;
import org.steelyard.model.SharingRule;

class ExcessTest {

    private static final Policy POLICY = new Policy(0.5, 1, 5, 0.25, SharingRule.BY_CAPACITY);
    private static final Policy NOTHING_IS_CLOSE = new Policy(0, 0, 0, 0, SharingRule.BY_CAPACITY);

    private static Finding breach(FindingCode code, Quantity quantity, double limit, double margin) {
        return new Finding(code, Severity.BREACH, Phase.TAKEOFF, "x", quantity, limit, limit, margin);
    }

    @ParameterizedTest
    @CsvSource({
        "CG_AFT, CG, 34, -1.5, 3",
        "MASS_HIGH, MASS, 70000, -1400, 2",
        "MASS_LOW, MASS, 40000, -400, 1",
        "MASS_OFF_ENVELOPE, MASS, 70000, -700, 1",
        "HOLD_MASS, MASS, 2000, -300, 3",
        "GROUP_MASS, MASS, 4000, -100, 0.5",
        "TANK_CAPACITY, MASS, 8000, -400, 1",
        "FUEL_IMBALANCE, MASS, 400, -40, 2",
        "FLOOR_RUNNING, RUNNING_LOAD, 1000, -50, 1",
        "FLOOR_AREA, AREA_LOAD, 700, -70, 2",
        "TRIM_BAND, TRIM, 5, -0.5, 2",
        "ZONE_SEATS, COUNT, 30, -4, 4",
        "TRIM_OFF_SCALE, NONE, 0, 0, 0",
        "CG_AFT, CG, 34, 0.2, 0"
    })
    void excessIsAMultipleOfWhatThePolicyCallsClose(
            FindingCode code, Quantity quantity, double limit, double margin, double excess) {
        assertThat(Excess.of(breach(code, quantity, limit, margin), POLICY)).isCloseTo(excess, within(1e-12));
    }

    @ParameterizedTest
    @CsvSource({
        "CG_AFT, CG, 34, -1.5, 1.5",
        "MASS_HIGH, MASS, 70000, -1400, 2",
        "HOLD_MASS, MASS, 2000, -30, 1.5",
        "TRIM_BAND, TRIM, 5, -0.5, 0.5"
    })
    void aDistanceOfZeroIsReplacedByAPlainOne(
            FindingCode code, Quantity quantity, double limit, double margin, double excess) {
        assertThat(Excess.of(breach(code, quantity, limit, margin), NOTHING_IS_CLOSE))
                .isCloseTo(excess, within(1e-12));
    }

    @Test
    void aLimitOfZeroDividesByNothing() {
        assertThat(Excess.of(breach(FindingCode.FUEL_SHORT, Quantity.MASS, 0, -30), POLICY))
                .isEqualTo(30);
    }
}
