package org.steelyard.report;

import java.nio.charset.StandardCharsets;
import java.util.stream.IntStream;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.util.CellReference;

/**
 * Rows of a sheet as the XML of the file format (ECMA-376 part 1, 18.3.1.73, row, and 18.3.1.4, c), one after the
 * other. Written here because a season's sheets have tens of millions of cells: the library's streaming took five times
 * as long for them. What it writes is read back with that library in tests.
 */
final class XmlRows implements RowCells {

    private static final String[] COLUMNS = IntStream.range(0, 256)
            .mapToObj(CellReference::convertNumToColString)
            .toArray(String[]::new);

    private final StringBuilder xml = new StringBuilder(1 << 16);
    private String number = "";
    private boolean open;
    private boolean filled;
    private int lastColumn;

    /** Begins the next row; what is not ended is ended. */
    void begin(int rowIndex) {
        end();
        number = Integer.toString(rowIndex + 1);
        xml.append("<row r=\"").append(number).append('"');
        open = true;
    }

    @Override
    public void height(float points) {
        if (filled) {
            throw new IllegalStateException("a row has its height before its cells");
        }
        xml.append(" customHeight=\"1\" ht=\"").append(points).append('"');
    }

    @Override
    public void blank(int column, CellStyle style) {
        cell(column, style).append("/>");
    }

    @Override
    public void text(int column, String shown, CellStyle style) {
        cell(column, style)
                .append(" t=\"inlineStr\"><is><t")
                .append(isPadded(shown) ? " xml:space=\"preserve\">" : ">");
        escape(shown);
        xml.append("</t></is></c>");
    }

    @Override
    public void number(int column, double value, CellStyle style) {
        cell(column, style).append("><v>").append(PlainNumber.of(value)).append("</v></c>");
    }

    private StringBuilder cell(int column, CellStyle style) {
        lastColumn = Math.max(lastColumn, column);
        if (!filled) {
            xml.append('>');
            filled = true;
        }
        String letters = column < COLUMNS.length ? COLUMNS[column] : CellReference.convertNumToColString(column);
        return xml.append("<c r=\"")
                .append(letters)
                .append(number)
                .append("\" s=\"")
                .append(style.getIndex())
                .append('"');
    }

    private static boolean isPadded(String text) {
        return !text.isEmpty()
                && (Character.isWhitespace(text.charAt(0)) || Character.isWhitespace(text.charAt(text.length() - 1)));
    }

    private void escape(String text) {
        if (isPlain(text)) {
            xml.append(text);
        } else {
            text.codePoints().forEach(this::escape);
        }
    }

    private static boolean isPlain(String text) {
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c < ' ' || c > '~' || c == '<' || c == '>' || c == '&') {
                return false;
            }
        }
        return true;
    }

    /** Everything but plain ASCII becomes a reference, so that characters are bytes. */
    private void escape(int c) {
        if (c >= ' ' && c <= '~' && c != '<' && c != '>' && c != '&') {
            xml.append((char) c);
        } else {
            xml.append("&#").append(c).append(';');
        }
    }

    private void end() {
        if (open) {
            xml.append(filled ? "</row>" : "/>");
        }
        open = false;
        filled = false;
    }

    /** The rightmost column with a cell in any row so far, from 0. */
    int lastColumn() {
        return lastColumn;
    }

    /** How much is waiting. */
    int chars() {
        return xml.length();
    }

    /** Hands over all rows since the last call, in ASCII. */
    byte[] take() {
        end();
        byte[] rows = xml.toString().getBytes(StandardCharsets.ISO_8859_1);
        xml.setLength(0);
        return rows;
    }
}
