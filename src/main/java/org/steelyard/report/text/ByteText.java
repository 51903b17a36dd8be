package org.steelyard.report.text;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/** Text in UTF-8, put together from short pieces: a season's outputs are a hundred million of them. */
public final class ByteText {

    /** Longest whole number with its sign, and its zeros and point before a fraction. */
    private static final int NUMBER = 40;

    private static final int MOST_DIGITS = 19;
    private static final int FEW_DECIMALS = 3;
    private static final double FEW = 1e3;
    private static final double FEW_BELOW = 1e11;
    private static final int MANY_DECIMALS = 12;
    private static final double MANY = 1e12;
    private static final double MANY_BELOW = 100;
    private static final double WHOLE_BELOW = 1e15;

    private byte[] bytes;
    private int length;

    public ByteText() {
        this(1 << 12);
    }

    /** A text that needs some room at first. */
    ByteText(int room) {
        bytes = new byte[room];
    }

    public int length() {
        return length;
    }

    /** Hands over all since the last call. */
    public byte[] take() {
        byte[] all = Arrays.copyOf(bytes, length);
        length = 0;
        return all;
    }

    /** The bytes of a text that is added often. */
    public static byte[] of(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    public ByteText add(byte[] piece) {
        makeRoom(piece.length);
        System.arraycopy(piece, 0, bytes, length, piece.length);
        length += piece.length;
        return this;
    }

    public ByteText ascii(char sign) {
        makeRoom(1);
        bytes[length++] = (byte) sign;
        return this;
    }

    public ByteText add(String text) {
        int chars = text.length();
        makeRoom(chars);
        for (int i = 0; i < chars; i++) {
            char c = text.charAt(i);
            if (c >= 0x80) {
                length -= i;
                return add(Utf8.bytes(text));
            }
            bytes[length++] = (byte) c;
        }
        return this;
    }

    /**
     * Adds a number as {@link PlainNumber} has it. Of at most fifteen digits it needs no search for the fewest: two
     * such decimals are never the same double, so the one that is read back as the number is the shortest.
     */
    public ByteText number(double value) {
        double size = Math.abs(value);
        if (Double.compare(value, Math.rint(value)) == 0 && size < WHOLE_BELOW) {
            return whole((long) value);
        }
        if (size < FEW_BELOW && Double.compare(Math.rint(value * FEW) / FEW, value) == 0) {
            return decimal((long) Math.rint(value * FEW), FEW_DECIMALS);
        }
        if (size < MANY_BELOW && Double.compare(Math.rint(value * MANY) / MANY, value) == 0) {
            return decimal((long) Math.rint(value * MANY), MANY_DECIMALS);
        }
        return add(PlainNumber.of(value));
    }

    public ByteText whole(long number) {
        return decimal(number, 0);
    }

    /** Adds a number times a power of ten, without zeros at the end of its decimals. */
    ByteText decimal(long scaled, int decimals) {
        if (scaled == Long.MIN_VALUE) {
            return add(BigDecimal.valueOf(scaled, decimals).stripTrailingZeros().toPlainString());
        }
        makeRoom(NUMBER);
        long rest = Math.abs(scaled);
        int left = decimals;
        while (left > 0 && rest % 10 == 0) {
            rest /= 10;
            left--;
        }
        if (scaled < 0) {
            bytes[length++] = '-';
        }
        int end = length + Math.max(digits(rest), left + 1) + (left > 0 ? 1 : 0);
        int point = left > 0 ? end - left - 1 : end;
        for (int i = end - 1; i >= length; i--) {
            if (i == point) {
                bytes[i] = '.';
            } else {
                bytes[i] = (byte) ('0' + rest % 10);
                rest /= 10;
            }
        }
        length = end;
        return this;
    }

    private static int digits(long number) {
        int digits = 1;
        for (long power = 10; digits < MOST_DIGITS && power <= number; power *= 10) {
            digits++;
        }
        return digits;
    }

    private void makeRoom(int more) {
        if (bytes.length - length < more) {
            bytes = Arrays.copyOf(bytes, Math.max(2 * bytes.length, length + more));
        }
    }
}
