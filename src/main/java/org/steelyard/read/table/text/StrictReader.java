package org.steelyard.read.table.text;

import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.Charset;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.util.HexFormat;

/**
 * Decodes bytes and replaces none: all characters before bytes that are no text are still delivered, then it throws. It
 * also stops a record that never ends, so that an unclosed quotation mark does not fill the memory.
 */
final class StrictReader extends Reader {

    /** Characters that one record may have at most, give or take a buffer. */
    static final int LONGEST_RECORD = 1_000_000;

    private static final int LEAST_BUFFER_BYTES = 1 << 8;
    private static final int MOST_BUFFER_BYTES = 1 << 16;

    private final InputStream in;
    private final CharsetDecoder decoder;
    private final ByteBuffer bytes;
    private boolean inputEnded;
    private boolean undecodable;
    private int undecodableBytes;
    private char last = '\n';
    private long recordChars;
    private long allChars;

    /**
     * Reads from a source.
     *
     * @param in bytes
     * @param charset how they are characters
     * @param size how many there are, about; a head or a small file needs no large buffer
     */
    StrictReader(InputStream in, Charset charset, int size) {
        this.in = in;
        this.bytes = ByteBuffer.allocate(Math.min(MOST_BUFFER_BYTES, Math.max(LEAST_BUFFER_BYTES, size)))
                .flip();
        this.decoder = charset.newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
    }

    /** How many characters have been read. */
    long chars() {
        return allChars;
    }

    /** Says that a new record begins. */
    void beginRecord() {
        recordChars = 0;
    }

    @Override
    public int read(char[] chars, int offset, int length) throws IOException {
        if (recordChars > LONGEST_RECORD) {
            throw new EndlessRecordException();
        }
        CharBuffer out = CharBuffer.wrap(chars, offset, length);
        int start = out.position();
        while (!undecodable && out.position() == start && decode(out)) {
            fill();
        }
        int count = out.position() - start;
        if (count > 0) {
            last = out.get(out.position() - 1);
            recordChars += count;
            allChars += count;
            return count;
        }
        if (undecodable) {
            throw new UndecodableException(offendingBytes(), last == '\n' || last == '\r');
        }
        return length == 0 ? 0 : -1;
    }

    /** Decodes what is there; true if more bytes are needed. */
    private boolean decode(CharBuffer out) {
        CoderResult result = decoder.decode(bytes, out, inputEnded);
        if (result.isError()) {
            undecodable = true;
            undecodableBytes = result.length();
        }
        return result.isUnderflow() && !inputEnded;
    }

    private void fill() throws IOException {
        bytes.compact();
        int count = in.read(bytes.array(), bytes.position(), bytes.remaining());
        inputEnded = count < 0;
        bytes.position(bytes.position() + Math.max(count, 0));
        bytes.flip();
    }

    private String offendingBytes() {
        byte[] offending = new byte[Math.min(undecodableBytes, bytes.remaining())];
        bytes.get(bytes.position(), offending);
        return "0x" + HexFormat.of().withUpperCase().formatHex(offending);
    }

    @Override
    public void close() throws IOException {
        in.close();
    }
}
