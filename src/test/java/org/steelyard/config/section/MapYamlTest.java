package org.steelyard.config.section;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.steelyard.config.ConfigFolder;
import org.steelyard.config.ConfigResult;
import org.steelyard.config.Readme;
import org.steelyard.model.input.BlankLoad;
import org.steelyard.model.input.ColumnMap;
import org.steelyard.model.input.ColumnRule;
import org.steelyard.model.input.ColumnUnit;
import org.steelyard.model.input.DigitGrouping;
import org.steelyard.model.input.Field;
import org.steelyard.model.input.SourceForm;
import org.steelyard.model.type.PassengerCategory;
import org.steelyard.samples.Plain;

/** What is written is read back as the same, whatever the headings look like. */
class MapYamlTest {

    @TempDir
    private Path folder;

    private static ColumnRule rule(String heading, Field field, String place, ColumnUnit unit) {
        return new ColumnRule(heading, field, place, PassengerCategory.ADULT, unit, List.of(), false);
    }

    private ColumnMap readBack(String yaml) throws IOException {
        Readme.write(folder, Readme.examples());
        Files.writeString(folder.resolve("columns/written.yaml"), yaml);
        ConfigResult result = ConfigFolder.load(folder);
        assertThat(result).isInstanceOf(ConfigResult.Loaded.class);
        return ((ConfigResult.Loaded) result)
                .configuration().maps().stream()
                        .filter(map -> !List.of("example", "items").contains(map.name()))
                        .findFirst()
                        .orElseThrow();
    }

    @Test
    void everyPartOfAMapComesBack() throws IOException {
        ColumnMap map = new ColumnMap(
                "written: \"by\" us",
                List.of("club-*.csv", "#1, [a].csv"),
                "windows-1252",
                Optional.of('\t'),
                true,
                DigitGrouping.APOSTROPHE,
                ColumnMap.UnknownColumns.LEAVE_OUT,
                List.of(
                        new ColumnRule(
                                "Date, time",
                                Field.DATE,
                                "",
                                PassengerCategory.ADULT,
                                ColumnUnit.NONE,
                                List.of("dd.MM.uuuu", "uuuu-MM-dd'T'HH:mmXXX"),
                                true),
                        new ColumnRule(
                                "no",
                                Field.PASSENGERS,
                                "B",
                                PassengerCategory.CHILD,
                                ColumnUnit.NONE,
                                List.of(),
                                false,
                                BlankLoad.MISSING),
                        rule("Fuel # {1} & more", Field.FUEL, "left tip", ColumnUnit.US_GALLON),
                        rule("% MAC", Field.TAKEOFF_CG, "", ColumnUnit.PERCENT_MAC),
                        rule("Départ \\ 'x' \"y\"", Field.FROM, "", ColumnUnit.NONE),
                        rule("- a: b", Field.HOLD_MASS, "nose", ColumnUnit.IN_CELL),
                        rule("line\u0007\tbreak", Field.EXTRA, "", ColumnUnit.NONE),
                        rule("null", Field.FUEL, "", ColumnUnit.IN_HEADING),
                        rule("*x", Field.IGNORED, "", ColumnUnit.NONE)),
                SourceForm.FLIGHTS,
                "example-scheme",
                ColumnMap.MergedCells.FILL_DOWN,
                BlankLoad.NONE);
        String yaml = MapYaml.of(
                map, List.of("a head: with signs", "two\nlines"), Map.of("*x", "left out: why # not\nso", "no", " "));
        assertThat(yaml)
                .startsWith("# a head: with signs\n# two lines\nmap: ")
                .contains("{heading: \"*x\", field: ignored} # left out: why # not so\n");
        assertThat(readBack(yaml)).isEqualTo(map);
    }

    @Test
    void aMapOfLoadItemsComesBack() throws IOException {
        ColumnMap map = Plain.columnMap(
                "of items",
                List.of(),
                "",
                Optional.empty(),
                false,
                DigitGrouping.NONE,
                ColumnMap.UnknownColumns.KEEP,
                List.of(
                        rule("Flight", Field.FLIGHT, "", ColumnUnit.NONE),
                        rule("Where", Field.ITEM_PLACE, "", ColumnUnit.NONE)),
                SourceForm.ITEMS,
                "",
                ColumnMap.MergedCells.FIRST_ROW);
        String yaml = MapYaml.of(map, List.of(), Map.of());
        assertThat(yaml).contains("form: items\n").doesNotContain("scheme:", "merged-cells:");
        assertThat(readBack(yaml)).isEqualTo(map);
    }

    @Test
    void whatIsNotDeclaredIsLeftOut() throws IOException {
        ColumnMap map = Plain.columnMap(
                "plain",
                List.of(),
                "",
                Optional.of('|'),
                false,
                ColumnMap.UnknownColumns.KEEP,
                List.of(rule("Flight", Field.FLIGHT, "", ColumnUnit.NONE)));
        String yaml = MapYaml.of(map, List.of(), Map.of());
        assertThat(yaml).isEqualTo("""
                        map: plain
                        decimal: point
                        unknown-columns: keep
                        columns:
                          - {heading: Flight, field: flight}
                        """);
        assertThat(readBack(yaml).delimiter()).isEmpty();
    }
}
