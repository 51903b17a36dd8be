package org.steelyard.report;

import java.util.List;
import org.steelyard.check.AuditedFlight;
import org.steelyard.check.FindingText;
import org.steelyard.model.AircraftType;
import org.steelyard.model.Finding;
import org.steelyard.model.FlightIdent;
import org.steelyard.model.Loading;
import org.steelyard.model.Quantity;

/** One row for each finding, in the order of the input. */
final class SheetFindings {

    static final String NONE = "Nothing was found.";
    static final SheetLayout LAYOUT = new SheetLayout(
            "Findings",
            "Value, limit and margin are in the unit beside them, which is that of the type's users; a negative margin is"
                    + " outside the limit. Filter by severity or kind.",
            List.of(
                    new SheetColumn("Severity", 12),
                    new SheetColumn("Flight", 11),
                    new SheetColumn("Date", 11),
                    new SheetColumn("Tail", 10),
                    new SheetColumn("Type", 11),
                    new SheetColumn("From", 7),
                    new SheetColumn("To", 7),
                    new SheetColumn("State", 13),
                    new SheetColumn("Kind", 17),
                    new SheetColumn("What was found", 78),
                    new SheetColumn("Value", 10),
                    new SheetColumn("Limit", 10),
                    new SheetColumn("Margin", 10),
                    new SheetColumn("Unit", 8),
                    new SheetColumn("File", 22),
                    new SheetColumn("Sheet", 10),
                    new SheetColumn("Row", 9)),
            2,
            1);

    private final SheetRoll roll;
    private final WorkbookStyles styles;

    SheetFindings(SheetRoll roll, WorkbookStyles styles) {
        this.roll = roll;
        this.styles = styles;
    }

    void add(AuditedFlight flight) {
        for (Finding finding : flight.assessment().findings()) {
            add(flight.loading(), finding);
        }
    }

    private void add(Loading loading, Finding finding) {
        FlightIdent ident = loading.flight();
        AircraftType type = loading.type();
        SheetRow row = roll.next()
                .label(WorkbookWords.severity(finding.severity()), styles.severity(finding.severity()))
                .data(ident.flight(), styles.text)
                .date(ident.date(), styles)
                .data(loading.tail().registration(), styles.text)
                .data(type.id(), styles.text)
                .data(ident.from(), styles.text)
                .data(ident.to(), styles.text)
                .data(finding.phase().label(), styles.text)
                .data(finding.code().code(), styles.text)
                .data(WorkbookWords.sentence(FindingText.sentence(finding, type)), styles.wrapped);
        numbers(row, finding, type);
        row.data(loading.origin().file(), styles.text)
                .data(loading.origin().sheet(), styles.text)
                .number(loading.origin().row(), styles.whole.plain());
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
