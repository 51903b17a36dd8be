package org.steelyard.report.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.steelyard.model.trim.TrimUnit;

class DataTableTest {

    private static final DataTable TABLE = DataTable.of(
            "Tails",
            List.of(
                    Column.of("tail", "Tail", ColumnKind.NAME),
                    Column.of("flights", "Flights", ColumnKind.COUNT),
                    Column.of("cg", "CG", ColumnKind.PERCENT_MAC)),
            List.of(
                    List.of(TableCell.text("XA-B"), TableCell.count(1200), TableCell.number(24.256, 2)),
                    List.of(TableCell.text("XA-C"), TableCell.count(3), TableCell.number(OptionalDouble.empty(), 2))),
            "most flights first");

    @Test
    void columnsAndRowsAreChosenWithoutAnotherFigure() {
        DataTable some = TABLE.only("cg", "tail").first(1);
        assertEquals(
                List.of("CG, % MAC", "Tail"),
                some.columns().stream().map(Column::headed).toList());
        assertEquals(
                List.of(List.of("24.26", "XA-B")),
                some.rows().stream()
                        .map(row -> row.stream().map(TableCell::shown).toList())
                        .toList());
        assertEquals("The first 1 of 2, most flights first.", some.leftOut());
        assertEquals(
                some.columns().get(1), TABLE.without("flights", "cg").columns().get(0));
        assertEquals("", TABLE.first(2).leftOut());
    }

    @Test
    void aColumnThatIsNotThereAndARowOfAnotherLengthAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> TABLE.only("mass"));
        assertThrows(IllegalArgumentException.class, () -> TABLE.without("mass"));
        assertThrows(
                IllegalArgumentException.class,
                () -> DataTable.of("T", TABLE.columns(), List.of(List.of(TableCell.missing())), ""));
    }

    @Test
    void aCellKeepsItsNumberWholeAndShowsItAsPeopleReadIt() {
        TableCell mass = TableCell.number(66123.4567, 1);
        assertEquals("66,123.5", mass.shown());
        assertEquals(66123.4567, mass.number().getAsDouble());
        assertEquals("#,##0.0", mass.format());
        assertEquals("+0.25", TableCell.signed(0.251, 2).shown());
        assertEquals("−0.25", TableCell.signed(-0.251, 2).shown());
        assertEquals("0.00", TableCell.signed(0.001, 2).shown());
        assertEquals("under 0.1 %", TableCell.share(1, 100_000).shown());
        assertEquals(1e-5, TableCell.share(1, 100_000).number().getAsDouble());
        assertEquals(0, TableCell.share(0, 0).number().getAsDouble());
        assertEquals("–", TableCell.missing().shown());
    }

    @Test
    void aTrimIsShownWithItsDirectionEverywhere() {
        TableCell trim = TableCell.trim(-1.125, 2, TrimUnit.UNITS);
        assertEquals(-1.125, trim.number().getAsDouble());
        assertEquals("0.00\" UP\";0.00\" DN\";0.00", trim.format());
        assertEquals("DN", trim.shown().substring(trim.shown().length() - 2));
    }
}
