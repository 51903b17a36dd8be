package org.steelyard.analyse.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.steelyard.model.finding.Finding;
import org.steelyard.model.finding.FindingCode;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.finding.Severity;
import org.steelyard.model.unit.Quantity;

class ExcessTest {

    private static Finding breach(FindingCode code, Quantity quantity, double limit, double margin) {
        return new Finding(code, Severity.BREACH, Phase.TAKEOFF, "x", quantity, limit, limit, margin);
    }

    @ParameterizedTest
    @CsvSource({
        "CG_AFT, CG, 34, -1.5, 1.5, % MAC",
        "MASS_HIGH, MASS, 70000, -1400, 2, % of the limit",
        "MASS_LOW, MASS, 40000, -400, 1, % of the limit",
        "MASS_OFF_ENVELOPE, MASS, 70000, -700, 1, % of the limit",
        "HOLD_MASS, MASS, 2000, -300, 15, % of the limit",
        "GROUP_MASS, MASS, 4000, -100, 2.5, % of the limit",
        "TANK_CAPACITY, MASS, 8000, -400, 5, % of the limit",
        "FUEL_IMBALANCE, MASS, 400, -40, 10, % of the limit",
        "FLOOR_RUNNING, RUNNING_LOAD, 1000, -50, 5, % of the limit",
        "FLOOR_AREA, AREA_LOAD, 700, -70, 10, % of the limit",
        "TRIM_BAND, TRIM, 5, -0.5, 0.5, units",
        "ZONE_SEATS, COUNT, 30, -6, 20, % of the limit",
        "TRIM_OFF_SCALE, NONE, 0, 0, 0, % of the limit",
        "CG_AFT, CG, 34, 0.2, 0, % MAC"
    })
    void cgGoesByPercentMacTrimByUnitsAndAllElseByPercentOfItsLimit(
            FindingCode code, Quantity quantity, double limit, double margin, double figure, String unit) {
        Excess excess = Excess.of(breach(code, quantity, limit, margin));
        assertThat(excess.figure()).isCloseTo(figure, within(1e-12));
        assertThat(excess.unit().symbol()).isEqualTo(unit);
    }

    @Test
    void aLimitOfZeroDividesByNothing() {
        assertThat(Excess.of(breach(FindingCode.FUEL_SHORT, Quantity.MASS, 0, -30))
                        .figure())
                .isEqualTo(3000);
    }
}
