package org.steelyard.report.book;

/**
 * The CRC-32 of two texts, one after the other, from those of each: {@code crc(AB) = crc(A) · x^(8 |B|) + crc(B)}, in
 * polynomials over the field of two elements modulo that of the checksum (ISO 3309; RFC 1952, 8). The initial and final
 * complements cancel out.
 */
final class JoinedCrc {

    /** The polynomial with the coefficient of x^0 in the highest bit, as all numbers here. */
    private static final int POLYNOMIAL = 0xEDB88320;

    private static final int ONE = 1 << 31;
    private static final int X_TO_THE_8 = ONE >>> 8;

    private JoinedCrc() {}

    /**
     * The checksum of both.
     *
     * @param first checksum of the first text
     * @param second checksum of the second
     * @param secondLength length of the second in bytes
     */
    static int of(int first, int second, long secondLength) {
        return times(first, power(secondLength)) ^ second;
    }

    private static int power(long bytes) {
        int power = ONE;
        int square = X_TO_THE_8;
        for (long left = bytes; left > 0; left >>= 1) {
            if ((left & 1) == 1) {
                power = times(power, square);
            }
            square = times(square, square);
        }
        return power;
    }

    private static int times(int a, int b) {
        int product = 0;
        int shifted = b;
        for (int bit = ONE; bit != 0; bit >>>= 1) {
            if ((a & bit) != 0) {
                product ^= shifted;
            }
            shifted = (shifted & 1) == 0 ? shifted >>> 1 : (shifted >>> 1) ^ POLYNOMIAL;
        }
        return product;
    }
}
