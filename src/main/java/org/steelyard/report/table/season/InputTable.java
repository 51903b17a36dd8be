package org.steelyard.report.table.season;

import java.util.ArrayList;
import java.util.List;
import org.steelyard.report.output.RunFacts;
import org.steelyard.report.table.CellEmphasis;
import org.steelyard.report.table.Column;
import org.steelyard.report.table.ColumnKind;
import org.steelyard.report.table.DataTable;
import org.steelyard.report.table.TableCell;

/** The season files with the rows of each, and what they come to together. */
public final class InputTable {

    private static final List<Column> COLUMNS = List.of(
            Column.of("file", "File", ColumnKind.TEXT),
            Column.of("map", "Heading map", ColumnKind.NAME),
            Column.of("rows", "Rows seen", ColumnKind.COUNT),
            Column.of("accepted", "Accepted", ColumnKind.COUNT),
            Column.of("rejected", "Rejected", ColumnKind.COUNT),
            Column.of("blank", "Blank", ColumnKind.COUNT),
            Column.of("skipped", "Skipped", ColumnKind.COUNT),
            Column.of("bytes", "Bytes", ColumnKind.COUNT),
            Column.of("sha256", "SHA-256", ColumnKind.NAME),
            Column.of("notes", "Notes", ColumnKind.TEXT));

    private InputTable() {}

    public static DataTable of(RunFacts facts) {
        List<List<TableCell>> rows = new ArrayList<>();
        facts.inputs().forEach(file -> rows.add(row(file)));
        rows.add(List.of(
                TableCell.text("Together").with(CellEmphasis.TOTAL),
                TableCell.text("").with(CellEmphasis.TOTAL),
                total(facts.rowsSeen()),
                total(facts.accepted()),
                total(facts.rejected()),
                total(facts.blank()),
                total(facts.skippedRowCount()),
                total(facts.inputs().stream()
                        .mapToLong(RunFacts.InputFile::bytes)
                        .sum()),
                TableCell.text(""),
                TableCell.text("")));
        return DataTable.of("Season files (rows seen = accepted + rejected + blank + skipped)", COLUMNS, rows, "");
    }

    private static TableCell total(long count) {
        return TableCell.count(count).with(CellEmphasis.TOTAL);
    }

    private static List<TableCell> row(RunFacts.InputFile file) {
        return List.of(
                TableCell.text(file.name()),
                TableCell.text(file.mapName()),
                TableCell.count(file.rowsSeen()),
                TableCell.count(file.accepted()),
                TableCell.count(file.rejected()),
                TableCell.count(file.blank()),
                TableCell.count(file.skipped()),
                TableCell.count(file.bytes()),
                TableCell.text(file.sha256()),
                TableCell.text(String.join("\n", file.notes())));
    }
}
