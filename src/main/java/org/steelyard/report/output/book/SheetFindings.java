package org.steelyard.report.output.book;

import java.util.ArrayList;
import java.util.List;
import org.steelyard.check.result.AuditedFlight;
import org.steelyard.model.finding.Severity;
import org.steelyard.report.book.EndlessSheet;
import org.steelyard.report.book.SheetLayout;
import org.steelyard.report.book.WorkbookStyles;
import org.steelyard.report.column.FindingList;
import org.steelyard.report.column.FindingList.Found;
import org.steelyard.report.text.Work;

/** One row for each finding, in the order of the input; notes have a sheet of their own, as they may be many. */
final class SheetFindings {

    static final String NONE = "No flight is outside a limit or close to one.";
    static final String NO_NOTES = "There are no notes.";
    static final SheetLayout LAYOUT = layout(
            "Findings",
            "Breaches and marginals in the order of the input. Value, limit and margin are in the unit beside them, that of"
                    + " the type's users; a negative margin is outside the limit.");
    static final SheetLayout NOTES = layout(
            "Notes", "What is worth knowing of a flight though no limit is concerned, in the order of the input.");

    private final EndlessSheet findings;
    private final EndlessSheet notes;
    private final ListSheet<Found> rows;

    SheetFindings(EndlessSheet findings, EndlessSheet notes, WorkbookStyles styles) {
        this.findings = findings;
        this.notes = notes;
        rows = new ListSheet<>(FindingList.COLUMNS, styles);
    }

    private static SheetLayout layout(String name, String note) {
        return new SheetLayout(name, note, ListSheet.columns(FindingList.COLUMNS), 2, 1, 1);
    }

    /** Keeps a row for each finding of some flights. */
    Work begin(List<AuditedFlight> flights) {
        List<Found> seriously = new ArrayList<>();
        List<Found> worthKnowing = new ArrayList<>();
        for (AuditedFlight flight : flights) {
            for (Found found : FindingList.of(flight)) {
                (found.finding().severity() == Severity.NOTE ? worthKnowing : seriously).add(found);
            }
        }
        return Work.all(List.of(findings.begin(seriously, rows::fill), notes.begin(worthKnowing, rows::fill)));
    }
}
