package org.steelyard.report.flight;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.apache.poi.ss.usermodel.CellStyle;
import org.steelyard.model.finding.Severity;
import org.steelyard.report.book.SheetGrid;
import org.steelyard.report.book.SheetRow;
import org.steelyard.report.book.SmallBook;
import org.steelyard.report.book.WorkbookPalette;
import org.steelyard.report.book.WorkbookStyles;
import org.steelyard.report.flight.LoadSummary.Fact;
import org.steelyard.report.flight.LoadSummary.State;
import org.steelyard.report.flight.LoadSummary.Trim;
import org.steelyard.report.text.Caution;
import org.steelyard.report.words.WorkbookWords;

/** The load summary of one flight as a workbook of one sheet, which prints on one page. */
final class LoadSummaryBook {

    private static final int LAST = 5;

    private final LoadSummary summary;
    private final SheetGrid grid;
    private final WorkbookStyles styles;

    private LoadSummaryBook(LoadSummary summary, SheetGrid grid, WorkbookStyles styles) {
        this.summary = summary;
        this.grid = grid;
        this.styles = styles;
    }

    static void write(LoadSummary summary, Path file) throws IOException {
        try (SmallBook book = new SmallBook("Load summary: " + summary.title())) {
            SheetGrid grid = book.sheet("Load summary");
            new LoadSummaryBook(summary, grid, book.styles()).content();
            book.page().setUp(grid.sheet(), 1, 1);
            grid.sheet().getPrintSetup().setLandscape(false);
            book.write(file);
        }
    }

    private void content() {
        grid.widths(27, 16, 16, 14, 18, 18);
        grid.row(30).data(summary.title(), text(styles.title));
        StringBuilder facts = new StringBuilder();
        summary.facts()
                .forEach(fact -> facts.append(facts.isEmpty() ? "" : "; ")
                        .append(fact.name())
                        .append(' ')
                        .append(fact.value()));
        grid.row(18).data(facts.toString(), text(styles.subtitle));
        if (summary.massKnown()) {
            grid.row(20)
                    .label("Verdict", styles.quiet)
                    .label(WorkbookWords.status(summary.status()), styles.status(summary.status()));
        }
        grid.row(30).label(Caution.TEXT, styles.caution);
        grid.join(0, LAST);
        trim();
        if (summary.massKnown()) {
            states();
            facts("Limits", summary.limits());
            facts("Load and fuel", summary.places());
            facts("How sure", summary.uncertainty());
            facts("Room left", summary.room());
        }
        findings();
    }

    private void trim() {
        section("Take-off trim to set");
        Optional<Trim> trim = summary.takeoffTrim();
        boolean out = !summary.warning().isEmpty();
        WorkbookStyles.FigureStyle figure = out
                ? styles.figure(WorkbookPalette.BREACH_FILL, WorkbookPalette.BREACH_INK)
                : styles.figure(WorkbookPalette.TINT, WorkbookPalette.INK);
        String shown = trim.map(Trim::setting).orElse("none");
        grid.row(44).data(shown, text(figure.figure()));
        grid.join(0, LAST);
        if (trim.isPresent()) {
            if (out) {
                grid.row(22).label(WorkbookWords.CROSS + summary.warning(), styles.severity(Severity.BREACH));
                grid.join(0, LAST);
            }
            if (trim.get().estimated()) {
                grid.row(18).label("An estimate only", styles.severity(Severity.MARGINAL));
                grid.join(0, LAST);
            }
            trim.get().facts().forEach(this::fact);
        }
        summary.landingTrim().ifPresent(landing -> fact(new Fact("landing trim", landing.setting())));
    }

    private void states() {
        section("States");
        SheetRow head = grid.row(28).label("State", styles.tableHeading);
        for (String heading : List.of(
                "Mass, " + summary.massUnit(),
                "CG, " + summary.cgUnit(),
                "Index",
                "Room forward, " + summary.cgUnit(),
                "Room aft, " + summary.cgUnit())) {
            head.label(heading, styles.tableHeadingRight);
        }
        for (State state : summary.states()) {
            SheetRow row = grid.row().data(state.name(), styles.text);
            for (String value :
                    List.of(state.mass(), state.cg(), state.index(), state.forwardRoom(), state.aftRoom())) {
                row.data(value, styles.setting);
            }
        }
    }

    private void facts(String title, List<Fact> facts) {
        if (!facts.isEmpty()) {
            section(title);
            facts.forEach(this::fact);
        }
    }

    private void fact(Fact fact) {
        grid.row().data(fact.name(), text(styles.quiet)).data(fact.value(), styles.text);
        grid.join(1, LAST);
    }

    private void findings() {
        section("Findings");
        for (LoadSummary.Line line : summary.findings()) {
            grid.row(line.sentence().length() > 90 ? 28 : 15)
                    .label(WorkbookWords.severity(line.severity()), styles.severity(line.severity()))
                    .data(WorkbookWords.sentence(line.sentence()), styles.wrapped);
            grid.join(1, LAST);
        }
        if (!summary.remedy().isEmpty()) {
            grid.row(28)
                    .label("What would put it right", styles.text.plain())
                    .data(WorkbookWords.sentence(summary.remedy()), styles.wrapped);
            grid.join(1, LAST);
        }
    }

    private void section(String title) {
        grid.row(24).label(title, styles.section);
        grid.join(0, LAST);
    }

    private static WorkbookStyles.TextStyle text(CellStyle style) {
        return new WorkbookStyles.TextStyle(style, style);
    }
}
