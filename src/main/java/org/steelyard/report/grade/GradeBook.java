package org.steelyard.report.grade;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.poi.ss.usermodel.CellStyle;
import org.steelyard.check.result.Status;
import org.steelyard.grade.mark.ClassSummary;
import org.steelyard.grade.mark.ClassSummary.ItemCount;
import org.steelyard.grade.mark.ClassSummary.SlipCount;
import org.steelyard.grade.mark.MarkedItem;
import org.steelyard.grade.mark.MarkedSheet;
import org.steelyard.grade.mark.Outcome;
import org.steelyard.model.finding.Severity;
import org.steelyard.model.input.InputProblem;
import org.steelyard.model.input.SheetForm;
import org.steelyard.model.policy.MarkingScheme;
import org.steelyard.model.policy.MarkingScheme.ItemRule;
import org.steelyard.model.unit.Counted;
import org.steelyard.report.book.SheetGrid;
import org.steelyard.report.book.SheetRow;
import org.steelyard.report.book.SmallBook;
import org.steelyard.report.book.WorkbookPalette;
import org.steelyard.report.book.WorkbookStyles;
import org.steelyard.report.text.Caution;
import org.steelyard.report.text.NumberText;

/** {@code grades.xlsx}: the class at a glance, marks by student and item, causes, and what could not be used. */
final class GradeBook {

    private static final int END = 10;
    private static final int CHARS_OF_A_LINE = 105;
    private static final int FEW = 12;
    private static final int CHART_ROWS = 15;

    private final SmallBook book;
    private final WorkbookStyles styles;
    private final List<MarkedSheet> sheets;
    private final MarkingScheme scheme;
    private final ClassSummary summary;
    private final String name;
    private final WorkbookStyles.NumberStyle points;
    private final CellStyle plainPoints;

    private GradeBook(SmallBook book, List<MarkedSheet> sheets, MarkingScheme scheme, String name) {
        this.book = book;
        this.styles = book.styles();
        this.sheets = sheets;
        this.scheme = scheme;
        this.summary = ClassSummary.of(sheets);
        this.name = name;
        points = styles.settingBySeverity;
        plainPoints = styles.format("0.##");
    }

    static void write(
            List<MarkedSheet> sheets, List<InputProblem> problems, MarkingScheme scheme, String name, Path file)
            throws IOException {
        try (SmallBook book = new SmallBook("Grades: " + name)) {
            GradeBook grades = new GradeBook(book, sheets, scheme, name);
            grades.overview();
            grades.marks();
            grades.causes();
            grades.problems(problems);
            book.write(file);
        }
    }

    private static WorkbookStyles.TextStyle text(CellStyle style) {
        return new WorkbookStyles.TextStyle(style, style);
    }

    private void line(SheetGrid grid, String words, CellStyle style) {
        int lines = 1 + words.length() / CHARS_OF_A_LINE;
        grid.row(4 + 13f * lines).at(1).label(words, style);
        grid.join(1, END);
    }

    private void section(SheetGrid grid, String title) {
        grid.gap(8);
        grid.row(24).at(1).label(title, styles.section);
        grid.join(1, END);
    }

    // ------------------------------------------------------------ overview

    private void overview() {
        SheetGrid grid = book.sheet("Overview");
        grid.widths(1, 25, 11, 11, 11, 11, 11, 11, 11, 11, 26);
        grid.row(32).at(1).data("Grades: " + name, text(styles.title));
        grid.join(1, END);
        grid.row(16).at(1).data("Load sheets marked by the scheme “" + scheme.name() + "”.", text(styles.subtitle));
        grid.join(1, END);
        grid.gap(6);
        boxes(grid);
        news(grid);
        scores(grid);
        hardest(grid);
        slips(grid);
        grid.gap(8);
        grid.row(30).at(1).label(Caution.TEXT, styles.caution);
        grid.join(1, END);
        book.page().setUp(grid.sheet(), 1, 1);
        grid.sheet().getPrintSetup().setLandscape(false);
    }

    private record Box(String label, double figure, String format, String remark, WorkbookStyles.FigureStyle style) {}

