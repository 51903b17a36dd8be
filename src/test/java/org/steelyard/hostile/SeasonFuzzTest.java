package org.steelyard.hostile;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Seasons of text files and workbooks, drawn: whatever they hold, every row comes to something, and no number to none.
 */
class SeasonFuzzTest {

    private static final SeasonCheck CHECK = SeasonCheck.shipped();
    private static final List<String> DELIMITERS = List.of(",", ";", "\t", "|");
    private static final List<String> LINE_ENDS = List.of("\n", "\r\n", "\r");
    private static final int SEPARATOR = 0x1D;

    private static final List<List<String>> HOUSE = rows(
            "flight|date|tail|from|pilot|flaps|pantry|pax A|pax B|children A|pax total|infants|hold 1 kg|hold 2 kg|bags 1"
                    + "|fuel left kg|fuel right kg|fuel total kg|taxi kg|trip kg|zfw kg|zfw cg % mac|tow kg|tow cg % mac"
                    + "|trim set",
            "J-1|2026-05-01|QI-JAA|PORTA|owl|5|short|20|22|2|||800|1200||3500|3500||200|4800|||||0.2",
            "J-2|2026-05-02|QI-JAB|PORTA|owl|5|||||104|3|600|600|12|||7000|200|4800|||||",
            "J-3|2026-05-03|QI-JAC|PORTA|kite|15||||||||||||6000|150|4000|52000|24.1|||",
            "J-4|2026-05-04|QI-JAD|PORTA|kite|5|||||||||||||||||61000|25.5|-0.4",
            "T-5|2026-05-04|QI-PAA|PORTA|tern||||||50||||8|||2100|80|900|||||");
    private static final List<List<String>> CLUB = rows(
            "Flight|Date|Aircraft|Pilot|Pilot lb|Front seat|Rear seats|Baggage 1 lb|Fuel left US gal|Fuel right US gal"
                    + "|Taxi US gal|Trip US gal|TOW lb|CG in",
            "S-1|01.04.2026|QI-SAB|Ada|168|1|0|14|11,4|11,7|1,3|16,0||",
            "S-2|02.04.2026|QI-SAB|Ada|197|1|1|27|19,0|18,8|1,0|14,9||",
            "S-3|03.04.2026|QI-SAC|Bo||||||||| 2450,5 |88,1");
    private static final List<List<String>> LEDGER = rows(
            "Flt|Dep date|Reg|Off|T/O flap|Seats A|Seats B",
            "J-8|01/08/2026|QI-JAA|PORTA|5|20|22",
            "J-9|02/08/2026|QI-JAB|PORTA|5|30|11");
    private static final List<List<String>> ITEMS = rows(
            "flight|date|tail|zone|row|hold|tank|station|what|pieces|kg",
            "J-1|2026-05-01|QI-JAA|A||||| male|3|",
            "J-1|2026-05-01|QI-JAA||||left|||| 500",
            "J-1|2026-05-01|QI-JAA|||1|||bags|4|60",
            "J-2||QI-JAB|||2|||cargo||410.5",
            "J-9|2026-05-01|QI-JAA|||1|||bags|4|60");
    private static final List<List<String>> REJECTED = rows(
            "steelyard_file|steelyard_sheet|steelyard_row|steelyard_map|steelyard_round|steelyard_check"
                    + "|steelyard_reasons|flight|date|tail|flaps|pax total|fuel total kg|taxi kg|trip kg"
                    + "|steelyard_extra_cells",
            "season-1.csv||3|house|1|abcdefghijklmnop|trip|J-2|2026-05-02|QI-JAB|5|104|7000|200|4800|",
            "season-1.csv||9|house|2||trip|J-7|2026-05-02|QI-JAB|5|104|7000|200|4800|",
            "gone.csv||2|club|1||x|J-2|2026-05-02|QI-JAB|5|104|7000|200|4800|9\\;9");

    @TempDir
    private static Path folder;

    private static List<List<String>> rows(String... rows) {
        return Arrays.stream(rows).map(row -> List.of(row.split("\\|", -1))).toList();
    }

    @Test
    void textsOfFlightsAreReadOrRefused() {
        Fuzz.run("csv", 300, new Texts());
    }

    @Test
    void textsOfFlightsItemsAndRejectedRowsAreReadTogetherOrRefused() {
        Fuzz.run("seasons", 60, new Seasons());
    }

    @Test
    void workbooksAreReadOrRefused() {
        Fuzz.run("xlsx", 60, new Workbooks());
    }

    /** One text file, by one of the maps. */
    private static class Texts implements Fuzz.Target {

        private final List<String> names = List.of("season-1.csv", "club-1.csv", "ledger-1.csv", "other.txt");

        @Override
        public byte[] input(SplittableRandom random) {
            Draw draw = new Draw(random);
            int kind = draw.below(4);
            List<List<String>> table = draw.of(List.of(HOUSE, HOUSE, CLUB, LEDGER, ITEMS, REJECTED));
            byte[] text = text(draw.table(table), draw, kind == 1);
            byte[] input = new byte[text.length + 1];
            input[0] = (byte) kind;
            System.arraycopy(text, 0, input, 1, text.length);
            return input;
        }

        @Override
        public void run(byte[] input) throws Exception {
            Path file = folder.resolve(names.get(input[0]));
            byte[] text = Arrays.copyOfRange(input, 1, input.length);
            Files.write(file, text);
            SeasonCheck.Outcome outcome = CHECK.read(List.of(file));
            requireEveryLine(text, outcome);
            requireSameAgain(input.length, List.of(file), outcome);
        }
    }

