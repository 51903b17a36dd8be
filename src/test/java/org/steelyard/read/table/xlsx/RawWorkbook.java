package org.steelyard.read.table.xlsx;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;

/** Writes a workbook of one sheet from the bare XML of its parts, for what no library writes. */
final class RawWorkbook {

    private static final String MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
    private static final String RELATIONS = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
    private static final String SPREADSHEET = "application/vnd.openxmlformats-officedocument.spreadsheetml.";

    private static final String STRICT_MAIN = "http://purl.oclc.org/ooxml/spreadsheetml/main";
    private static final String STRICT_RELATIONS = "http://purl.oclc.org/ooxml/officeDocument/relationships";

    private RawWorkbook() {}

    /** Writes a workbook of the strict kind (ISO/IEC 29500-1, annex A): other namespaces and relationship types. */
    static Path writeStrict(Path file, String sheetData, String sharedTexts) throws IOException {
        Path loose = write(file.resolveSibling("loose.zip"), sheetData, sharedTexts);
        try (ZipFile in = new ZipFile(loose.toFile());
                OutputStream out = Files.newOutputStream(file);
                ZipOutputStream zip = new ZipOutputStream(out, StandardCharsets.UTF_8)) {
            for (ZipEntry entry : in.stream().toList()) {
                try (InputStream bytes = in.getInputStream(entry)) {
                    String xml = new String(bytes.readAllBytes(), StandardCharsets.UTF_8);
                    part(zip, entry.getName(), xml.replace(MAIN, STRICT_MAIN).replace(RELATIONS, STRICT_RELATIONS));
                }
            }
        }
        Files.delete(loose);
        return file;
    }

    static Path write(Path file, String sheetData, String sharedTexts) throws IOException {
        try (OutputStream out = Files.newOutputStream(file);
                ZipOutputStream zip = new ZipOutputStream(out, StandardCharsets.UTF_8)) {
            part(
                    zip,
                    "[Content_Types].xml",
                    "<Types xmlns='http://schemas.openxmlformats.org/package/2006/content-types'>"
                            + "<Default Extension='rels'"
                            + " ContentType='application/vnd.openxmlformats-package.relationships+xml'/>"
                            + type("/xl/workbook.xml", "sheet.main") + type("/xl/worksheets/s.xml", "worksheet")
                            + type("/xl/t.xml", "sharedStrings") + "</Types>");
            part(zip, "_rels/.rels", relations(relation("r1", "officeDocument", "xl/workbook.xml")));
            part(
                    zip,
                    "xl/_rels/workbook.xml.rels",
                    relations(relation("r1", "worksheet", "worksheets/s.xml")
                            + relation("r2", "sharedStrings", "t.xml")));
            part(
                    zip,
                    "xl/workbook.xml",
                    "<workbook xmlns='" + MAIN + "' xmlns:r='" + RELATIONS + "'><sheets>"
                            + "<sheet name='Raw' sheetId='1' r:id='r1'/></sheets></workbook>");
            part(
                    zip,
                    "xl/worksheets/s.xml",
                    "<worksheet xmlns='" + MAIN + "'><sheetData>" + sheetData + "</sheetData></worksheet>");
            part(zip, "xl/t.xml", "<sst xmlns='" + MAIN + "'>" + sharedTexts + "</sst>");
        }
        return file;
    }

    private static void part(ZipOutputStream zip, String name, String xml) throws IOException {
        zip.putNextEntry(new ZipEntry(name));
        zip.write(xml.getBytes(StandardCharsets.UTF_8));
        zip.closeEntry();
    }

    private static String type(String part, String kind) {
        return "<Override PartName='" + part + "' ContentType='" + SPREADSHEET + kind + "+xml'/>";
    }

    private static String relation(String id, String kind, String target) {
        return "<Relationship Id='" + id + "' Type='" + RELATIONS + "/" + kind + "' Target='" + target + "'/>";
    }

    private static String relations(String all) {
        return "<Relationships xmlns='http://schemas.openxmlformats.org/package/2006/relationships'>" + all
                + "</Relationships>";
    }
}
