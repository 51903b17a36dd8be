package org.steelyard.report.output.book;

import java.util.List;
import java.util.Locale;
import org.steelyard.model.input.SkippedRow;
import org.steelyard.model.policy.Policy;
import org.steelyard.model.policy.RecordedTrimRule;
import org.steelyard.model.unit.Counted;
import org.steelyard.report.book.BookTable;
import org.steelyard.report.book.EndlessSheet;
import org.steelyard.report.book.SheetGrid;
import org.steelyard.report.book.WorkbookPage;
import org.steelyard.report.book.WorkbookStyles;
import org.steelyard.report.output.RunFacts;
import org.steelyard.report.output.SkippedRows;
import org.steelyard.report.table.season.InputTable;
import org.steelyard.report.text.Caution;

/** What was read, under which rules and by which methods, so that the results can be traced and repeated. */
final class SheetRunFacts {

    static final String NAME = "Run facts";

    private static final int LAST = 9;

    private final SheetGrid grid;
    private final WorkbookStyles styles;

    SheetRunFacts(SheetGrid grid, WorkbookStyles styles) {
        this.grid = grid;
        this.styles = styles;
    }

    void write(RunFacts facts, Policy policy, List<EndlessSheet> rolls, long cutCells) {
        grid.widths(34, 14, 12, 12, 12, 12, 12, 12, 66, 30);
        grid.row(30).label("Run facts", styles.title);
        caution();
        remarks(facts);
        inputs(facts);
        skipped(facts);
        skippedRows(facts.skippedRows());
        config(facts);
        options(facts);
        methods(policy);
        sheets(rolls, cutCells);
    }

    void print(WorkbookPage page) {
        page.setUp(grid.sheet(), 1, 0);
    }

    private void caution() {
        grid.row(22).label(Caution.TEXT, styles.caution);
        grid.join(0, LAST);
        grid.gap(8);
    }

    private void remarks(RunFacts facts) {
        if (!facts.remarks().isEmpty()) {
            section("To be known of the results");
            facts.remarks().forEach(remark -> line("", remark));
            grid.gap(10);
        }
    }

    private void inputs(RunFacts facts) {
        new BookTable(grid, styles).write(InputTable.of(facts));
        grid.gap(10);
    }

    private void skipped(RunFacts facts) {
        section("Files and sheets that were not read");
        if (facts.skipped().isEmpty()) {
            none();
        }
        for (RunFacts.SkippedFile file : facts.skipped()) {
            grid.row().data(file.name(), styles.wrapped).data(file.reason(), styles.wrapped);
            grid.join(1, LAST);
        }
        grid.gap(10);
    }

    private void skippedRows(SkippedRows rows) {
        section("Rows that were passed over (totals, titles, rows put right elsewhere, flights that stand elsewhere)");
        if (rows.total() == 0) {
            none();
        }
        for (SkippedRow row : rows.first()) {
            grid.row().data(row.origin().toString(), styles.wrapped).data(row.reason(), styles.wrapped);
            grid.join(1, LAST);
        }
        if (rows.total() > rows.first().size()) {
            line("And more", Counted.of(rows.total() - rows.first().size(), "row") + ", all in skipped.csv.");
        }
        grid.gap(10);
    }

    private void config(RunFacts facts) {
        section("Configuration files");
        for (RunFacts.ConfigFile file : facts.config()) {
            grid.row().data(file.name(), styles.wrapped).at(LAST - 1).data(file.sha256(), styles.text);
        }
        if (facts.config().isEmpty()) {
            none();
        }
        grid.gap(10);
    }

    private void options(RunFacts facts) {
        section("Program and options");
        line("Version", "Steelyard " + facts.version());
        if (facts.options().isEmpty()) {
            line("Options", "none that change results");
        }
        for (String option : facts.options()) {
            line("Option", option);
        }
        grid.gap(10);
    }

    private void methods(Policy policy) {
        section("Methods");
        line(
                "Status",
                "Breached: outside at least one limit. Marginal: inside every limit checked, close to at least one."
                        + " Clean: neither; notes leave a flight clean. A point on a limit is inside.");
        line("Close to a limit", distances(policy));
        line(
                "Totals",
                "Where an input gives totals only they are shared out "
                        + policy.sharing().label() + ", and the flight has a note that says so.");
        line(
                "CG",
                "Moments and masses are summed and divided once. % MAC = 100 × (arm − leading edge) ÷ chord; arms"
                        + " from the type's datum, positive aft.");
        line(
                "Trim",
                "Nose-up positive; 0.2 UP is nose-up, 1.1 DN nose-down. A setting is the trim rounded to the step of"
                        + " the scale, as the scale says (halves to nose-up where it says nothing), never out of its band; a"
                        + " scale is never extended.");
        policy.recordedTrim().ifPresent(rule -> line("Recorded trim", recordedTrim(rule)));
        line(
                "Percentiles",
                "Inclusive method: linear between the order statistics at rank 1 + p (n − 1), Hyndman and"
                        + " Fan's definition 7.");
        line("sd", "Sample standard deviation, divisor n − 1; none for one flight.");
        line(
                "Units",
                "Flights and Trim spread: kg and % MAC for all types. Findings: the units of the type's users."
                        + " 1 lb = 0.45359237 kg and 1 in = 0.0254 m, exactly.");
        grid.gap(10);
    }

    private static String recordedTrim(RecordedTrimRule rule) {
        return String.format(
                Locale.ROOT,
                "Recorded less right setting, both for take-off: farther off than %s units is marginal, than %s units a"
                        + " breach.",
                rule.marginalUnits(),
                rule.breachUnits());
    }

    private static String distances(Policy policy) {
        return String.format(
                Locale.ROOT,
                "CG nearer than %s %% MAC; mass within %s %% of its limit; hold, floor or group within %s %% of its"
                        + " limit; trim nearer than %s units to an end of its band.",
                policy.marginalCgPercentMac(),
                policy.marginalMassPercent(),
                policy.marginalLoadPercent(),
                policy.marginalTrimUnits());
    }

    private void sheets(List<EndlessSheet> rolls, long cutCells) {
        section("Sheets");
        for (EndlessSheet roll : rolls) {
            line(
                    roll.layout().name(),
                    Counted.of(roll.rows(), "row") + " below the headings on "
                            + Counted.of(roll.parts(), "sheet")
                            + (roll.parts() == 1 ? "" : ": " + String.join(", ", roll.names())));
        }
        line(
                "Cells cut",
                cutCells == 0
                        ? "None: every text fits its cell."
                        : Counted.of(cutCells, "cell")
                                + " held more than the format can: the cut is marked, and the CSV files beside this workbook hold"
                                + " everything.");
    }

    private void line(String key, String value) {
        int lines = 1 + value.length() / 170;
        grid.row(1 + 13f * lines).data(key, styles.text).data(value, styles.wrapped);
        grid.join(1, LAST);
    }

    private void none() {
        grid.row().label("None.", styles.quiet);
    }

    private void section(String title) {
        grid.row(20).label(title, styles.section);
        grid.join(0, LAST);
    }
}
