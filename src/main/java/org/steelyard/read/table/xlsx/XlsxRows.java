package org.steelyard.read.table.xlsx;

import java.io.IOException;
import java.io.InputStream;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Optional;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.apache.poi.openxml4j.exceptions.InvalidFormatException;
import org.steelyard.read.table.CellKind;
import org.steelyard.read.table.RawRow;
import org.steelyard.read.table.RowStream;
import org.steelyard.read.table.SourceFault;
import org.steelyard.read.table.TableName;

/**
 * The rows of a sheet. Blank rows count where filled ones follow; what is only formatting behind the last filled row
 * does not.
 */
final class XlsxRows implements RowStream {

    private static final int MOST_COLUMNS = 16_384;
    private static final int MOST_ROWS = 1_048_576;
    private static final int FAR_COLUMNS = 1_000;
    private static final int FAR_APART = 4;
    private static final int MOST_ROW_CHARS = 4_000_000;

    private final InputStream part;
    private final XMLStreamReader xml;
    private final XlsxCells cells;
    private final TableName name;
    private final boolean uncalculated;
    private final BitSet hiddenColumns = new BitSet();
    private String[] texts = new String[32];
    private CellKind[] kinds = new CellKind[32];
    private int[] places = new int[32];
    private int filled;
    private int width;
    private long rowChars;
    private long size;
    private long rowRead;
    private long rowGiven;
    private long formulas;
    private long withoutResult;
    private long hiddenRows;
    private boolean hidden;
    private Optional<RawRow> waiting = Optional.empty();

    XlsxRows(XlsxFile file, XlsxWorkbook.Sheet sheet, TableName name)
            throws IOException, InvalidFormatException, XMLStreamException {
        this.part = file.open(sheet);
        this.xml = file.stream(part);
        this.cells = file.cells();
        this.name = name;
        this.uncalculated = file.uncalculated();
    }

    @Override
    public Optional<RawRow> next() throws SourceFault {
        if (waiting.isEmpty()) {
            waiting = nextFilled();
        }
        if (waiting.isEmpty()) {
            return waiting;
        }
        rowGiven++;
        if (rowGiven < waiting.get().number()) {
            return Optional.of(RawRow.ofText(rowGiven));
        }
        Optional<RawRow> row = waiting;
        waiting = Optional.empty();
        return row;
    }

    /** The next row that has content. */
    Optional<RawRow> nextFilled() throws SourceFault {
        try {
            while (xml.hasNext()) {
                int event = xml.next();
                if (event == XMLStreamConstants.START_ELEMENT
                        && xml.getLocalName().equals("row")) {
                    readRow();
                    RawRow row = row();
                    size += rowChars + (isFarApart() ? filled : width);
                    if (!row.isBlank()) {
                        hiddenRows += hidden ? 1 : 0;
                        return Optional.of(row);
                    }
                } else if (event == XMLStreamConstants.START_ELEMENT
                        && xml.getLocalName().equals("col")) {
                    readColumns();
                } else if (event == XMLStreamConstants.END_ELEMENT
                        && xml.getLocalName().equals("sheetData")) {
                    return Optional.empty();
                }
            }
            return Optional.empty();
        } catch (XMLStreamException | IndexOutOfBoundsException e) {
            throw XlsxFile.damaged(name, rowGiven, e);
        }
    }

    private void readColumns() {
        int first = XlsxCells.wholeNumber(XlsxWorkbook.attribute(xml, "min"));
        int last = XlsxCells.wholeNumber(XlsxWorkbook.attribute(xml, "max"));
        if (XlsxWorkbook.isTrue(XlsxWorkbook.attribute(xml, "hidden")) && first >= 1 && last >= first) {
            hiddenColumns.set(first - 1, Math.min(last, MOST_COLUMNS));
        }
    }

    private void readRow() throws XMLStreamException {
        String reference = "";
        hidden = false;
        for (int i = 0; i < xml.getAttributeCount(); i++) {
            switch (xml.getAttributeLocalName(i)) {
                case "r" -> reference = xml.getAttributeValue(i);
                case "hidden" -> hidden = XlsxWorkbook.isTrue(xml.getAttributeValue(i));
                default -> {
                    // heights and styles of no concern
                }
            }
        }
        long number = reference.isEmpty() ? rowRead + 1 : XlsxCells.wholeNumber(reference);
        if (number <= rowRead || number > MOST_ROWS) {
            throw new XMLStreamException("row " + reference + " after row " + rowRead);
        }
        rowRead = number;
        width = 0;
        filled = 0;
        rowChars = 0;
        while (true) {
            int event = xml.next();
            if (event == XMLStreamConstants.START_ELEMENT && xml.getLocalName().equals("c")) {
                readCell();
            } else if (event == XMLStreamConstants.END_ELEMENT
                    && xml.getLocalName().equals("row")) {
                return;
            }
        }
    }