    /** In a plain text without quotation marks, which no fault ends, rows follow each other to the last line. */
    private static void requireEveryLine(byte[] bytes, SeasonCheck.Outcome outcome) {
        String text = new String(bytes, StandardCharsets.ISO_8859_1);
        boolean plain = text.indexOf('"') < 0
                && text.indexOf('\0') < 0
                && outcome.problems().isEmpty();
        if (!plain || outcome.seen() == 0) {
            return;
        }
        long last = outcome.numbers().get(outcome.seen() - 1);
        SeasonCheck.require(last - outcome.numbers().get(0) + 1 == outcome.seen(), "a line is lost between rows");
        SeasonCheck.require(last == text.lines().count(), "lines at the end are lost");
    }

    private static void requireSameAgain(int chance, List<Path> files, SeasonCheck.Outcome outcome)
            throws ReflectiveOperationException {
        if (chance % 16 == 0) {
            SeasonCheck.require(CHECK.read(files).equals(outcome), "the same bytes read otherwise");
        }
    }

    /** Flights, load items and rejected rows in three files. */
    private static final class Seasons implements Fuzz.Target {

        @Override
        public byte[] input(SplittableRandom random) {
            Draw draw = new Draw(random);
            ByteArrayOutputStream all = new ByteArrayOutputStream();
            all.writeBytes(text(draw.onceIn(3) ? draw.table(HOUSE) : HOUSE, draw, false));
            all.write(SEPARATOR);
            all.writeBytes(text(draw.onceIn(3) ? ITEMS : draw.table(ITEMS), draw, false));
            all.write(SEPARATOR);
            all.writeBytes(text(draw.onceIn(3) ? REJECTED : draw.table(REJECTED), draw, false));
            return all.toByteArray();
        }

        @Override
        public void run(byte[] input) throws Exception {
            List<Path> files = new ArrayList<>();
            int begin = 0;
            List<String> names = List.of("season-1.csv", "items-1.csv", "rejected.csv");
            for (int i = 0; i <= input.length && files.size() < names.size(); i++) {
                if (i == input.length || input[i] == SEPARATOR) {
                    Path file = folder.resolve(names.get(files.size()));
                    files.add(Files.write(file, Arrays.copyOfRange(input, begin, i)));
                    begin = i + 1;
                }
            }
            requireSameAgain(input.length, files, CHECK.read(files));
        }
    }

    /** One workbook, damaged in its cells, its XML, its parts or its bytes. */
    private static final class Workbooks implements Fuzz.Target {

        private final List<String> names = List.of("season-1.xlsx", "ledger-1.xlsx", "items-1.xlsx", "other.xlsx");

        @Override
        public byte[] input(SplittableRandom random) {
            Draw draw = new Draw(random);
            List<List<String>> table = draw.of(List.of(HOUSE, HOUSE, LEDGER, ITEMS, REJECTED));
            byte[] book = new DrawnBook(draw).of(draw.table(table));
            byte[] input = Arrays.copyOf(book, book.length + 1);
            input[book.length] = (byte) draw.below(4);
            return input;
        }

        @Override
        public void run(byte[] input) throws Exception {
            Path file = folder.resolve(names.get(input[input.length - 1]));
            Files.write(file, Arrays.copyOf(input, input.length - 1));
            requireSameAgain(input.length, List.of(file), CHECK.read(List.of(file)));
        }
    }

    /** A text of a table, in one of many ways. */
    private static byte[] text(List<List<String>> table, Draw draw, boolean club) {
        String delimiter = draw.onceIn(6) ? draw.of(DELIMITERS) : club ? ";" : ",";
        String end = draw.onceIn(4) ? draw.of(LINE_ENDS) : "\n";
        boolean careful = !draw.onceIn(8);
        StringBuilder text = new StringBuilder();
        for (List<String> row : table) {
            for (int i = 0; i < row.size(); i++) {
                text.append(i > 0 ? delimiter : "").append(careful ? quoted(row.get(i), delimiter) : row.get(i));
            }
            text.append(end);
        }
        if (draw.onceIn(10)) {
            text.setLength(draw.below(text.length() + 1));
        }
        byte[] bytes = encoded(text.toString(), draw, club);
        return draw.onceIn(6) ? draw.bytes(bytes) : bytes;
    }

    private static String quoted(String cell, String delimiter) {
        boolean needed = cell.contains(delimiter) || cell.contains("\"") || cell.contains("\n") || cell.contains("\r");
        return needed ? '"' + cell.replace("\"", "\"\"") + '"' : cell;
    }

    private static byte[] encoded(String text, Draw draw, boolean club) {
        Charset charset = switch (draw.below(12)) {
            case 0 -> StandardCharsets.UTF_16;
            case 1 -> StandardCharsets.UTF_16LE;
            case 2 -> StandardCharsets.ISO_8859_1;
            default -> club ? Charset.forName("windows-1252") : StandardCharsets.UTF_8;
        };
        return (draw.onceIn(12) ? "\uFEFF" + text : text).getBytes(charset);
    }

    @Test
    void aCorpusThatIsNotDamagedIsReadInFull() throws IOException, ReflectiveOperationException {
        Path file = folder.resolve("season-1.csv");
        Files.write(file, text(HOUSE, new Draw(new SplittableRandom(7)), false));
        SeasonCheck.Outcome outcome = CHECK.read(List.of(file));
        SeasonCheck.require(outcome.accepted() == HOUSE.size() - 1, outcome.accepted() + " flights");
    }
}
