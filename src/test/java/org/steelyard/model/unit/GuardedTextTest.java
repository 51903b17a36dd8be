package org.steelyard.model.unit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class GuardedTextTest {

    @ParameterizedTest
    @CsvSource(quoteCharacter = '"', textBlock = """
            =1+1, '=1+1
            +1+cmd, '+1+cmd
            -2+3, '-2+3
            @SUM(A1), '@SUM(A1)
            '=1, ''=1
            ''=1, '''=1
            '-5, ''-5
            x;=1+1;y, x;'=1+1;y
            x|@SUM(A1), x|'@SUM(A1)
            1;-0.5, 1;'-0.5
            x;'=1;|=2, x;''=1;|'=2
            """)
    void textThatStartsLikeAFormulaIsGuarded(String text, String guarded) {
        assertThat(GuardedText.guard(text)).isEqualTo(guarded);
        assertThat(GuardedText.free(guarded)).isEqualTo(text);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "-5",
                "+3",
                "-0.25",
                "+12,5",
                "plain",
                "'twas",
                "'",
                "''",
                "a=b",
                " =1",
                "007",
                "a;b",
                "x; y = 2",
                "it's;so",
                "2026-04-01;a-b"
            })
    void otherTextStaysAsItIs(String text) {
        assertThat(GuardedText.guard(text)).isEqualTo(text);
        assertThat(GuardedText.free(text)).isEqualTo(text);
    }

    @ParameterizedTest
    @ValueSource(strings = {"\t=1", "\r=1", "\n=1", "=", "-", "-1-1", "+1 ", "-1e5", "--1"})
    void whatASpreadsheetMightRunNeverStandsFirst(String text) {
        assertThat(GuardedText.guard(text)).startsWith("'");
    }

    /** What a program makes of a cell that is set to another separator, or heeds no quotes. */
    @ParameterizedTest
    @ValueSource(strings = {";", "\t", "|", ",", "\n", "\r\n", ";\"", ";'", "a;\"'"})
    void aSignAfterASeparatorIsGuardedToo(String before) {
        for (String sign : new String[] {"=", "+", "-", "@", "\uFF1D"}) {
            String text = "x" + before + sign + "1+1";
            assertThat(GuardedText.guard(text)).isEqualTo("x" + before + "'" + sign + "1+1");
            assertThat(GuardedText.free(GuardedText.guard(text))).isEqualTo(text);
        }
    }

    @Test
    void anyTextComesBackUnharmed() {
        Random random = new Random(20250314);
        String signs = "'=+-@\t\r\n1.,a;|\" ";
        for (int i = 0; i < 20_000; i++) {
            StringBuilder text = new StringBuilder();
            for (int length = random.nextInt(8); length > 0; length--) {
                text.append(signs.charAt(random.nextInt(signs.length())));
            }
            String before = text.toString();
            assertThat(GuardedText.free(GuardedText.guard(before))).isEqualTo(before);
        }
    }
}
