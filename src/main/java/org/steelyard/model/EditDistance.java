package org.steelyard.model;

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
        int[] row = new int[other.length() + 1];
        for (int j = 0; j < row.length; j++) {
            row[j] = j;
        }
        for (int i = 1; i <= one.length(); i++) {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j < row.length; j++) {
                int exchanged = diagonal + (one.charAt(i - 1) == other.charAt(j - 1) ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.min(exchanged, Math.min(row[j], row[j - 1]) + 1);
            }
        }
        return row[other.length()];
    }
}
