package org.steelyard.report.output.book;

import java.util.ArrayList;
import java.util.List;
import org.steelyard.check.result.AuditedFlight;
import org.steelyard.check.text.FindingText;
import org.steelyard.model.finding.Finding;
import org.steelyard.model.finding.Severity;
import org.steelyard.model.loading.FlightIdent;
import org.steelyard.model.loading.Loading;
import org.steelyard.model.type.AircraftType;
import org.steelyard.model.unit.Quantity;
import org.steelyard.report.book.EndlessSheet;
import org.steelyard.report.book.SheetColumn;
import org.steelyard.report.book.SheetLayout;
import org.steelyard.report.book.SheetRow;
import org.steelyard.report.book.WorkbookStyles;
import org.steelyard.report.text.Work;
import org.steelyard.report.words.RemedyCell;
import org.steelyard.report.words.WorkbookWords;

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

    private static final int SENTENCE_CHARS = 84;
    private static final int REMEDY_CHARS = 70;

    private final EndlessSheet findings;
    private final EndlessSheet notes;
    private final WorkbookStyles styles;

    SheetFindings(EndlessSheet findings, EndlessSheet notes, WorkbookStyles styles) {
        this.findings = findings;
        this.notes = notes;
        this.styles = styles;
    }

    private static SheetLayout layout(String name, String note) {
        return new SheetLayout(
                name,
                note,
                List.of(
                        SheetColumn.text("Severity", 12),
                        SheetColumn.text("Flight", 11),
                        SheetColumn.text("Date", 13),
                        SheetColumn.text("Tail", 11),
                        SheetColumn.text("Type", 14),
                        SheetColumn.text("From", 8),
                        SheetColumn.text("To", 8),
                        SheetColumn.text("State", 13),
                        SheetColumn.text("Kind", 17),
                        SheetColumn.text("What was found", SENTENCE_CHARS),
                        SheetColumn.number("Value", 10),
                        SheetColumn.number("Limit", 10),
                        SheetColumn.number("Margin", 10),
                        SheetColumn.text("Unit", 8),
                        SheetColumn.text("File", 22),
                        SheetColumn.text("Sheet", 10),
                        SheetColumn.number("Row", 9),
                        SheetColumn.text("What would put it right", REMEDY_CHARS)),
                2,
                1,
                1);
    }

    private record Found(AuditedFlight flight, Finding finding) {}

    /** Keeps a row for each finding of some flights. */
    Work begin(List<AuditedFlight> flights) {
        List<Found> seriously = new ArrayList<>();
        List<Found> worthKnowing = new ArrayList<>();
        for (AuditedFlight flight : flights) {
            for (Finding finding : flight.assessment().findings()) {
                (finding.severity() == Severity.NOTE ? worthKnowing : seriously).add(new Found(flight, finding));
            }
        }
        return Work.all(List.of(findings.begin(seriously, this::fill), notes.begin(worthKnowing, this::fill)));
    }

    private void fill(SheetRow row, Found found) {
        Loading loading = found.flight().loading();
        Finding finding = found.finding();
        FlightIdent ident = loading.flight();
        AircraftType type = loading.type();
        String sentence = WorkbookWords.sentence(FindingText.sentence(finding, type));
        String remedy = RemedyCell.of(found.flight(), finding);
        row.lines(1 + Math.max(sentence.length() / (SENTENCE_CHARS + 4), remedy.length() / (REMEDY_CHARS + 4)))
                .label(WorkbookWords.severity(finding.severity()), styles.severity(finding.severity()))
                .data(ident.flight(), styles.text)
                .date(ident.date(), styles)
                .data(loading.tail().registration(), styles.text)
                .data(type.id(), styles.text)
                .data(ident.from(), styles.text)
                .data(ident.to(), styles.text)
                .data(finding.phase().label(), styles.text)
                .data(finding.code().code(), styles.text)
                .data(sentence, styles.wrapped);
        numbers(row, finding, type);
        row.data(loading.origin().file(), styles.text)
                .data(loading.origin().sheet(), styles.text)
                .number(loading.origin().row(), styles.rowNumber)
                .data(remedy.isEmpty() ? "" : WorkbookWords.sentence(remedy), styles.wrapped);
    }

    private void numbers(SheetRow row, Finding finding, AircraftType type) {
        if (finding.quantity() == Quantity.NONE) {
            row.skip(4);
            return;
        }
        var style = styles.decimals(FindingText.decimals(finding.quantity(), type));
        row.number(FindingText.value(finding, type), style)
                .number(FindingText.limit(finding, type), style)
                .number(FindingText.margin(finding, type), style)
                .data(FindingText.unit(finding.quantity(), type), styles.text);
    }
}
