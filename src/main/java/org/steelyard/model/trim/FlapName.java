package org.steelyard.model.trim;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The name of a flap setting, the same for every way of writing it: {@code 5}, {@code 5.0}, {@code 05}, {@code 5°} and
 * {@code Flaps 5} are {@code 5}. What is no number stays as it is written, without "Flaps" and needless blanks.
 */
public final class FlapName {

    private static final Pattern WORD = Pattern.compile("(?i)flaps?(?:[\\s:=]+|(?=\\d))(.+)");
    private static final Pattern NUMBER = Pattern.compile("0*(\\d+)(?:[.,](\\d*?)0*)?\\s*(?:°|deg\\.?|degrees?)?");

    private FlapName() {}

    /**
     * The name of a setting.
     *
     * @param written as somebody wrote it
     * @return its name; blank where nothing is written
     */
    public static String of(String written) {
        if (isPlain(written)) {
            return written;
        }
        String text = written.strip().replaceAll("\\s+", " ");
        Matcher word = WORD.matcher(text);
        if (word.matches()) {
            text = word.group(1).strip();
        }
        Matcher number = NUMBER.matcher(text.toLowerCase(Locale.ROOT));
        if (!number.matches()) {
            return text;
        }
        String decimals = number.group(2);
        return number.group(1) + (decimals == null || decimals.isEmpty() ? "" : "." + decimals);
    }

    /** Whether it is a number of one or two digits already, as nearly all are. */
    private static boolean isPlain(String written) {
        int length = written.length();
        if (length == 0) {
            return true;
        }
        if (length > 2 || (length == 2 && written.charAt(0) == '0')) {
            return false;
        }
        for (int i = 0; i < length; i++) {
            char c = written.charAt(i);
            if (c < '0' || c > '9') {
                return false;
            }
        }
        return true;
    }
}
