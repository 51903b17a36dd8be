package org.steelyard.report.book;

import java.util.Optional;
import java.util.stream.DoubleStream;
import org.steelyard.report.words.SeasonWords;

/**
 * An axis of numbers with round ends.
 *
 * @param title what it shows, with its unit
 * @param low lower end
 * @param high upper end
 * @param step distance of its marks
 * @param format number format of its marks
 */
public record ChartAxis(String title, double low, double high, double step, String format) {

    private static final int MARKS = 8;

    /** An axis that holds all numbers and some room; empty where there is no number. */
    public static Optional<ChartAxis> around(String title, DoubleStream numbers) {
        var range = numbers.summaryStatistics();
        return range.getCount() == 0
                ? Optional.empty()
                : Optional.of(between(title, range.getMin(), range.getMax(), 0.02));
    }

    /** The same of trims, whose marks read as people say them. */
    public static Optional<ChartAxis> ofTrim(String title, DoubleStream trimUnits) {
        return around(title, trimUnits)
                .map(axis -> new ChartAxis(
                        title, axis.low(), axis.high(), axis.step(), SeasonWords.trimFormat(decimals(axis.step()))));
    }

    /** An axis from zero to the greatest number. */
    public static ChartAxis fromZero(String title, double greatest) {
        ChartAxis axis = between(title, 0, Math.max(greatest, 1e-9), 0);
        return new ChartAxis(title, 0, axis.high(), axis.step(), axis.format());
    }

    /** An axis that holds all numbers and zero. */
    public static ChartAxis withZero(String title, DoubleStream numbers) {
        var range = numbers.summaryStatistics();
        return between(title, Math.min(0, range.getMin()), Math.max(0, range.getMax()), 0);
    }

    private static ChartAxis between(String title, double least, double greatest, double room) {
        double length = greatest - least > 0 ? greatest - least : Math.max(1, Math.abs(least) / 10);
        double step = step(length * (1 + 2 * room) / MARKS);
        double low = Math.floor((least - room * length) / step) * step;
        double high = Math.ceil((greatest + room * length) / step) * step;
        return new ChartAxis(title, low, high > low ? high : low + step, step, format(step));
    }

    /** The next of 1, 2 and 5 times a power of ten. */
    private static double step(double wanted) {
        double power = Math.pow(10, Math.floor(Math.log10(wanted)));
        double digit = wanted / power;
        return power * (digit <= 1 ? 1 : digit <= 2 ? 2 : digit <= 5 ? 5 : 10);
    }

    private static int decimals(double step) {
        return (int) Math.max(0, Math.ceil(-Math.log10(step) - 1e-9));
    }

    private static String format(double step) {
        int decimals = decimals(step);
        return decimals == 0 ? "#,##0" : "0." + "0".repeat(decimals);
    }
}