    private void boxes(SheetGrid grid) {
        double share = summary.sheets() == 0 ? 0 : 100.0 * summary.passed() / summary.sheets();
        List<Box> boxes = List.of(
                new Box(
                        "Sheets",
                        summary.sheets(),
                        WorkbookStyles.WHOLE,
                        "marked",
                        styles.figure(WorkbookPalette.SLATE, WorkbookPalette.PAPER)),
                new Box(
                        "Passed",
                        summary.passed(),
                        WorkbookStyles.WHOLE,
                        NumberText.fixed(share, 0) + " % of the sheets",
                        styles.figure(WorkbookPalette.CLEAN_FILL, WorkbookPalette.CLEAN_INK)),
                new Box(
                        "Mean",
                        summary.meanPercent(),
                        WorkbookStyles.ONE_DECIMAL,
                        "% of the points",
                        styles.figure(WorkbookPalette.TINT, WorkbookPalette.INK)),
                new Box(
                        "Median",
                        summary.medianPercent(),
                        WorkbookStyles.ONE_DECIMAL,
                        "% of the points",
                        styles.figure(WorkbookPalette.TINT, WorkbookPalette.INK)));
        int[][] places = {{1, 1}, {2, 4}, {5, 7}, {8, END}};
        for (int part = 0; part < 3; part++) {
            SheetRow row = grid.row(part == 1 ? 36 : 18);
            for (int i = 0; i < boxes.size(); i++) {
                Box box = boxes.get(i);
                row.at(places[i][0]);
                switch (part) {
                    case 0 -> row.label(box.label(), box.style().label());
                    case 1 -> row.number(box.figure(), withFormat(box.style().figure(), box.format()));
                    default -> row.label(box.remark(), box.style().remark());
                }
                if (places[i][1] > places[i][0]) {
                    grid.join(places[i][0], places[i][1]);
                }
            }
        }
        grid.gap(6);
    }

    private CellStyle withFormat(CellStyle style, String format) {
        var copy = ((org.apache.poi.xssf.usermodel.XSSFCellStyle) style).copy();
        copy.setDataFormat(styles.format(format).getDataFormat());
        return copy;
    }

    private void news(SheetGrid grid) {
        List<String> news = new ArrayList<>();
        summary.hardest()
                .filter(item -> item.percent() < 100)
                .ifPresent(item ->
                        news.add("The hardest figure is the " + item.item().label() + ": "
                                + NumberText.fixed(item.percent(), 0) + " % of its points were given."));
        summary.slips().stream()
                .findFirst()
                .ifPresent(slip ->
                        news.add("The commonest slip is “" + slip.kind().label() + "”, on "
                                + Counted.of((long) slip.certain() + slip.possible(), "sheet") + "."));
        if (summary.untold() > 0) {
            news.add("On " + Counted.of(summary.untold(), "sheet") + " the cause cannot be told.");
        }
        summary.handedInTwice().ifPresent(words -> news.add(words + "."));
        if (!news.isEmpty()) {
            line(grid, String.join(" ", news), styles.news);
        }
    }

    private void scores(SheetGrid grid) {
        section(grid, "Spread of scores");
        int top = grid.position();
        SheetRow head = grid.row(18).at(1).label("Share of the points", styles.tableHeading);
        head.label("sheets", styles.tableHeadingRight);
        for (int i = 0; i < summary.bands().size(); i++) {
            String band = i * 10 + " to " + (i * 10 + 10) + " %";
            grid.row(15)
                    .at(1)
                    .label(band, styles.text.plain())
                    .number(summary.bands().get(i), styles.whole.plain());
        }
        GradeChart.scores(grid.sheet(), top, summary.bands().size(), 3, END, CHART_ROWS);
        grid.moveTo(Math.max(grid.position(), top + CHART_ROWS - 3));
    }

    private void hardest(SheetGrid grid) {
        section(grid, "Figures, the hardest first");
        SheetRow head = grid.row(18).at(1).label("Figure", styles.tableHeading);
        head.label("points given", styles.tableHeadingRight);
        for (Outcome outcome : GradePage.shown()) {
            head.label(outcome.label(), styles.tableHeadingRight);
        }
        for (ItemCount item : summary.items()) {
            SheetRow row = grid.row()
                    .at(1)
                    .label(SheetForm.label(item.item()), styles.text.plain())
                    .number(item.percent() / 100, styles.share);
            for (Outcome outcome : GradePage.shown()) {
                row.number(item.count(outcome), styles.whole.plain());
            }
        }
    }

    private void slips(SheetGrid grid) {
        section(grid, "Commonest slips");
        grid.row(28)
                .at(1)
                .label("Slip", styles.tableHeading)
                .label("named", styles.tableHeadingRight)
                .label("possible", styles.tableHeadingRight)
                .label("Example", styles.tableHeading);
        grid.join(4, END);
        List<SlipCount> first = summary.slips().stream().limit(FEW).toList();
        for (SlipCount slip : first) {
            String example = slip.student() + ": " + slip.example();
            grid.row(3 + 13f * (1 + example.length() / 88))
                    .at(1)
                    .label(slip.kind().label(), styles.text.plain())
                    .number(slip.certain(), styles.whole.plain())
                    .number(slip.possible(), styles.whole.plain())
                    .data(example, styles.wrapped);
            grid.join(4, END);
        }
        if (first.isEmpty()) {
            grid.row().at(1).label("None.", styles.quiet);
        }
        line(
                grid,
                "Named: the one cause that explains every figure of the sheet, alone or with a second. Possible: one of"
                        + " several that the sheet does not tell apart, or the cause of the first error only.",
                styles.remark);
    }

