package org.steelyard.read.sheet;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.steelyard.model.input.CgMeasure;
import org.steelyard.model.input.Claim;
import org.steelyard.model.input.ColumnUnit;
import org.steelyard.model.input.SheetItem;
import org.steelyard.model.unit.LengthUnit;
import org.steelyard.read.heading.Binding;
import org.steelyard.read.heading.BoundColumn;
import org.steelyard.read.table.CellKind;
import org.steelyard.read.table.RawRow;
import org.steelyard.read.text.Blanks;
import org.steelyard.read.text.ColumnUnits;
import org.steelyard.read.text.NumberGrammar;
import org.steelyard.read.text.UnitWords;
import org.steelyard.read.text.WrittenCell;

/**
 * Reads a student's figures, each as a person reads it beside the others. What is no figure is kept as it stands, with
 * the reason: it costs marks, not the sheet. Where a point or comma may stand for a group or for decimals both readings
 * are kept, with what the other figures say; the size that was asked for decides first.
 */
final class ClaimCells {

    /** No aircraft has more, in kg, m, % MAC or units of its index. */
    private static final double MOST_KG = 1e6;

    private static final double MOST_M = 150;
    private static final double MOST_INDEX = 1e7;

    /** More % MAC than this is no CG: the number stands in the cell as it was meant. */
    private static final double MOST_PERCENT_MAC = 1000;

    /** What a workbook holds of a mass that was typed with a point where its language has the comma. */
    private static final Pattern OF_THOUSANDS = Pattern.compile("-?[0-9]{1,3}\\.[0-9]{1,3}");

    private static final String THOUSAND = "1000";

    private final List<AnswerCell> cells;
    private final boolean decimalComma;

    private ClaimCells(List<AnswerCell> cells, boolean decimalComma) {
        this.cells = cells;
        this.decimalComma = decimalComma;
    }

    /** The figures of a row, by the columns that hold some. */
    static Map<SheetItem, Claim> of(Binding binding, RawRow row) {
        List<AnswerCell> cells = new ArrayList<>();
        for (BoundColumn column : binding.columns().all()) {
            Optional<SheetItem> item = column.rule().field().claim();
            String text = Blanks.strip(row.cell(column.index()));
            if (item.isPresent() && !text.isEmpty()) {
                ColumnUnit unit = column.rule().unit();
                cells.add(new AnswerCell(item.get(), Optional.of(unit), unit.symbol(), text, row.kind(column.index())));
            }
        }
        return of(cells, binding.map().decimalComma());
    }

    /** The figures of one sheet; of two for the same item the first counts. */
    static Map<SheetItem, Claim> of(List<AnswerCell> cells, boolean decimalComma) {
        ClaimCells sheet = new ClaimCells(cells, decimalComma);
        Map<SheetItem, Claim> claims = new EnumMap<>(SheetItem.class);
        for (AnswerCell cell : cells) {
            claims.putIfAbsent(cell.item(), sheet.claim(cell));
        }
        return claims;
    }

    private Claim claim(AnswerCell cell) {
        return switch (cell.item().kind()) {
            case LIMIT, VERDICT -> new Claim.Words(cell.text());
            case TRIM -> AnswerTrim.claim(cell.text(), cell.unit().orElse(ColumnUnit.NOSE_UP));
            case MASS, CG -> cell.kind().isNumber() ? stored(cell) : written(cell);
        };
    }

    private static Claim.Unreadable unreadable(AnswerCell cell) {
        return new Claim.Unreadable(cell.text(), "one number as 63587.5, alone or with its unit");
    }

    private static Claim.Unreadable noUnit(AnswerCell cell) {
        return new Claim.Unreadable(cell.text(), "a unit of the figure beside it, not '" + cell.beside() + "'");
    }

    // ------------------------------------------------------------ numbers of workbooks

    private static Claim stored(AnswerCell cell) {
        double value = NumberGrammar.parse(cell.text(), '.', true);
        if (!Double.isFinite(value)) {
            return unreadable(cell);
        }
        if (cell.kind() == CellKind.PERCENTAGE) {
            return percentage(cell, value);
        }
        if (cell.unit().isEmpty()) {
            return noUnit(cell);
        }
        ColumnUnit unit = cell.unit().get();
        Claim.Figure figure = figure(cell.item(), unit, cell.text());
        if (isTooMuch(cell.item(), figure)) {
            return unreadable(cell);
        }
        boolean small = unit == ColumnUnit.KG || unit == ColumnUnit.LB;
        if (!small || !OF_THOUSANDS.matcher(cell.text()).matches()) {
            return figure;
        }
        String thousands = new BigDecimal(cell.text())
                .multiply(new BigDecimal(THOUSAND))
                .setScale(0, RoundingMode.UNNECESSARY)
                .toPlainString();
        Claim.Figure grouped = figure(cell.item(), unit, thousands);
        return new Claim.Ambiguous(
                figure.shown(),
                as(grouped, figure.shown() + ", read as " + inGroups(grouped, unit, cell.item())),
                figure,
                Optional.empty());
    }

    /** A CG that its cell shows in per cent, typed so or put in such a cell as a plain number. */
    private static Claim percentage(AnswerCell cell, double value) {
        if (cell.item().kind() != SheetItem.Kind.CG) {
            return new Claim.Unreadable(cell.text(), "a mass, where the cell shows a percentage");
        }
        boolean shown = Math.abs(NumberGrammar.percent(value)) <= MOST_PERCENT_MAC;
        String text = shown
                ? BigDecimal.valueOf(value)
                        .movePointRight(2)
                        .stripTrailingZeros()
                        .toPlainString()
                : cell.text();
        Claim.Figure figure = figure(cell.item(), ColumnUnit.PERCENT_MAC, text);
        return isTooMuch(cell.item(), figure) ? unreadable(cell) : figure;
    }

