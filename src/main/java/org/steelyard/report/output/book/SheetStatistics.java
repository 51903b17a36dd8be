package org.steelyard.report.output.book;

import java.util.List;
import java.util.OptionalDouble;
import org.steelyard.analyse.figure.Measure;
import org.steelyard.analyse.figure.Spread;
import org.steelyard.analyse.season.SeasonSummary;
import org.steelyard.analyse.season.SeasonTables;
import org.steelyard.report.book.EndlessSheet;
import org.steelyard.report.book.SheetColumn;
import org.steelyard.report.book.SheetLayout;
import org.steelyard.report.book.SheetRow;
import org.steelyard.report.book.WorkbookStyles;
import tech.tablesaw.api.Row;
import tech.tablesaw.api.Table;

/** Spread of trim and CG by every grouping: the tables of {@link SeasonTables#groupSpreads}. */
final class SheetStatistics {

    static final String NONE = "No flights.";

    static final SheetLayout LAYOUT = new SheetLayout(
            "Trim and CG statistics",
            "CG within a type, trim within a type, flap setting and thrust rating of the scale. Percentiles inclusive; p5 and p95 with 95 % intervals"
                    + " by order statistics (binomial), blank where too few flights reach so far. Few: under "
                    + Spread.FEW + " flights, where p5 and p95 lie between the two outermost values.",
            List.of(
                    SheetColumn.text("Grouping", 14),
                    SheetColumn.text("Type", 12),
                    SheetColumn.text("Flaps", 9),
                    SheetColumn.text("Thrust", 9),
                    SheetColumn.text("Group", 22),
                    SheetColumn.text("Measure", 14),
                    SheetColumn.text("Unit", 9),
                    SheetColumn.number("n", 9),
                    SheetColumn.number("Mean", 9),
                    SheetColumn.number("sd", 9),
                    SheetColumn.number("Min", 9),
                    SheetColumn.number("p5", 9),
                    SheetColumn.number("p25", 9),
                    SheetColumn.number("Median", 9),
                    SheetColumn.number("p75", 9),
                    SheetColumn.number("p95", 9),
                    SheetColumn.number("Max", 9),
                    SheetColumn.number("p5 from", 9),
                    SheetColumn.number("p5 to", 9),
                    SheetColumn.number("p95 from", 9),
                    SheetColumn.number("p95 to", 9),
                    SheetColumn.number("Marginal", 10),
                    SheetColumn.number("Breached", 10),
                    SheetColumn.text("Mark", 12)),
            5,
            1,
            2);

    private static final int WORDS = 7;
    private static final int MEASURE = 5;
    private static final int SD = 9;
    private static final int FIRST_FIGURE = 8;
    private static final int SHARES = 21;
    private static final int FEW = 23;

    private final EndlessSheet roll;
    private final WorkbookStyles styles;

    SheetStatistics(EndlessSheet roll, WorkbookStyles styles) {
        this.roll = roll;
        this.styles = styles;
    }

    void write(SeasonSummary season) {
        for (Table table : SeasonTables.groupSpreads(season)) {
            for (Row figures : table) {
                write(figures, roll.next());
            }
        }
    }

    private void write(Row figures, SheetRow row) {
        for (int column = 0; column < WORDS; column++) {
            row.data(figures.getString(column), styles.text);
        }
        row.number(figures.getLong(WORDS), styles.whole.plain());
        boolean trim = figures.getString(MEASURE).equals(Measure.TAKEOFF_TRIM.label());
        for (int column = FIRST_FIGURE; column < SHARES; column++) {
            row.number(number(figures, column), trim && column != SD ? styles.trim.plain() : styles.decimals(2));
        }
        row.number(number(figures, SHARES), styles.share)
                .number(number(figures, SHARES + 1), styles.share)
                .label(figures.getString(FEW).equals("yes") ? "few flights" : "", styles.text.plain());
    }

    private static OptionalDouble number(Row figures, int column) {
        return figures.column(column).isMissing(figures.getRowNumber())
                ? OptionalDouble.empty()
                : OptionalDouble.of(figures.getDouble(column));
    }
}
