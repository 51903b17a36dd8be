package org.steelyard.report.output.book;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.DoubleConsumer;
import org.apache.poi.ss.usermodel.CellStyle;
import org.steelyard.analyse.figure.Spread;
import org.steelyard.analyse.season.TrimGroup;
import org.steelyard.report.book.SheetGrid;
import org.steelyard.report.book.SheetRow;
import org.steelyard.report.book.WorkbookPage;
import org.steelyard.report.book.WorkbookStyles;

/** The spread of take-off trim and CG by type and flap setting: as numbers, and as pilots say a trim. */
final class SheetTrimSpread {

    static final String NAME = "Trim spread";

    private static final int COLUMNS = 15;

    private final SheetGrid grid;
    private final WorkbookStyles styles;

    SheetTrimSpread(SheetGrid grid, WorkbookStyles styles) {
        this.grid = grid;
        this.styles = styles;
    }

    void write(List<TrimGroup> groups, WorkbookPage page) {
        grid.widths(14, 12, 9, 10, 10, 10, 10, 10, 10, 10, 10, 10, 10, 10, 12);
        grid.row(30).label("Spread of take-off trim and CG by type and flap setting", styles.title);
        grid.row(30)
                .label(
                        "UP is nose-up, DN nose-down. Percentiles by the inclusive method: linear between order statistics"
                                + " at rank 1 + p (n − 1). sd with divisor n − 1, none for one flight. Groups of fewer than "
                                + Spread.FEW + " flights are marked: their figures say little.",
                        styles.remark);
        grid.join(0, COLUMNS - 1);
        grid.gap(8);
        table("Take-off trim in units", false, groups, this::trim);
        table(
                "Take-off CG in % MAC, and how many flights of the group are marginal or breached",
                true, groups, this::cg);
        page.setUp(grid.sheet(), 1, 0);
    }

    private void table(String title, boolean counts, List<TrimGroup> groups, Consumer<TrimGroup> line) {
        grid.row(24).label(title, styles.section);
        grid.join(0, COLUMNS - 1);
        SheetRow head = grid.row(18).label("Type", styles.tableHeading).label("Flaps", styles.tableHeading);
        for (String heading : List.of("n", "mean", "sd", "min", "p5", "p25", "median", "p75", "p95", "max")) {
            head.label(heading, styles.tableHeadingRight);
        }
        head.label(counts ? "marginal" : "", styles.tableHeadingRight)
                .label(counts ? "breached" : "", styles.tableHeadingRight)
                .label("", styles.tableHeadingRight);
        groups.forEach(line);
        if (groups.isEmpty()) {
            grid.row().label("No flights.", styles.quiet);
        }
        grid.gap(12);
    }

    private SheetRow group(TrimGroup group) {
        return grid.row().data(group.typeId(), styles.text).data(group.flapsShown(), styles.fitted);
    }

    private void trim(TrimGroup group) {
        numbers(group, group.trimUnits(), styles.trim.plain());
    }

    private void cg(TrimGroup group) {
        numbers(group, Optional.of(group.cgPercentMac()), styles.decimals(2))
                .at(COLUMNS - 3)
                .number(group.marginal(), styles.whole.plain())
                .number(group.breached(), styles.whole.plain());
    }

    private SheetRow numbers(TrimGroup group, Optional<Spread> spread, CellStyle style) {
        SheetRow row = group(group);
        if (spread.isEmpty()) {
            noScale(row);
            return row;
        }
        Spread s = spread.get();
        row.number(s.n(), styles.whole.plain()).number(s.mean(), style).number(s.sd(), styles.decimals(2));
        order(s, value -> row.number(value, style));
        few(row, s);
        return row;
    }

    private static void order(Spread s, DoubleConsumer line) {
        for (double value : new double[] {s.min(), s.p5(), s.p25(), s.median(), s.p75(), s.p95(), s.max()}) {
            line.accept(value);
        }
    }

    private void noScale(SheetRow row) {
        row.number(0, styles.whole.plain()).label("no scale", styles.quietRight);
    }

    private void few(SheetRow row, Spread spread) {
        if (spread.few()) {
            row.at(COLUMNS - 1).label("few flights", styles.quietRight);
        }
    }
}
