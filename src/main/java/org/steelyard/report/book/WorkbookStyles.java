package org.steelyard.report.book;

import java.util.HashMap;
import java.util.Map;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFFont;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.steelyard.check.result.Status;
import org.steelyard.model.finding.Severity;
import org.steelyard.model.unit.GuardedText;
import org.steelyard.report.words.SeasonWords;

/** All cell styles of one workbook, each made once. */
public final class WorkbookStyles {

    public static final String WHOLE = "#,##0";
    public static final String ONE_DECIMAL = "#,##0.0";
    static final String TWO_DECIMALS = "#,##0.00";
    public static final String THREE_DECIMALS = "#,##0.000";
    static final String SIGNED = "+0.00;-0.00;0.00";
    private static final String DATE = "yyyy-mm-dd";
    private static final String SHARE = "0.0%";

    /**
     * A style for text that comes from inputs.
     *
     * @param plain for most text
     * @param quoted the same, but what is typed over it stays text; for what looks like a formula
     */
    public record TextStyle(CellStyle plain, CellStyle quoted) {

        CellStyle styleFor(String shown) {
            return GuardedText.isFormulaLike(shown) ? quoted : plain;
        }
    }

    /**
     * A number's style by what is to be said of it.
     *
     * @param plain nothing
     * @param marginal close to a limit
     * @param breach outside a limit
     */
    public record NumberStyle(CellStyle plain, CellStyle marginal, CellStyle breach) {

        public CellStyle styleFor(Severity worst) {
            return switch (worst) {
                case NOTE -> plain;
                case MARGINAL -> marginal;
                case BREACH -> breach;
            };
        }
    }

    /**
     * The three rows of a box.
     *
     * @param label what it counts
     * @param figure the figure
     * @param remark what it means
     */
    public record FigureStyle(CellStyle label, CellStyle figure, CellStyle remark) {}

    final CellStyle blank;
    public final TextStyle text;
    public final TextStyle wrapped;
    public final TextStyle fitted;
    public final TextStyle original;
    public final TextStyle originalHeading;
    public final TextStyle setting;
    public final NumberStyle whole;
    public final NumberStyle twoDecimals;
    public final NumberStyle signed;
    public final NumberStyle trim;
    public final NumberStyle settingBySeverity;
    final CellStyle date;
    public final CellStyle rowNumber;
    public final CellStyle share;
    public final CellStyle heading;
    public final CellStyle headingRight;
    final CellStyle note;
    public final CellStyle total;
    public final CellStyle totalNumber;

    public final CellStyle title;
    public final CellStyle subtitle;
    public final CellStyle section;
    public final CellStyle tableHeading;
    public final CellStyle tableHeadingRight;
    public final CellStyle news;
    public final CellStyle quiet;
    public final CellStyle remark;
    public final CellStyle caution;
    public final CellStyle quietRight;

    private final CellStyle[] decimals;
    private final CellStyle cleanMark;
    private final CellStyle marginalMark;
    private final CellStyle breachMark;
    private final CellStyle noteMark;
    private final Map<String, NumberStyle> numbers = new HashMap<>();
    private final XSSFWorkbook book;
    private final boolean streamed;

    /** For long lists: lines between rows, text at the top of its cell. */
    public static WorkbookStyles forLists(XSSFWorkbook book) {
        return new WorkbookStyles(book, true);
    }

    /** For sheets laid out by hand. */
    public static WorkbookStyles forPages(XSSFWorkbook book) {
        return new WorkbookStyles(book, false);
    }

