package org.steelyard.report.table.season;

import java.util.List;
import org.steelyard.analyse.season.RecordedTrimGroup;
import org.steelyard.analyse.season.SeasonSummary;
import org.steelyard.check.text.RecordedTrimText;
import org.steelyard.model.trim.TrimUnit;
import org.steelyard.report.table.CellEmphasis;
import org.steelyard.report.table.Column;
import org.steelyard.report.table.ColumnKind;
import org.steelyard.report.table.DataTable;
import org.steelyard.report.table.TableCell;
import org.steelyard.report.words.WorkbookWords;

/** Recorded take-off trim against the right setting, by tail and by the column that the policy names. */
public final class RecordedTrimTable {

    public static final String TITLE = "Recorded take-off trim against the right setting";
    public static final String NOTE =
            "Difference: recorded less right setting, both in steps of the indicator; UP is too"
                    + " much nose-up. Only flights that have both, and whose load was not shared out from totals. Beyond:"
                    + " farther off than the policy's marginal distance. SD with divisor n − 1, none for one flight.";

    private RecordedTrimTable() {}

    /** A table for each grouping; none where no flight has a recorded trim. */
    public static List<DataTable> of(SeasonSummary season) {
        List<RecordedTrimGroup> groups = season.recordedTrim();
        return groups.stream()
                .map(RecordedTrimGroup::kind)
                .distinct()
                .map(kind -> table(
                        kind,
                        groups.stream()
                                .filter(group -> group.kind().equals(kind))
                                .toList()))
                .toList();
    }

    private static DataTable table(String kind, List<RecordedTrimGroup> groups) {
        List<Column> columns = List.of(
                Column.of("group", WorkbookWords.sentence(kind).replace(".", ""), ColumnKind.TEXT)
                        .wide(20),
                Column.of("n", "n", ColumnKind.COUNT),
                Column.of("mean", "Mean difference", ColumnKind.TRIM).wide(13),
                Column.of("sd", "SD", ColumnKind.NUMBER),
                Column.of("nose_up", "Beyond, nose-up", ColumnKind.COUNT).wide(13),
                Column.of("nose_down", "Beyond, nose-down", ColumnKind.COUNT).wide(13),
                Column.of("share", "Share beyond", ColumnKind.SHARE).wide(13),
                Column.of("risk", "What a difference to that side risks", ColumnKind.TEXT)
                        .wide(75));
        return DataTable.of(
                "By " + kind,
                columns,
                groups.stream().map(RecordedTrimTable::row).toList(),
                "those most often off first");
    }

    private static List<TableCell> row(RecordedTrimGroup group) {
        return List.of(
                TableCell.text(group.name().isBlank() ? "not given" : group.name()),
                TableCell.count(group.flights()),
                TableCell.trim(group.meanUnits(), 3, TrimUnit.UNITS),
                TableCell.number(group.sdUnits(), 3),
                TableCell.count(group.noseUp()),
                TableCell.count(group.noseDown()),
                TableCell.share(group.noseUp() + group.noseDown(), group.flights()),
                TableCell.text(risk(group)).with(CellEmphasis.QUIET));
    }

    /** Only where flights are beyond the tolerance; to the side where there are more. */
    private static String risk(RecordedTrimGroup group) {
        if (group.noseUp() == 0 && group.noseDown() == 0) {
            return "";
        }
        boolean up = group.noseUp() >= group.noseDown();
        return (up ? "nose-up: " : "nose-down: ") + RecordedTrimText.risk(up ? 1 : -1);
    }
}
