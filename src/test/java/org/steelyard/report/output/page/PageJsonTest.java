package org.steelyard.report.output.page;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PageJsonTest {

    @FunctionalInterface
    private interface Content {
        void write(JsonGenerator json) throws IOException;
    }

    private static String json(Content content) throws IOException {
        StringWriter text = new StringWriter();
        try (JsonGenerator json = PageJson.to(text)) {
            content.write(json);
        }
        return text.toString();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "</script><script>",
                "<!--",
                "]]>",
                "a & b",
                "\u2028\u2029",
                "\u0000\u0007\u001F\u007F\u0085",
                "quote \" back \\ slash / ' done",
                "\uD83D\uDEE9 é ñ ← 滑",
                "\uFFFE\uFFFF"
            })
    void textComesBackWholeAndHoldsNothingThatEndsItsElement(String text) throws IOException {
        String written = json(json -> json.writeString(text));
        assertThat(new ObjectMapper().readValue(written, String.class)).isEqualTo(text);
        assertThat(written).doesNotContain("<", ">", "&", "\u2028", "\u2029");
        assertThat(written.chars()).noneMatch(sign -> sign < 0x20 || (sign >= 0x7F && sign < 0xA0) || sign >= 0xFFFE);
    }

    @ParameterizedTest
    @CsvSource({
        "0, 3, 0",
        "-0.0004, 3, 0",
        "70000, 1, 70000",
        "21.56789, 3, 21.568",
        "-1.25, 1, -1.2",
        "0.05, 2, 0.05",
        "1e7, 1, 10000000"
    })
    void numbersAreShort(double number, int decimals, String written) throws IOException {
        assertThat(json(json -> PageJson.number(json, number, decimals))).isEqualTo(written);
    }

    @Test
    void longTextIsCutWithAMarkAndNeverThroughAPair() {
        assertThat(PageJson.cut("abcdef", 6)).isEqualTo("abcdef");
        assertThat(PageJson.cut("abcdefg", 6)).isEqualTo("abcde…");
        assertThat(PageJson.cut("abcd\uD83D\uDEE9fg", 6)).isEqualTo("abcd…");
    }
}
