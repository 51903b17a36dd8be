package org.steelyard.config.value;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Factors: NIST SP 811, appendix B; the imperial gallon from the Weights and Measures Act 1985 (United Kingdom). */
class MeasureTest {

    @ParameterizedTest
    @CsvSource({
        "62.7 t, 62700",
        "64.1 t, 64100",
        "18500 kg, 18500",
        "1 lb, 0.45359237",
        "2650 lb, 1202.0197805",
        "0.1 t, 100",
    })
    void aMassIsTheNearestDoubleToItsDecimalKilograms(String text, double massKg) throws NotAcceptedException {
        assertThat(WrittenNumber.MASS.read(text)).isEqualTo(massKg);
    }

    @ParameterizedTest
    @CsvSource({
        "12.4 m, 12.4",
        "1240 cm, 12.4",
        "12400 mm, 12.4",
        "86.6 in, 2.19964",
        "-3 ft, -0.9144",
    })
    void anArmIsTheNearestDoubleToItsDecimalMetres(String text, double armM) throws NotAcceptedException {
        assertThat(WrittenNumber.ARM.read(text)).isEqualTo(armM);
    }

    @ParameterizedTest
    @CsvSource({
        "100 L, 71",
        "45 US gal, 120.9439064988",
        "1 imp gal, 3.2277239",
        "10 lb, 4.5359237",
    })
    void fuelByVolumeIsItsDecimalMassAtTheDensity(String text, double massKg) throws NotAcceptedException {
        assertThat(WrittenNumber.fuel(0.71).read(text)).isEqualTo(massKg);
    }

    @Test
    void quotientsOfUnitsAreConvertedByBothFactors() throws NotAcceptedException {
        assertThat(WrittenNumber.DENSITY.read("6 lb/US gal")).isCloseTo(6 * 0.45359237 / 3.785411784, within(1e-15));
        assertThat(WrittenNumber.RUNNING.read("400 lb/ft")).isCloseTo(400 * 0.45359237 / 0.3048, within(1e-12));
        assertThat(WrittenNumber.AREA.read("100 lb/ft2"))
                .isCloseTo(100 * 0.45359237 / (0.3048 * 0.3048), within(1e-12));
        assertThat(WrittenNumber.MOMENT.read("1000 lb in")).isEqualTo(11.521246198);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "kg",
                "1",
                "1kgs",
                "+1 kg",
                "01 kg",
                "1. kg",
                ".5 kg",
                "1e3 kg",
                "1_000 kg",
                "1,5 kg",
                "1 000 kg",
                "0x10 kg",
                "--1 kg",
                "1 kg 2 lb",
                "NaN kg",
                "Infinity kg",
                "１ kg",
                "1 KG"
            })
    void whatIsNoPlainDecimalWithAKnownUnitIsRefused(String text) {
        assertThatExceptionOfType(NotAcceptedException.class).isThrownBy(() -> WrittenNumber.MASS.read(text));
    }

    @ParameterizedTest
    @ValueSource(strings = {"1kg", "1 kg", "1  kg"})
    void theGapBeforeAUnitDoesNotMatter(String text) throws NotAcceptedException {
        assertThat(WrittenNumber.MASS.read(text)).isEqualTo(1);
    }
}
