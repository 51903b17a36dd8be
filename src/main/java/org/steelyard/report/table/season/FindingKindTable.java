package org.steelyard.report.table.season;

import java.util.List;
import org.steelyard.analyse.season.FindingCount;
import org.steelyard.analyse.season.SeasonSummary;
import org.steelyard.check.text.FindingText;
import org.steelyard.model.finding.Severity;
import org.steelyard.report.table.Column;
import org.steelyard.report.table.ColumnKind;
import org.steelyard.report.table.DataTable;
import org.steelyard.report.table.TableCell;

/** Which kinds of findings there are, and how many. */
public final class FindingKindTable {

    private static final List<Column> COLUMNS = List.of(
            Column.of("kind", "Kind", ColumnKind.TEXT),
            Column.of("severity", "Severity", ColumnKind.STATUS),
            Column.of("code", "Code", ColumnKind.CODE),
            Column.of("flights", "Flights", ColumnKind.COUNT),
            Column.of("findings", "Findings", ColumnKind.COUNT));

    private FindingKindTable() {}

    public static DataTable of(SeasonSummary season) {
        return table("Kinds of findings", season.findings());
    }

    /** Breaches only. */
    public static DataTable breaches(SeasonSummary season) {
        return table(
                "Most frequent breaches",
                season.findings().stream()
                        .filter(count -> count.severity() == Severity.BREACH)
                        .toList());
    }

    private static DataTable table(String title, List<FindingCount> counts) {
        return DataTable.of(
                        title,
                        COLUMNS,
                        counts.stream().map(FindingKindTable::row).toList(),
                        "")
                .orElse("Nothing was found.");
    }

    private static List<TableCell> row(FindingCount count) {
        return List.of(
                TableCell.text(FindingText.kind(count.code(), count.severity())),
                TableCell.severity(count.severity()),
                TableCell.text(count.code().code()),
                TableCell.count(count.flights()),
                TableCell.count(count.findings()));
    }
}
