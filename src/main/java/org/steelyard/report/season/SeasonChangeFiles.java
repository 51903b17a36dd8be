package org.steelyard.report.season;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.apache.poi.ss.usermodel.CellStyle;
import org.steelyard.analyse.change.SeasonChange;
import org.steelyard.analyse.change.SeasonChange.Figure;
import org.steelyard.analyse.change.SeasonChange.Verdict;
import org.steelyard.analyse.column.TrimSetting;
import org.steelyard.model.finding.Severity;
import org.steelyard.model.trim.TrimUnit;
import org.steelyard.model.unit.Counted;
import org.steelyard.report.book.SheetGrid;
import org.steelyard.report.book.SheetRow;
import org.steelyard.report.book.SmallBook;
import org.steelyard.report.book.WorkbookStyles;
import org.steelyard.report.file.Destination;
import org.steelyard.report.file.StagedFolder;
import org.steelyard.report.text.Caution;
import org.steelyard.report.text.CsvFile;
import org.steelyard.report.text.CsvLine;
import org.steelyard.report.text.NumberText;
import org.steelyard.report.words.SeasonWords;
import org.steelyard.report.words.WorkbookWords;

/** Writes a comparison of two seasons as a workbook to read and a table to compute with. */
public final class SeasonChangeFiles {

    /** Name of the workbook. */
    public static final String BOOK = "change.xlsx";

    /** Name of the table. */
    public static final String TABLE = "change.csv";

    /** What a verdict means. */
    static final String METHOD = "Beyond chance means that two seasons without a difference would be told apart, in"
            + " whatever this comparison looks at, at most once in twenty: chances are adjusted over all of it by Holm's"
            + " weighted method, each figure by each grouping with the same weight.";

    private static final int COLUMNS = 13;
    private static final int LINES = 12;

    private static final List<String> HEADINGS = List.of(
            "figure",
            "grouping",
            "type",
            "flaps",
            "thrust",
            "group",
            "unit",
            "flights_before",
            "flights_after",
            "before",
            "after",
            "difference",
            "low",
            "high",
            "effect",
            "chance",
            "verdict");

    private SeasonChangeFiles() {}

    /**
     * Writes both files, or none.
     *
     * @param to where they go; made if it is not there
     * @param before name of the first season
     * @param after name of the second
     * @param changes the comparison
     * @throws IOException if a file cannot be written
     */
    public static void write(Destination to, String before, String after, List<SeasonChange> changes)
            throws IOException {
        try (StagedFolder staged = StagedFolder.at(to)) {
            table(staged.file(TABLE), changes);
            book(staged.file(BOOK), before, after, changes);
            staged.publish();
        }
    }

    private static void table(Path file, List<SeasonChange> changes) throws IOException {
        try (CsvFile csv = new CsvFile(file, HEADINGS)) {
            CsvLine line = new CsvLine();
            for (SeasonChange change : changes) {
                line.text(change.figure().label())
                        .text(change.grouping())
                        .text(change.typeId())
                        .text(change.flaps())
                        .text(change.thrust())
                        .text(change.group())
                        .text(change.figure().unit())
                        .whole(change.flightsBefore())
                        .whole(change.flightsAfter());
                for (OptionalDouble number : numbers(change)) {
                    line.number(number);
                }
                csv.write(line.text(change.verdict().label()));
            }
        }
    }

    private static List<OptionalDouble> numbers(SeasonChange change) {
        return List.of(
                change.before(),
                change.after(),
                change.difference(),
                change.low(),
                change.high(),
                change.effect(),
                change.chance());
    }

