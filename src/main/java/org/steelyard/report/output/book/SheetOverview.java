package org.steelyard.report.output.book;

import java.util.Locale;
import org.steelyard.analyse.column.StatusCount;
import org.steelyard.analyse.season.SeasonSummary;
import org.steelyard.model.policy.Policy;
import org.steelyard.model.unit.Counted;
import org.steelyard.report.book.SheetGrid;
import org.steelyard.report.book.WorkbookPage;
import org.steelyard.report.book.WorkbookPalette;
import org.steelyard.report.book.WorkbookStyles;
import org.steelyard.report.output.RunFacts;
import org.steelyard.report.text.Caution;
import org.steelyard.report.words.WorkbookNews;
import org.steelyard.report.words.WorkbookWords;

/**
 * The season on one page. Fifteen columns: boxes of three, tables of seven left and right of a gap, or across the page.
 */
final class SheetOverview {

    static final String NAME = "Overview";

    /** First column of the page and of a left table. */
    static final int LEFT = 1;

    /** First column of a right table. */
    static final int RIGHT = 9;

    /** Last column of the page. */
    static final int END = 15;

    /** Columns of a table on one side. */
    static final int TABLE = 7;

    private static final int BOX = 3;
    private static final int NEWS_CHARS_A_LINE = 125;

    private final SheetGrid grid;
    private final WorkbookStyles styles;

    SheetOverview(SheetGrid grid, WorkbookStyles styles) {
        this.grid = grid;
        this.styles = styles;
    }

    void write(SeasonSummary season, RunFacts facts, Policy policy, WorkbookPage page) {
        widths();
        title(facts);
        boxes(season, facts);
        news(season, facts, policy);
        new SheetOverviewTables(grid, styles).write(season);
        caution();
        page.setUp(grid.sheet(), 1, 1);
    }

    /** Every three columns are of one width together, so that the boxes are. */
    private void widths() {
        grid.widths(1, 13, 12, 11, 13, 11, 12, 14, 4, 18, 13, 11, 12, 12, 12, 12);
    }

    private void title(RunFacts facts) {
        grid.row(32)
                .at(LEFT)
                .data("Season " + facts.season(), new WorkbookStyles.TextStyle(styles.title, styles.title));
        grid.join(LEFT, END);
        grid.row(16)
                .at(LEFT)
                .label(
                        "Mass, CG and stabilizer trim of every flight against its limits. Steelyard " + facts.version()
                                + ".",
                        styles.subtitle);
        grid.join(LEFT, END);
        grid.gap(6);
    }

    private void boxes(SeasonSummary season, RunFacts facts) {
        StatusCount all = season.all();
        String inside = facts.notChecked(season).isEmpty() ? "inside every limit" : "inside every limit checked";
        Box[] boxes = {
            new Box(
                    "Flights",
                    all.flights(),
                    "accepted of " + Counted.of(facts.rowsSeen(), "row"),
                    styles.figure(WorkbookPalette.SLATE, WorkbookPalette.PAPER)),
            new Box(
                    WorkbookWords.DISC + "Clean",
                    all.clean(),
                    share(all.clean(), all, inside),
                    styles.figure(WorkbookPalette.CLEAN_FILL, WorkbookPalette.CLEAN_INK)),
            new Box(
                    WorkbookWords.DIAMOND + "Marginal",
                    all.marginal(),
                    share(all.marginal(), all, "close to a limit"),
                    styles.figure(WorkbookPalette.MARGINAL_FILL, WorkbookPalette.MARGINAL_INK)),
            new Box(
                    WorkbookWords.CROSS + "Breached",
                    all.breached(),
                    share(all.breached(), all, "outside a limit"),
                    styles.figure(WorkbookPalette.BREACH_FILL, WorkbookPalette.BREACH_INK)),
            new Box(
                    "Rejected rows",
                    facts.rejected(),
                    "could not be used",
                    styles.figure(WorkbookPalette.TINT, WorkbookPalette.INK))
        };
        int top = grid.position();
        for (int i = 0; i < boxes.length; i++) {
            grid.moveTo(top);
            box(LEFT + BOX * i, boxes[i]);
        }
        grid.gap(6);
    }

    private record Box(String label, long figure, String remark, WorkbookStyles.FigureStyle style) {}

    private void box(int column, Box box) {
        grid.row(20).at(column).label(box.label(), box.style().label());
        grid.join(column, column + BOX - 1);
        grid.row(34).at(column).number(box.figure(), box.style().figure());
        grid.join(column, column + BOX - 1);
        grid.row(18).at(column).label(box.remark(), box.style().remark());
        grid.join(column, column + BOX - 1);
    }

    private static String share(long some, StatusCount all, String meaning) {
        return all.flights() == 0
                ? meaning
                : String.format(Locale.ROOT, "%.1f %%, %s", 100.0 * some / all.flights(), meaning);
    }

    private void news(SeasonSummary season, RunFacts facts, Policy policy) {
        String news = WorkbookNews.of(season, facts) + WorkbookNews.likelyOutside(season, policy);
        int lines = 1 + news.length() / NEWS_CHARS_A_LINE;
        grid.row(8 + 17 * lines).at(LEFT).label(news, styles.news);
        grid.join(LEFT, END);
        grid.gap(4);
    }

    private void caution() {
        grid.row(32).at(LEFT).label(Caution.TEXT, styles.caution);
        grid.join(LEFT, END);
    }
}
