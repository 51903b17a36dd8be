package org.steelyard.report.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.Random;
import org.junit.jupiter.api.Test;

class ByteTextTest {

    private static String written(ByteText text) {
        return new String(text.take(), StandardCharsets.UTF_8);
    }

    @Test
    void piecesFollowEachOtherInUtf8() {
        ByteText text = new ByteText();
        text.add("trim 5\u00BD")
                .ascii(' ')
                .add(ByteText.of("\u2192"))
                .add(" \uD83D\uDE00 ")
                .whole(-12);
        assertThat(written(text)).isEqualTo("trim 5\u00BD \u2192 \uD83D\uDE00 -12");
        assertThat(text.length()).isZero();
    }

    @Test
    void halfACharacterBecomesTheSignForIt() {
        assertThat(written(new ByteText().add("a\uD83Db"))).isEqualTo("a\uFFFDb");
    }

    @Test
    void longTextsMakeTheirOwnRoom() {
        String text = "abcdefgh".repeat(3000) + "\u00BD";
        assertThat(written(new ByteText().add("x").add(text))).isEqualTo("x" + text);
    }

    /** Numbers of few digits take another way; the writer of shortest numbers is the second computation. */
    @Test
    void everyNumberIsWrittenAsThePlainShortestDecimal() {
        Random random = new Random(7);
        ByteText text = new ByteText();
        for (int i = 0; i < 200_000; i++) {
            double whole = random.nextInt(200_001) - 100_000;
            double number = switch (i % 5) {
                case 0 -> whole / Math.pow(10, random.nextInt(6));
                case 1 -> Math.rint(random.nextDouble() * 1e12) / 1e12;
                case 2 -> (random.nextLong() >> random.nextInt(50)) / 1000.0;
                case 3 -> whole * random.nextDouble();
                default -> random.nextInt(200) * 1e-12 + random.nextInt(99);
            };
            assertThat(written(text.number(number))).isEqualTo(PlainNumber.of(number));
        }
    }

    @Test
    void aDecimalLosesTheZerosAtItsEnd() {
        Random random = new Random(8);
        ByteText text = new ByteText();
        for (int i = 0; i < 20_000; i++) {
            long scaled = random.nextLong() >> random.nextInt(63);
            int decimals = random.nextInt(13);
            BigDecimal expected = BigDecimal.valueOf(scaled, decimals).stripTrailingZeros();
            assertThat(written(text.decimal(scaled, decimals))).isEqualTo(expected.toPlainString());
        }
    }
}
