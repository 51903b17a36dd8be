package org.steelyard.report;

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

    /** Quick: a higher level takes twice the time for a file that is a tenth smaller. */
    private static final int LEVEL = 1;

    private final byte[] deflated;
    private final int deflatedLength;
    private final int length;
    private final int crc;

    private DeflatedPart(byte[] bytes, boolean last) {
        length = bytes.length;
        CRC32 checksum = new CRC32();
        checksum.update(bytes);
        crc = (int) checksum.getValue();
        Deflater deflater = new Deflater(LEVEL, true);
        try {
            deflater.setInput(bytes);
            if (last) {
                deflater.finish();
            }
            byte[] out = new byte[bytes.length / 4 + 64];
            int filled = 0;
            int mode = last ? Deflater.NO_FLUSH : Deflater.SYNC_FLUSH;
            int n = deflater.deflate(out, filled, out.length - filled, mode);
            filled += n;
            while (filled == out.length) {
                out = Arrays.copyOf(out, 2 * out.length);
                filled += deflater.deflate(out, filled, out.length - filled, mode);
            }
            deflated = out;
            deflatedLength = filled;
        } finally {
            deflater.end();
        }
    }

    static DeflatedPart of(byte[] content) {
        return new DeflatedPart(content, false);
    }

    /** The piece after which no other comes. */
    static DeflatedPart last(byte[] content) {
        return new DeflatedPart(content, true);
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
}
