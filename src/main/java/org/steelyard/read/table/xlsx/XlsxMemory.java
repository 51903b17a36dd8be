package org.steelyard.read.table.xlsx;

import java.util.Locale;
import javax.xml.stream.XMLStreamException;

/**
 * What may be held of one workbook beside the row that is being read: texts, formats, merged areas, names of sheets.
 */
final class XlsxMemory {

    private static final long OBJECT_BYTES = 64;

    private final long mostBytes;
    private long bytes;

    XlsxMemory(long mostBytes) {
        this.mostBytes = mostBytes;
    }

    /** A quarter of what the program may use. */
    static XlsxMemory ofProgram() {
        return new XlsxMemory(Runtime.getRuntime().maxMemory() / 4);
    }

    /** Notes that one more thing is held, with a text of so many characters. */
    void hold(int chars) throws XMLStreamException {
        bytes += OBJECT_BYTES + 2L * chars;
        if (bytes > mostBytes) {
            throw new XlsxLimitException(
                            String.format(
                                    Locale.ROOT,
                                    "the texts and formats of the workbook take more than %,d MB, a quarter of the"
                                            + " memory that the program may use",
                                    mostBytes >> 20),
                            "a smaller workbook, a CSV file, or more memory (java -Xmx…)")
                    .whileParsing();
        }
    }
}
