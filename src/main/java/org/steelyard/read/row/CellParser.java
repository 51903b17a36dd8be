package org.steelyard.read.row;

import java.time.LocalDate;
import java.util.Optional;
import org.steelyard.model.input.ColumnMap;
import org.steelyard.model.input.ColumnUnit;
import org.steelyard.model.input.DigitGrouping;
import org.steelyard.model.input.Field;
import org.steelyard.model.input.ProblemCode;
import org.steelyard.model.trim.TrimUnit;
import org.steelyard.read.heading.BoundColumn;
import org.steelyard.read.table.CellKind;
import org.steelyard.read.table.RawRow;
import org.steelyard.read.text.Blanks;
import org.steelyard.read.text.ColumnUnits;
import org.steelyard.read.text.DateFormat;
import org.steelyard.read.text.Grouping;
import org.steelyard.read.text.NumberGrammar;
import org.steelyard.read.text.TrimText;
import org.steelyard.read.text.WrittenCell;

/** Reads one cell into the draft of its row, or notes what is wrong with it. Keeps nothing between cells. */
public final class CellParser {

    private static final String ALONE = "a value in a cell of its own; where text and dates go for every row of a"
            + " merged cell, the heading map says 'merged-cells: fill down'";
    private static final int MOST_COUNTED = 10_000;
    private static final String WHOLE = "a whole number from 0 to 10,000";
    private static final String WHOLE_CHANGE = "a whole number from -10,000 to 10,000";
    private static final double MOST_KG = 1_000_000;
    private static final double MOST_TRIM_UNITS = 90;
    private static final double LEAST_KG_PER_L = 0.5;
    private static final double MOST_KG_PER_L = 1.0;
    private static final int FIRST_YEAR = 1900;
    private static final int LAST_YEAR = 2199;

    private final char decimal;
    private final DigitGrouping grouping;

    public CellParser(ColumnMap map) {
        this.decimal = map.decimalComma() ? ',' : '.';
        this.grouping = map.grouping();
    }

    /** Reads the cell of a column; the draft's density, in kg/L, turns volumes into masses. */
    public void read(RawRow row, BoundColumn column, double densityKgPerL, RowDraft draft) {
        String text = Blanks.strip(row.cell(column.index()));
        if (text.isEmpty()) {
            return;
        }
        if (draft.plan().place(column) != TypePlan.STRANGE_PLACE) {
            draft.give(column);
        }
        CellKind kind = row.kind(column.index());
        if (kind == CellKind.ERROR) {
            draft.fault(column, ProblemCode.BAD_CELL, "the cell holds an error", text, "a value");
        } else if (kind == CellKind.UNCALCULATED) {
            draft.fault(
                    column,
                    ProblemCode.BAD_CELL,
                    "the file holds no result of the formula",
                    text,
                    "a value, or a workbook saved after calculation");
        } else if (kind == CellKind.COVERED) {
            draft.fault(
                    column, ProblemCode.BAD_CELL, "the cell is merged with another, which has the value", text, ALONE);
        } else {
            read(text, kind, column, densityKgPerL, draft);
        }
    }

    private void read(String text, CellKind kind, BoundColumn column, double densityKgPerL, RowDraft draft) {
        switch (column.rule().field().kind()) {
            case TEXT -> text(text, column, draft);
            case DATE -> date(text, kind, column, draft);
            case COUNT -> count(text, kind, column, draft);
            case MASS -> mass(number(text, kind, column, draft), text, column, draft);
            case FUEL -> fuel(number(text, kind, column, draft), text, column, densityKgPerL, draft);
            case DENSITY -> density(number(text, kind, column, draft), text, column, draft);
            case CG -> cg(cgNumber(text, kind, column, draft), text, column, draft);
            case TRIM -> trim(text, kind, column, draft);
        }
    }

