package org.steelyard.hostile;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Workbooks of a table, drawn: cells of every type, and XML, parts and bytes that are not as they should be. */
final class DrawnBook {

    private static final Pattern TAG = Pattern.compile("<[^>]*>");
    private static final Pattern NUMBER = Pattern.compile("-?\\d+(\\.\\d+)?([eE][+-]?\\d+)?");
    private static final List<String> TYPES = List.of("s", "str", "inlineStr", "b", "e", "d", "n", "x");
    private static final List<String> INSERTS = List.of(
            "<!DOCTYPE a [<!ENTITY b \"c\">]>",
            "&b;",
            "&#0;",
            "&#x41;",
            "<!-- - -->",
            "<![CDATA[7]]>",
            "<?pi x?>",
            "<a>".repeat(50),
            "</row>",
            "<row r=\"3\">",
            "<c><v>1</v></c>",
            "<c r=\"XFD1\"><v>1</v></c>",
            "<c r=\"XFE1\"/>",
            "<c r=\"\" t=\"s\" s=\"99999999999\"><v>-1</v></c>",
            "<mergeCells><mergeCell ref=\"A1:B2\"/><mergeCell ref=\"A2:A4\"/><mergeCell ref=\"ZZ\"/></mergeCells>",
            "<f>A1</f>",
            "<is><t>x</t><rPh><t>y</t></rPh></is>",
            "<col min=\"1\" max=\"99999\" hidden=\"1\"/>",
            "<sheet name=\"\" id=\"rId1\"/>",
            "<sheet name=\"Two\" r:id=\"rId9\"/>",
            "<calcPr fullCalcOnLoad=\"1\"/>",
            "<si/>",
            "<numFmt numFmtId=\"170\"/>",
            "\uFFFE",
            "<");

    private final Draw draw;
    private final StringBuilder texts = new StringBuilder();
    private int textCount;

    DrawnBook(Draw draw) {
        this.draw = draw;
    }

    byte[] of(List<List<String>> table) {
        Book book = new Book(sheetData(table), texts.toString());
        List<String> names = new ArrayList<>(book.parts().keySet());
        if (draw.onceIn(2)) {
            for (int i = draw.below(3); i >= 0; i--) {
                String part = draw.onceIn(2) ? Book.SHEET : draw.of(names);
                book.put(part, spoilt(book.text(part)).getBytes(StandardCharsets.UTF_8));
            }
        }
        if (draw.onceIn(10)) {
            parts(book, names);
        }
        byte[] bytes = book.bytes();
        return draw.onceIn(10) ? draw.bytes(bytes) : bytes;
    }

    private String sheetData(List<List<String>> table) {
        StringBuilder data = new StringBuilder();
        for (int row = 0; row < table.size(); row++) {
            data.append(draw.onceIn(10) ? "<row>" : "<row r=\"" + (row + 1) + "\">");
            for (int column = 0; column < table.get(row).size(); column++) {
                String reference = draw.onceIn(10) ? "" : " r=\"" + (char) ('A' + column % 26) + (row + 1) + "\"";
                data.append(cell(column >= 26 ? "" : reference, table.get(row).get(column)));
            }
            data.append("</row>");
        }
        return data.toString();
    }

    private String cell(String reference, String text) {
        if (draw.onceIn(30)) {
            String type = draw.of(TYPES);
            return "<c" + reference + " t=\"" + type + "\" s=\"" + draw.below(3) + "\"><f>A1+1</f><v>"
                    + Book.escaped(text) + "</v></c>";
        }
        if (NUMBER.matcher(text).matches()) {
            String style = draw.onceIn(10) ? " s=\"1\"" : "";
            return "<c" + reference + style + "><v>" + text + "</v></c>";
        }
        switch (draw.below(3)) {
            case 0 -> {
                return "<c" + reference + " t=\"inlineStr\"><is><t>" + Book.escaped(text) + "</t></is></c>";
            }
            case 1 -> {
                return "<c" + reference + " t=\"str\"><v>" + Book.escaped(text) + "</v></c>";
            }
            default -> {
                texts.append("<si><t>").append(Book.escaped(text)).append("</t></si>");
                return "<c" + reference + " t=\"s\"><v>" + textCount++ + "</v></c>";
            }
        }
    }

    /** Puts something between two tags, takes a tag out, doubles or changes one, or changes a character. */
    private String spoilt(String xml) {
        List<int[]> tags = new ArrayList<>();
        Matcher matcher = TAG.matcher(xml);
        while (matcher.find()) {
            tags.add(new int[] {matcher.start(), matcher.end()});
        }
        if (tags.isEmpty() || draw.onceIn(4)) {
            return draw.text(xml);
        }
        int[] tag = draw.of(tags);
        String before = xml.substring(0, tag[0]);
        String it = xml.substring(tag[0], tag[1]);
        String after = xml.substring(tag[1]);
        return switch (draw.below(6)) {
            case 0 -> before + after;
            case 1 -> before + it + it + after;
            case 2 -> before + draw.text(it) + after;
            case 3 ->
                before
                        + it.replaceFirst(
                                "\"[^\"]*\"", Matcher.quoteReplacement("\"" + Book.escaped(draw.cell("1")) + "\""))
                        + after;
            default -> before + it + draw.of(INSERTS) + after;
        };
    }

    private void parts(Book book, List<String> names) {
        String one = draw.of(names);
        String other = draw.of(names);
        Map<String, byte[]> parts = book.parts();
        switch (draw.below(4)) {
            case 0 -> parts.remove(one);
            case 1 -> parts.put(one, parts.get(other));
            case 2 -> parts.put(draw.text(one), parts.remove(one));
            default -> {
                Map<String, byte[]> turned = new LinkedHashMap<>();
                turned.put(other, parts.remove(other));
                turned.putAll(parts);
                parts.clear();
                parts.putAll(turned);
            }
        }
    }
}
