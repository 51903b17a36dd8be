package org.steelyard.report.book;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.util.Arrays;
import java.util.zip.CRC32;
import java.util.zip.Deflater;

/**
 * A piece of a compressed file (RFC 1951) that ends on a whole byte, so that pieces compressed apart from each other
 * make one file when they are put together; with length and checksum of what is in it.
 */
final class DeflatedPart {

    private final byte[] deflated;
    private final int deflatedLength;
    private final int length;
    private final int crc;

    private DeflatedPart(Maker maker) {
        deflated = maker.out;
        deflatedLength = maker.filled;
        length = maker.length;
        crc = (int) maker.checksum.getValue();
    }

    static DeflatedPart of(byte[] content) {
        return new Maker().add(content).made();
    }

    /** The piece after which no other comes. */
    static DeflatedPart last(byte[] content) {
        return new Maker().add(content).last();
    }

    /** Length before compression. */
    int length() {
        return length;
    }

    /** Length after compression. */
    int deflatedLength() {
        return deflatedLength;
    }

    /** CRC-32 of what is in it. */
    int crc() {
        return crc;
    }

    void writeTo(OutputStream out) throws IOException {
        out.write(deflated, 0, deflatedLength);
    }

    InputStream stream() {
        return new ByteArrayInputStream(deflated, 0, deflatedLength);
    }

    /** Compresses a piece as its content comes; to be ended once. */
    static final class Maker {

        /** Quick: a higher level takes twice the time or more for a file that is a tenth or two smaller. */
        private static final int LEVEL = 1;

        private final Deflater deflater = new Deflater(LEVEL, true);
        private final CRC32 checksum = new CRC32();
        private byte[] out = new byte[1 << 14];
        private int filled;
        private int length;

        Maker add(byte[] content) {
            checksum.update(content);
            length += content.length;
            deflater.setInput(content);
            while (!deflater.needsInput()) {
                deflate(Deflater.NO_FLUSH);
            }
            return this;
        }

        DeflatedPart made() {
            return ended(Deflater.SYNC_FLUSH);
        }

        DeflatedPart last() {
            deflater.finish();
            return ended(Deflater.NO_FLUSH);
        }

        /** All is out when there is room left over. */
        private DeflatedPart ended(int mode) {
            do {
                deflate(mode);
            } while (filled == out.length);
            deflater.end();
            return new DeflatedPart(this);
        }

        private void deflate(int mode) {
            if (filled == out.length) {
                out = Arrays.copyOf(out, 2 * out.length);
            }
            filled += deflater.deflate(out, filled, out.length - filled, mode);
        }
    }
}
