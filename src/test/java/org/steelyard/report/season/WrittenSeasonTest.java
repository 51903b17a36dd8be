package org.steelyard.report.season;

import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Reports of an earlier season that somebody has changed, or that are cut short, are refused by name. */
class WrittenSeasonTest {

    private static final String HEADINGS =
            "type,flaps,trim_thrust,tail,from,to,extras,tow_cg_pct_mac,trim_units,status\n";

    @TempDir
    private Path folder;

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "jet,5,,Q,A,B,,NaN,0.1,clean | flights.csv:2:tow_cg_pct_mac: this is not as an audit writes it (value 'NaN'",
                "jet,5,,Q,A,B,,25,1e999,clean | flights.csv:2:trim_units: this is not as an audit writes it (value '1e999'",
                "jet,5,,Q,A,B,,1e308,0.1,clean | flights.csv:2:tow_cg_pct_mac: this is not as an audit writes it (value '1e308'",
                "jet,5,,Q,A,B,,25,0x,clean | flights.csv:2:trim_units: this is not as an audit writes it (value '0x'",
                "jet,5,,Q,A,B,,25,0.1,fine | flights.csv:2:status: this is not as an audit writes it (value 'fine'",
                "\"jet,5,,Q,A,B,,25,0.1,clean | flights.csv: this is not as an audit writes it (expected a whole table",
                "jet,5,,\u00E9,A,B,,25,0.1,clean | flights.csv: this is not as an audit writes it (expected a whole table"
            })
    void aTableThatIsNotAsAnAuditWritesItIsRefused(String row, String said) throws IOException {
        Files.write(folder.resolve("flights.csv"), (HEADINGS + row + "\n").getBytes(StandardCharsets.ISO_8859_1));
        Files.writeString(folder.resolve("findings.csv"), "file\n");
        assertThatThrownBy(() -> WrittenSeason.readTables(folder, List.of()))
                .isInstanceOf(IOException.class)
                .hasMessageStartingWith(said);
    }
}
