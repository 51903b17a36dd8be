package org.steelyard.report.grade;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.DataValidation;
import org.apache.poi.ss.usermodel.DataValidationConstraint;
import org.apache.poi.ss.usermodel.DataValidationConstraint.OperatorType;
import org.apache.poi.ss.usermodel.DataValidationHelper;
import org.apache.poi.ss.util.CellRangeAddressList;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.input.CgMeasure;
import org.steelyard.model.input.SheetItem;
import org.steelyard.model.type.AircraftType;
import org.steelyard.model.type.DisplayUnits;
import org.steelyard.model.unit.LengthUnit;
import org.steelyard.model.unit.MassUnit;
import org.steelyard.report.book.WorkbookStyles;

/**
 * Format and check of input of the cells for answers: a number looks as it will be read, and what cannot be meant is
 * asked about. Nothing is forbidden, and all rests on the type alone, so that no check gives an answer away.
 */
final class AnswerCells {

    private static final List<String> VERDICTS = List.of("in limits", "out of limits");
    private static final List<String> LIMITS =
            List.of("maximum zero-fuel mass", "maximum take-off mass", "maximum landing mass", "maximum ramp mass");

    /** A mass of the aircraft lies between its maximum divided and multiplied by this. */
    private static final double TIMES = 20;

    private static final double LEAST_PERCENT_MAC = 1;
    private static final double MOST_PERCENT_MAC = 1000;
    private static final double MOST_ARM_M = 150;
    private static final double MOST_INDEX = 1e6;
    private static final double MOST_TRIM_UNITS = 90;

    private final XSSFSheet sheet;
    private final AircraftType type;
    private final CgMeasure measure;
    private final CellStyle open;
    private final Map<SheetItem.Kind, CellStyle> styles = new EnumMap<>(SheetItem.Kind.class);

    AnswerCells(XSSFSheet sheet, AircraftType type, CgMeasure measure, CellStyle open) {
        this.sheet = sheet;
        this.type = type;
        this.measure = measure;
        this.open = open;
    }

    /** The look of the cell for an item. */
    CellStyle style(SheetItem item) {
        return styles.computeIfAbsent(item.kind(), kind -> {
            XSSFWorkbook book = sheet.getWorkbook();
            XSSFCellStyle style = ((XSSFCellStyle) open).copy();
            style.setDataFormat(book.createDataFormat().getFormat(format(kind)));
            return style;
        });
    }

    private String format(SheetItem.Kind kind) {
        return switch (kind) {
            case MASS -> units().mass() == MassUnit.TONNE ? WorkbookStyles.THREE_DECIMALS : WorkbookStyles.WHOLE;
            case CG ->
                switch (measure) {
                    case PERCENT_MAC -> "0.00";
                    case ARM ->
                        switch (units().length()) {
                            case M -> "0.000";
                            case CM, MM -> "0";
                            case IN, FT -> "0.00";
                        };
                    case INDEX -> "0.00";
                };
            case TRIM -> isPlain() ? "0.00" : "@";
            case LIMIT, VERDICT -> "@";
        };
    }

    private DisplayUnits units() {
        return type.geometry().units();
    }

    private boolean isPlain() {
        return type.trimScales().stream()
                .filter(scale -> scale.phase() == Phase.TAKEOFF)
                .anyMatch(scale -> scale.unit().numbering().isPlain());
    }

    /** Checks what is put into the cell of an item. */
    void check(SheetItem item, int row, int column) {
        DataValidationHelper helper = sheet.getDataValidationHelper();
        switch (item.kind()) {
            case LIMIT -> choice(LIMITS, row, column);
            case VERDICT -> choice(VERDICTS, row, column);
            case MASS -> mass(helper, item, row, column);
            case CG -> cg(helper, row, column);
            case TRIM -> trim(helper, row, column);
        }
    }

    /** A list to choose from; other words are let through, so that a blank or a note stops nobody. */
    private void choice(List<String> words, int row, int column) {
        DataValidationHelper helper = sheet.getDataValidationHelper();
        DataValidation list = helper.createValidation(
                helper.createExplicitListConstraint(words.toArray(String[]::new)),
                new CellRangeAddressList(row, row, column, column));
        list.setShowErrorBox(false);
        sheet.addValidationData(list);
    }

    private void mass(DataValidationHelper helper, SheetItem item, int row, int column) {
        double most = units().mass().fromKg(type.limits().maxRampKg());
        boolean load = item == SheetItem.TRAFFIC_LOAD || item == SheetItem.UNDERLOAD;
        ask(
                between(helper, load ? -TIMES * most : most / TIMES, TIMES * most),
                "A mass in " + units().mass().symbol(),
                "The number alone: no unit, and nothing between thousands.",
                row,
                column);
    }

    private void cg(DataValidationHelper helper, int row, int column) {
        double mostArm = length().fromM(MOST_ARM_M);
        switch (measure) {
            case PERCENT_MAC ->
                ask(
                        between(helper, LEAST_PERCENT_MAC, MOST_PERCENT_MAC),
                        "A CG in % MAC",
                        "The number alone, as 24.85: no percent sign.",
                        row,
                        column);
            case ARM ->
                ask(
                        between(helper, -mostArm, mostArm),
                        "A CG as arm in " + length().symbol(),
                        "The number alone: no unit.",
                        row,
                        column);
            case INDEX ->
                ask(
                        between(helper, -MOST_INDEX, MOST_INDEX),
                        "A CG in index units",
                        "The number alone: no unit.",
                        row,
                        column);
        }
    }

    /** The unit in which a sheet asks for arms. */
    private LengthUnit length() {
        return switch (units().length()) {
            case M -> LengthUnit.M;
            case CM, MM -> LengthUnit.MM;
            case IN, FT -> LengthUnit.IN;
        };
    }

    private void trim(DataValidationHelper helper, int row, int column) {
        if (isPlain()) {
            ask(between(helper, -MOST_TRIM_UNITS, MOST_TRIM_UNITS), "A trim setting", "The number alone.", row, column);
        } else {
            String cell = new CellReference(row, column).formatAsString();
            String formula = "OR(ISNUMBER(SEARCH(\"UP\"," + cell + ")),ISNUMBER(SEARCH(\"DN\"," + cell
                    + ")),IFERROR(VALUE(" + cell + ")=0,FALSE))";
            ask(helper.createCustomConstraint(formula), "A trim setting", "As 0.2 UP or 1.1 DN.", row, column);
        }
    }

    private static DataValidationConstraint between(DataValidationHelper helper, double least, double most) {
        return helper.createDecimalConstraint(
                OperatorType.BETWEEN, Long.toString(Math.round(least)), Long.toString(Math.round(most)));
    }

    private void ask(DataValidationConstraint constraint, String title, String words, int row, int column) {
        DataValidation check = sheet.getDataValidationHelper()
                .createValidation(constraint, new CellRangeAddressList(row, row, column, column));
        check.setErrorStyle(DataValidation.ErrorStyle.WARNING);
        check.createPromptBox(title, words);
        check.setShowPromptBox(true);
        check.createErrorBox(title, words);
        check.setShowErrorBox(true);
        check.setEmptyCellAllowed(true);
        sheet.addValidationData(check);
    }
}
