package org.steelyard.read.text;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.Month;
import java.time.YearMonth;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeFormatterBuilder;
import java.time.format.ResolverStyle;
import java.time.temporal.ChronoField;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The dates of one column: patterns of {@link DateTimeFormatter} read strictly (no 31 April), or year-month-day where
 * the heading map gives none. Names of months are English. Where a pattern has a time or a zone, the date is the one
 * that is written, whatever the zone. Safe for use by several threads.
 */
public final class DateFormat {

    private static final int REMEMBERED = 4096;
    private static final String ISO = "yyyy-MM-dd";
    private static final int SHORT_NAME = 3;

    /** Letters of a pattern that stand for the time of day or for its zone. */
    private static final String TIME = "HhKkmsSaABnNVvzOXxZ";

    private final List<String> patterns;
    private final List<DateTimeFormatter> formatters;
    private final Map<String, LocalDate> known = new ConcurrentHashMap<>();

    /**
     * A format.
     *
     * @param pattern the pattern; blank for year-month-day
     * @throws IllegalArgumentException if it is not a pattern
     */
    public DateFormat(String pattern) {
        this(pattern.isBlank() ? List.of() : List.of(pattern));
    }

    /**
     * A format of several patterns, of which the first that fits counts.
     *
     * @param patterns the patterns; none for year-month-day
     * @throws IllegalArgumentException if one is not a pattern
     */
    public DateFormat(List<String> patterns) {
        this.patterns = List.copyOf(patterns);
        this.formatters = patterns.stream().map(DateFormat::formatter).toList();
    }

    private static DateTimeFormatter formatter(String pattern) {
        DateTimeFormatterBuilder builder = new DateTimeFormatterBuilder().parseCaseInsensitive();
        int from = 0;
        int i = 0;
        boolean quoted = false;
        while (i < pattern.length()) {
            quoted ^= pattern.charAt(i) == '\'';
            int run = quoted ? 0 : monthLetters(pattern, i);
            if (run >= SHORT_NAME) {
                builder.appendPattern(withProlepticYear(pattern.substring(from, i)));
                builder.appendText(ChronoField.MONTH_OF_YEAR, months(run == SHORT_NAME));
                from = i + run;
            }
            i += Math.max(1, run);
        }
        return builder.appendPattern(withProlepticYear(pattern.substring(from)))
                .toFormatter(Locale.ROOT)
                .withResolverStyle(ResolverStyle.STRICT);
    }

    private static int monthLetters(String pattern, int from) {
        int end = from;
        while (end < pattern.length() && pattern.charAt(end) == 'M') {
            end++;
        }
        return end - from;
    }

    /** The names of the months in English: Jan or January. */
    private static Map<Long, String> months(boolean shortened) {
        Map<Long, String> names = new HashMap<>();
        for (Month month : Month.values()) {
            String name = month.name().charAt(0) + month.name().substring(1).toLowerCase(Locale.ROOT);
            names.put((long) month.getValue(), shortened ? name.substring(0, SHORT_NAME) : name);
        }
        return names;
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

    /** How the patterns are written in a heading map. */
    public String pattern() {
        return patterns.isEmpty() ? ISO : String.join(" or ", patterns);
    }

    /** Whether a cell may hold more than a date, which is carried along then as it is. */
    public boolean hasTime() {
        return patterns.stream().anyMatch(DateFormat::hasTime);
    }

    private static boolean hasTime(String pattern) {
        boolean quoted = false;
        for (int i = 0; i < pattern.length(); i++) {
            quoted ^= pattern.charAt(i) == '\'';
            if (!quoted && TIME.indexOf(pattern.charAt(i)) >= 0) {
                return true;
            }
        }
        return false;
    }

    /** Reads a date as the column has it; empty if it is none. */
    public Optional<LocalDate> parse(String text) {
        if (formatters.isEmpty()) {
            return iso(text);
        }
        Optional<LocalDate> date = Optional.ofNullable(known.get(text));
        for (int i = 0; date.isEmpty() && i < formatters.size(); i++) {
            date = parse(text, formatters.get(i));
            if (date.isPresent() && known.size() < REMEMBERED) {
                known.put(text, date.get());
            }
        }
        return date;
    }

    private static Optional<LocalDate> parse(String text, DateTimeFormatter formatter) {
        try {
            return Optional.of(formatter.parse(text, LocalDate::from));
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }

    /** Writes a stored date as the column has it, with its time where the column has one. */
    public String format(LocalDateTime stored) {
        return formatters.isEmpty()
                ? stored.toLocalDate().toString()
                : formatters.get(0).format(stored.atOffset(ZoneOffset.UTC));
    }

    /** Writes a date as the column has it. */
    public String format(LocalDate date) {
        return format(date.atStartOfDay());
    }

    /** Reads year-month-day. */
    public static Optional<LocalDate> iso(String text) {
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

    /** A stored date with its time, which is midnight where there is none. */
    public static Optional<LocalDateTime> storedDateTime(String text) {
        try {
            return Optional.of(LocalDateTime.parse(text.indexOf('T') < 0 ? text + "T00:00" : text));
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }
}
