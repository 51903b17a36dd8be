package org.steelyard.report.output.book;

import java.util.List;
import org.apache.poi.ss.usermodel.CellStyle;
import org.steelyard.analyse.season.RecordedTrimGroup;
import org.steelyard.check.text.RecordedTrimText;
import org.steelyard.report.book.SheetGrid;
import org.steelyard.report.book.SheetRow;
import org.steelyard.report.book.WorkbookPage;
import org.steelyard.report.book.WorkbookStyles;
import org.steelyard.report.words.SeasonWords;
import org.steelyard.report.words.WorkbookWords;

/** Recorded trim settings against the right ones, by tail and by the column that the policy names. */
public final class SheetRecordedTrim {

    static final String NAME = "Recorded trim";

    private static final int COLUMNS = 9;

    private final SheetGrid grid;
    private final WorkbookStyles styles;
    private final CellStyle difference;

    SheetRecordedTrim(SheetGrid grid, WorkbookStyles styles) {
        this.grid = grid;
        this.styles = styles;
        difference = styles.format(SeasonWords.trimFormat(3));
    }

    void write(List<RecordedTrimGroup> groups, WorkbookPage page) {
        grid.widths(20, 10, 13, 10, 13, 13, 13, 13, 62);
        grid.row(30).label("Recorded take-off trim against the right setting", styles.title);
        grid.row(30)
                .label(
                        "Difference: recorded less right setting, both in steps of the indicator; UP is too much"
                                + " nose-up. Only flights that have both, and whose load was not shared out from totals. Beyond: farther off than the policy's marginal"
                                + " distance. sd with divisor n − 1, none for one flight.",
                        styles.remark);
        grid.join(0, COLUMNS - 1);
        grid.gap(8);
        groups.stream().map(RecordedTrimGroup::kind).distinct().forEach(kind -> table(kind, groups));
        page.setUp(grid.sheet(), 1, 0);
    }

    private void table(String kind, List<RecordedTrimGroup> groups) {
        grid.row(24).data("By " + kind, new WorkbookStyles.TextStyle(styles.section, styles.section));
        grid.join(0, COLUMNS - 1);
        SheetRow head = grid.row(30).data(WorkbookWords.sentence(kind).replace(".", ""), headingStyle());
        for (String heading :
                List.of("n", "mean difference", "sd", "beyond, nose-up", "beyond, nose-down", "share beyond")) {
            head.label(heading, styles.tableHeadingRight);
        }
        head.skip(1).label("What a difference to that side risks", styles.tableHeading);
        groups.stream().filter(group -> group.kind().equals(kind)).forEach(this::line);
        grid.gap(12);
    }

    private WorkbookStyles.TextStyle headingStyle() {
        return new WorkbookStyles.TextStyle(styles.tableHeading, styles.tableHeading);
    }

    private void line(RecordedTrimGroup group) {
        grid.row()
                .data(group.name().isBlank() ? "not given" : group.name(), styles.text)
                .number(group.flights(), styles.whole.plain())
                .number(group.meanUnits(), difference)
                .number(group.sdUnits(), styles.decimals(3))
                .number(group.noseUp(), styles.whole.plain())
                .number(group.noseDown(), styles.whole.plain())
                .number(group.shareBeyond(), styles.share)
                .skip(1)
                .label(risk(group), styles.quiet);
    }

    /** Only where flights are beyond the tolerance; to the side where there are more. */
    public static String risk(RecordedTrimGroup group) {
        if (group.noseUp() == 0 && group.noseDown() == 0) {
            return "";
        }
        String text = RecordedTrimText.risk(group.noseUp() >= group.noseDown() ? 1 : -1);
        return (group.noseUp() >= group.noseDown() ? "nose-up: " : "nose-down: ") + text;
    }
}
