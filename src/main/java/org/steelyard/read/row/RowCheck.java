package org.steelyard.read.row;

import java.util.List;

/**
 * What the cells of a row come to, in sixteen letters: tells the row that was rejected from one that was changed since.
 * Letters alone, because a spreadsheet would take digits for a number.
 */
public final class RowCheck {

    private static final int LETTERS = 16;

    private RowCheck() {}

    /** The check of a row's cells. */
    public static String of(List<String> cells) {
        StringBuilder all = new StringBuilder();
        for (String cell : cells) {
            all.append(cell.length()).append(':').append(cell);
        }
        long digest = FlightKey.digest(all.toString()).getLong();
        StringBuilder letters = new StringBuilder(LETTERS);
        for (int i = 0; i < LETTERS; i++) {
            letters.append((char) ('a' + (digest >>> (4 * i) & 15)));
        }
        return letters.toString();
    }
}
