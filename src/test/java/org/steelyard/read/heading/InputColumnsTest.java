package org.steelyard.read.heading;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.steelyard.model.input.BlankLoad;
import org.steelyard.model.input.ColumnUnit;
import org.steelyard.model.input.Field;
import org.steelyard.model.input.Slot;
import org.steelyard.model.input.SourceForm;
import org.steelyard.read.row.Fixtures;
import org.steelyard.read.row.TypePlan;
import org.steelyard.read.text.KnownNames;

/** The table of columns in the README says what the readers do: every field, its form, kind, place and units. */
class InputColumnsTest {

    private static List<String> rowsOfTheReadme() throws IOException {
        List<String> rows = new ArrayList<>();
        for (String line : Files.readAllLines(Path.of("data-in/README.md"), StandardCharsets.UTF_8)) {
            String[] cells = line.split("\\|", -1);
            if (line.startsWith("| `") && cells.length == 8) {
                rows.add(Stream.of(cells).skip(1).limit(5).map(String::strip).collect(Collectors.joining("|")));
            }
        }
        return rows;
    }

    private static String row(Field field) {
        return String.join("|", "`" + field.key() + "`", form(field), kind(field), place(field), units(field));
    }

    private static String form(Field field) {
        boolean both = field.suits(SourceForm.FLIGHTS) && field.suits(SourceForm.ITEMS);
        return both ? "both" : field.suits(SourceForm.ITEMS) ? "items" : "flights";
    }

    private static String kind(Field field) {
        String word = field.kind() == Field.Kind.CG ? "CG" : field.kind().name().toLowerCase(Locale.ROOT);
        return (field.isChange() ? "signed " : "") + word;
    }

    /** The kind of place that the reader finds for a column of the field. */
    private static String place(Field field) {
        ColumnUnit unit = Stream.of(ColumnUnit.values())
                .filter(one -> one.suits(field))
                .findFirst()
                .orElseThrow();
        List<String> kinds = new ArrayList<>();
        for (String place : List.of("A", "1", "left", "cockpit")) {
            BoundColumn column = BoundColumn.of(0, 0, "h", Fixtures.rule("h", field, place, unit));
            if (new TypePlan(Fixtures.TWIN, List.of(column), new KnownNames(List.of()), BlankLoad.NONE).place(column)
                    >= 0) {
                kinds.add(
                        switch (place) {
                            case "A" -> "zone";
                            case "1" -> "hold";
                            case "left" -> "tank";
                            default -> "station";
                        });
            }
        }
        return String.join(", ", kinds);
    }

    private static String units(Field field) {
        return Stream.of(ColumnUnit.values())
                .filter(unit -> unit.suits(field))
                .filter(ColumnUnit::isUnit)
                .map(ColumnUnit::symbol)
                .filter(symbol -> !symbol.isEmpty())
                .collect(Collectors.joining(", "));
    }

    @Test
    void everyFieldStandsInTheTableWithItsFormKindPlaceAndUnitsAndNoOther() throws IOException {
        assertThat(rowsOfTheReadme())
                .containsExactlyInAnyOrderElementsOf(
                        Stream.of(Field.values()).map(InputColumnsTest::row).toList());
    }

    /** A field that no reader takes would be a promise without anything behind it. */
    @Test
    void everyFieldHasASlotThatReadsIt() {
        for (Field field : Field.values()) {
            ColumnUnit unit = Stream.of(ColumnUnit.values())
                    .filter(one -> one.suits(field))
                    .findFirst()
                    .orElseThrow();
            Slot slot = Slot.of(Fixtures.rule("h", field, "", unit));
            assertThat(slot.label()).as(field.key()).isNotBlank();
        }
    }
}