    // ------------------------------------------------------------ marks

    private void marks() {
        SheetGrid grid = book.sheet("Marks");
        List<ItemRule> rules = scheme.items();
        int[] widths = new int[6 + rules.size()];
        java.util.Arrays.fill(widths, 11);
        widths[0] = 22;
        widths[1] = 13;
        widths[5] = 9;
        grid.widths(widths);
        SheetRow head = grid.row(46).label("Student", styles.heading).label("Exercise", styles.heading);
        for (String heading : List.of("Points", "Out of", "Share", "Result")) {
            head.label(heading, styles.headingRight);
        }
        rules.forEach(rule -> head.label(SheetForm.label(rule.item()), styles.headingRight));
        for (MarkedSheet sheet : sheets) {
            SheetRow row = grid.row()
                    .data(GradeWords.student(sheet), styles.text)
                    .data(sheet.exercise().loading().flight().flight(), styles.text)
                    .number(sheet.points(), plainPoints)
                    .number(sheet.outOf(), plainPoints)
                    .number(sheet.percent() / 100, styles.share)
                    .label(GradeWords.verdict(sheet), styles.status(sheet.passed() ? Status.CLEAN : Status.BREACHED));
            rules.forEach(rule -> mark(row, GradeCsv.item(sheet, rule.item())));
        }
        grid.sheet().createFreezePane(2, 1);
        grid.sheet()
                .setAutoFilter(new org.apache.poi.ss.util.CellRangeAddress(
                        0, Math.max(1, sheets.size()), 0, widths.length - 1));
        grid.sheet().setRepeatingRows(org.apache.poi.ss.util.CellRangeAddress.valueOf("1:1"));
        book.page().setUp(grid.sheet(), 1, 0);
    }

    private void mark(SheetRow row, Optional<MarkedItem> item) {
        if (item.isEmpty()) {
            row.label("not asked", styles.quietRight);
            return;
        }
        CellStyle style = switch (item.get().outcome()) {
            case RIGHT -> points.styleFor(Severity.NOTE);
            case FOLLOWS -> points.styleFor(Severity.MARGINAL);
            case WRONG, UNREADABLE -> points.styleFor(Severity.BREACH);
            case MISSING, NOT_ASKED -> styles.quietRight;
        };
        if (item.get().outcome() == Outcome.MISSING) {
            row.label("–", style);
        } else {
            row.number(item.get().points(), style);
        }
    }

    // ------------------------------------------------------------ causes and problems

    private void causes() {
        SheetGrid grid = book.sheet("Causes");
        grid.widths(22, 13, 10, 34, 19, 90);
        SheetRow head = grid.row(20);
        for (String heading :
                List.of("Student", "Exercise", "Share", "Cause", "How sure", "What the student is told")) {
            head.label(heading, styles.heading);
        }
        for (MarkedSheet sheet : sheets) {
            String told = GradeWords.toldInOne(sheet);
            String cause = GradeWords.cause(sheet);
            int lines = Math.max(1 + told.length() / 92, 1 + cause.length() / 34);
            grid.row()
                    .lines(lines)
                    .data(GradeWords.student(sheet), styles.wrapped)
                    .data(sheet.exercise().loading().flight().flight(), styles.wrapped)
                    .number(sheet.percent() / 100, styles.share)
                    .data(cause, styles.wrapped)
                    .data(GradeWords.sure(sheet), styles.wrapped)
                    .data(told, styles.wrapped);
        }
        grid.sheet().createFreezePane(1, 1);
        grid.sheet().setRepeatingRows(org.apache.poi.ss.util.CellRangeAddress.valueOf("1:1"));
        book.page().setUp(grid.sheet(), 1, 0);
    }

    private void problems(List<InputProblem> problems) {
        SheetGrid grid = book.sheet("Not used");
        grid.widths(34, 24, 60, 20, 60);
        SheetRow head = grid.row(20);
        for (String heading : List.of("Where", "What", "Why it was not used", "Value", "Expected")) {
            head.label(heading, styles.heading);
        }
        for (InputProblem problem : problems) {
            int lines =
                    1 + Math.max(problem.reason().length(), problem.expected().length()) / 60;
            grid.row()
                    .lines(lines)
                    .data(problem.origin().toString(), styles.wrapped)
                    .data(problem.column(), styles.wrapped)
                    .data(problem.reason(), styles.wrapped)
                    .data(problem.value(), styles.wrapped)
                    .data(problem.expected(), styles.wrapped);
        }
        if (problems.isEmpty()) {
            grid.row().label("Everything was used.", styles.quiet);
        }
        book.page().setUp(grid.sheet(), 1, 0);
    }
}
