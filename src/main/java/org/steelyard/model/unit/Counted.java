package org.steelyard.model.unit;

import java.util.Locale;

/** Whole numbers as people read them, with groups of three digits, and with what they count. */
public final class Counted {

    private Counted() {}

    /**
     * A number as 12,345.
     *
     * @param number any number
     * @return its digits in groups of three
     */
    public static String number(long number) {
        return String.format(Locale.ROOT, "%,d", number);
    }

    /**
     * A number with its noun, as 1 flight and 1,200 flights.
     *
     * @param number how many
     * @param noun one of them; its plural ends in s
     * @return number and noun
     */
    public static String of(long number, String noun) {
        return number(number) + " " + noun + (number == 1 ? "" : "s");
    }
}
