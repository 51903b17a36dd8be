package org.steelyard.report.output.page;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonFactoryBuilder;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.SerializableString;
import com.fasterxml.jackson.core.StreamWriteFeature;
import com.fasterxml.jackson.core.io.CharacterEscapes;
import com.fasterxml.jackson.core.io.SerializedString;
import java.io.IOException;
import java.io.Writer;
import java.util.Locale;
import java.util.OptionalDouble;
import org.steelyard.report.text.PlainNumber;

/**
 * JSON that may stand inside a page: within its texts {@code < > &} and the line separators that a script would read as
 * ends of lines are escaped, so that no text can end the element it stands in.
 */
final class PageJson {

    private static final JsonFactory FACTORY = new JsonFactoryBuilder()
            .characterEscapes(new InPage())
            .disable(StreamWriteFeature.AUTO_CLOSE_TARGET)
            .disable(StreamWriteFeature.FLUSH_PASSED_TO_STREAM)
            .enable(StreamWriteFeature.WRITE_BIGDECIMAL_AS_PLAIN)
            .build();

    private PageJson() {}

    static JsonGenerator to(Writer writer) throws IOException {
        return FACTORY.createGenerator(writer);
    }

    /** A number to so many decimals, without trailing zeros. */
    static void number(JsonGenerator json, double number, int decimals) throws IOException {
        long whole = Math.round(number * Math.pow(10, decimals));
        json.writeNumber(PlainNumber.of(whole, decimals));
    }

    /** A number to so many decimals, or null. */
    static void number(JsonGenerator json, OptionalDouble number, int decimals) throws IOException {
        if (number.isPresent()) {
            number(json, number.getAsDouble(), decimals);
        } else {
            json.writeNull();
        }
    }

    /** A text, cut where it is longer than a page should carry, which a mark at its end shows. */
    static void text(JsonGenerator json, String text, int most) throws IOException {
        json.writeString(cut(text, most));
    }

    static String cut(String text, int most) {
        if (text.length() <= most) {
            return text;
        }
        int end = Character.isHighSurrogate(text.charAt(most - 2)) ? most - 2 : most - 1;
        return text.substring(0, end) + "…";
    }

    private static final class InPage extends CharacterEscapes {

        private static final int LINE_SEPARATOR = 0x2028;
        private static final int PARAGRAPH_SEPARATOR = 0x2029;
        private static final int HIGHEST_BELOW_SURROGATES = 0xD7FF;

        private final int[] ascii = CharacterEscapes.standardAsciiEscapesForJSON();

        InPage() {
            for (char sign : new char[] {'<', '>', '&', '\'', 0x7F}) {
                ascii[sign] = CharacterEscapes.ESCAPE_STANDARD;
            }
        }

        @Override
        public int[] getEscapeCodesForAscii() {
            return ascii.clone();
        }

        @Override
        public SerializableString getEscapeSequence(int sign) {
            boolean separator = sign == LINE_SEPARATOR || sign == PARAGRAPH_SEPARATOR;
            boolean control = sign >= 0x80 && sign < 0xA0;
            boolean noCharacter = (sign > HIGHEST_BELOW_SURROGATES && sign < 0xE000) || sign >= 0xFFFE;
            return separator || control || noCharacter
                    ? new SerializedString(String.format(Locale.ROOT, "\\u%04x", sign))
                    : null;
        }
    }
}
