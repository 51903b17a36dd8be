package org.steelyard.report.output.book;

import java.util.List;
import org.steelyard.check.result.AuditedFlight;
import org.steelyard.report.book.EndlessSheet;
import org.steelyard.report.book.SheetLayout;
import org.steelyard.report.book.WorkbookStyles;
import org.steelyard.report.column.FlightList;
import org.steelyard.report.text.Work;

/** One row for each flight, in the order of the input. */
public final class SheetFlights {

    static final String NONE = "No flight was accepted.";
    public static final SheetLayout LAYOUT = new SheetLayout(
            "Flights",
            "Masses are in kg and CG in % MAC for all types, so that columns can be summed and sorted. Trim is nose-up"
                    + " positive. A coloured figure has a finding of its own.",
            ListSheet.columns(FlightList.COLUMNS),
            4,
            3,
            2);

    private final EndlessSheet roll;
    private final ListSheet<AuditedFlight> rows;

    SheetFlights(EndlessSheet roll, WorkbookStyles styles) {
        this.roll = roll;
        rows = new ListSheet<>(FlightList.COLUMNS, styles);
    }

    /** Keeps a row for each flight. */
    Work begin(List<AuditedFlight> batch) {
        return roll.begin(batch, rows::fill);
    }
}
