package org.steelyard.report.book;

import java.util.stream.IntStream;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.util.CellReference;
import org.steelyard.report.text.ByteText;

/**
 * Rows of a sheet as the XML of the file format (ECMA-376 part 1, 18.3.1.73, row, and 18.3.1.4, c), one after the
 * other. Written here because a season's sheets have tens of millions of cells: the library's streaming took five times
 * as long for them. What it writes is read back with that library in tests.
 */
final class XmlRows implements RowCells {

    private static final byte[][] COLUMNS =
            IntStream.range(0, 256).mapToObj(XmlRows::column).toArray(byte[][]::new);
    private static final byte[][] STYLES =
            IntStream.range(0, 256).mapToObj(XmlRows::style).toArray(byte[][]::new);
    private static final byte[] NUMBER = ByteText.of("><v>");
    private static final byte[] NUMBER_ENDS = ByteText.of("</v></c>");
    private static final byte[] TEXT = ByteText.of(" t=\"inlineStr\"><is><t>");
    private static final byte[] PADDED_TEXT = ByteText.of(" t=\"inlineStr\"><is><t xml:space=\"preserve\">");
    private static final byte[] TEXT_ENDS = ByteText.of("</t></is></c>");

    private final ByteText xml = new ByteText();
    private byte[] number = {};
    private boolean open;
    private boolean filled;
    private int lastColumn;

    /** Begins the next row; what is not ended is ended. */
    void begin(int rowIndex) {
        end();
        number = ByteText.of(Integer.toString(rowIndex + 1));
        xml.add("<row r=\"").add(number).ascii('"');
        open = true;
    }

    @Override
    public void height(float points) {
        if (filled) {
            throw new IllegalStateException("a row has its height before its cells");
        }
        xml.add(" customHeight=\"1\" ht=\"").add(Float.toString(points)).ascii('"');
    }

    @Override
    public void blank(int column, CellStyle style) {
        cell(column, style).add("/>");
    }

    @Override
    public void text(int column, String shown, CellStyle style) {
        cell(column, style).add(isPadded(shown) ? PADDED_TEXT : TEXT);
        escape(shown);
        xml.add(TEXT_ENDS);
    }

    @Override
    public void number(int column, double value, CellStyle style) {
        cell(column, style).add(NUMBER).number(value).add(NUMBER_ENDS);
    }

    private static byte[] column(int column) {
        return ByteText.of("<c r=\"" + CellReference.convertNumToColString(column));
    }

    private static byte[] style(int index) {
        return ByteText.of("\" s=\"" + index + '"');
    }

    private ByteText cell(int column, CellStyle style) {
        lastColumn = Math.max(lastColumn, column);
        if (!filled) {
            xml.ascii('>');
            filled = true;
        }
        int index = style.getIndex();
        return xml.add(column < COLUMNS.length ? COLUMNS[column] : column(column))
                .add(number)
                .add(index < STYLES.length ? STYLES[index] : style(index));
    }

    private static boolean isPadded(String text) {
        return !text.isEmpty()
                && (Character.isWhitespace(text.charAt(0)) || Character.isWhitespace(text.charAt(text.length() - 1)));
    }

    private void escape(String text) {
        if (isPlain(text)) {
            xml.add(text);
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
            xml.ascii((char) c);
        } else {
            xml.add("&#").whole(c).ascii(';');
        }
    }

    private void end() {
        if (open) {
            xml.add(filled ? "</row>" : "/>");
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
        return xml.take();
    }
}
