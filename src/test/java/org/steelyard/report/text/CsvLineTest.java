package org.steelyard.report.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.junit.jupiter.api.Test;
import org.steelyard.model.unit.GuardedText;

class CsvLineTest {

    @Test
    void cellsAreJoinedByCommasAndEndedByALineFeed() {
        CsvLine line = new CsvLine();
        assertThat(line.text("a")
                        .whole(7)
                        .number(0.5)
                        .number(OptionalDouble.empty())
                        .blank()
                        .text("b")
                        .end())
                .asString(StandardCharsets.UTF_8)
                .isEqualTo("a,7,0.5,,,b\n");
        assertThat(line.text("next").end()).asString(StandardCharsets.UTF_8).isEqualTo("next\n");
    }

    @Test
    void textThatWouldBreakTheLineIsQuoted() {
        assertThat(new CsvLine()
                        .text("a,b")
                        .text("say \"so\"")
                        .text("two\nlines")
                        .end())
                .asString(StandardCharsets.UTF_8)
                .isEqualTo("\"a,b\",\"say \"\"so\"\"\",\"two\nlines\"\n");
    }

    @Test
    void textThatWouldBreakTheLineBehindAnotherSeparatorIsQuotedAndItsFormulasGuarded() {
        assertThat(new CsvLine().text("x;=1+1;y").text("a\tb").text("a|b").end())
                .asString(StandardCharsets.UTF_8)
                .isEqualTo("\"x;'=1+1;y\",\"a\tb\",\"a|b\"\n");
    }

    @Test
    void textFromDataIsGuardedAndOurOwnIsNot() {
        assertThat(new CsvLine().text("=1+1").raw("=1+1").end())
                .asString(StandardCharsets.UTF_8)
                .isEqualTo("'=1+1,=1+1\n");
    }

    /** Read back with Commons CSV's parser for RFC 4180. */
    @Test
    void anyTextComesBackFromTheCsvLibrary() throws IOException {
        Random random = new Random(5);
        String signs = "a,\"\n\r '=+-;\tø\u05D0\uD83D\uDE00\u0000";
        int[] points = signs.codePoints().toArray();
        for (int i = 0; i < 3000; i++) {
            List<String> cells = new ArrayList<>();
            CsvLine line = new CsvLine();
            for (int c = 0; c < 4; c++) {
                StringBuilder text = new StringBuilder("x".repeat(random.nextInt(2)));
                for (int length = random.nextInt(6); length > 0; length--) {
                    text.appendCodePoint(points[random.nextInt(points.length)]);
                }
                cells.add(text.toString());
                line.text(text.toString());
            }
            try (CSVParser parser =
                    CSVParser.parse(new String(line.text("end").end(), StandardCharsets.UTF_8), CSVFormat.RFC4180)) {
                List<String> read = parser.getRecords().get(0).toList();
                assertThat(read.subList(0, 4).stream().map(GuardedText::free).toList())
                        .as("cells %s", cells)
                        .isEqualTo(cells);
            }
        }
    }
}
