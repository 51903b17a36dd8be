package org.steelyard.config.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.steelyard.config.source.ConfigFault;
import org.steelyard.model.type.MeanChord;

class PairsFileTest {

    private static final MeanChord CHORD = new MeanChord(10, 2);

    @TempDir
    private Path folder;

    private PairsFile.Content read(String text) throws IOException {
        return PairsFile.read(Files.writeString(folder.resolve("pairs.csv"), text), CHORD);
    }

    @Test
    void unitsStandInTheCellsOrInTheHeadings() throws IOException {
        PairsFile.Content content = read("""
                cg,setting,mass,note
                24.5 % MAC,0.2 UP,63.6 t,
                10.6 m,1.1 dn,,read twice

                30 % MAC,-1.5,140000 lb,
                """);
        assertThat(content.faults()).isEmpty();
        assertThat(content.pairs()).hasSize(3);
        assertThat(content.pairs().get(0)).isEqualTo(new PairsFile.Pair(2, 24.5, OptionalDouble.of(63_600), 0.2));
        assertThat(content.pairs().get(1).cgPercentMac()).isCloseTo(30, within(1e-9));
        assertThat(content.pairs().get(1).massKg()).isEmpty();
        assertThat(content.pairs().get(1).settingUnits()).isEqualTo(-1.1);
        assertThat(content.pairs().get(2).settingUnits()).isEqualTo(-1.5);
        assertThat(read("setting,cg (% MAC)\n0.2 UP,24.5\n").pairs().get(0).cgPercentMac())
                .isEqualTo(24.5);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "24.5,0.2 UP | pairs.csv:2:cg: the unit is missing",
                "24.5 % MAC,-0.2 UP | pairs.csv:2:setting: a sign and a direction",
                "24.5 % MAC,left | pairs.csv:2:setting: not a number",
                "24.5 % MAC,0.2 UP,5 t | pairs.csv:2: the row has 3 cells",
            })
    void faultsNameFileLineAndColumn(String row, String message) throws IOException {
        PairsFile.Content content = read("cg,setting\n" + row + "\n30 % MAC,1.0 DN\n");
        assertThat(content.pairs()).isEmpty();
        assertThat(content.faults()).hasSize(1);
        assertThat(content.faults().get(0).message()).startsWith(message);
    }

    @Test
    void aMissingFileIsAFault() {
        assertThat(PairsFile.read(folder.resolve("none.csv"), CHORD).faults())
                .extracting(ConfigFault::message)
                .containsExactly("none.csv: the file is missing (expected a file of this name)");
    }
}
