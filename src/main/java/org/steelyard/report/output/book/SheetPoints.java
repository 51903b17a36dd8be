package org.steelyard.report.output.book;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.steelyard.analyse.column.FlightCloud;
import org.steelyard.analyse.column.FlightCloud.OfType;
import org.steelyard.analyse.column.FlightCloud.Point;
import org.steelyard.analyse.figure.Measure;
import org.steelyard.check.result.Status;
import org.steelyard.model.finding.Phase;
import org.steelyard.report.book.ChartCells;
import org.steelyard.report.book.EndlessSheet;
import org.steelyard.report.book.SheetColumn;
import org.steelyard.report.book.SheetLayout;
import org.steelyard.report.book.SheetRow;
import org.steelyard.report.book.WorkbookStyles;
import org.steelyard.report.words.WorkbookWords;

/** The points that the charts of one type draw, one row for each flight, by status. */
public final class SheetPoints {

    static final List<Phase> PHASES = List.of(Phase.TAKEOFF, Phase.ZERO_FUEL, Phase.LANDING);

    /** More points of a type than this are thinned. */
    public static final int MOST = 5_000;

    private static final int FIRST_FIGURE = 4;
    private static final int FIRST_ROW = 2;

    /**
     * Rows of the sheet.
     *
     * @param first first
     * @param last last
     */
    record Rows(int first, int last) {}

    private final EndlessSheet roll;
    private final WorkbookStyles styles;
    private final List<String> settings;
    private final Map<Status, Rows> byStatus = new EnumMap<>(Status.class);
    private int next = FIRST_ROW;

    SheetPoints(EndlessSheet roll, WorkbookStyles styles, List<String> settings) {
        this.roll = roll;
        this.styles = styles;
        this.settings = List.copyOf(settings);
    }

    static SheetLayout layout(String name, OfType type, List<String> settings) {
        List<SheetColumn> columns = new ArrayList<>(List.of(
                SheetColumn.number("Flight of the season", 12),
                SheetColumn.text("Tail", 12),
                SheetColumn.text("Status", 13),
                SheetColumn.text("Flaps", 9)));
        for (Phase phase : PHASES) {
            columns.add(SheetColumn.number(sentence(phase) + " CG, % MAC", 12));
            columns.add(SheetColumn.number(sentence(phase) + " mass, kg", 12));
        }
        settings.forEach(setting ->
                columns.add(SheetColumn.number("Take-off trim, flaps " + TypeCharts.shown(setting) + ", units", 12)));
        return new SheetLayout(name, note(type), columns, 2, 3, 1);
    }

    private static String sentence(Phase phase) {
        return phase.label().substring(0, 1).toUpperCase(Locale.ROOT)
                + phase.label().substring(1);
    }

    /** What is drawn of what flew. */
    static String note(OfType type) {
        return type.thinned()
                ? String.format(
                        Locale.ROOT,
                        "Points of the charts: %,d of %,d flights. All breached flights are here; the others are thinned"
                                + " by chance that is the same for the same input. Statistics use every flight.",
                        type.points().size(),
                        type.flights())
                : String.format(Locale.ROOT, "Points of the charts: all %,d flights of the type.", type.flights());
    }

    void write(FlightCloud cloud, OfType type) {
        for (Point point : type.points()) {
            Rows before = byStatus.get(point.status());
            byStatus.put(point.status(), new Rows(before == null ? next : before.first(), next));
            write(cloud, point);
            next++;
        }
    }

    private void write(FlightCloud cloud, Point point) {
        SheetRow row = roll.next()
                .number((long) point.order() + 1, styles.whole.plain())
                .data(point.tail(), styles.text)
                .label(WorkbookWords.status(point.status()), styles.status(point.status()))
                .data(point.setting(), styles.fitted);
        for (Phase phase : PHASES) {
            row.number(cloud.value(point, cg(phase)), styles.decimals(2))
                    .number(cloud.massKg(point, phase), styles.whole.plain());
        }
        for (String setting : settings) {
            if (setting.equals(point.setting())) {
                row.number(cloud.value(point, Measure.TAKEOFF_TRIM), styles.trim.plain());
            } else {
                row.skip(1);
            }
        }
    }

    static Measure cg(Phase phase) {
        return switch (phase) {
            case ZERO_FUEL -> Measure.ZERO_FUEL_CG;
            case LANDING -> Measure.LANDING_CG;
            default -> Measure.TAKEOFF_CG;
        };
    }

    static int cgColumn(Phase phase) {
        return FIRST_FIGURE + 2 * PHASES.indexOf(phase);
    }

    static int massColumn(Phase phase) {
        return cgColumn(phase) + 1;
    }

    int trimColumn(String setting) {
        return FIRST_FIGURE + 2 * PHASES.size() + place(setting);
    }

    int place(String setting) {
        return settings.indexOf(setting);
    }

    Optional<Rows> rows(Status status) {
        return Optional.ofNullable(byStatus.get(status));
    }

    Optional<Rows> rows() {
        return next == FIRST_ROW ? Optional.empty() : Optional.of(new Rows(FIRST_ROW, next - 1));
    }

    ChartCells cells(Rows rows, int column) {
        return new ChartCells(roll.names().get(0), column, rows.first(), rows.last());
    }
}
