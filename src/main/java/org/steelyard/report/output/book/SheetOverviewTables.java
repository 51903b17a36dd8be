package org.steelyard.report.output.book;

import static org.steelyard.report.output.book.SheetOverview.END;
import static org.steelyard.report.output.book.SheetOverview.LEFT;
import static org.steelyard.report.output.book.SheetOverview.RIGHT;
import static org.steelyard.report.output.book.SheetOverview.TABLE;

import java.util.List;
import org.steelyard.analyse.column.StatusCount;
import org.steelyard.analyse.figure.Spread;
import org.steelyard.analyse.season.FindingCount;
import org.steelyard.analyse.season.SeasonSummary;
import org.steelyard.analyse.season.TrimGroup;
import org.steelyard.analyse.season.WorstFlight;
import org.steelyard.check.text.FindingText;
import org.steelyard.model.finding.Severity;
import org.steelyard.model.loading.FlightIdent;
import org.steelyard.model.loading.Loading;
import org.steelyard.report.book.SheetGrid;
import org.steelyard.report.book.SheetRow;
import org.steelyard.report.book.WorkbookStyles;
import org.steelyard.report.output.LeftOutGroupings;
import org.steelyard.report.words.RemedyCell;
import org.steelyard.report.words.SeasonWords;
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
        int top = grid.position();
        typical(SeasonWords.withTrim(season));
        int below = grid.position();
        grid.moveTo(top);
        kinds(season.findings());
        grid.moveTo(Math.max(below, grid.position()));
        grid.gap(6);
    }

    private void typical(List<TrimGroup> groups) {
        section(LEFT, LEFT + TABLE - 1, "Typical take-off trim");
        head(LEFT, 2, "Type", "Flaps", "Flights", "5 %", "Median", "95 %", "CG median,\n% MAC");
        if (groups.isEmpty()) {
            grid.row(14).at(LEFT).label(SeasonWords.NO_TRIM, styles.quiet);
            grid.join(LEFT, LEFT + TABLE - 1);
        }
        groups.stream().limit(TABLE_ROWS).forEach(this::typical);
        more(LEFT, LEFT + TABLE - 1, groups.size() - TABLE_ROWS, "group", SheetTrimSpread.NAME);
    }

    private void typical(TrimGroup group) {
        SheetRow row = grid.row(14)
                .at(LEFT)
                .data(group.typeId(), styles.text)
                .data(group.flapsShown(), styles.fitted)
                .number(group.trimUnits().map(Spread::n).orElse(0L), styles.whole.plain());
        SeasonWords.typical(group).forEach(trim -> row.label(trim, styles.setting.plain()));
        row.number(group.cgPercentMac().median(), styles.decimals(1));
    }

    private void kinds(List<FindingCount> counts) {
        section(RIGHT, END, "Kinds of findings");
        SheetRow head =
                grid.row(26).at(RIGHT).label("Kind", styles.tableHeading).at(RIGHT + 4);
        head.label("Severity", styles.tableHeading)
                .label("Findings", styles.tableHeadingRight)
                .label("Flights", styles.tableHeadingRight);
        grid.join(RIGHT, RIGHT + 3);
        counts.stream().limit(TABLE_ROWS).forEach(this::kind);
        more(RIGHT, END, counts.size() - TABLE_ROWS, "kind", SheetFindings.LAYOUT.name());
    }

    private void kind(FindingCount count) {
        Severity severity = count.severity();
        grid.row(14)
                .at(RIGHT)
                .label(FindingText.kind(count.code(), severity), styles.text.plain())
                .at(RIGHT + 4)
                .label(WorkbookWords.severity(severity), styles.severity(severity))
                .number(count.findings(), styles.whole.plain())
                .number(count.flights(), styles.whole.plain());
        grid.join(RIGHT, RIGHT + 3);
    }

    private void offenders(SeasonSummary season) {
        int top = grid.position();
        groups(LEFT, "Tails by share breached", "Tail", season.tails(), "");
        int below = grid.position();
        grid.moveTo(top);
        groups(RIGHT, "Routes by share breached", "Route", season.routes(), LeftOutGroupings.routes(season));
        grid.moveTo(Math.max(below, grid.position()));
        grid.gap(8);
    }

    private void groups(int from, String title, String what, List<StatusCount> groups, String tooMany) {
        List<StatusCount> ranked =
                groups.stream().filter(count -> count.breached() > 0).toList();
        section(from, from + TABLE - 1, title);
        head(from, 2, what, "", "Flights", "Breached", "Marginal", "Share", "");
        if (ranked.isEmpty()) {
            grid.row(14).at(from).label(tooMany.isEmpty() ? "None has a breached flight." : tooMany, styles.quiet);
            grid.join(from, from + TABLE - 1);
        }
        ranked.stream().limit(GROUP_ROWS).forEach(count -> group(from, count));
    }

    private void group(int from, StatusCount count) {
        SheetRow row = grid.row(14).at(from).data(count.group(), styles.text).at(from + 2);
        row.number(count.flights(), styles.whole.plain())
                .number(count.breached(), styles.whole.plain())
                .number(count.marginal(), styles.whole.plain())
                .number(count.shareBreached(), styles.share);
        if (count.few()) {
            row.label("few flights", styles.quietRight);
        }
        grid.join(from, from + 1);
    }

    private void section(int from, int to, String title) {
        grid.row(20).at(from).label(title, styles.section);
        grid.join(from, to);
    }

    private void head(int from, int words, String... headings) {
        SheetRow row = grid.row(26).at(from);
        for (int i = 0; i < headings.length; i++) {
            row.label(headings[i], i < words ? styles.tableHeading : styles.tableHeadingRight);
        }
    }

    private void more(int from, int to, long left, String what, String sheet) {
        if (left > 0) {
            grid.row(14)
                    .at(from)
                    .label("… and " + WorkbookWords.count(left, "more " + what) + ": sheet " + sheet, styles.quiet);
            grid.join(from, to);
        }
    }
}
