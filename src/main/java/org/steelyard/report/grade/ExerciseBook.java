package org.steelyard.report.grade;

import java.io.IOException;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.HorizontalAlignment;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.steelyard.model.input.CgMeasure;
import org.steelyard.model.input.Claim;
import org.steelyard.model.input.SheetForm;
import org.steelyard.model.input.SheetItem;
import org.steelyard.report.book.SheetGrid;
import org.steelyard.report.book.SheetRow;
import org.steelyard.report.book.SmallBook;
import org.steelyard.report.book.WorkbookPalette;
import org.steelyard.report.book.WorkbookStyles;
import org.steelyard.report.html.ScrolledTables;
import org.steelyard.report.text.Caution;
import org.steelyard.report.type.TypeTable;

/**
 * The blank sheet of an exercise as a workbook. Cells to fill in are framed and open; the rest is protected, without a
 * password, against slips of the hand. It is read back by its labels.
 */
final class ExerciseBook {

    private static final int END = 4;
    private static final int CHARS_OF_A_LINE = 92;

    private final SmallBook book;
    private final WorkbookStyles styles;
    private final ExerciseText text;
    private final String student;
    private final Map<SheetItem, Claim> claims = new EnumMap<>(SheetItem.class);
    private final CellStyle open;
    private final CellStyle openLeft;

    private ExerciseBook(SmallBook book, ExerciseText text, String student, Map<SheetItem, Claim> claims) {
        this.student = student;
        this.claims.putAll(claims);
        this.book = book;
        this.styles = book.styles();
        this.text = text;
        open = frame(styles.setting.plain(), HorizontalAlignment.RIGHT);
        openLeft = frame(styles.text.plain(), HorizontalAlignment.LEFT);
    }

    /** Writes the sheet; blank for a student without a name and without claims. */
    static void write(ExerciseText text, CgMeasure measure, String student, Map<SheetItem, Claim> claims, Path file)
            throws IOException {
        try (SmallBook book = new SmallBook("Load sheet: " + text.name())) {
            ExerciseBook sheet = new ExerciseBook(book, text, student, claims);
            sheet.form(measure);
            sheet.data();
            book.write(file);
        }
    }

    private static CellStyle frame(CellStyle like, HorizontalAlignment alignment) {
        XSSFCellStyle style = ((XSSFCellStyle) like).copy();
        style.setLocked(false);
        style.setAlignment(alignment);
        style.setFillForegroundColor(WorkbookPalette.PAPER.color());
        style.setFillPattern(FillPatternType.SOLID_FOREGROUND);
        style.setBorderTop(BorderStyle.THIN);
        style.setBorderBottom(BorderStyle.THIN);
        style.setBorderLeft(BorderStyle.THIN);
        style.setBorderRight(BorderStyle.THIN);
        style.setTopBorderColor(WorkbookPalette.SLATE.color());
        style.setBottomBorderColor(WorkbookPalette.SLATE.color());
        style.setLeftBorderColor(WorkbookPalette.SLATE.color());
        style.setRightBorderColor(WorkbookPalette.SLATE.color());
        return style;
    }

    private static WorkbookStyles.TextStyle text(CellStyle style) {
        return new WorkbookStyles.TextStyle(style, style);
    }

    private void line(SheetGrid grid, String words, CellStyle style) {
        grid.row(5 + 13f * (1 + words.length() / CHARS_OF_A_LINE)).label(words, style);
        grid.join(0, END);
    }

    private void form(CgMeasure measure) {
        SheetGrid grid = book.sheet("Load sheet");
        grid.widths(27, 25, 16, 16, 18);
        grid.row(30).label("Load sheet", styles.title);
        grid.row(20).label(SheetForm.STUDENT, styles.text.plain()).label(student, openLeft);
        grid.join(1, 2);
        grid.row(20).label(SheetForm.EXERCISE, styles.text.plain()).data(text.name(), text(styles.total));
        grid.join(1, 2);
        grid.row(18).label("Aircraft", styles.text.plain()).data(text.facts(), styles.text);
        grid.join(1, END);
        line(grid, Caution.TEXT, styles.caution);
        table(grid, text.load(), true);
        table(grid, text.fuel(), true);
        if (!text.task().isEmpty()) {
            grid.gap(4);
            line(grid, text.task(), styles.news);
        }
        figures(grid, measure);
        grid.sheet().protectSheet("");
        book.page().setUp(grid.sheet(), 1, 1);
        grid.sheet().getPrintSetup().setLandscape(false);
    }

