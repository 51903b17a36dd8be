package org.steelyard.report.table;

/**
 * A column of a table.
 *
 * @param key its name in CSV files, and in a choice of columns
 * @param heading what people read at its head, without the unit
 * @param kind what it holds
 * @param unit unit of its numbers; blank where there is none or the cells say it
 * @param widthChars width in characters where a width has to be given
 */
public record Column(String key, String heading, ColumnKind kind, String unit, int widthChars) {

    private static final int NUMBER_CHARS = 10;
    private static final int TEXT_CHARS = 14;

    public static Column of(String key, String heading, ColumnKind kind) {
        return of(key, heading, kind, kind == ColumnKind.PERCENT_MAC ? "% MAC" : "");
    }

    public static Column of(String key, String heading, ColumnKind kind, String unit) {
        return new Column(key, heading, kind, unit, kind.isNumber() ? NUMBER_CHARS : TEXT_CHARS);
    }

    /** The same of another width. */
    public Column wide(int chars) {
        return new Column(key, heading, kind, unit, chars);
    }

    /** The heading with the unit. */
    public String headed() {
        return unit.isBlank() ? heading : heading + ", " + unit;
    }
}
