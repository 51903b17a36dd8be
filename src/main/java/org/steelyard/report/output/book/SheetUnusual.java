package org.steelyard.report.output.book;

import java.util.List;
import java.util.Locale;
import org.apache.poi.ss.usermodel.CellStyle;
import org.steelyard.analyse.column.TrimSetting;
import org.steelyard.analyse.figure.Measure;
import org.steelyard.analyse.figure.Spread;
import org.steelyard.analyse.find.UnusualFlight;
import org.steelyard.report.book.EndlessSheet;
import org.steelyard.report.book.SheetColumn;
import org.steelyard.report.book.SheetLayout;
import org.steelyard.report.book.WorkbookStyles;
import org.steelyard.report.words.WorkbookWords;

/** Flights far from the others of their type and flap setting, with the reason. */
final class SheetUnusual {

    static final String NONE = "No flight is unusual.";

    private static final int WHY_CHARS = 92;

    static final SheetLayout LAYOUT = new SheetLayout(
            "Unusual flights",
            String.format(
                    Locale.ROOT,
                    "Robust score 0.6745 (x − median) / MAD within type, flap setting and thrust rating of the"
                            + " scale, beyond %.1f either way (Iglewicz and Hoaglin); of normal values chance lists 1 in 2,000 in large groups, 1 in 150 in groups"
                            + " of %d, the smallest. Unusual is not wrong: findings say what is.",
                    UnusualFlight.SCORE,
                    Spread.FEW),
            List.of(
                    SheetColumn.number("Score", 8),
                    SheetColumn.text("Flight", 10),
                    SheetColumn.text("Date", 13),
                    SheetColumn.text("Tail", 11),
                    SheetColumn.text("Type", 12),
                    SheetColumn.text("Flaps", 9),
                    SheetColumn.text("From", 8),
                    SheetColumn.text("To", 8),
                    SheetColumn.text("Measure", 14),
                    SheetColumn.number("Value", 9),
                    SheetColumn.number("Median", 9),
                    SheetColumn.text("Unit", 9),
                    SheetColumn.text("Why: parts of the load against their mean, % MAC of take-off CG", WHY_CHARS),
                    SheetColumn.text("File", 22),
                    SheetColumn.number("Row", 8)),
            2,
            1,
            1);

    private final EndlessSheet roll;
    private final WorkbookStyles styles;

    SheetUnusual(EndlessSheet roll, WorkbookStyles styles) {
        this.roll = roll;
        this.styles = styles;
    }

    void write(List<UnusualFlight> flights) {
        flights.forEach(this::write);
    }

    private void write(UnusualFlight one) {
        CellStyle figure = one.measure() == Measure.TAKEOFF_TRIM ? styles.trim.plain() : styles.decimals(2);
        String why = WorkbookWords.sentence(one.reason());
        roll.next()
                .lines(1 + why.length() / WHY_CHARS)
                .number(one.score(), styles.signed.plain())
                .data(one.flight().flight(), styles.text)
                .date(one.flight().date(), styles)
                .data(one.tail(), styles.text)
                .data(one.typeId(), styles.text)
                .data(TrimSetting.words(one.flaps(), one.thrust()), styles.fitted)
                .data(one.flight().from(), styles.text)
                .data(one.flight().to(), styles.text)
                .label(one.measure().label(), styles.text.plain())
                .number(one.value(), figure)
                .number(one.median(), figure)
                .label(one.measure().unit(), styles.text.plain())
                .data(why, styles.wrapped)
                .data(one.origin().file(), styles.text)
                .number(one.origin().row(), styles.rowNumber);
    }
}
