package org.steelyard.spark;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.Serializable;

/**
 * Where records begin in a stretch of a delimited text, whatever stands before it: a line break within quotation marks
 * ends no record, and whether a stretch begins within them is known only from all that is before. So the stretch is
 * gone through once for every state in which it may begin, and stretches are put together afterwards. The states are
 * those of RFC 4180 as the reader of season files has it, with blanks around cells left out.
 */
final class TextScan implements Serializable {

    private static final long serialVersionUID = 1;

    /** At the beginning of a record. */
    static final int RECORD = 0;

    private static final int CELL = 1;
    private static final int PLAIN = 2;
    private static final int QUOTED = 3;
    private static final int QUOTE_IN_QUOTED = 4;
    private static final int BEHIND_QUOTED = 5;
    private static final int BROKEN = 6;
    private static final int STATES = 7;

    private static final int DELIMITER = 0;
    private static final int QUOTE = 1;
    private static final int END = 2;
    private static final int BLANK = 3;
    private static final int OTHER = 4;

    /** The next state by state and kind of sign: delimiter, quotation mark, line end, blank, other. */
    private static final int[][] NEXT = {
        {CELL, QUOTED, RECORD, CELL, PLAIN},
        {CELL, QUOTED, RECORD, CELL, PLAIN},
        {CELL, PLAIN, RECORD, PLAIN, PLAIN},
        {QUOTED, QUOTE_IN_QUOTED, QUOTED, QUOTED, QUOTED},
        {CELL, QUOTED, RECORD, BEHIND_QUOTED, BROKEN},
        {CELL, BROKEN, RECORD, BEHIND_QUOTED, BROKEN},
        {BROKEN, BROKEN, BROKEN, BROKEN, BROKEN}
    };

    private final long from;
    private final long to;
    private long lines;
    private final int[] endState = new int[STATES];
    private final long[] ends = new long[STATES];
    private final long[] firstRecord = new long[STATES];
    private final long[] linesToFirst = new long[STATES];

    private TextScan(long from, long to) {
        this.from = from;
        this.to = to;
    }

    /**
     * Goes through a stretch.
     *
     * @param in stands at its first byte
     * @param from place of that byte in the file
     * @param to place behind its last byte; must not stand between the two signs of a line end
     * @param delimiter what stands between cells
     */
    static TextScan of(InputStream in, long from, long to, char delimiter) throws IOException {
        TextScan scan = new TextScan(from, to);
        scan.run(new BufferedInputStream(in, 1 << 16), kinds(delimiter));
        return scan;
    }

    private static int[] kinds(char delimiter) {
        int[] kinds = new int[256];
        for (int i = 0; i < kinds.length; i++) {
            kinds[i] = i < 128 && Character.isWhitespace(i) ? BLANK : OTHER;
        }
        kinds['\n'] = END;
        kinds['\r'] = END;
        kinds['"'] = QUOTE;
        kinds[delimiter] = DELIMITER;
        return kinds;
    }

    private void run(InputStream in, int[] kinds) throws IOException {
        int[] state = new int[STATES];
        for (int i = 0; i < STATES; i++) {
            state[i] = i;
            firstRecord[i] = i == RECORD ? from : -1;
        }
        byte[] chunk = new byte[1 << 16];
        long at = from;
        boolean afterReturn = false;
        while (at < to) {
            int n = in.readNBytes(chunk, 0, (int) Math.min(chunk.length, to - at));
            if (n == 0) {
                throw new IOException("the file ends before the place " + to + " that its size promises");
            }
            for (int i = 0; i < n; i++, at++) {
                byte sign = chunk[i];
                if (sign == '\n' && afterReturn) {
                    afterReturn = false;
                    secondSign(state, at);
                    continue;
                }
                afterReturn = sign == '\r';
                int kind = kinds[sign & 0xFF];
                lines += kind == END ? 1 : 0;
                for (int begun = 0; begun < STATES; begun++) {
                    int next = NEXT[state[begun]][kind];
                    state[begun] = next;
                    if (kind == END && next == RECORD) {
                        end(begun, at + 1);
                    }
                }
            }
        }
        System.arraycopy(state, 0, endState, 0, STATES);
    }

    /** The second sign of a line end belongs to the record before. */
    private void secondSign(int[] state, long at) {
        for (int begun = 0; begun < STATES; begun++) {
            if (state[begun] == RECORD && firstRecord[begun] == at) {
                firstRecord[begun] = at + 1;
            }
        }
    }

    private void end(int begun, long next) {
        ends[begun]++;
        if (firstRecord[begun] < 0) {
            firstRecord[begun] = next;
            linesToFirst[begun] = lines;
        }
    }

    long from() {
        return from;
    }

    long to() {
        return to;
    }

    /** Line ends in the stretch. */
    long lines() {
        return lines;
    }

    /** The state at its end, if it began in a state. */
    int endState(int begun) {
        return endState[begun];
    }

    /** How many records end in it. */
    long ends(int begun) {
        return ends[begun];
    }

    /** Where the first record begins in it or just behind it; -1 if none does. */
    long firstRecord(int begun) {
        return firstRecord[begun];
    }

    /** Line ends before that. */
    long linesToFirst(int begun) {
        return linesToFirst[begun];
    }
}