    private void readCell() throws XMLStreamException {
        String reference = "";
        String type = "";
        int style = -1;
        for (int i = 0; i < xml.getAttributeCount(); i++) {
            switch (xml.getAttributeLocalName(i)) {
                case "r" -> reference = xml.getAttributeValue(i);
                case "t" -> type = xml.getAttributeValue(i);
                case "s" -> style = XlsxCells.wholeNumber(xml.getAttributeValue(i));
                default -> {
                    // metadata of no concern
                }
            }
        }
        int column = reference.isEmpty() ? width : columnOf(reference);
        XlsxCells.Cell cell = readValue(type, style);
        put(column, cell);
    }

    private XlsxCells.Cell readValue(String type, int style) throws XMLStreamException {
        Optional<String> formula = Optional.empty();
        boolean stored = false;
        String value = "";
        while (true) {
            int event = xml.next();
            if (event == XMLStreamConstants.START_ELEMENT) {
                switch (xml.getLocalName()) {
                    case "v" -> {
                        value = XlsxXml.content(xml);
                        stored = true;
                    }
                    case "f" -> formula = Optional.of(XlsxXml.content(xml));
                    case "is" -> {
                        value = XlsxTexts.text(xml, "is");
                        stored = true;
                    }
                    default -> {
                        // extensions of no concern
                    }
                }
            } else if (event == XMLStreamConstants.END_ELEMENT
                    && xml.getLocalName().equals("c")) {
                break;
            }
        }
        if (formula.isPresent()) {
            formulas++;
            if (!isCalculated(type, stored, value)) {
                withoutResult++;
                return new XlsxCells.Cell("=" + formula.get(), CellKind.UNCALCULATED);
            }
        }
        return stored ? cells.decode(type, style, value) : XlsxCells.Cell.BLANK;
    }

    /** Whether a formula has a result; where all are to be calculated on opening, 0 stands for want of one. */
    private boolean isCalculated(String type, boolean stored, String value) {
        if (!stored || (value.isEmpty() && !type.equals("str"))) {
            return false;
        }
        return !uncalculated || !value.equals("0") || type.equals("b");
    }

    private void put(int column, XlsxCells.Cell cell) throws XMLStreamException {
        if (column >= MOST_COLUMNS || column < width) {
            throw new XMLStreamException("a cell in column " + (column + 1) + " after column " + width);
        }
        width = column + 1;
        if (cell.text().isEmpty()) {
            return;
        }
        if (filled == texts.length) {
            texts = Arrays.copyOf(texts, 2 * filled);
            kinds = Arrays.copyOf(kinds, 2 * filled);
            places = Arrays.copyOf(places, 2 * filled);
        }
        rowChars += cell.text().length();
        if (rowChars > MOST_ROW_CHARS) {
            throw new XlsxLimitException("a row of the workbook holds more than 4,000,000 characters", "shorter rows")
                    .whileParsing();
        }
        texts[filled] = cell.text();
        kinds[filled] = cell.kind();
        places[filled++] = column;
    }

    /** Whether a row reaches so far past its cells that the blank ones are not laid out. */
    private boolean isFarApart() {
        return width > FAR_COLUMNS && width > FAR_APART * filled;
    }

    private RawRow row() {
        if (isFarApart() && filled > 0) {
            return RawRow.farApart(
                    rowRead,
                    width,
                    Arrays.copyOf(places, filled),
                    Arrays.copyOf(texts, filled),
                    Arrays.copyOf(kinds, filled));
        }
        String[] cells = Arrays.copyOf(texts, filled == 0 ? 0 : width);
        CellKind[] cellKinds = Arrays.copyOf(kinds, cells.length);
        if (filled < cells.length) {
            Arrays.fill(cells, "");
            Arrays.fill(cellKinds, CellKind.TEXT);
            for (int i = 0; i < filled; i++) {
                cells[places[i]] = texts[i];
                cellKinds[places[i]] = kinds[i];
            }
        }
        return RawRow.of(rowRead, cells, cellKinds);
    }

    /** The column of a reference such as AB12, from 0. */
    static int columnOf(String reference) {
        int column = 0;
        for (int i = 0; i < reference.length() && column <= MOST_COLUMNS; i++) {
            char c = reference.charAt(i);
            if (c < 'A' || c > 'Z') {
                break;
            }
            column = column * 26 + (c - 'A' + 1);
        }
        return column - 1;
    }

    @Override
    public long size() {
        return size;
    }

    @Override
    public long formulas() {
        return formulas;
    }

    @Override
    public long uncalculated() {
        return withoutResult;
    }

    @Override
    public long hiddenRows() {
        return hiddenRows;
    }

    @Override
    public boolean isHidden(int column) {
        return hiddenColumns.get(column);
    }

    @Override
    public void close() throws IOException {
        part.close();
    }
}