    private void table(SheetGrid grid, TypeTable table, boolean room) {
        section(grid, table.title());
        SheetRow head = grid.row(table.headings().stream().anyMatch(words -> words.length() > 20) ? 28 : 18);
        for (String heading : table.headings()) {
            boolean number = heading.startsWith(ScrolledTables.NUMBERS);
            head.label(
                    number ? heading.substring(1) : heading, number ? styles.tableHeadingRight : styles.tableHeading);
        }
        for (List<String> row : table.rows()) {
            SheetRow cells = grid.row(16);
            for (int i = 0; i < row.size(); i++) {
                boolean number = table.headings().get(i).startsWith(ScrolledTables.NUMBERS);
                if (row.get(i).isEmpty() && room) {
                    cells.label("", open);
                } else {
                    cells.data(row.get(i), number ? styles.setting : styles.text);
                }
            }
        }
        if (!table.note().isEmpty()) {
            line(grid, table.note(), styles.remark);
        }
    }

    private void section(SheetGrid grid, String title) {
        grid.gap(5);
        boolean tall = title.length() > CHARS_OF_A_LINE - 10;
        grid.row(tall ? 14f * (1 + title.length() / (CHARS_OF_A_LINE - 10)) : 20)
                .label(title, wrapped());
        grid.join(0, END);
    }

    private CellStyle wrapped() {
        XSSFCellStyle style = ((XSSFCellStyle) styles.section).copy();
        style.setWrapText(true);
        return style;
    }

    private void figures(SheetGrid grid, CgMeasure measure) {
        section(grid, "Your figures: fill in what you can");
        grid.row(18)
                .label(SheetForm.ASKED, styles.tableHeading)
                .label(SheetForm.FIGURE, styles.tableHeadingRight)
                .label(SheetForm.UNIT, styles.tableHeading)
                .label("", styles.tableHeading);
        grid.join(3, END);
        AnswerCells answers = new AnswerCells(grid.sheet(), text.type(), measure, open);
        for (List<String> row : text.asked(measure)) {
            SheetItem item = SheetForm.item(row.get(0)).orElseThrow();
            answers.check(item, grid.position(), 1);
            SheetRow cells = grid.row(18).label(row.get(0), styles.text.plain());
            figure(cells, item, answers.style(item));
            cells.label(row.get(1), styles.text.plain()).label(row.get(2), styles.quiet);
            grid.join(3, END);
        }
    }

    /** The cell for a figure, with what the student entered. */
    private void figure(SheetRow cells, SheetItem item, CellStyle style) {
        Optional<Claim> claim = Optional.ofNullable(claims.get(item));
        boolean number =
                claim.orElse(new Claim.Words("none")) instanceof Claim.Figure && item.kind() != SheetItem.Kind.TRIM;
        if (number) {
            cells.number(Double.parseDouble(claim.orElseThrow().shown().replaceFirst(" .*", "")), style);
        } else {
            cells.label(claim.map(Claim::shown).orElse(""), style);
        }
    }

    private void data() {
        SheetGrid grid = book.sheet("Aircraft data");
        grid.widths(30, 24, 18, 18, 14);
        grid.row(26).data(text.type().name(), text(styles.title));
        line(grid, Caution.TEXT, styles.caution);
        text.data().forEach(table -> table(grid, table, false));
        grid.sheet().protectSheet("");
        book.page().setUp(grid.sheet(), 1, 0);
        grid.sheet().getPrintSetup().setLandscape(false);
    }
}
