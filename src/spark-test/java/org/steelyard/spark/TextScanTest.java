package org.steelyard.spark;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Against Apache Commons CSV, which reads the whole text from its beginning, in the settings of the season reader. */
class TextScanTest {

    private static final String[] PLAIN = {"", "A", "12.5", " x ", "5\" pipe", "ü", "a\"b\"", "\t"};
    private static final String[] QUOTED = {"\"\"", "\"a,b\"", "\"two\nlines\"", " \"said \"\"so\"\"\" ", "\"\r\n\"", "\"\r\""};
    private static final String[] ENDS = {"\n", "\r\n", "\r"};

    private static String text(long seed) {
        Random random = new Random(seed);
        StringBuilder text = new StringBuilder();
        for (int row = 0; row < 30; row++) {
            for (int cell = 0; cell < 4; cell++) {
                String[] kind = random.nextInt(3) == 0 ? QUOTED : PLAIN;
                text.append(cell == 0 ? "" : ",").append(kind[random.nextInt(kind.length)]);
            }
            text.append(ENDS[random.nextInt(ENDS.length)]);
        }
        return random.nextBoolean() ? text.toString() : text + "last,row";
    }

    /** First line of each record, as the season reader numbers rows. */
    private static List<Long> firstLines(String text) throws IOException {
        CSVFormat format = CSVFormat.RFC4180
                .builder()
                .setIgnoreSurroundingSpaces(true)
                .setIgnoreEmptyLines(false)
                .get();
        List<Long> lines = new ArrayList<>();
        try (CSVParser parser = CSVParser.builder()
                .setReader(new StringReader(text))
                .setFormat(format)
                .get()) {
            long line = 1;
            for (CSVRecord row : parser) {
                assertThat(row.size()).isPositive();
                lines.add(line);
                line = parser.getCurrentLineNumber() + 1;
            }
        }
        return lines;
    }

    private static List<Piece> pieces(byte[] bytes, int size) throws IOException {
        SeasonFile file = new SeasonFile("", "t.csv", bytes.length);
        List<TextScan> scans = new ArrayList<>();
        for (int from = 0; from < bytes.length; ) {
            int to = Math.min(bytes.length, from + size);
            if (to < bytes.length && bytes[to - 1] == '\r' && bytes[to] == '\n') {
                to++;
            }
            scans.add(TextScan.of(new ByteArrayInputStream(bytes, from, to - from), from, to, ','));
            from = to;
        }
        return Cuts.pieces(file, new Inspected(0, "", false, false, ',', 0, 0), scans);
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 7, 20, 64, 100_000})
    void piecesHoldWholeRecordsWhereverATextIsCut(int size) throws IOException {
        for (long seed = 0; seed < 60; seed++) {
            String text = text(seed);
            byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
            List<Long> expected = firstLines(text);
            List<Long> found = new ArrayList<>();
            long end = 0;
            for (Piece piece : pieces(bytes, size)) {
                assertThat(piece.from()).isEqualTo(end);
                end = piece.to();
                String own = new String(
                        bytes, (int) piece.from(), (int) (piece.to() - piece.from()), StandardCharsets.UTF_8);
                List<Long> lines = firstLines(own);
                assertThat((long) lines.size()).as("seed %d, size %d", seed, size).isEqualTo(piece.records());
                lines.forEach(line -> found.add(line + piece.before()));
            }
            assertThat(end).isEqualTo(bytes.length);
            assertThat(found).as("seed %d, size %d", seed, size).isEqualTo(expected);
        }
    }

    @Test
    void aRecordLongerThanSeveralStretchesIsOnePiece() throws IOException {
        String text = "a,b\n1,\"" + "x\n".repeat(50) + "\"\n2,y\n";

        List<Piece> pieces = pieces(text.getBytes(StandardCharsets.UTF_8), 10);

        assertThat(pieces.stream().map(Piece::records)).containsExactly(2L, 1L);
        assertThat(pieces.get(1).before()).isEqualTo(52);
    }
}
