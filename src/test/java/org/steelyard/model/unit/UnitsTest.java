package org.steelyard.model.unit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Factors are exact by definition: pound and inch by the international yard and pound agreement of 1959 (NIST SP 811,
 * appendix B), US gallon as 231 cubic inches (same), imperial gallon by the Weights and Measures Act 1985.
 */
class UnitsTest {

    @Test
    void aPoundIsExactly45359237HundredMillionthsOfAKilogram() {
        assertThat(MassUnit.LB.toKg(1)).isEqualTo(0.45359237);
        assertThat(MassUnit.TONNE.toKg(62.5)).isEqualTo(62_500);
    }

    @Test
    void anInchIsExactly254TenthsOfAMillimetre() {
        assertThat(LengthUnit.IN.toM(1)).isEqualTo(0.0254);
        assertThat(LengthUnit.FT.toM(1)).isEqualTo(0.3048);
        assertThat(LengthUnit.MM.toM(7254)).isEqualTo(7.254);
    }

    @Test
    void aUsGallonIs231CubicInches() {
        double cubicInchL = 0.254 * 0.254 * 0.254;
        assertThat(VolumeUnit.US_GAL.toL(1)).isEqualTo(3.785411784).isCloseTo(231 * cubicInchL, within(1e-12));
        assertThat(VolumeUnit.IMP_GAL.toL(1)).isEqualTo(4.54609);
    }

    /** Exam questions of subject 031 in a public question bank, printed to the whole unit; read. */
    @ParameterizedTest
    @CsvSource({"16858, 37166", "125988, 277756"})
    void kilogramsBecomePounds(double kg, double lb) {
        assertThat(MassUnit.LB.fromKg(kg)).isCloseTo(lb, within(0.5));
    }

    @ParameterizedTest
    @EnumSource(MassUnit.class)
    void massesComeBack(MassUnit unit) {
        assertThat(unit.toKg(unit.fromKg(12_345.678))).isCloseTo(12_345.678, within(1e-11));
    }

    @ParameterizedTest
    @EnumSource(LengthUnit.class)
    void lengthsComeBack(LengthUnit unit) {
        assertThat(unit.toM(unit.fromM(17.23))).isCloseTo(17.23, within(1e-14));
    }

    @ParameterizedTest
    @EnumSource(VolumeUnit.class)
    void volumesComeBack(VolumeUnit unit) {
        assertThat(unit.toL(unit.fromL(100))).isCloseTo(100, within(1e-12));
    }
}
