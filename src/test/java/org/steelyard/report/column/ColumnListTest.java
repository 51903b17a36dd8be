package org.steelyard.report.column;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import org.junit.jupiter.api.Test;

class ColumnListTest {

    private static final ListColumn<String> NAME =
            ListColumn.<String>text("name", "its name", text -> text).onSheet("Name", 10);
    private static final ListColumn<String> LENGTH =
            ListColumn.<String>whole("length", "how long it is", String::length).onSheet("Length");
    private static final ListColumn<String> FIRST =
            ListColumn.<String>text("first", "its first sign", text -> text.substring(0, 1));

    @Test
    void filesAndTheSheetHaveAnOrderEach() {
        ColumnList<String> list =
                new ColumnList<>(List.of(NAME, FIRST, LENGTH.onSheetOnly()), List.of("Length", "Name"));
        assertThat(list.names()).containsExactly("name", "first");
        assertThat(list.onSheet())
                .extracting(column -> column.onSheet().orElseThrow().heading())
                .containsExactly("Length", "Name");
    }

    @Test
    void aColumnOfTheSheetNeedsItsPlaceThere() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new ColumnList<>(List.of(NAME, LENGTH), List.of("Name")))
                .withMessageContaining("Length");
    }

    @Test
    void aPlaceOnTheSheetNeedsAColumn() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new ColumnList<>(List.of(NAME), List.of("Name", "Length")));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new ColumnList<>(List.of(NAME, LENGTH), List.of("Name", "Name")));
    }

    @Test
    void noTwoColumnsShareAName() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new ColumnList<>(List.of(FIRST, FIRST), List.of()))
                .withMessageContaining("first");
    }
}
