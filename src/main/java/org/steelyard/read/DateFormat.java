package org.steelyard.read;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeFormatterBuilder;
import java.time.format.ResolverStyle;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The dates of one column: a pattern of {@link DateTimeFormatter} read strictly (no 31 April), or year-month-day where
 * the heading map gives none. Safe for use by several threads.
 */
final class DateFormat {

    private static final int REMEMBERED = 4096;

    private final String pattern;
    private final Optional<DateTimeFormatter> formatter;
    private final Map<String, LocalDate> known = new ConcurrentHashMap<>();

    /**
     * A format.
     *
     * @param pattern the pattern; blank for year-month-day
     * @throws IllegalArgumentException if it is not a pattern
     */
    DateFormat(String pattern) {
        this.pattern = pattern.isBlank() ? "yyyy-MM-dd" : pattern;
        this.formatter = pattern.isBlank()
                ? Optional.empty()
                : Optional.of(new DateTimeFormatterBuilder()
                        .parseCaseInsensitive()
                        .appendPattern(withProlepticYear(pattern))
                        .toFormatter(Locale.ROOT)
                        .withResolverStyle(ResolverStyle.STRICT));
    }

    /** Strict reading of y would ask for an era; u is the year that people mean. */
    private static String withProlepticYear(String pattern) {
        StringBuilder out = new StringBuilder();
        boolean quoted = false;
        for (int i = 0; i < pattern.length(); i++) {
            char c = pattern.charAt(i);
            quoted ^= c == '\'';
            out.append(c == 'y' && !quoted ? 'u' : c);
        }
        return out.toString();
    }

    /** How the pattern is written in a heading map. */
    String pattern() {
        return pattern;
    }

    /** Reads a date as the column has it; empty if it is none. */
    Optional<LocalDate> parse(String text) {
        if (formatter.isEmpty()) {
            return iso(text);
        }
        LocalDate remembered = known.get(text);
        if (remembered != null) {
            return Optional.of(remembered);
        }
        try {
            LocalDate date = formatter.get().parse(text, LocalDate::from);
            if (known.size() < REMEMBERED) {
                known.put(text, date);
            }
            return Optional.of(date);
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }

    /** Writes a date as the column has it. */
    String format(LocalDate date) {
        return formatter.isPresent() ? formatter.get().format(date) : date.toString();
    }

    /** Reads year-month-day. */
    static Optional<LocalDate> iso(String text) {
        if (text.length() != 10 || text.charAt(4) != '-' || text.charAt(7) != '-') {
            return Optional.empty();
        }
        int year = digits(text, 0, 4);
        int month = digits(text, 5, 7);
        int day = digits(text, 8, 10);
        boolean real = year >= 0
                && month >= 1
                && month <= 12
                && day >= 1
                && day <= YearMonth.of(year, month).lengthOfMonth();
        return real ? Optional.of(LocalDate.of(year, month, day)) : Optional.empty();
    }

    private static int digits(String text, int from, int to) {
        int value = 0;
        for (int i = from; i < to; i++) {
            char c = text.charAt(i);
            if (c < '0' || c > '9') {
                return -1;
            }
            value = value * 10 + (c - '0');
        }
        return value;
    }
}
