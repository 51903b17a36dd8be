package org.steelyard.read.table.text;

import java.nio.charset.Charset;
import java.nio.charset.IllegalCharsetNameException;
import java.nio.charset.StandardCharsets;
import java.nio.charset.UnsupportedCharsetException;
import java.util.Optional;
import org.steelyard.model.input.ColumnMap;
import org.steelyard.read.table.ReadOptions;
import org.steelyard.read.table.SourceFault;
import org.steelyard.read.table.TableName;

/**
 * How the bytes of a text file are characters: a byte order mark decides; else what is declared; else UTF-8.
 *
 * @param charset the charset
 * @param markBytes length of the byte order mark
 */
record TextEncoding(Charset charset, int markBytes) {

    /** Bytes looked at for the zeros that UTF-16 without a mark has in every other place. */
    private static final int SAMPLE = 256;

    static TextEncoding of(byte[] head, ReadOptions options, ColumnMap map, TableName name) throws SourceFault {
        if (begins(head, 0xEF, 0xBB, 0xBF)) {
            return new TextEncoding(StandardCharsets.UTF_8, 3);
        }
        if (begins(head, 0xFF, 0xFE)) {
            return new TextEncoding(StandardCharsets.UTF_16LE, 2);
        }
        if (begins(head, 0xFE, 0xFF)) {
            return new TextEncoding(StandardCharsets.UTF_16BE, 2);
        }
        Optional<Charset> declared = options.charset().isPresent() ? options.charset() : declared(map, name);
        if (declared.filter(TextEncoding::isWide).isEmpty()) {
            requireText(head, declared.isPresent(), name);
        }
        return new TextEncoding(declared.orElse(StandardCharsets.UTF_8), 0);
    }

    /** Whether a charset has zeros in plain text. */
    private static boolean isWide(Charset charset) {
        return charset.name().startsWith("UTF-16") || charset.name().startsWith("UTF-32");
    }

    private static boolean begins(byte[] head, int... mark) {
        if (head.length < mark.length) {
            return false;
        }
        for (int i = 0; i < mark.length; i++) {
            if ((head[i] & 0xFF) != mark[i]) {
                return false;
            }
        }
        return true;
    }

    private static Optional<Charset> declared(ColumnMap map, TableName name) throws SourceFault {
        if (map.charset().isBlank()) {
            return Optional.empty();
        }
        try {
            return Optional.of(Charset.forName(map.charset()));
        } catch (IllegalCharsetNameException | UnsupportedCharsetException e) {
            throw new SourceFault(
                    name.unreadable(
                            0,
                            "the heading map '" + map.name() + "' declares an unknown charset",
                            map.charset(),
                            "a charset such as UTF-8 or windows-1252"),
                    e);
        }
    }

    /** Refuses zeros, which text does not hold; where a charset is declared a stray one is a fault of its cell. */
    private static void requireText(byte[] head, boolean declared, TableName name) throws SourceFault {
        int evenZeros = 0;
        int oddZeros = 0;
        int length = Math.min(head.length, SAMPLE);
        for (int i = 0; i < length; i++) {
            if (head[i] == 0) {
                evenZeros += (i + 1) % 2;
                oddZeros += i % 2;
            }
        }
        if (evenZeros + oddZeros == 0) {
            return;
        }
        boolean wide = Math.max(evenZeros, oddZeros) > length / 4 && Math.min(evenZeros, oddZeros) < length / 16;
        if (declared && !wide) {
            return;
        }
        String charset = oddZeros > evenZeros ? "UTF-16LE" : "UTF-16BE";
        throw new SourceFault(
                wide
                        ? name.unreadable(
                                0,
                                "the text looks like " + charset + " without a byte order mark",
                                "",
                                "a byte order mark, or the charset " + charset + " declared")
                        : name.unreadable(0, "the file holds bytes that are no text", "", "a text file"));
    }
}
