package org.steelyard.report.text;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.CharsetEncoder;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** Text files in UTF-8. Halves of surrogate pairs, which stand for no character, become the sign U+FFFD. */
public final class Utf8 {

    private static final int REPLACEMENT = 0xFFFD;
    private static final int BUFFER = 1 << 16;

    private Utf8() {}

    /** The bytes of a text. */
    public static byte[] bytes(String text) {
        return (hasSurrogates(text) ? whole(text) : text).getBytes(StandardCharsets.UTF_8);
    }

    private static boolean hasSurrogates(String text) {
        for (int i = 0; i < text.length(); i++) {
            if (Character.isSurrogate(text.charAt(i))) {
                return true;
            }
        }
        return false;
    }

    private static String whole(String text) {
        StringBuilder whole = new StringBuilder(text.length());
        text.codePoints()
                .map(c -> c >= Character.MIN_SURROGATE && c <= Character.MAX_SURROGATE ? REPLACEMENT : c)
                .forEach(whole::appendCodePoint);
        return whole.toString();
    }

    public static Writer writer(Path file) throws IOException {
        CharsetEncoder encoder = StandardCharsets.UTF_8
                .newEncoder()
                .onMalformedInput(CodingErrorAction.REPLACE)
                .replaceWith(new byte[] {(byte) 0xEF, (byte) 0xBF, (byte) 0xBD});
        return new BufferedWriter(new OutputStreamWriter(Files.newOutputStream(file), encoder), BUFFER);
    }
}
