package org.steelyard.report.table.season;

import java.util.List;
import org.steelyard.analyse.find.ApartResult;
import org.steelyard.analyse.find.GroupApart;
import org.steelyard.model.unit.Counted;
import org.steelyard.report.table.Column;
import org.steelyard.report.table.ColumnKind;
import org.steelyard.report.table.DataTable;
import org.steelyard.report.table.TableCell;
import org.steelyard.report.words.WorkbookWords;

/** Which tails, routes and pilots lie apart from the rest of their type. */
public final class ApartTable {

    private static final List<Column> COLUMNS = List.of(
            Column.of("group", "Group", ColumnKind.NAME),
            Column.of("type", "Type", ColumnKind.NAME),
            Column.of("flights", "Flights", ColumnKind.COUNT),
            Column.of("difference", "Difference", ColumnKind.PERCENT_MAC),
            Column.of("low", "from", ColumnKind.NUMBER),
            Column.of("high", "to", ColumnKind.NUMBER),
            Column.of("chance", "Adjusted chance", ColumnKind.NUMBER),
            Column.of("words", "In words", ColumnKind.TEXT));

    private ApartTable() {}

    public static DataTable of(ApartResult result) {
        String title = WorkbookWords.sentence(result.grouping()).replace(".", "") + ": "
                + Counted.of(result.apart().size(), "group") + " apart of " + Counted.number(result.tested())
                + " tested";
        return DataTable.of(
                        title,
                        COLUMNS,
                        result.apart().stream().map(ApartTable::row).toList(),
                        "")
                .orElse("None lies apart by more than chance.");
    }

    private static List<TableCell> row(GroupApart one) {
        return List.of(
                TableCell.text(one.group()),
                TableCell.text(one.typeId()),
                TableCell.count(one.flights()),
                TableCell.signed(one.differencePercentMac(), 2),
                TableCell.signed(one.lowPercentMac(), 2),
                TableCell.signed(one.highPercentMac(), 2),
                TableCell.chance(one.chance()),
                TableCell.text(WorkbookWords.sentence(one.sentence())));
    }
}
