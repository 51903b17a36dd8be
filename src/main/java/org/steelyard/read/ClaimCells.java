package org.steelyard.read;

import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.steelyard.model.CgMeasure;
import org.steelyard.model.Claim;
import org.steelyard.model.ColumnUnit;
import org.steelyard.model.LengthUnit;
import org.steelyard.model.SheetItem;

/**
 * Reads a student's figures. What is no figure is kept as it stands, with the reason: it costs marks, not the sheet.
 */
final class ClaimCells {

    private static final double MOST = 1e7;

    private ClaimCells() {}

    /** The figures of a row, by the columns that hold some. */
    static Map<SheetItem, Claim> of(Binding binding, RawRow row) {
        Map<SheetItem, Claim> claims = new EnumMap<>(SheetItem.class);
        char decimal = binding.map().decimalComma() ? ',' : '.';
        for (BoundColumn column : binding.columns().all()) {
            Optional<SheetItem> item = column.rule().field().claim();
            String text = Blanks.strip(row.cell(column.index()));
            if (item.isPresent() && !text.isEmpty()) {
                boolean stored = row.kind(column.index()) == CellKind.NUMBER;
                claims.putIfAbsent(item.get(), claim(item.get(), column.rule().unit(), text, stored ? '.' : decimal));
            }
        }
        return claims;
    }

    /** One figure in its unit. */
    static Claim claim(SheetItem item, ColumnUnit unit, String text, char decimal) {
        return switch (item.kind()) {
            case LIMIT, VERDICT -> new Claim.Words(text);
            case TRIM -> trim(text, unit, decimal);
            case MASS, CG -> number(item, unit, text, decimal);
        };
    }

    private static Claim number(SheetItem item, ColumnUnit unit, String text, char decimal) {
        String bare = withoutUnit(text, unit);
        double value = Numbers.parse(bare, decimal, true);
        if (Double.isNaN(value) || Math.abs(value) > MOST) {
            return new Claim.Unreadable(
                    text, "a number as " + (decimal == ',' ? "63587,5" : "63587.5") + ", without thousands separators");
        }
        double factor = factor(item, unit);
        String shown = bare + " " + unit.symbol();
        return new Claim.Figure(value * factor, halfStep(bare, decimal) * factor, measure(unit), shown);
    }

    private static String withoutUnit(String text, ColumnUnit unit) {
        String symbol = unit.symbol();
        boolean ends = !symbol.isEmpty()
                && text.toLowerCase(Locale.ROOT).endsWith(symbol.toLowerCase(Locale.ROOT))
                && text.length() > symbol.length();
        return ends ? Blanks.strip(text.substring(0, text.length() - symbol.length())) : text;
    }

    private static double factor(SheetItem item, ColumnUnit unit) {
        if (item.kind() == SheetItem.Kind.MASS) {
            return Units.toKgOrL(unit, 1);
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

    /** Half of the last place that is written. */
    private static double halfStep(String text, char decimal) {
        int end = text.length();
        for (int i = 0; i < end; i++) {
            if (text.charAt(i) == 'e' || text.charAt(i) == 'E') {
                return 0;
            }
        }
        int at = text.indexOf(decimal);
        return 0.5 * Math.pow(10, at < 0 ? 0 : at + 1 - end);
    }

    private static Claim trim(String text, ColumnUnit unit, char decimal) {
        boolean words = TrimText.isInWords(text);
        String number = words ? Blanks.strip(text.substring(0, text.length() - 2)) : text;
        double units = words ? TrimText.parse(text, decimal) : Numbers.parse(text, decimal, true);
        if (Double.isNaN(units) || Math.abs(units) > MOST) {
            return new Claim.Unreadable(text, "a trim setting: a number, or one with UP or DN as 0.2 UP");
        }
        boolean turned = !words && unit == ColumnUnit.NOSE_DOWN && units != 0;
        return new Claim.Figure(turned ? -units : units, halfStep(number, decimal), CgMeasure.PERCENT_MAC, text);
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