    private static void book(Path file, String before, String after, List<SeasonChange> changes) throws IOException {
        try (SmallBook book = new SmallBook(after + " against " + before)) {
            SheetGrid news = sheet(
                    book,
                    "What moved",
                    after + " against " + before,
                    METHOD + " Means: interval and"
                            + " chance by Welch, effect in sd. Shares: interval by Newcombe, chance by Fisher's exact test,"
                            + " effect as Cohen's h. Groups from 10 flights on in both seasons. Difference: after less before.");
            part(
                    book,
                    news,
                    "New offenders: breached more than before, and more than their type",
                    changes,
                    Verdict.NEW_OFFENDER);
            part(book, news, "Cured: breached less than before, and no more than their type", changes, Verdict.CURED);
            part(book, news, "Shares that rose", changes, Verdict.WORSE);
            part(book, news, "Shares that fell", changes, Verdict.BETTER);
            part(book, news, "Means that moved", changes, Verdict.UP, Verdict.DOWN);
            part(book, news, "New and gone", newAndGone(changes));
            news.row(32).label(Caution.TEXT, book.styles().caution);
            news.join(0, COLUMNS - 1);
            book.page().setUp(news.sheet(), 1, 0);
            for (Figure figure : Figure.values()) {
                all(book, figure, changes);
            }
            book.write(file);
        }
    }

    /** Once each, by take-off CG, which every flight has. */
    private static List<SeasonChange> newAndGone(List<SeasonChange> changes) {
        return SeasonChange.having(changes, Verdict.ONLY_AFTER, Verdict.ONLY_BEFORE).stream()
                .filter(change -> change.figure() == Figure.TAKEOFF_CG)
                .toList();
    }

    private static SheetGrid sheet(SmallBook book, String name, String title, String remark) {
        SheetGrid grid = book.sheet(name);
        grid.widths(24, 12, 11, 9, 24, 9, 9, 11, 11, 11, 18, 9, 18);
        grid.row(30).data(title, new WorkbookStyles.TextStyle(book.styles().title, book.styles().title));
        grid.row(32).label(remark, book.styles().remark);
        grid.join(0, COLUMNS - 1);
        grid.gap(8);
        return grid;
    }

    private static void all(SmallBook book, Figure figure, List<SeasonChange> changes) {
        List<SeasonChange> some =
                changes.stream().filter(change -> change.figure() == figure).toList();
        if (!some.isEmpty()) {
            String title = WorkbookWords.sentence(figure.label()).replace(".", "");
            SheetGrid grid = sheet(
                    book,
                    title,
                    title + ", " + figure.unit(),
                    "Every group; those beyond chance first. Difference: after less before.");
            head(book, grid);
            some.forEach(change -> line(book, grid, change));
            book.page().setUp(grid.sheet(), 1, 0);
        }
    }

    private static void part(
            SmallBook book, SheetGrid grid, String title, List<SeasonChange> changes, Verdict... verdicts) {
        part(book, grid, title, SeasonChange.having(changes, verdicts));
    }

    private static void part(SmallBook book, SheetGrid grid, String title, List<SeasonChange> some) {
        grid.row(24).label(title + ": " + some.size(), book.styles().section);
        grid.join(0, COLUMNS - 1);
        if (some.isEmpty()) {
            grid.row().label("None.", book.styles().quiet);
        } else {
            head(book, grid);
            some.forEach(change -> line(book, grid, change));
        }
        grid.gap(10);
    }

    private static void head(SmallBook book, SheetGrid grid) {
        SheetRow head = grid.row(28);
        for (String heading : List.of("Figure", "Grouping", "Type", "Flaps", "Group")) {
            head.label(heading, book.styles().tableHeading);
        }
        for (String heading : List.of(
                "Flights before",
                "Flights after",
                "Before",
                "After",
                "Difference",
                "95 % interval",
                "Adjusted chance")) {
            head.label(heading, book.styles().tableHeadingRight);
        }
        head.label("Verdict", book.styles().tableHeading);
    }

