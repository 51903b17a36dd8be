package org.steelyard.read.propose;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.IntSummaryStatistics;
import java.util.List;
import java.util.Optional;
import org.steelyard.read.row.CellParser;
import org.steelyard.read.table.CellKind;
import org.steelyard.read.text.DateFormat;

/**
 * The pattern that the date cells of a column fit.
 *
 * @param pattern the pattern; blank for year-month-day and for dates that a workbook stores as such
 * @param fitting how many cells it fits
 * @param rival another pattern that fits as many cells and reads one of them as another day
 */
record DatePatterns(String pattern, int fitting, Optional<String> rival) {

    private static final List<String> ORDERS = List.of(
            "dd.MM.uuuu",
            "d.M.uuuu",
            "dd/MM/uuuu",
            "MM/dd/uuuu",
            "d/M/uuuu",
            "M/d/uuuu",
            "dd-MM-uuuu",
            "MM-dd-uuuu",
            "d-M-uuuu",
            "M-d-uuuu",
            "uuuu/MM/dd",
            "uuuu/M/d",
            "uuuu.MM.dd",
            "uuuuMMdd",
            "dd.MM.uu",
            "d.M.uu",
            "dd/MM/uu",
            "MM/dd/uu",
            "d/M/uu",
            "M/d/uu",
            "uu/MM/dd",
            "dd-MM-uu",
            "MM-dd-uu",
            "uu-MM-dd",
            "uu.MM.dd",
            "d MMM uuuu",
            "d-MMM-uuuu",
            "d MMMM uuuu",
            "d. MMMM uuuu",
            "MMM d, uuuu",
            "MMMM d, uuuu",
            "ddMMMuu",
            "ddMMMuuuu",
            "d MMM uu",
            "d-MMM-uu",
            "d/MMM/uuuu");
    private static final List<String> TIMES =
            List.of("", " HH:mm[:ss]", "'T'HH:mm[:ss]", "'T'HH:mm[:ss]XXX", " HH:mm[:ss]XXX");

    /** Years in which flights of a season lie, for what could be read as a date by chance. */
    private static final int FIRST_YEAR = 1950;

    private static final int LAST_YEAR = 2099;
    private static final int LOOK = 12;

    /** A year of two digits might be a day: it is one only if all flights lie within so many years. */
    private static final int MOST_YEARS = 3;

    static DatePatterns of(ColumnCells cells) {
        List<DatePatterns> found = new ArrayList<>();
        for (String time : TIMES) {
            if (time.isEmpty()) {
                consider("", cells, found);
            } else {
                consider("uuuu-MM-dd" + time, cells, found);
            }
            for (String order : ORDERS) {
                consider(order + time, cells, found);
            }
        }
        DatePatterns best = new DatePatterns("", 0, Optional.empty());
        for (DatePatterns one : found) {
            best = one.fitting > best.fitting ? one : best;
        }
        return best.withRival(found, cells);
    }

    /** The same for a pattern that a person has chosen. */
    static DatePatterns decided(String pattern, ColumnCells cells) {
        return new DatePatterns(pattern, fitting(pattern, cells), Optional.empty());
    }

    /** A pattern that none of the first cells fits is not looked at further. */
    private static void consider(String pattern, ColumnCells cells, List<DatePatterns> found) {
        DateFormat format = new DateFormat(pattern);
        if (cells.distinct().stream()
                .limit(LOOK)
                .noneMatch(cell -> date(format, cell).isPresent())) {
            return;
        }
        int fitting = fitting(pattern, cells);
        boolean shortYear = pattern.contains("uu") && !pattern.contains("uuuu");
        if (fitting > 0 && (!shortYear || years(format, cells) <= MOST_YEARS)) {
            found.add(new DatePatterns(pattern, fitting, Optional.empty()));
        }
    }

    /** How many years apart the first and the last date lie. */
    private static int years(DateFormat format, ColumnCells cells) {
        IntSummaryStatistics years = new IntSummaryStatistics();
        for (ColumnCells.Cell cell : cells.distinct()) {
            date(format, cell).ifPresent(day -> years.accept(day.getYear()));
        }
        return years.getMax() - years.getMin();
    }

    private static int fitting(String pattern, ColumnCells cells) {
        DateFormat format = new DateFormat(pattern);
        return cells.count(cell -> date(format, cell).isPresent());
    }

    private static Optional<LocalDate> date(DateFormat format, ColumnCells.Cell cell) {
        if (cell.kind() == CellKind.DATE) {
            return CellParser.storedDate(cell.text());
        }
        return format.parse(cell.text()).filter(day -> day.getYear() >= FIRST_YEAR && day.getYear() <= LAST_YEAR);
    }

    private DatePatterns withRival(List<DatePatterns> found, ColumnCells cells) {
        DateFormat mine = new DateFormat(pattern);
        for (DatePatterns other : found) {
            DateFormat theirs = new DateFormat(other.pattern);
            boolean differs = other.fitting == fitting
                    && cells.count(cell -> !date(mine, cell).equals(date(theirs, cell))) > 0;
            if (differs) {
                return new DatePatterns(pattern, fitting, Optional.of(other.pattern));
            }
        }
        return this;
    }

    /** Whether a cell is a date by the pattern. */
    boolean fits(ColumnCells.Cell cell) {
        return date(new DateFormat(pattern), cell).isPresent();
    }

    /** The pattern as a heading map has it. */
    List<String> declared() {
        return pattern.isEmpty() ? List.of() : List.of(pattern);
    }
}
