package org.steelyard.model.unit;

/**
 * How many characters must be put in, taken out or exchanged to turn one text into another (V. I. Levenshtein, 1966;
 * the usual table by rows).
 */
public final class EditDistance {

    private EditDistance() {}

    /**
     * The distance of two texts, capitals counting as they stand.
     *
     * @param one a text
     * @param other another
     * @return how many characters to change; 0 for the same text
     */
    public static int between(String one, String other) {
        return within(one, other, Math.max(one.length(), other.length()));
    }

    /**
     * The distance of two texts as far as it matters, which takes less time the sooner it does not.
     *
     * @param one a text
     * @param other another
     * @param most the greatest distance that matters, 0 or more
     * @return how many characters to change; one more than the greatest where it is any more
     */
    public static int within(String one, String other, int most) {
        if (Math.abs(one.length() - other.length()) > most) {
            return most + 1;
        }
        int[] row = new int[other.length() + 1];
        for (int j = 0; j < row.length; j++) {
            row[j] = j;
        }
        for (int i = 1; i <= one.length(); i++) {
            int from = Math.max(1, i - most); // places farther from the diagonal are farther apart than matters
            int to = Math.min(other.length(), i + most);
            int diagonal = row[from - 1];
            row[from - 1] = from == 1 ? i : most + 1;
            int least = row[from - 1];
            for (int j = from; j <= to; j++) {
                int exchanged = diagonal + (one.charAt(i - 1) == other.charAt(j - 1) ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.min(exchanged, Math.min(row[j], row[j - 1]) + 1);
                least = Math.min(least, row[j]);
            }
            if (least > most) {
                return most + 1;
            }
        }
        return Math.min(row[other.length()], most + 1);
    }
}
