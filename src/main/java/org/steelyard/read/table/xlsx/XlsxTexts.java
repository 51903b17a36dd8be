package org.steelyard.read.table.xlsx;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.apache.commons.io.input.BoundedInputStream;

/** Texts of a workbook, whose runs are joined and whose phonetic hints are left out (ECMA-376, part 1, clause 18.4). */
public final class XlsxTexts {

    private static final long LEAST_LOOKED_AT = 1 << 20;

    /** How many times as large as it is packed a part may be; the reading of parts draws the same line. */
    private static final long MOST_UNPACKED = 100;

    private XlsxTexts() {}

    /** The list of shared texts. */
    static List<String> shared(XMLStreamReader xml, XlsxMemory memory) throws XMLStreamException {
        List<String> texts = new ArrayList<>();
        while (xml.hasNext()) {
            if (xml.next() == XMLStreamConstants.START_ELEMENT
                    && xml.getLocalName().equals("si")) {
                String text = text(xml, "si");
                memory.hold(text.length());
                texts.add(text);
            }
        }
        return texts;
    }

    /**
     * Whether the shared texts of a workbook hold a word; a part that unpacks to a suspicious size is looked at in
     * part.
     *
     * @throws IOException if the file is no archive
     */
    public static boolean mention(Path workbook, String word) throws IOException {
        try (ZipFile zip = new ZipFile(workbook.toFile())) {
            for (ZipEntry part : zip.stream().toList()) {
                if (part.getName().toLowerCase(Locale.ROOT).endsWith("sharedstrings.xml")) {
                    long most = Math.max(LEAST_LOOKED_AT, part.getCompressedSize() * MOST_UNPACKED);
                    try (InputStream bytes = BoundedInputStream.builder()
                            .setInputStream(zip.getInputStream(part))
                            .setMaxCount(most)
                            .get()) {
                        return XlsxMerged.isIn(bytes, word);
                    }
                }
            }
            return false;
        }
    }

    /** The text of the element that has just begun. */
    static String text(XMLStreamReader xml, String element) throws XMLStreamException {
        StringBuilder text = new StringBuilder();
        int phonetic = 0;
        while (true) {
            int event = xml.next();
            if (event == XMLStreamConstants.START_ELEMENT) {
                if (xml.getLocalName().equals("rPh")) {
                    phonetic++;
                } else if (xml.getLocalName().equals("t") && phonetic == 0) {
                    text.append(XlsxXml.content(xml));
                    XlsxXml.requireShort(text.length());
                }
            } else if (event == XMLStreamConstants.END_ELEMENT) {
                if (xml.getLocalName().equals(element)) {
                    return text.toString();
                }
                phonetic -= xml.getLocalName().equals("rPh") ? 1 : 0;
            }
        }
    }
}
