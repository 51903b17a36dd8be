package org.steelyard.read;

import java.util.BitSet;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.apache.poi.ss.usermodel.DateUtil;

/** Which cell styles show a number as a date (ECMA-376, part 1, clauses 18.8.10, 18.8.30 and 18.8.31). */
final class XlsxStyles {

    /** No styles: every number is a number. */
    static final XlsxStyles NONE = new XlsxStyles(new BitSet());

    /** The built-in format of elapsed time, which is no date. */
    private static final int ELAPSED = 46;

    private final BitSet dates;

    private XlsxStyles(BitSet dates) {
        this.dates = dates;
    }

    static XlsxStyles read(XMLStreamReader xml, XlsxMemory memory) throws XMLStreamException {
        Map<Integer, String> codes = new HashMap<>();
        BitSet dates = new BitSet();
        int style = 0;
        boolean inCellFormats = false;
        while (xml.hasNext()) {
            int event = xml.next();
            if (event == XMLStreamConstants.END_ELEMENT && xml.getLocalName().equals("cellXfs")) {
                inCellFormats = false;
            } else if (event == XMLStreamConstants.START_ELEMENT) {
                switch (xml.getLocalName()) {
                    case "numFmt" -> {
                        String code = XlsxWorkbook.attribute(xml, "formatCode");
                        memory.hold(code.length());
                        codes.putIfAbsent(id(xml), code);
                    }
                    case "cellXfs" -> inCellFormats = true;
                    case "xf" -> {
                        if (inCellFormats) {
                            dates.set(style++, isDate(id(xml), codes));
                        }
                    }
                    default -> {
                        // fonts, fills and borders say nothing of values
                    }
                }
            }
        }
        return new XlsxStyles(dates);
    }

    private static int id(XMLStreamReader xml) {
        return Math.max(0, XlsxCells.wholeNumber(XlsxWorkbook.attribute(xml, "numFmtId")));
    }

    private static boolean isDate(int id, Map<Integer, String> codes) {
        String code = codes.getOrDefault(id, "").toLowerCase(Locale.ROOT);
        boolean elapsed = id == ELAPSED || code.startsWith("[h") || code.startsWith("[m") || code.startsWith("[s");
        return !elapsed && DateUtil.isADateFormat(id, codes.get(id));
    }

    boolean isDate(int style) {
        return style >= 0 && dates.get(style);
    }
}
