package org.steelyard.report.output.book;

import static org.steelyard.report.output.book.SheetOverview.END;
import static org.steelyard.report.output.book.SheetOverview.LEFT;
import static org.steelyard.report.output.book.SheetOverview.RIGHT;
import static org.steelyard.report.output.book.SheetOverview.TABLE;

import java.util.List;
import org.steelyard.analyse.season.SeasonSummary;
import org.steelyard.analyse.season.WorstFlight;
import org.steelyard.check.text.FindingText;
import org.steelyard.model.loading.FlightIdent;
import org.steelyard.model.loading.Loading;
import org.steelyard.model.unit.Counted;
import org.steelyard.report.book.BookTable;
import org.steelyard.report.book.SheetGrid;
import org.steelyard.report.book.SheetRow;
import org.steelyard.report.book.WorkbookStyles;
import org.steelyard.report.table.DataTable;
import org.steelyard.report.table.season.FindingKindTable;
import org.steelyard.report.table.season.StatusTable;
import org.steelyard.report.table.season.TypicalTrimTable;
import org.steelyard.report.words.RemedyCell;
import org.steelyard.report.words.WorkbookWords;

/** The tables of the overview: as much as fits on its page, with a line that says where the rest is. */
final class SheetOverviewTables {

    private static final int FOUND = RIGHT - 1;
    private static final int LINE_CHARS = 100;
    private static final int TABLE_ROWS = 9;
    private static final int GROUP_ROWS = 5;

    private final SheetGrid grid;
    private final WorkbookStyles styles;

    SheetOverviewTables(SheetGrid grid, WorkbookStyles styles) {
        this.grid = grid;
        this.styles = styles;
    }

    void write(SeasonSummary season) {
        worst(season.worstBriefly(), season.all().breached());
        typicalAndKinds(season);
        offenders(season);
    }

    private void worst(List<WorstFlight> worst, long breached) {
        if (worst.isEmpty()) {
            return;
        }
        section(LEFT, END, "Farthest outside");
        SheetRow head = grid.row(15).at(LEFT);
        for (String heading : List.of("Exceeded", "Date", "Flight", "Tail", "Type", "From", "To", "What was found")) {
            head.label(heading, styles.tableHeading);
        }
        grid.join(FOUND, END);
        worst.forEach(this::worst);
        long shown = worst.stream().map(WorstFlight::flight).distinct().count();
        more(LEFT, END, breached - shown, "breached flight", SheetFindings.LAYOUT.name());
        grid.gap(6);
    }

    private void worst(WorstFlight worst) {
        Loading loading = worst.flight().loading();
        FlightIdent ident = loading.flight();
        String sentence = WorkbookWords.sentence(FindingText.sentence(worst.finding(), loading.type()));
        grid.row(heightOf(sentence))
                .at(LEFT)
                .label(worst.exceeded().label(), styles.text.plain())
                .date(ident.date(), styles)
                .data(ident.flight(), styles.text)
                .data(loading.tail().registration(), styles.text)
                .data(loading.type().id(), styles.text)
                .data(ident.from(), styles.text)
                .data(ident.to(), styles.text)
                .data(sentence, styles.wrapped);
        grid.join(FOUND, END);
        String remedy = RemedyCell.of(worst.flight());
        if (!remedy.isEmpty()) {
            grid.row(heightOf(remedy))
                    .at(FOUND)
                    .data("→ " + remedy, new WorkbookStyles.TextStyle(styles.quiet, styles.quiet));
            grid.join(FOUND, END);
        }
    }

    /** A row for one line of the column, or for two. */
    private static int heightOf(String text) {
        return text.length() > LINE_CHARS ? 26 : 14;
    }

    private void typicalAndKinds(SeasonSummary season) {
        sideBySide(
                new BookTable(grid, styles, LEFT), TypicalTrimTable.of(season).first(TABLE_ROWS),
                new BookTable(grid, styles, RIGHT, 4),
                        FindingKindTable.of(season).without("code").first(TABLE_ROWS));
        grid.gap(6);
    }

    private void sideBySide(BookTable left, DataTable onLeft, BookTable right, DataTable onRight) {
        int top = grid.position();
        left.to(LEFT + TABLE - 1).write(onLeft);
        int below = grid.position();
        grid.moveTo(top);
        right.to(END).write(onRight);
        grid.moveTo(Math.max(below, grid.position()));
    }

    private void offenders(SeasonSummary season) {
        sideBySide(
                new BookTable(grid, styles, LEFT, 2), offenders(StatusTable.TAILS.of(season)),
                new BookTable(grid, styles, RIGHT, 2), offenders(StatusTable.ROUTES.of(season)));
        grid.gap(8);
    }

    private static DataTable offenders(DataTable table) {
        return table.without("share_marginal").first(GROUP_ROWS);
    }

    private void section(int from, int to, String title) {
        grid.row(20).at(from).label(title, styles.section);
        grid.join(from, to);
    }

    private void more(int from, int to, long left, String what, String sheet) {
        if (left > 0) {
            grid.row(14).at(from).label("… and " + Counted.of(left, "more " + what) + ": sheet " + sheet, styles.quiet);
            grid.join(from, to);
        }
    }
}
