package org.steelyard.hostile;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.zip.Deflater;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** A workbook of one sheet as the XML of its parts, to be spoilt in any of them. */
final class Book {

    static final String TYPES = "[Content_Types].xml";
    static final String RELATIONS = "_rels/.rels";
    static final String BOOK_RELATIONS = "xl/_rels/workbook.xml.rels";
    static final String WORKBOOK = "xl/workbook.xml";
    static final String SHEET = "xl/worksheets/sheet1.xml";
    static final String TEXTS = "xl/sharedStrings.xml";
    static final String STYLES = "xl/styles.xml";

    private static final String MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
    private static final String OFFICE = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
    private static final String SPREADSHEET = "application/vnd.openxmlformats-officedocument.spreadsheetml.";
    private static final String HEAD = "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n";

    private final Map<String, byte[]> parts = new LinkedHashMap<>();

    Book(String sheetData, String sharedTexts) {
        put(
                TYPES,
                "<Types xmlns=\"http://schemas.openxmlformats.org/package/2006/content-types\">"
                        + "<Default Extension=\"rels\""
                        + " ContentType=\"application/vnd.openxmlformats-package.relationships+xml\"/>"
                        + type(WORKBOOK, "sheet.main") + type(SHEET, "worksheet") + type(TEXTS, "sharedStrings")
                        + type(STYLES, "styles") + "</Types>");
        put(RELATIONS, relations(relation("rId1", "officeDocument", WORKBOOK)));
        put(
                BOOK_RELATIONS,
                relations(relation("rId1", "worksheet", "worksheets/sheet1.xml")
                        + relation("rId2", "sharedStrings", "sharedStrings.xml")
                        + relation("rId3", "styles", "styles.xml")));
        put(
                WORKBOOK,
                "<workbook xmlns=\"" + MAIN + "\" xmlns:r=\"" + OFFICE + "\"><workbookPr/><sheets>"
                        + "<sheet name=\"Raw\" sheetId=\"1\" r:id=\"rId1\"/></sheets></workbook>");
        put(
                STYLES,
                "<styleSheet xmlns=\"" + MAIN + "\"><numFmts count=\"1\"><numFmt numFmtId=\"170\""
                        + " formatCode=\"dd/mm/yyyy\"/></numFmts><cellXfs count=\"2\"><xf numFmtId=\"0\"/>"
                        + "<xf numFmtId=\"170\"/></cellXfs></styleSheet>");
        put(SHEET, "<worksheet xmlns=\"" + MAIN + "\"><sheetData>" + sheetData + "</sheetData></worksheet>");
        put(TEXTS, "<sst xmlns=\"" + MAIN + "\">" + sharedTexts + "</sst>");
    }

    private static String type(String part, String kind) {
        return "<Override PartName=\"/" + part + "\" ContentType=\"" + SPREADSHEET + kind + "+xml\"/>";
    }

    private static String relation(String id, String kind, String target) {
        return "<Relationship Id=\"" + id + "\" Type=\"" + OFFICE + "/" + kind + "\" Target=\"" + target + "\"/>";
    }

    private static String relations(String all) {
        return "<Relationships xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\">" + all
                + "</Relationships>";
    }

    Map<String, byte[]> parts() {
        return parts;
    }

    String text(String part) {
        return new String(parts.get(part), StandardCharsets.UTF_8);
    }

    /** Puts a part in, as text behind a declaration. */
    Book put(String part, String xml) {
        parts.put(part, (xml.startsWith("<?xml") ? xml : HEAD + xml).getBytes(StandardCharsets.UTF_8));
        return this;
    }

    Book put(String part, byte[] bytes) {
        parts.put(part, bytes);
        return this;
    }

    /** Puts text in place of another in a part. */
    Book replace(String part, String old, String other) {
        SeasonCheck.require(text(part).contains(old), part + " does not hold " + old);
        return put(part, text(part).replace(old, other));
    }

    Book without(String part) {
        parts.remove(part);
        return this;
    }

    byte[] bytes() {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes, StandardCharsets.UTF_8)) {
            zip.setLevel(Deflater.BEST_SPEED);
            for (Map.Entry<String, byte[]> part : parts.entrySet()) {
                zip.putNextEntry(new ZipEntry(part.getKey()));
                zip.write(part.getValue());
                zip.closeEntry();
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return bytes.toByteArray();
    }

    /** A text as it stands in XML; characters that XML cannot hold become blanks. */
    static String escaped(String text) {
        StringBuilder escaped = new StringBuilder();
        text.codePoints().forEach(c -> {
            switch (c) {
                case '<' -> escaped.append("&lt;");
                case '&' -> escaped.append("&amp;");
                case '"' -> escaped.append("&quot;");
                default -> escaped.appendCodePoint(c < ' ' && c != '\n' && c != '\t' && c != '\r' ? ' ' : c);
            }
        });
        return escaped.toString();
    }
}
