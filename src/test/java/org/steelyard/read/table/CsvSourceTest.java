package org.steelyard.read.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.steelyard.read.row.Fixtures.MAP;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.steelyard.model.input.ColumnMap;
import org.steelyard.model.input.Field;
import org.steelyard.model.input.RejectedRow;
import org.steelyard.read.row.Fixtures;
import org.steelyard.read.season.ReadAll;

class CsvSourceTest {

    private static final String HEADINGS = "Flight,Date,Tail,From,Pax A,Fuel,Taxi,Trip";

    @TempDir
    private Path folder;

    private static String row(String flight) {
        return flight + ",2024-05-01,SX-BAA,Ærø,10,3000,100,1500";
    }

    private static String season(String end, String... flights) {
        StringBuilder text = new StringBuilder(HEADINGS).append(end);
        for (String flight : flights) {
            text.append(row(flight)).append(end);
        }
        return text.toString();
    }

    private ReadAll text(String text, ColumnMap... maps) throws IOException {
        return ReadAll.text(folder, "s.csv", text, maps.length == 0 ? new ColumnMap[] {MAP} : maps);
    }

    private Path bytes(String text, Charset charset, int... mark) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        for (int b : mark) {
            out.write(b);
        }
        out.write(text.getBytes(charset));
        return Files.write(folder.resolve("s.csv"), out.toByteArray());
    }

    private static ReadOptions charset(String name) {
        return new ReadOptions(List.of(MAP), Optional.empty(), Optional.of(Charset.forName(name)), Optional.empty());
    }

    private static void assertReadsDanish(ReadAll read) {
        assertThat(read.problems()).isEmpty();
        assertThat(read.flights()).containsExactly("T1", "T2");
        assertThat(read.accepted()).allMatch(loading -> loading.flight().from().equals("Ærø"));
    }

    @Test
    void utf8ReadsWithAndWithoutMark() throws IOException {
        String season = season("\n", "T1", "T2");
        assertReadsDanish(ReadAll.of(bytes(season, StandardCharsets.UTF_8), MAP));
        assertReadsDanish(ReadAll.of(bytes(season, StandardCharsets.UTF_8, 0xEF, 0xBB, 0xBF), MAP));
    }

    @Test
    void utf16ReadsByItsMark() throws IOException {
        String season = season("\r\n", "T1", "T2");
        assertReadsDanish(ReadAll.of(bytes(season, StandardCharsets.UTF_16LE, 0xFF, 0xFE), MAP));
        assertReadsDanish(ReadAll.of(bytes(season, StandardCharsets.UTF_16BE, 0xFE, 0xFF), MAP));
    }

    @Test
    void theMarkGoesBeforeWhatIsDeclared() throws IOException {
        Path file = bytes(season("\n", "T1", "T2"), StandardCharsets.UTF_8, 0xEF, 0xBB, 0xBF);
        assertReadsDanish(ReadAll.of(file, charset("windows-1252")));
    }

    @Test
    void anotherCharsetReadsByOptionAndByMap() throws IOException {
        Path file = bytes(season("\n", "T1", "T2"), Charset.forName("windows-1252"));
        assertReadsDanish(ReadAll.of(file, charset("windows-1252")));
        assertReadsDanish(ReadAll.of(file, Fixtures.withText(MAP, "windows-1252", Optional.empty())));
    }

    @Test
    void utf16WithoutMarkReadsWhereDeclaredAndElseSaysSo() throws IOException {
        Path file = bytes(season("\n", "T1", "T2"), StandardCharsets.UTF_16LE);
        assertReadsDanish(ReadAll.of(file, charset("UTF-16LE")));
        assertThat(ReadAll.of(file, MAP).problems())
                .containsExactly("s.csv: the text looks like UTF-16LE without a byte order mark"
                        + " (expected a byte order mark, or the charset UTF-16LE declared)");
    }

    @Test
    void undecodableBytesNameTheirLineAndTheRowsBeforeAreRead() throws IOException {
        String start = season("\n", "T1", "T2").replace("Ærø", "X");
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.write((start + "\"T\n3\",").getBytes(StandardCharsets.UTF_8));
        out.write(0xC6);
        out.write((",\n" + row("T4")).getBytes(StandardCharsets.UTF_8));
        ReadAll read = ReadAll.of(Files.write(folder.resolve("s.csv"), out.toByteArray()), MAP);
        assertThat(read.flights()).containsExactly("T1", "T2");
        assertThat(read.problems())
                .containsExactly(
                        "s.csv:5: bytes that are no text; the rows from here on were not read (value '0xC6';"
                                + " expected UTF-8, or another encoding told by --charset or the heading map, as windows-1252)");
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 70_000})
    void undecodableBytesAtTheStartOfALineNameThatLine(int rows) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.write(HEADINGS.getBytes(StandardCharsets.UTF_8));
        for (int i = 0; i < rows; i++) {
            out.write(("\r\n" + row("T").replace("Ærø", "X")).getBytes(StandardCharsets.UTF_8));
        }
        out.write(new byte[] {'\r', '\n', (byte) 0xFF});
        ReadAll read = ReadAll.of(Files.write(folder.resolve("s.csv"), out.toByteArray()), MAP);
        assertThat(read.accepted()).hasSize(rows);
        assertThat(read.problems()).hasSize(1).allMatch(problem -> problem.startsWith("s.csv:" + (rows + 2) + ": "));
    }

    @Test
    void anUnknownCharsetOfAMapIsAProblem() throws IOException {
        assertThat(text(season("\n", "T1"), Fixtures.withText(MAP, "latin-99", Optional.empty()))
                        .problems())
                .containsExactly("s.csv: the heading map 'club' declares an unknown charset (value 'latin-99';"
                        + " expected a charset such as UTF-8 or windows-1252)");
    }

    @ParameterizedTest
    @ValueSource(strings = {",", ";", "\t", "|"})
    void theDelimiterIsFoundInTheHeadings(String delimiter) throws IOException {
        assertThat(text(season("\n", "T1", "T2").replace(",", delimiter)).flights())
                .containsExactly("T1", "T2");
    }

    @Test
    void theDelimiterIsTheOneThatShowsTheHeadings() throws IOException {
        ColumnMap map = Fixtures.with(MAP, Fixtures.text("From, as filed, by us, on paper, in ink, twice", Field.FROM));
        String season = season("\n", "T1").replace(",", ";");
        assertThat(text(season.replace("From", "From, as filed, by us, on paper, in ink, twice"), map)
                        .flights())
                .containsExactly("T1");
    }

    @Test
    void aSeparatorLineIsHonouredAndNoRow() throws IOException {
        ColumnMap map = Fixtures.withText(MAP, "", Optional.of(','));
        ReadAll read = text("sep=;\r\n" + season("\r\n", "T1", "").replace(",", ";"), map);
        assertThat(read.flights()).containsExactly("T1");
        assertThat(read.seen()).isEqualTo(2);
        assertThat(read.notes()).isEmpty();
        assertThat(read.reasons()).hasSize(1).allMatch(reason -> reason.startsWith("s.csv:4:Flight"));
        assertThat(text("\"sep=|\"\n" + season("\n", "T1").replace(",", "|")).flights())
                .containsExactly("T1");
    }

    @Test
    void theDelimiterOfTheOptionGoesFirst() throws IOException {
        Path file =
                Files.writeString(folder.resolve("s.csv"), season("\n", "T1").replace(",", "#"));
        ColumnMap map = Fixtures.withText(MAP, "", Optional.of(';'));
        ReadOptions options = new ReadOptions(List.of(map), Optional.empty(), Optional.empty(), Optional.of('#'));
        assertThat(ReadAll.of(file, options).flights()).containsExactly("T1");
    }

    @Test
    void rowsCountAsAnEditorShowsThem() throws IOException {
        ReadAll read = text(HEADINGS + "\r\n" + row("\"T\r\n1\"") + "\r\n\r\n" + row("T2") + "\r\n" + row("T3,x"));
        assertThat(read.accepted())
                .extracting(loading -> loading.origin().row())
                .containsExactly(2L, 5L);
        assertThat(read.rejected()).extracting(row -> row.origin().row()).containsExactly(6L);
        assertThat(read.blank()).isEqualTo(1);
    }

    @ParameterizedTest
    @ValueSource(strings = {"\n", "\r\n", "\r"})
    void everyLineEndIsRead(String end) throws IOException {
        assertThat(text(season(end, "T1", "T2")).accepted())
                .extracting(loading -> loading.origin().row())
                .containsExactly(2L, 3L);
    }

    @Test
    void quotedCellsMayHoldDelimitersLinesQuotesAndStandBehindBlanks() throws IOException {
        ReadAll read = text(HEADINGS + "\n" + row("T1").replace("Ærø", " \"A, \"\"B\"\"\nC\" "));
        assertThat(read.accepted().get(0).flight().from()).isEqualTo("A, \"B\"\nC");
    }

    @ParameterizedTest
    @CsvSource({"'T2,2024-05-01', 2", "'T2,2024-05-01,SX-BAA,X,10,3000,100', 7"})
    void aShortRowIsRejected(String row, int cells) throws IOException {
        ReadAll read = text(season("\n", "T1") + row + "\n");
        assertThat(read.reasons())
                .containsExactly("s.csv:3: the row has " + cells + " cells, fewer than headings (expected 8 cells)");
        assertThat(read.rejected().get(0).cells()).hasSize(cells);
    }

    @Test
    void aLongRowIsRejectedUnlessWhatIsTooMuchIsBlank() throws IOException {
        ReadAll read = text(season("\n", "T1") + row("T2") + ",, \n" + row("T3") + ",,x\n");
        assertThat(read.flights()).containsExactly("T1", "T2");
        assertThat(read.reasons())
                .containsExactly("s.csv:4: the row has 10 cells, more than headings (expected 8 cells)");
    }

    @Test
    void rowsWithoutContentAreBlankWhateverTheirLength() throws IOException {
        ReadAll read = text(season("\n", "T1") + "\n,,,\n , ,\u00a0\n,,,,,,,,,,,,\n");
        assertThat(read.blank()).isEqualTo(4);
        assertThat(read.rejected()).isEmpty();
    }

    @Test
    void blankHeadingsAtTheEndAreNone() throws IOException {
        ReadAll read = text(HEADINGS + ",,\n" + row("T1") + ",,\n" + row("T2") + "\n");
        assertThat(read.flights()).containsExactly("T1", "T2");
        assertThat(read.headings()).hasSize(8);
    }

    @Test
    void aValueUnderABlankHeadingRejectsItsRow() throws IOException {
        String text = HEADINGS.replace("From", " ") + "\n" + row("T1") + "\n"
                + row("T2").replace("Ærø", "") + "\n";
        ReadAll read = text(text);
        assertThat(read.flights()).containsExactly("T2");
        assertThat(read.reasons())
                .containsExactly("s.csv:2: column 4 has a value but no heading"
                        + " (value 'Ærø'; expected a heading, or a blank cell)");
    }

    @Test
    void aHeadingThereTwiceIsAProblemOfTheFile() throws IOException {
        ReadAll read = text(season("\n", "T1").replace("From", " TAIL").replace("Taxi", "fuel"));
        assertThat(read.problems())
                .containsExactly(
                        "s.csv:1: the heading is there twice (value 'TAIL'; expected each heading once, case and blanks"
                                + " aside)",
                        "s.csv:1: the heading is there twice (value 'fuel'; expected each heading once, case and blanks"
                                + " aside)");
        assertThat(read.seen()).isZero();
    }

    @Test
    void twoColumnsForWhatOnlyOneCanMeanAreAProblemOfTheFile() throws IOException {
        ColumnMap map = Fixtures.with(MAP, Fixtures.text("Departure", Field.FROM));
        ReadAll read = text(HEADINGS + ",Departure\n" + row("T1") + ",Y\n", map);
        assertThat(read.problems())
                .containsExactly("s.csv:1: 'From' and 'Departure' both mean departure (value 'Departure'; expected one"
                        + " column for it; the heading map may declare the other as extra or ignored)");
    }

    @Test
    void missingHeadingsAreAllListed() throws IOException {
        assertThat(text(season("\n", "T1").replace("Date", "Day").replace("Tail", "Reg"))
                        .problems())
                .containsExactly(
                        "s.csv:1: required headings are missing: 'Date', 'Tail' (value 'Flight, Day, Reg, From,"
                                + " Pax A, Fuel, Taxi, Trip'; expected every required heading of the heading map 'club'; 'steelyard propose-map' drafts one)");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "\n", " \n;;\n", "\uFEFF"})
    void anEmptyFileIsAProblem(String text) throws IOException {
        assertThat(text(text).problems())
                .containsExactly("s.csv: the file is empty (expected a heading row and rows of loadings below it)");
    }

    @Test
    void aFileWithoutHeadingsIsAProblem() throws IOException {
        assertThat(text(row("T1") + "\n" + row("T2") + "\n").problems())
                .containsExactly(
                        "s.csv:1: there is no heading row that a heading map knows (value 'T1, 2024-05-01, SX-BAA,"
                                + " Ærø, 10, 3000, 100, 1500'; expected headings of the heading map 'club'; 'steelyard propose-map' drafts one)");
    }

    @Test
    void aFileWithHeadingsAloneIsNoted() throws IOException {
        ReadAll read = text(HEADINGS);
        assertThat(read.problems()).isEmpty();
        assertThat(read.notes()).containsExactly("there are no rows below the headings");
    }

    @Test
    void rowsAboveTheHeadingsAreNoted() throws IOException {
        ReadAll read = text("Season 2024\n\n" + season("\n", "T1"));
        assertThat(read.flights()).containsExactly("T1");
        assertThat(read.accepted().get(0).origin().row()).isEqualTo(4);
        assertThat(read.seen()).isEqualTo(1);
        assertThat(read.notes()).containsExactly("1 filled row above the headings in row 3 was not read");
    }

    @Test
    void anUnclosedQuotationMarkNamesTheLineWhereItOpens() throws IOException {
        ReadAll read = text(season("\n", "T1") + "\"a\nb\",\"c,2024-05-01\n" + row("T2") + "\n");
        assertThat(read.flights()).containsExactly("T1");
        assertThat(read.problems())
                .containsExactly(
                        "s.csv:4: a quotation mark opens here and is never closed; the rows from here on were not"
                                + " read (expected quotation marks around a whole cell, doubled inside it)");
    }

    @Test
    void anUnclosedQuotationMarkDoesNotSwallowAHugeFile() throws IOException {
        String rest = (row("T") + "\n").repeat(60_000);
        ReadAll read = text(season("\n", "T1") + "\"" + rest);
        assertThat(read.flights()).containsExactly("T1");
        assertThat(read.problems())
                .containsExactly(
                        "s.csv:3: the row has more than 1,000,000 characters; a quotation mark in it is probably never closed; the rows"
                                + " from here on were not read (expected quotation marks around a whole cell, doubled inside it)");
    }

    @Test
    void textBehindAClosingQuotationMarkIsAProblem() throws IOException {
        ReadAll read = text(season("\n", "T1") + "\"T\"2,2024-05-01\n");
        assertThat(read.flights()).containsExactly("T1");
        assertThat(read.problems())
                .containsExactly(
                        "s.csv:3: a quotation mark closes before the cell ends; the rows from here on were not read"
                                + " (expected quotation marks around a whole cell, doubled inside it)");
    }

    @Test
    void whatIsNoTextIsAProblem() throws IOException {
        Path binary = Files.write(folder.resolve("b.csv"), new byte[] {1, 0, 2, 3, 4, 5, 0, 7, 8, 9});
        assertThat(ReadAll.of(binary, MAP).problems())
                .containsExactly("b.csv: the file holds bytes that are no text (expected a text file)");
        Path zip = Files.write(folder.resolve("z.csv"), new byte[] {'P', 'K', 3, 4, 0, 0});
        assertThat(ReadAll.of(zip, MAP).problems())
                .containsExactly("z.csv: a workbook or archive under the name of a text file (expected a text file)");
        assertThat(ReadAll.of(folder.resolve("none.csv"), MAP).problems())
                .containsExactly("none.csv: the file cannot be opened (expected a file that is there and may be read)");
    }

    @Test
    void aRejectedRowFedBackIsReadAgain() throws IOException {
        ReadAll first = text(season("\n", "T1", "T2").replace("T2,2024-05-01", "T2,32.13"));
        RejectedRow row = first.rejected().get(0);
        String again = String.join(",", row.headings()) + "\n"
                + String.join(",", row.cells()).replace("32.13", "2024-05-02") + "\n";
        assertThat(text(again).flights()).containsExactly("T2");
    }
}
