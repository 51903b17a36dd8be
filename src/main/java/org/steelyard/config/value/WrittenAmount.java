package org.steelyard.config.value;

import java.util.Locale;

/** Amounts with their unit as they are written in the configuration, for options of a command line too. */
public final class WrittenAmount {

    /** A text that is no such amount; the message says why and what would be. */
    public static final class NotReadException extends Exception {

        private static final long serialVersionUID = 1L;

        private NotReadException(String text, NotAcceptedException cause) {
            super(
                    String.format(
                            Locale.ROOT, "%s (value '%s'; expected %s)", cause.getMessage(), text, cause.expected()),
                    cause);
        }
    }

    private WrittenAmount() {}

    /**
     * A mass above zero.
     *
     * @param text as {@code 4t}, {@code 500 kg} or {@code 1000 lb}
     * @return kg
     * @throws NotReadException if it is none
     */
    public static double massKg(String text) throws NotReadException {
        return read(text, WrittenNumber.MASS);
    }

    /**
     * A distance on the chord, not negative.
     *
     * @param text as {@code 1%} or {@code 0.5 % MAC}
     * @return % MAC
     * @throws NotReadException if it is none
     */
    public static double percentMac(String text) throws NotReadException {
        return read(text.strip().endsWith("%") ? text.strip() + " MAC" : text, WrittenNumber.PERCENT_MAC);
    }

    private static double read(String text, Accepts<Double> accepts) throws NotReadException {
        try {
            return accepts.read(text.strip());
        } catch (NotAcceptedException unfit) {
            throw new NotReadException(text, unfit);
        }
    }
}
