package org.steelyard.hostile;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.openxml4j.exceptions.OpenXML4JException;
import org.apache.poi.openxml4j.opc.OPCPackage;
import org.apache.poi.poifs.crypt.EncryptionInfo;
import org.apache.poi.poifs.crypt.EncryptionMode;
import org.apache.poi.poifs.crypt.Encryptor;
import org.apache.poi.poifs.filesystem.POIFSFileSystem;

/** The corpus of hostile season files: each with what the program must say of it. To add a case, add a line. */
public final class HostileFiles {

    private static final String HEADINGS = "flight,date,tail,tow kg,tow cg % mac,pilot\n";
    private static final String GOOD = "T1,2026-05-01,QI-JAA,61000,25.5,owl\n";
    private static final String NO_WORKBOOK = ": the file is an archive, but no workbook (expected a workbook saved as";
    private static final String DAMAGED = ": the workbook is damaged or cut short (expected a workbook that opens";
    private static final String DOCTYPE = "the workbook declares a document type (expected";

    /**
     * A hostile file.
     *
     * @param name its name in the folder of the season
     * @param maker puts it there
     * @param said what is said of it, behind its name, where * stands for letters
     * @param alone whether there is nothing else to it: given alone it ends with exit code 2
     */
    public record Case(String name, Maker maker, String said, boolean alone) {

        @Override
        public String toString() {
            return name;
        }
    }

    /** Makes a file. */
    public interface Maker {

        /**
         * Puts the file where it belongs.
         *
         * @param file where
         * @throws IOException if it cannot be written
         */
        void make(Path file) throws IOException;
    }

    private HostileFiles() {}

    /** The text of a file that is in order, with one flight of the given name. */
    public static String good(String flight) {
        return HEADINGS + GOOD.replace("T1", flight);
    }

    private static Case text(String name, String said, String text) {
        return text(name, said, false, text.getBytes(StandardCharsets.UTF_8));
    }

    private static Case text(String name, String said, boolean alone, byte[] text) {
        return new Case("season-" + name, file -> Files.write(file, text), said, alone);
    }

    private static Case refused(String name, String said, byte[] bytes) {
        return text(name, said, true, bytes);
    }

    private static Case book(String name, String said, boolean alone, Book book) {
        return text(name + ".xlsx", said, alone, book.bytes());
    }

    /** A file whose second row is rejected with a reason. */
    private static Case row(String name, String reason, String text) {
        return new Case("season-" + name, file -> Files.writeString(file, text), ",,2,house,1,*," + reason, false);
    }