    private static void line(SmallBook book, SheetGrid grid, SeasonChange change) {
        WorkbookStyles styles = book.styles();
        CellStyle figure = change.figure() == Figure.TAKEOFF_TRIM ? styles.trim.plain() : styles.decimals(2);
        SheetRow row = grid.row();
        for (String words : Arrays.asList(
                change.figure().label() + ", " + change.figure().unit(),
                change.grouping(),
                change.typeId(),
                TrimSetting.words(change.flaps(), change.thrust()),
                change.group())) {
            row.data(words, styles.text);
        }
        row.number(change.flightsBefore(), styles.whole.plain())
                .number(change.flightsAfter(), styles.whole.plain())
                .number(change.before(), figure)
                .number(change.after(), figure)
                .number(change.difference(), styles.signed.plain())
                .data(interval(change), styles.setting)
                .data(
                        change.chance().isPresent()
                                ? NumberText.chance(change.chance().getAsDouble())
                                : "",
                        styles.setting)
                .label(change.verdict().label(), mark(styles, change.verdict()));
    }

    private static CellStyle mark(WorkbookStyles styles, Verdict verdict) {
        return verdict == Verdict.NEW_OFFENDER || verdict == Verdict.WORSE
                ? styles.severity(Severity.MARGINAL)
                : styles.text.plain();
    }

    private static String interval(SeasonChange change) {
        return change.low().isPresent() && change.high().isPresent()
                ? String.format(
                        Locale.ROOT,
                        "%+.2f to %+.2f",
                        change.low().getAsDouble(),
                        change.high().getAsDouble())
                : "";
    }

    /**
     * The news in lines of plain text.
     *
     * @param before name of the first season
     * @param after name of the second
     * @param changes the comparison
     * @return lines for a terminal
     */
    public static List<String> lines(String before, String after, List<SeasonChange> changes) {
        List<String> lines = new ArrayList<>();
        lines.add("");
        lines.add(after + " against " + before);
        changes.stream()
                .filter(change -> change.grouping().equals("type") && change.figure() == Figure.TAKEOFF_CG)
                .sorted(Comparator.comparing(SeasonChange::typeId))
                .forEach(change -> lines.add(String.format(
                        Locale.ROOT,
                        "  %-12s %,d flights before, %,d after",
                        change.typeId(),
                        change.flightsBefore(),
                        change.flightsAfter())));
        section(lines, "New offenders", changes, Verdict.NEW_OFFENDER);
        section(lines, "Cured", changes, Verdict.CURED);
        section(lines, "Shares that rose", changes, Verdict.WORSE);
        section(lines, "Shares that fell", changes, Verdict.BETTER);
        section(lines, "Means that moved", changes, Verdict.UP, Verdict.DOWN);
        long within = SeasonChange.having(changes, Verdict.WITHIN_CHANCE).size();
        lines.add("");
        lines.add(Counted.of(within, "comparison") + " within chance, "
                + Counted.number(SeasonChange.having(changes, Verdict.FEW).size())
                + " with too few flights. " + METHOD);
        return lines;
    }

    private static void section(List<String> lines, String title, List<SeasonChange> changes, Verdict... verdicts) {
        List<SeasonChange> some = SeasonChange.having(changes, verdicts);
        lines.add("");
        lines.add(title + (some.isEmpty() ? ": none" : ""));
        some.stream().limit(LINES).forEach(change -> lines.add("  " + sentence(change)));
        if (some.size() > LINES) {
            lines.add("  … and " + (some.size() - LINES) + " more: " + TABLE);
        }
    }

    private static String shown(Figure figure, double value, String unit) {
        return figure == Figure.TAKEOFF_TRIM
                ? SeasonWords.trim(value, TrimUnit.UNITS)
                : String.format(Locale.ROOT, "%.2f", value) + unit;
    }

    /** One change in words. */
    static String sentence(SeasonChange change) {
        String what = change.grouping().equals("type")
                ? change.figure().label()
                : change.grouping() + " " + change.group() + ": "
                        + change.figure().label();
        return String.format(
                Locale.ROOT,
                "%s%s, %s %s to %s (%s, chance %s)",
                change.typeId(),
                change.flaps().isBlank() ? "" : " flaps " + TrimSetting.words(change.flaps(), change.thrust()),
                what,
                shown(change.figure(), change.before().orElse(0), ""),
                shown(
                        change.figure(),
                        change.after().orElse(0),
                        " " + change.figure().unit()),
                interval(change),
                NumberText.chance(change.chance().orElse(1)));
    }
}
