package org.steelyard.read.table.xlsx;

import java.util.BitSet;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.apache.poi.ss.usermodel.DateUtil;

/**
 * Which cell styles show a number as a date or a percentage (ECMA-376, part 1, clauses 18.8.10, 18.8.30 and 18.8.31).
 */
final class XlsxStyles {

    /** No styles: every number is a number. */
    static final XlsxStyles NONE = new XlsxStyles(new BitSet(), new BitSet());

    /** The built-in format of elapsed time, which is no date. */
    private static final int ELAPSED = 46;

    /** The built-in formats of percentages. */
    private static final int WHOLE_PERCENT = 9;

    private static final int PERCENT = 10;

    private final BitSet dates;
    private final BitSet percentages;

    private XlsxStyles(BitSet dates, BitSet percentages) {
        this.dates = dates;
        this.percentages = percentages;
    }

    static XlsxStyles read(XMLStreamReader xml, XlsxMemory memory) throws XMLStreamException {
        Map<Integer, String> codes = new HashMap<>();
        BitSet dates = new BitSet();
        BitSet percentages = new BitSet();
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
                            percentages.set(style, isPercentage(id(xml), codes));
                            dates.set(style++, isDate(id(xml), codes));
                        }
                    }
                    default -> {
                        // fonts, fills and borders say nothing of values
                    }
                }
            }
        }
        return new XlsxStyles(dates, percentages);
    }

    private static int id(XMLStreamReader xml) {
        return Math.max(0, XlsxCells.wholeNumber(XlsxWorkbook.attribute(xml, "numFmtId")));
    }

    private static boolean isDate(int id, Map<Integer, String> codes) {
        String code = codes.getOrDefault(id, "").toLowerCase(Locale.ROOT);
        boolean elapsed = id == ELAPSED || code.startsWith("[h") || code.startsWith("[m") || code.startsWith("[s");
        return !elapsed && DateUtil.isADateFormat(id, codes.get(id));
    }

    /** A percent sign that is not quoted multiplies what is shown by a hundred. */
    private static boolean isPercentage(int id, Map<Integer, String> codes) {
        String code = codes.getOrDefault(id, "").replaceAll("\"[^\"]*\"|\\\\.|\\[[^\\]]*\\]", "");
        return id == WHOLE_PERCENT || id == PERCENT || code.indexOf('%') >= 0;
    }

    boolean isPercentage(int style) {
        return style >= 0 && percentages.get(style);
    }

    boolean isDate(int style) {
        return style >= 0 && dates.get(style);
    }
}
