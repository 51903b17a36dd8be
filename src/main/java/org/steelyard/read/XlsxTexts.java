package org.steelyard.read;

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

/** Texts of a workbook, whose runs are joined and whose phonetic hints are left out (ECMA-376, part 1, clause 18.4). */
final class XlsxTexts {

    private XlsxTexts() {}

    /** The list of shared texts. */
    static List<String> shared(XMLStreamReader xml) throws XMLStreamException {
        List<String> texts = new ArrayList<>();
        while (xml.hasNext()) {
            if (xml.next() == XMLStreamConstants.START_ELEMENT
                    && xml.getLocalName().equals("si")) {
                texts.add(text(xml, "si"));
            }
        }
        return texts;
    }

    /**
     * Whether the shared texts of a workbook hold a word.
     *
     * @throws IOException if the file is no archive
     */
    static boolean mention(Path workbook, String word) throws IOException {
        try (ZipFile zip = new ZipFile(workbook.toFile())) {
            for (ZipEntry part : zip.stream().toList()) {
                if (part.getName().toLowerCase(Locale.ROOT).endsWith("sharedstrings.xml")) {
                    try (InputStream bytes = zip.getInputStream(part)) {
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
                    text.append(xml.getElementText());
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
