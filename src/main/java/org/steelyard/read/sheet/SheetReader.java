package org.steelyard.read.sheet;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.steelyard.model.input.BlankLoad;
import org.steelyard.model.input.Claim;
import org.steelyard.model.input.ColumnMap;
import org.steelyard.model.input.ColumnMap.MergedCells;
import org.steelyard.model.input.ColumnRule;
import org.steelyard.model.input.ColumnUnit;
import org.steelyard.model.input.DigitGrouping;
import org.steelyard.model.input.Field;
import org.steelyard.model.input.InputProblem;
import org.steelyard.model.input.SheetForm;
import org.steelyard.model.input.SheetItem;
import org.steelyard.model.input.SourceForm;
import org.steelyard.model.input.StudentSheet;
import org.steelyard.model.loading.Origin;
import org.steelyard.model.type.PassengerCategory;
import org.steelyard.read.table.RawRow;
import org.steelyard.read.table.RowStream;
import org.steelyard.read.table.SeasonFolder;
import org.steelyard.read.table.SourceFault;
import org.steelyard.read.table.xlsx.XlsxFile;
import org.steelyard.read.table.xlsx.XlsxSheet;
import org.steelyard.read.text.Blanks;

/**
 * Reads a blank sheet that a student has filled in, by the labels of {@link SheetForm}: the name and the exercise stand
 * to the right of their labels; a figure stands in the row of its label below the heading of figures, and its unit
 * below the heading of units.
 */
final class SheetReader {

    private static final int MOST_ROWS = 400;

    private final Path file;
    private final List<RawRow> rows;

    private SheetReader(Path file, List<RawRow> rows) {
        this.file = file;
        this.rows = rows;
    }

    /** The sheet; empty if the workbook holds none, and then perhaps a table. */
    static Optional<StudentSheet> read(Path file, List<InputProblem> problems) {
        try (XlsxFile workbook = XlsxFile.open(file)) {
            for (XlsxSheet sheet : workbook.sheets()) {
                List<RawRow> rows = sheet.hidden() ? List.of() : rows(sheet);
                Optional<StudentSheet> found =
                        new SheetReader(file, rows).sheet(sheet.name().sheet());
                if (found.isPresent()) {
                    return found;
                }
            }
        } catch (SourceFault e) {
            problems.addAll(e.problems());
        }
        return Optional.empty();
    }

    private static List<RawRow> rows(XlsxSheet sheet) throws SourceFault {
        List<RawRow> rows = new ArrayList<>();
        try (RowStream stream = sheet.rows(anyMap())) {
            for (Optional<RawRow> row = stream.next();
                    row.isPresent() && rows.size() < MOST_ROWS;
                    row = stream.next()) {
                rows.add(row.get());
            }
        } catch (IOException e) {
            throw XlsxFile.damaged(sheet.name(), 0, e);
        }
        return rows;
    }

    /** Sheets read the same under every map. */
    private static ColumnMap anyMap() {
        ColumnRule rule = new ColumnRule("any", Field.IGNORED, "", PassengerCategory.ADULT, ColumnUnit.NONE, "", false);
        return new ColumnMap(
                "sheet",
                List.of(),
                "",
                Optional.empty(),
                false,
                DigitGrouping.NONE,
                ColumnMap.UnknownColumns.LEAVE_OUT,
                List.of(rule),
                SourceForm.FLIGHTS,
                "",
                MergedCells.FIRST_ROW,
                BlankLoad.NOT_SAID);
    }

    private Optional<StudentSheet> sheet(String name) {
        for (RawRow row : rows) {
            int figure = column(row, SheetForm.FIGURE);
            int label = column(row, SheetForm.ASKED);
            int unit = column(row, SheetForm.UNIT);
            if (figure >= 0 && label >= 0 && unit >= 0) {
                Origin origin = new Origin(SeasonFolder.nameOf(file), name, 0);
                return Optional.of(new StudentSheet(
                        origin,
                        beside(SheetForm.STUDENT),
                        beside(SheetForm.EXERCISE),
                        asked(row.number(), label),
                        claims(row.number(), label, figure, unit)));
            }
        }
        return Optional.empty();
    }

    private static int column(RawRow row, String text) {
        for (int i = row.nextFilled(0); i >= 0; i = row.nextFilled(i + 1)) {
            if (Blanks.strip(row.cell(i)).equalsIgnoreCase(text)) {
                return i;
            }
        }
        return -1;
    }

    /** The first text to the right of a label. */
    private String beside(String label) {
        for (RawRow row : rows) {
            int at = column(row, label);
            int right = at < 0 ? -1 : row.nextFilled(at + 1);
            if (right >= 0) {
                return Blanks.strip(row.cell(right));
            }
        }
        return "";
    }

    private Set<SheetItem> asked(long heading, int label) {
        return rows.stream().flatMap(row -> item(row, heading, label).stream()).collect(Collectors.toSet());
    }

    private static Optional<SheetItem> item(RawRow row, long heading, int label) {
        return row.number() > heading ? SheetForm.item(Blanks.strip(row.cell(label))) : Optional.empty();
    }

    private Map<SheetItem, Claim> claims(long heading, int label, int figure, int unit) {
        List<AnswerCell> cells = new ArrayList<>();
        for (RawRow row : rows) {
            Optional<SheetItem> item = item(row, heading, label);
            String text = Blanks.strip(row.cell(figure));
            if (item.isPresent() && !text.isEmpty()) {
                String beside = Blanks.strip(row.cell(unit));
                cells.add(new AnswerCell(
                        item.get(), ClaimCells.unit(item.get(), beside), beside, text, row.kind(figure)));
            }
        }
        return ClaimCells.of(cells, false);
    }
}