    /** Notes what no output could show; tabs and line ends within a cell are text. */
    public static boolean isPlain(String text, BoundColumn column, RowDraft draft) {
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if ((c < ' ' && c != '\t' && c != '\n' && c != '\r') || c == '\u007F') {
                draft.fault(
                        column,
                        ProblemCode.BAD_CELL,
                        "the cell holds a control character",
                        text,
                        "text without character " + (int) c);
                return false;
            }
        }
        return true;
    }

    private static void text(String text, BoundColumn column, RowDraft draft) {
        if (!isPlain(text, column, draft)) {
            return;
        }
        Optional<String> name = draft.plan().known(column.slot(), text);
        if (name.isPresent()) {
            draft.text(column, name.get());
        } else {
            String what = column.slot().label();
            draft.fault(
                    column,
                    ProblemCode.UNKNOWN_NAME,
                    "unknown " + what,
                    text,
                    draft.plan()
                            .namesFor(column.slot())
                            .filter(known -> !known.isEmpty())
                            .map(known -> "one of " + known
                                    + (column.slot() == Field.SCHEME ? "" : ", as the type has them") + ", or blank")
                            .orElse("a blank cell: the type has no " + what));
        }
    }

    private static void date(String text, CellKind kind, BoundColumn column, RowDraft draft) {
        DateFormat format = column.dates().orElseThrow();
        Optional<LocalDate> date = kind == CellKind.DATE ? storedDate(text) : format.parse(text);
        if (date.isEmpty()) {
            draft.fault(column, ProblemCode.NOT_A_DATE, "not a date", text, "a date as " + format.pattern());
        } else if (date.get().getYear() < FIRST_YEAR || date.get().getYear() > LAST_YEAR) {
            draft.fault(
                    column,
                    ProblemCode.OUT_OF_RANGE,
                    "the year makes no sense",
                    text,
                    "a year from " + FIRST_YEAR + " to " + LAST_YEAR);
        } else {
            draft.date(date.get());
        }
    }

    /** The day of a stored date, whether or not a time stands behind it. */
    public static Optional<LocalDate> storedDate(String text) {
        return DateFormat.iso(text.length() > 10 && text.charAt(10) == 'T' ? text.substring(0, 10) : text);
    }

    private double number(String text, CellKind kind, BoundColumn column, RowDraft draft) {
        boolean unitInCell = column.rule().unit() == ColumnUnit.IN_CELL && kind != CellKind.DATE;
        WrittenCell cell = unitInCell ? WrittenCell.of(text) : new WrittenCell(text, "");
        double value = numberIn(cell.number(), kind.isNumber());
        if (unitInCell && !Double.isNaN(value)) {
            return requireUnit(cell, value, text, column, draft);
        }
        if (Double.isNaN(value)) {
            String reason = kind == CellKind.DATE ? "a date, not a number" : "not a number";
            boolean counted = column.rule().field().kind() == Field.Kind.COUNT;
            draft.fault(column, ProblemCode.NOT_A_NUMBER, reason, text, counted ? whole(column) : expectedNumber());
        }
        return value;
    }

    /** A cell that shows 25 % holds 0.25. */
    private double cgNumber(String text, CellKind kind, BoundColumn column, RowDraft draft) {
        double value = number(text, kind, column, draft);
        boolean percentage = kind == CellKind.PERCENTAGE && draft.unit(column) == ColumnUnit.PERCENT_MAC;
        return percentage && Double.isFinite(value) ? NumberGrammar.percent(value) : value;
    }

    private static String whole(BoundColumn column) {
        return column.rule().field().isChange() ? WHOLE_CHANGE : WHOLE;
    }

    /** A number in the way of the map, or as a workbook stored it; NaN if it is none. */
    private double numberIn(String text, boolean stored) {
        if (stored) {
            return NumberGrammar.parse(text, '.', true);
        }
        boolean grouped = grouping != DigitGrouping.NONE;
        return NumberGrammar.parse(grouped ? Grouping.without(text, decimal, grouping) : text, decimal, false);
    }

    private static double requireUnit(WrittenCell cell, double value, String text, BoundColumn column, RowDraft draft) {
        Field field = column.rule().field();
        Optional<ColumnUnit> unit = cell.unitFor(field);
        if (unit.isEmpty()) {
            draft.fault(column, ProblemCode.UNKNOWN_UNIT, cell.fault(), text, WrittenCell.expected(field));
            return Double.NaN;
        }
        draft.unit(column, unit.get());
        return value;
    }

    private String expectedNumber() {
        if (grouping != DigitGrouping.NONE) {
            return "digits in groups of three parted by the map's sign (" + grouping.label()
                    + "), or none, with a decimal " + (decimal == ',' ? "comma" : "point");
        }
        return decimal == ','
                ? "digits with a decimal comma, as 12,5, and no thousands separator"
                : "digits with a decimal point, as 12.5, and no thousands separator;"
                        + " a heading map with 'decimal: comma' reads 12,5";
    }

    private void count(String text, CellKind kind, BoundColumn column, RowDraft draft) {
        double value = number(text, kind, column, draft);
        if (Double.isNaN(value)) {
            return;
        }
        boolean change = column.rule().field().isChange();
        String expected = whole(column);
        if (Math.abs(value) > MOST_COUNTED || (value < 0 && !change)) {
            outOfRange(value, text, expected, column, draft);
        } else if (value != Math.rint(value)) {
            draft.fault(column, ProblemCode.NOT_WHOLE, "not a whole number", text, expected);
        } else {
            place(value, text, column, draft);
        }
    }

    private static void mass(double value, String text, BoundColumn column, RowDraft draft) {
        if (!Double.isNaN(value)) {
            massKg(ColumnUnits.toKgOrL(draft.unit(column), value), text, column, draft);
        }
    }

    private static void fuel(double value, String text, BoundColumn column, double densityKgPerL, RowDraft draft) {
        if (!Double.isNaN(value)) {
            double amount = ColumnUnits.toKgOrL(draft.unit(column), value);
            boolean volume = ColumnUnits.isVolume(draft.unit(column));
            massKg(volume ? amount * densityKgPerL : amount, text, column, draft);
        }
    }

    private static void massKg(double massKg, String text, BoundColumn column, RowDraft draft) {
        boolean positive = column.rule().field() == Field.ZERO_FUEL_MASS
                || column.rule().field() == Field.TAKEOFF_MASS
                || column.rule().field() == Field.TAKEOFF_LIMIT
                || column.rule().field() == Field.LANDING_LIMIT;
        boolean change = column.rule().field().isChange();
        if (Math.abs(massKg) > MOST_KG || (massKg < 0 && !change) || (positive && massKg == 0)) {
            String from = change
                    ? "a mass from -1,000,000 to"
                    : positive ? "a mass of more than 0 and at most" : "a mass from 0 to";
            outOfRange(massKg, text, from + " 1,000,000 kg", column, draft);
        } else {
            place(massKg, text, column, draft);
        }
    }

    private static void density(double value, String text, BoundColumn column, RowDraft draft) {
        if (Double.isNaN(value)) {
            return;
        }
        double densityKgPerL = ColumnUnits.toKgPerL(draft.unit(column), value);
        if (isDensity(densityKgPerL)) {
            draft.add(column, densityKgPerL);
        } else {
            outOfRange(value, text, "a density from 0.5 to 1.0 kg/L", column, draft);
        }
    }

    private static boolean isDensity(double kgPerL) {
        return kgPerL >= LEAST_KG_PER_L && kgPerL <= MOST_KG_PER_L;
    }

    private static void cg(double value, String text, BoundColumn column, RowDraft draft) {
        if (Double.isNaN(value)) {
            return;
        }
        if (draft.unit(column) == ColumnUnit.PERCENT_MAC && !GivenStates.isSensible(value)) {
            outOfRange(value, text, GivenStates.SENSIBLE, column, draft);
        } else if (Double.isInfinite(value)) {
            outOfRange(value, text, "a CG that an aircraft can have", column, draft);
        } else {
            draft.add(column, value);
        }
    }

    private void trim(String text, CellKind kind, BoundColumn column, RowDraft draft) {
        boolean words = TrimText.isInWords(text);
        double value = words ? TrimText.parse(text, decimal) : numberIn(text, kind.isNumber());
        TrimUnit.Numbering numbering = draft.plan().trimNumbering();
        boolean needsWords = column.rule().unit() == ColumnUnit.IN_CELL && !numbering.isPlain();
        String example = decimal == ',' ? "0,2 UP" : "0.2 UP";
        if (!words && needsWords && value != 0 && !Double.isNaN(value)) {
            draft.fault(
                    column,
                    ProblemCode.UNKNOWN_UNIT,
                    "UP or DN is missing",
                    text,
                    "a number without sign followed by UP or DN, as " + example);
        } else if (Double.isNaN(value)) {
            draft.fault(
                    column,
                    ProblemCode.NOT_A_NUMBER,
                    "not a trim setting",
                    text,
                    "a number, or one without sign followed by UP or DN, as " + example);
        } else if (Math.abs(value) > MOST_TRIM_UNITS) {
            outOfRange(value, text, "a trim from -90 to 90 units", column, draft);
        } else {
            draft.add(column, words ? value : noseUp(value, column.rule().unit(), numbering));
        }
    }

    /** On a scale of plain numbers a number is the scale's own; else the column says which way it counts. */
    private static double noseUp(double number, ColumnUnit unit, TrimUnit.Numbering numbering) {
        if (numbering.isPlain()) {
            return numbering.turned(number);
        }
        return unit == ColumnUnit.NOSE_DOWN && number != 0 ? -number : number;
    }

    private static void outOfRange(double value, String text, String expected, BoundColumn column, RowDraft draft) {
        String reason = value < 0 && !expected.contains("-") ? "less than zero" : "out of range";
        draft.fault(column, ProblemCode.OUT_OF_RANGE, reason, text, expected);
    }

    private static void place(double value, String text, BoundColumn column, RowDraft draft) {
        if (draft.plan().place(column) != TypePlan.STRANGE_PLACE) {
            draft.add(column, value);
        } else if (value != 0) {
            draft.fault(column, ProblemCode.UNKNOWN_NAME, draft.plan().strangePlace(column), text, "a blank cell or 0");
        }
    }

    /** The density of a row in kg/L, if its cell holds one that makes sense; says nothing of one that does not. */
    public Optional<Double> densityKgPerL(RawRow row, BoundColumn column) {
        String text = Blanks.strip(row.cell(column.index()));
        boolean unitInCell = column.rule().unit() == ColumnUnit.IN_CELL;
        WrittenCell cell = unitInCell ? WrittenCell.of(text) : new WrittenCell(text, "");
        Optional<ColumnUnit> unit = unitInCell
                ? cell.unitFor(Field.FUEL_DENSITY)
                : Optional.of(column.rule().unit());
        double value = numberIn(cell.number(), row.kind(column.index()).isNumber());
        double densityKgPerL =
                unit.map(known -> ColumnUnits.toKgPerL(known, value)).orElse(Double.NaN);
        return isDensity(densityKgPerL) ? Optional.of(densityKgPerL) : Optional.empty();
    }
}