    private WorkbookStyles(XSSFWorkbook book, boolean streamed) {
        this.book = book;
        this.streamed = streamed;
        setDefaultFont();
        blank = style().made();
        text = textStyle(style().indented());
        wrapped = textStyle(style().indented().wrap());
        fitted = textStyle(style().indented().fitted());
        original = textStyle(style().indented().format("@"));
        originalHeading = textStyle(style().indented().format("@").bold().fill(WorkbookPalette.TINT));
        setting = textStyle(style().right());
        whole = numbers(WHOLE);
        twoDecimals = numbers(TWO_DECIMALS);
        signed = numbers(SIGNED);
        trim = numbers(SeasonWords.trimFormat(2));
        settingBySeverity = numberStyle("General");
        decimals = new CellStyle[] {
            whole.plain(), style().format(ONE_DECIMAL).made(), twoDecimals.plain(), format(THREE_DECIMALS)
        };
        date = style().format(DATE).indented().made();
        share = format(SHARE);
        rowNumber = format("0");
        heading = heading().indented().made();
        headingRight = heading().right().made();
        note = style().italic().ink(WorkbookPalette.QUIET).middle().made();
        total = style().bold().indented().ruleAbove().made();
        totalNumber = style().bold().format(WHOLE).ruleAbove().made();
        title = style().bold().size(20).ink(WorkbookPalette.SLATE).middle().made();
        subtitle = style().ink(WorkbookPalette.QUIET).middle().made();
        section = style().bold()
                .size(12)
                .ink(WorkbookPalette.SLATE)
                .bottom()
                .ruleBelow(WorkbookPalette.SLATE, BorderStyle.MEDIUM)
                .made();
        tableHeading = tableHeading().indented().made();
        tableHeadingRight = tableHeading().right().made();
        news = style().size(13).wrap().middle().made();
        remark = style().ink(WorkbookPalette.QUIET).wrap().made();
        quiet = style().indented().ink(WorkbookPalette.QUIET).middle().wrap().made();
        quietRight = style().ink(WorkbookPalette.QUIET).right().made();
        caution = style().italic().wrap().middle().fill(WorkbookPalette.TINT).made();
        cleanMark = style().indented()
                .ink(WorkbookPalette.CLEAN_INK)
                .fill(WorkbookPalette.CLEAN_FILL)
                .made();
        marginalMark = marginal(style().indented()).made();
        breachMark = breach(style().indented()).bold().made();
        noteMark = style().indented().ink(WorkbookPalette.QUIET).made();
    }

    public CellStyle status(Status status) {
        return switch (status) {
            case CLEAN -> cleanMark;
            case MARGINAL -> marginalMark;
            case BREACHED -> breachMark;
        };
    }

    public CellStyle severity(Severity severity) {
        return switch (severity) {
            case NOTE -> noteMark;
            case MARGINAL -> marginalMark;
            case BREACH -> breachMark;
        };
    }

    /** A plain number with so many decimals, 0 to 3. */
    public CellStyle decimals(int count) {
        return decimals[count];
    }

    /** Numbers of a format, to the right. */
    NumberStyle numbers(String format) {
        return numbers.computeIfAbsent(format, this::numberStyle);
    }

    /** A number with a format of its own. */
    public CellStyle format(String format) {
        return style().format(format).made();
    }

    /** A large figure in a box of one fill. */
    public FigureStyle figure(WorkbookPalette fill, WorkbookPalette ink) {
        return new FigureStyle(
                figureRow(fill, ink).bold().bottom().made(),
                figureRow(fill, ink).bold().size(24).middle().format(WHOLE).made(),
                figureRow(fill, ink).top().made());
    }

    private WorkbookStyleMaker figureRow(WorkbookPalette fill, WorkbookPalette ink) {
        return style().fill(fill).ink(ink).centre().gapAtSides();
    }

    private WorkbookStyleMaker heading() {
        return style().bold()
                .ink(WorkbookPalette.PAPER)
                .fill(WorkbookPalette.SLATE)
                .wrap()
                .top()
                .rule(WorkbookPalette.PAPER);
    }

    private WorkbookStyleMaker tableHeading() {
        return style().ink(WorkbookPalette.QUIET)
                .size(9)
                .bottom()
                .wrap()
                .ruleBelow(WorkbookPalette.RULE, BorderStyle.THIN);
    }

    private void setDefaultFont() {
        XSSFFont standard = book.getFontAt(0);
        standard.setFontName(WorkbookStyleMaker.FONT);
        standard.setFontHeightInPoints((short) 10);
        standard.setColor(WorkbookPalette.INK.color());
    }

    private TextStyle textStyle(WorkbookStyleMaker maker) {
        XSSFCellStyle plain = maker.made();
        XSSFCellStyle quoted = book.createCellStyle();
        quoted.cloneStyleFrom(plain);
        quoted.setQuotePrefixed(true);
        return new TextStyle(plain, quoted);
    }

    private NumberStyle numberStyle(String format) {
        return new NumberStyle(
                style().right().format(format).made(),
                marginal(style()).right().format(format).made(),
                breach(style()).right().format(format).made());
    }

    private static WorkbookStyleMaker marginal(WorkbookStyleMaker maker) {
        return maker.ink(WorkbookPalette.MARGINAL_INK).fill(WorkbookPalette.MARGINAL_FILL);
    }

    private static WorkbookStyleMaker breach(WorkbookStyleMaker maker) {
        return maker.ink(WorkbookPalette.BREACH_INK).fill(WorkbookPalette.BREACH_FILL);
    }

    private WorkbookStyleMaker style() {
        WorkbookStyleMaker maker = new WorkbookStyleMaker(book);
        return streamed ? maker.top().ruleBelow(WorkbookPalette.TINT, BorderStyle.THIN) : maker.middle();
    }
}