    private static boolean isTooMuch(SheetItem item, Claim.Figure figure) {
        double most = item.kind() == SheetItem.Kind.MASS
                ? MOST_KG
                : switch (figure.measure()) {
                    case PERCENT_MAC -> MOST_PERCENT_MAC;
                    case ARM -> MOST_M;
                    case INDEX -> MOST_INDEX;
                };
        return Math.abs(figure.value()) > most;
    }

    private static Claim.Figure figure(SheetItem item, ColumnUnit unit, String number) {
        double factor = factor(item, unit);
        double value = NumberGrammar.parse(number, '.', true);
        return new Claim.Figure(value * factor, halfStep(number) * factor, measure(unit), number + " " + unit.symbol());
    }

    /** Half of the last place of a stored number; none of one with an exponent. */
    private static double halfStep(String number) {
        if (number.indexOf('E') >= 0 || number.indexOf('e') >= 0) {
            return 0;
        }
        int at = number.indexOf('.');
        return 0.5 * Math.pow(10, at < 0 ? 0 : at + 1 - number.length());
    }

    // ------------------------------------------------------------ numbers as text

    private Claim written(AnswerCell cell) {
        WrittenCell parts = WrittenCell.of(AnswerNumber.plain(cell.text()));
        String number = parts.number();
        Optional<ColumnUnit> unit = parts.unit().isEmpty() ? cell.unit() : unitOf(cell.item(), parts.unit());
        List<AnswerNumber> readings = AnswerNumber.of(number);
        if (readings.isEmpty() || (unit.isEmpty() && !parts.unit().isEmpty())) {
            return unreadable(cell);
        }
        if (unit.isEmpty()) {
            return noUnit(cell);
        }
        String shown = number + " " + unit.get().symbol();
        Claim.Figure first = figure(cell.item(), unit.get(), readings.get(0), shown);
        if (readings.size() == 1) {
            return isTooMuch(cell.item(), first) ? unreadable(cell) : first;
        }
        boolean comma = number.indexOf(',') >= 0;
        String point = shown + ", read as " + number.replace(',', '.');
        Claim.Figure decimal = figure(cell.item(), unit.get(), readings.get(1), comma ? point : shown);
        if (isTooMuch(cell.item(), first)) {
            return decimal;
        }
        return new Claim.Ambiguous(
                shown,
                comma ? first : as(first, shown + ", read as " + inGroups(first, unit.get(), cell.item())),
                decimal,
                isDecimal(cell.item().kind(), comma ? ',' : '.'));
    }

    private static Claim.Figure figure(SheetItem item, ColumnUnit unit, AnswerNumber number, String shown) {
        double factor = factor(item, unit);
        return new Claim.Figure(number.value() * factor, number.halfStep() * factor, measure(unit), shown);
    }

    private static Claim.Figure as(Claim.Figure figure, String shown) {
        return new Claim.Figure(figure.value(), figure.halfStep(), figure.measure(), shown);
    }

    private static String inGroups(Claim.Figure figure, ColumnUnit unit, SheetItem item) {
        return String.format(Locale.ROOT, "%,d", Math.round(figure.value() / factor(item, unit)));
    }

    private static Optional<ColumnUnit> unitOf(SheetItem item, String words) {
        Optional<ColumnUnit> unit = words.equals("%") ? Optional.of(ColumnUnit.PERCENT_MAC) : UnitWords.of(words);
        return unit.filter(units(item)::contains);
    }

    /** Whether a sign stands for decimals in other figures of the kind; as the heading map says, if none tells. */
    private Optional<Boolean> isDecimal(SheetItem.Kind kind, char sign) {
        Set<Character> signs = new HashSet<>();
        for (AnswerCell cell : cells) {
            if (cell.item().kind() == kind && !cell.kind().isNumber()) {
                AnswerNumber.decimalSign(WrittenCell.of(cell.text()).number()).ifPresent(signs::add);
            }
        }
        if (signs.isEmpty() && decimalComma) {
            signs.add(',');
        }
        return signs.size() == 1 ? Optional.of(signs.contains(sign)) : Optional.empty();
    }

    private static double factor(SheetItem item, ColumnUnit unit) {
        if (item.kind() == SheetItem.Kind.MASS) {
            return ColumnUnits.toKgOrL(unit, 1);
        }
        return switch (unit) {
            case MILLIMETRE -> LengthUnit.MM.toM(1);
            case INCH -> LengthUnit.IN.toM(1);
            default -> 1;
        };
    }

    private static CgMeasure measure(ColumnUnit unit) {
        return switch (unit) {
            case METRE, MILLIMETRE, INCH -> CgMeasure.ARM;
            case INDEX -> CgMeasure.INDEX;
            default -> CgMeasure.PERCENT_MAC;
        };
    }

    /** The units in which an item can be. */
    static List<ColumnUnit> units(SheetItem item) {
        return switch (item.kind()) {
            case MASS -> List.of(ColumnUnit.KG, ColumnUnit.LB, ColumnUnit.TONNE);
            case CG ->
                List.of(
                        ColumnUnit.PERCENT_MAC,
                        ColumnUnit.METRE,
                        ColumnUnit.MILLIMETRE,
                        ColumnUnit.INCH,
                        ColumnUnit.INDEX);
            case TRIM -> List.of(ColumnUnit.NOSE_UP, ColumnUnit.NOSE_DOWN);
            case LIMIT, VERDICT -> List.of(ColumnUnit.NONE);
        };
    }

    static Optional<ColumnUnit> unit(SheetItem item, String symbol) {
        Stream<ColumnUnit> units = units(item).stream();
        return units.filter(unit -> symbol.equals(unit.symbol())).findFirst();
    }
}