    private static Case rowOfBook(String name, String reason, Book book) {
        return new Case(
                "season-" + name + ".xlsx",
                file -> Files.write(file, book.bytes()),
                ",Raw,2,house,1,*," + reason,
                false);
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    private static byte[] joined(byte[]... parts) {
        ByteArrayOutputStream all = new ByteArrayOutputStream();
        Arrays.stream(parts).forEach(all::writeBytes);
        return all.toByteArray();
    }

    /** All cases. */
    public static List<Case> all() {
        List<Case> cases = new ArrayList<>();
        texts(cases);
        cells(cases);
        otherKinds(cases);
        books(cases);
        declarations(cases);
        sizes(cases);
        return cases;
    }

    private static void texts(List<Case> cases) {
        cases.add(refused("empty.csv", ": the file is empty", new byte[0]));
        cases.add(refused("mark.csv", ": the file is empty", bytes("\uFEFF")));
        cases.add(refused("blank.csv", ": the file is empty", bytes("\n \n\t\n")));
        cases.add(text(
                "unclosed.csv",
                ":3: a quotation mark opens here and is never closed; the rows from here on were not read",
                good("T2") + "\"T3,2026-05-01,QI-JAA,61000,25.5,owl\n"));
        cases.add(text(
                "half-quoted.csv",
                ":3: a quotation mark closes before the cell ends; the rows from here on were not read",
                good("T4") + "\"T5\"x,2026-05-01,QI-JAA,61000,25.5,owl\n"));
        cases.add(text(
                "latin.csv",
                ":3: bytes that are no text; the rows from here on were not read (value '0xE9'; expected UTF-8, or",
                false,
                joined(bytes(good("T6")), bytes("T7,2026-05-01,QI-JAA,61000,25.5,Ren"), new byte[] {(byte) 0xE9, '\n'
                })));
        cases.add(refused(
                "wide.csv",
                ": the text looks like UTF-16LE without a byte order mark",
                good("T8").getBytes(StandardCharsets.UTF_16LE)));
        cases.add(text("joined.csv", ":3: the headings once more", good("T9") + "\uFEFF" + good("T10")));
        cases.add(row("nul.csv", "flight: the cell holds a control character", good("T\u00001")));
        cases.add(row(
                "escape.csv",
                "pilot: the cell holds a control character",
                good("T12").replace("owl", "o\u001B[2Jwl")));
        cases.add(text(
                "columns.csv",
                ":3: the row has more than 1,000,000 characters",
                good("T13") + ",".repeat(1_200_000) + "\n"));
        cases.add(text(
                "long-cell.csv",
                ":3: the row has more than 1,000,000 characters",
                good("T14") + "x".repeat(3_000_000) + "\n"));
        cases.add(refused("long-heading.csv", ":1: there is no heading row", bytes("h".repeat(200_000))));
        cases.add(row(
                "turned.csv",
                "tail: unknown tail (value ' AAJ-IQ '; expected a tail of the fleet",
                good("T15").replace("QI-JAA", "\u202EAAJ-IQ\u202C")));
    }

    private static void cells(List<Case> cases) {
        String notANumber = "tow kg: not a number (value '%s'; expected digits with a decimal point";
        String outOfRange =
                "tow kg: out of range (value '%s'; expected a mass of more than 0 and at most 1,000,000 kg)";
        int number = 20;
        for (String value : List.of("1e308", "NaN", "Infinity", "0x1F", "1e-320", "\u0661\u0662", "\u22121", "1_000")) {
            cases.add(row("number-" + number + ".csv", notANumber.replace("%s", value), withMass(number++, value)));
        }
        String digits = "9".repeat(400);
        cases.add(row(
                "number-" + number + ".csv",
                outOfRange.replace("%s", digits.substring(0, 120) + "…"),
                withMass(number++, digits)));
        cases.add(row("number-" + number + ".csv", outOfRange.replace("%s", "-0"), withMass(number++, "-0")));
        cases.add(row(
                "number-" + number + ".csv",
                outOfRange.replace("%s", "0." + "0".repeat(118) + "…"),
                withMass(number, "0." + "0".repeat(400) + "1")));
        cases.add(row(
                "date.csv",
                "date: not a date (value '2026-02-30'; expected a date as",
                good("T40").replace("05-01", "02-30")));
        cases.add(row(
                "years.csv",
                "date: not a date (value '+999999999-01-01'",
                good("T41").replace("2026-05-01", "+999999999-01-01")));
    }

    private static String withMass(int number, String mass) {
        return good("T" + number).replace("61000", mass);
    }

    private static void otherKinds(List<Case> cases) {
        byte[] pdf = bytes("%PDF-1.4\n%\u00E2\u00E3\n1 0 obj\n<< /Type /Catalog >>\nendobj\n");
        byte[] html = bytes("<!DOCTYPE html><html><body><table><tr><td>flight</td></tr></table></body></html>\n");
        byte[] zip = new Book("", "").without(Book.TYPES).bytes();
        String noBook = ": the file is no workbook (expected a workbook saved as .xlsx)";
        String archive = ": a workbook or archive under the name of a text file (expected a text file)";
        cases.add(refused("pdf.xlsx", noBook, pdf));
        cases.add(refused("html.xlsx", noBook, html));
        cases.add(refused("text.xlsx", noBook, bytes(good("T50"))));
        cases.add(refused("none.xlsx", ": the file is empty (expected a workbook saved as .xlsx)", new byte[0]));
        cases.add(refused("zip.xlsx", NO_WORKBOOK, zip));
        cases.add(refused("zip.csv", archive, zip));
        cases.add(refused("book.csv", archive, workbook("T51").bytes()));
        cases.add(refused("pdf.csv", ":1: there is no heading row that a heading map knows (value '%PDF-1.4'", pdf));
        cases.add(refused(
                "html.csv", ":1: there is no heading row that a heading map knows (value '<!DOCTYPE html>", html));
        cases.add(refused(
                "older.xlsx",
                ": the workbook is of the older binary kind (expected a workbook saved as .xlsx without a password)",
                older()));
        cases.add(refused(
                "older.csv", ":1: bytes that are no text; the rows from here on were not read (value '0xD0'", older()));
        cases.add(text("older.xls", ": workbooks are read as .xlsx only; save it as .xlsx or .csv", false, older()));
        cases.add(refused(
                "locked.xlsx",
                ": the workbook is encrypted (expected a workbook saved as .xlsx without a password)",
                locked()));
        cases.add(new Case("season-folder.csv", Files::createDirectory, ": sub-folders are not read", false));
        cases.add(new Case(
                "season-loop.csv",
                file -> Files.createSymbolicLink(file, file.getFileName()),
                ": the file cannot be read: the link leads in circles (expected a file that may be read)",
                true));
        cases.add(new Case(
                "season-dangling.csv",
                file -> Files.createSymbolicLink(file, Path.of("nowhere.csv")),
                ": the file cannot be read: the link leads to nothing (expected a file that may be read)",
                true));
        cases.add(new Case(
                "season-device.csv",
                file -> Files.createSymbolicLink(file, Path.of("/dev/zero")),
                ": a pipe or a device, not a file",
                false));
    }

    private static byte[] older() {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (HSSFWorkbook book = new HSSFWorkbook()) {
            book.createSheet("Old").createRow(0).createCell(0).setCellValue("flight");
            book.write(bytes);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return bytes.toByteArray();
    }

    private static byte[] locked() {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (POIFSFileSystem files = new POIFSFileSystem();
                OPCPackage plain = OPCPackage.open(
                        new java.io.ByteArrayInputStream(workbook("T52").bytes()))) {
            Encryptor encryptor = new EncryptionInfo(EncryptionMode.agile).getEncryptor();
            encryptor.confirmPassword("secret");
            try (var data = encryptor.getDataStream(files)) {
                plain.save(data);
            }
            files.writeFilesystem(bytes);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (OpenXML4JException | java.security.GeneralSecurityException e) {
            throw new IllegalStateException(e);
        }
        return bytes.toByteArray();
    }

    /** A workbook that is in order, with one flight. */
    static Book workbook(String flight) {
        return new Book(
                row(1, HEADINGS.strip())
                        + row(2, good(flight).lines().skip(1).findFirst().orElseThrow()),
                "");
    }

    private static String row(int number, String cells) {
        StringBuilder row = new StringBuilder("<row r=\"" + number + "\">");
        for (String cell : cells.split(",", -1)) {
            boolean isNumber = cell.matches("\\d+(\\.\\d+)?");
            row.append(isNumber ? "<c><v>" + cell + "</v></c>" : inline(cell));
        }
        return row.append("</row>").toString();
    }

    private static String inline(String text) {
        return "<c t=\"inlineStr\"><is><t>" + Book.escaped(text) + "</t></is></c>";
    }

    private static void books(List<Case> cases) {
        byte[] whole = workbook("T60").bytes();
        for (int part = 1; part < 10; part++) {
            cases.add(refused("cut-" + part + ".xlsx", DAMAGED, Arrays.copyOf(whole, whole.length * part / 10)));
        }
        cases.add(book(
                "without-" + plain(Book.TYPES),
                NO_WORKBOOK,
                true,
                workbook("T61").without(Book.TYPES)));
        for (String part : List.of(Book.RELATIONS, Book.WORKBOOK)) {
            cases.add(book(
                    "without-" + plain(part), DAMAGED, true, workbook("T61").without(part)));
        }
        for (String part : List.of(Book.BOOK_RELATIONS, Book.SHEET)) {
            cases.add(book(
                    "without-" + plain(part),
                    "[Raw]" + DAMAGED,
                    true,
                    workbook("T62").without(part)));
        }
        cases.add(book(
                "relation", DAMAGED, true, workbook("T63").replace(Book.RELATIONS, "/officeDocument\"", "/other\"")));
        cases.add(book(
                "astray",
                "[Raw]" + DAMAGED,
                true,
                workbook("T64").replace(Book.BOOK_RELATIONS, "worksheets/sheet1.xml", "../../../etc/hostname")));
        cases.add(book(
                "out-of-doors",
                "[Raw]" + DAMAGED,
                true,
                workbook("T65")
                        .replace(
                                Book.BOOK_RELATIONS,
                                "Target=\"worksheets/sheet1.xml\"",
                                "TargetMode=\"External\" Target=\"http://localhost/sheet1.xml\"")));
        cases.add(book(
                "text-index",
                "[Raw]:2: the workbook is damaged or cut short; the rows after this one were not read",
                false,
                workbook("T66")
                        .replace(
                                Book.SHEET, "</sheetData>", "<row r=\"3\"><c t=\"s\"><v>7</v></c></row></sheetData>")));
        cases.add(book(
                "far-column",
                "[Raw]:2: the workbook is damaged or cut short; the rows after this one were not read",
                false,
                workbook("T67")
                        .replace(
                                Book.SHEET,
                                "</sheetData>",
                                "<row r=\"3\"><c r=\"XFE3\"><v>7</v></c></row></sheetData>")));
        cases.add(rowOfBook(
                "formula",
                "tow kg: the file holds no result of the formula (value '=[1]Other!A1'; expected",
                workbook("T68").replace(Book.SHEET, "<v>61000</v>", "<f>[1]Other!A1</f>")));
        cases.add(rowOfBook(
                "huge-number",
                "tow kg: out of range (value '1.0E308'; expected a mass",
                workbook("T69").replace(Book.SHEET, "61000", "1e308")));
        cases.add(rowOfBook(
                "infinite-number",
                "tow kg: out of range (value '1e999'; expected a mass",
                workbook("T70").replace(Book.SHEET, "61000", "1e999")));
        cases.add(rowOfBook(
                "no-number",
                "tow kg: not a number (value 'NaN'; expected",
                workbook("T71").replace(Book.SHEET, "61000", "NaN")));
    }

    private static String plain(String part) {
        return part.replaceAll("[^A-Za-z]", "");
    }

    private static void declarations(List<Case> cases) {
        String external = "<!DOCTYPE a [<!ENTITY b SYSTEM \"file:///etc/hostname\">]>";
        String parameter = "<!DOCTYPE a [<!ENTITY % b SYSTEM \"http://localhost/x.dtd\"> %b;]>";
        StringBuilder laughs = new StringBuilder("<!DOCTYPE a [<!ENTITY a0 \"ha\">");
        for (int i = 1; i < 30; i++) {
            laughs.append("<!ENTITY a")
                    .append(i)
                    .append(" \"&a")
                    .append(i - 1)
                    .append(";&a")
                    .append(i - 1)
                    .append(";\">");
        }
        String bomb = laughs + "]>";
        for (String part : List.of(Book.WORKBOOK, Book.STYLES, Book.TEXTS, Book.SHEET)) {
            String said = (part.equals(Book.SHEET) ? "[Raw]: " : ": ") + DOCTYPE;
            cases.add(declaring("external", part, said, external, "&b;"));
            cases.add(declaring("parameter", part, said, parameter, ""));
            cases.add(declaring("laughs", part, said, bomb, "&a29;"));
        }
        for (String part : List.of(Book.TYPES, Book.RELATIONS, Book.BOOK_RELATIONS)) {
            cases.add(declaring("external", part, DAMAGED, external, ""));
            cases.add(declaring("laughs", part, DAMAGED, bomb, ""));
        }
    }

    private static Case declaring(String name, String part, String said, String declaration, String use) {
        Book book = workbook("T72");
        String xml = book.text(part).replace("?>\n", "?>\n" + declaration).replace("<t>owl", "<t>" + use + "owl");
        return book(name + "-" + plain(part), said, true, book.put(part, xml));
    }

    private static void sizes(List<Case> cases) {
        String spaces = " ".repeat(40_000_000);
        cases.add(book(
                "bomb",
                ": the workbook unpacks to a suspicious size (expected",
                true,
                workbook("T80").replace(Book.SHEET, "<sheetData>", spaces + "<sheetData>")));
        cases.add(book(
                "bomb-types",
                ": the workbook unpacks to a suspicious size (expected",
                true,
                workbook("T81").replace(Book.TYPES, "</Types>", spaces + "</Types>")));
        cases.add(book(
                "long-text",
                "[Raw]:2: a cell of the workbook holds more than 1,000,000 characters; the rows after this one",
                false,
                workbook("T82")
                        .replace(
                                Book.SHEET,
                                "</sheetData>",
                                "<row>" + inline(mixed(1_100_000)) + "</row></sheetData>")));
        cases.add(book(
                "long-shared-text",
                ": a cell of the workbook holds more than 1,000,000 characters (expected cells of at most 32,767)",
                true,
                workbook("T83").replace(Book.TEXTS, "</sst>", "<si><t>" + mixed(1_100_000) + "</t></si></sst>")));
        cases.add(book(
                "comment",
                "[Raw]:2: a single cell, tag or comment of the workbook takes more than 16 MB; the rows after",
                false,
                workbook("T84").replace(Book.SHEET, "</sheetData>", "<!--" + mixed(18_000_000) + "--></sheetData>")));
        cases.add(rowOfBook(
                "far-cells",
                "the row has 16384 cells, more than headings (expected 6 cells)",
                new Book(row(1, HEADINGS.strip()) + farRows(3_000), "")));
        cases.add(book(
                "far-heading",
                "[Raw]:1: the headings take 16,384 columns (value 'end'; expected at most 2,000 columns, blank ones",
                true,
                workbook("T86")
                        .replace(
                                Book.SHEET,
                                "</row><row r=\"2\">",
                                inline("end").replace("<c ", "<c r=\"XFD1\" ") + "</row><row r=\"2\">")));
        cases.add(book(
                "deep",
                "[Raw]:2: the workbook is damaged or cut short; the rows after this one were not read",
                false,
                workbook("T85").replace(Book.SHEET, "</sheetData>", "<a>".repeat(30_000))));
    }

    /** Rows of two cells, the last of them in the last column that a sheet can have. */
    private static String farRows(int count) {
        StringBuilder rows = new StringBuilder();
        for (int i = 0; i < count; i++) {
            int number = i + 2;
            rows.append("<row r=\"")
                    .append(number)
                    .append("\"><c r=\"A")
                    .append(number)
                    .append("\" t=\"str\"><v>F");
            rows.append(number).append("</v></c><c r=\"XFD").append(number).append("\"><v>7</v></c></row>");
        }
        return rows.toString();
    }

    /** Letters that do not pack well enough to look like a bomb. */
    private static String mixed(int length) {
        StringBuilder letters = new StringBuilder(length);
        long state = 42;
        while (letters.length() < length) {
            state = state * 6364136223846793005L + 1442695040888963407L;
            letters.append((char) ('a' + (state >>> 60)));
        }
        return letters.toString();
    }
}
