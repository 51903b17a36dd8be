package org.steelyard.report.output.book;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.steelyard.model.input.InputProblem;
import org.steelyard.model.input.RejectedRow;
import org.steelyard.report.book.EndlessSheet;
import org.steelyard.report.book.SheetColumn;
import org.steelyard.report.book.SheetLayout;
import org.steelyard.report.book.SheetRow;
import org.steelyard.report.book.WorkbookStyles;
import org.steelyard.report.book.WorkbookText;

/** The rows that did not become flights: where, why, and the original cells under their original headings. */
final class SheetRejected {

    private static final int REASON_CHARS = 84;
    static final String NONE = "No row was rejected.";
    static final SheetLayout LAYOUT = new SheetLayout(
            "Rejected rows",
            "Rows that could not be used, every fault of each; to the right the original cells as text, under the"
                    + " headings of their file. The file rejected.csv holds the same to mend and feed back.",
            List.of(
                    SheetColumn.text("File", 24),
                    SheetColumn.text("Sheet", 11),
                    SheetColumn.number("Row", 8),
                    SheetColumn.number("Faults", 8),
                    SheetColumn.text("Reasons", REASON_CHARS),
                    SheetColumn.text("Original cells", 14)),
            3,
            1,
            1);

    private static final int FIXED = LAYOUT.columns().size() - 1;

    private final EndlessSheet roll;
    private final WorkbookStyles styles;
    private final WorkbookText text;
    private final int maxCells;
    private List<String> headings = List.of();
    private String file = "";
    private int part;

    SheetRejected(EndlessSheet roll, WorkbookStyles styles, WorkbookText text, int maxColumns) {
        this.roll = roll;
        this.styles = styles;
        this.text = text;
        this.maxCells = maxColumns - FIXED;
    }

    void add(RejectedRow rejected) {
        roll.keepTogether(2);
        boolean sameFile =
                rejected.origin().file().equals(file) && rejected.headings().equals(headings);
        if (!sameFile || part != roll.parts()) {
            startFile(rejected);
        }
        SheetRow row = place(rejected)
                .number(rejected.problems().size(), styles.whole.plain())
                .data(reasons(rejected), styles.wrapped);
        cells(row, rejected.cells(), styles.original);
    }

    private void startFile(RejectedRow rejected) {
        file = rejected.origin().file();
        headings = rejected.headings();
        part = roll.parts();
        if (headings.isEmpty()) {
            return;
        }
        SheetRow row = roll.nextHeading()
                .label(file, styles.originalHeading.plain())
                .label(rejected.origin().sheet(), styles.originalHeading.plain())
                .label("", styles.originalHeading.plain())
                .label("", styles.originalHeading.plain())
                .label("Headings of the original cells", styles.originalHeading.plain());
        cells(row, headings, styles.originalHeading);
    }

    private SheetRow place(RejectedRow rejected) {
        return roll.next()
                .lines(lines(rejected))
                .data(rejected.origin().file(), styles.text)
                .data(rejected.origin().sheet(), styles.text)
                .number(rejected.origin().row(), styles.rowNumber);
    }

    private static int lines(RejectedRow rejected) {
        return rejected.problems().stream()
                .mapToInt(problem -> 1 + problem.detail().length() / REASON_CHARS)
                .sum();
    }

    private static String reasons(RejectedRow rejected) {
        return rejected.problems().stream().map(InputProblem::detail).collect(Collectors.joining("\n"));
    }

    private void cells(SheetRow row, List<String> cells, WorkbookStyles.TextStyle style) {
        boolean fits = cells.size() <= maxCells;
        for (String cell : fits ? cells : cells.subList(0, maxCells - 1)) {
            row.data(cell, style);
        }
        if (!fits) {
            text.countCut();
            int left = cells.size() - maxCells + 1;
            row.label(String.format(Locale.ROOT, "… [%,d more cells; rejected.csv has them]", left), style.plain());
        }
    }
}
