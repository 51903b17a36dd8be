package org.steelyard.config.value;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.steelyard.model.unit.LengthUnit;
import org.steelyard.model.unit.MassMoment;
import org.steelyard.model.unit.MassUnit;

class WeighingTextTest {

    /**
     * Weighings as they would stand in the fleet file, held against printed centres of gravity: a question set of the
     * Taiwan CAA on loading (no. 25), a question of subject 031 in a public question bank, course notes 030 of the SHGM
     * (chapters 1 and 4); all read.
     */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "nose 22000 lb at 175 in; left 51000 lb at 502 in; right 51700 lb at 502 in | 124700 | 444.3",
                "nose 475 lb at 55 in; right 1046 lb at 121 in; left 1040 lb at 121 in | 2561 | 108.8",
                "nose 500 lb at -20 in; left 2000 lb at 30 in; right 2000 lb at 30 in | 4500 | 24.4"
            })
    void printedWeighingsComeOut(String text, double massLb, double cgIn) throws NotAcceptedException {
        MassMoment basic = WeighingText.read(text).orElseThrow().basic();
        assertThat(MassUnit.LB.fromKg(basic.massKg())).isCloseTo(massLb, within(1e-9));
        assertThat(LengthUnit.IN.fromM(basic.armM())).isCloseTo(cgIn, within(0.05));
    }

    @Test
    void tareIsTakenOffAndWhatDoesNotBelongIsTakenOut() throws NotAcceptedException {
        MassMoment basic = WeighingText.read(
                        "nose 310 kg at 2 m; mains 3010 kg less 10 kg at 6 m; plus oil 10 kg at 1 m; minus fuel 20 kg at 5 m")
                .orElseThrow()
                .basic();
        assertThat(basic.massKg()).isCloseTo(3300, within(1e-9));
        assertThat(basic.momentKgM()).isCloseTo(620 + 18_000 + 10 - 100, within(1e-9));
    }

    @Test
    void aBlankCellHoldsNoWeighing() throws NotAcceptedException {
        assertThat(WeighingText.read(" ")).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "nose 310 kg at 2 m",
                "nose 310 at 2 m; mains 3010 kg at 6 m",
                "nose 310 kg; mains 3010 kg at 6 m",
                "nose 310 kg at 2; mains 3010 kg at 6 m",
                "nose -310 kg at 2 m; mains 3010 kg at 6 m",
                "nose 310 kg at 2 m; mains 3010 kg at 6 m;",
                "310 kg at 2 m; mains 3010 kg at 6 m"
            })
    void whatIsNoWeighingIsRefused(String text) {
        assertThatExceptionOfType(NotAcceptedException.class).isThrownBy(() -> WeighingText.read(text));
    }
}
