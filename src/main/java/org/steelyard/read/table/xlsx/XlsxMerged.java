package org.steelyard.read.table.xlsx;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.steelyard.read.table.MergedArea;

/**
 * The merged areas of a sheet (ECMA-376, part 1, clause 18.3.1.55). They stand behind the rows but have to be known
 * before them, so the part is looked through for their name as plain bytes first; only a sheet that has some is parsed
 * for them.
 */
final class XlsxMerged {

    static final String ELEMENT = "mergeCell";
    private static final int CHUNK_BYTES = 1 << 16;

    private XlsxMerged() {}

    /** Whether bytes hold a word of plain letters, in UTF-8 or UTF-16. */
    static boolean isIn(InputStream part, String word) throws IOException {
        byte[] chunk = new byte[CHUNK_BYTES];
        int kept = 0;
        for (int read = part.read(chunk, 0, CHUNK_BYTES);
                read >= 0;
                read = part.read(chunk, kept, CHUNK_BYTES - kept)) {
            int length = kept + read;
            String text = new String(chunk, 0, length, StandardCharsets.ISO_8859_1);
            if (text.contains(word)
                    || (text.indexOf('\0') >= 0 && text.replace("\0", "").contains(word))) {
                return true;
            }
            kept = Math.min(length, 2 * word.length() - 1);
            System.arraycopy(chunk, length - kept, chunk, 0, kept);
        }
        return false;
    }

    /** All areas by their first row. */
    static List<MergedArea> read(XMLStreamReader xml, XlsxMemory memory) throws XMLStreamException {
        List<MergedArea> areas = new ArrayList<>();
        while (xml.hasNext()) {
            if (xml.next() == XMLStreamConstants.START_ELEMENT
                    && xml.getLocalName().equals(ELEMENT)) {
                memory.hold(0);
                area(XlsxWorkbook.attribute(xml, "ref")).ifPresent(areas::add);
            }
        }
        areas.sort(Comparator.comparingLong(MergedArea::firstRow));
        return areas;
    }

    /** The area of a reference such as B2:D5. */
    private static Optional<MergedArea> area(String reference) {
        int colon = reference.indexOf(':');
        if (colon < 0) {
            return Optional.empty();
        }
        String first = reference.substring(0, colon);
        String last = reference.substring(colon + 1);
        MergedArea area = new MergedArea(rowOf(first), rowOf(last), XlsxRows.columnOf(first), XlsxRows.columnOf(last));
        boolean sound = area.firstRow() >= 1
                && area.lastRow() >= area.firstRow()
                && area.firstColumn() >= 0
                && area.lastColumn() >= area.firstColumn();
        return sound ? Optional.of(area) : Optional.empty();
    }

    private static long rowOf(String reference) {
        int start = 0;
        while (start < reference.length() && reference.charAt(start) > '9') {
            start++;
        }
        return XlsxCells.wholeNumber(reference.substring(start));
    }
}
