package org.steelyard.read.table.xlsx;

import java.util.ArrayList;
import java.util.List;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/**
 * What the workbook part says (ECMA-376, part 1, clause 18.2).
 *
 * @param sheets sheets in their order
 * @param date1904 whether dates count from 1904
 * @param uncalculated whether the program that wrote it left the formulas to be calculated on opening; what stands as
 *     their result is then no result, or 0 for want of one
 */
record XlsxWorkbook(List<Sheet> sheets, boolean date1904, boolean uncalculated) {

    /**
     * A sheet.
     *
     * @param name its name
     * @param relation id of its part
     * @param hidden whether users do not see it
     */
    record Sheet(String name, String relation, boolean hidden) {}

    XlsxWorkbook {
        sheets = List.copyOf(sheets);
    }

    static XlsxWorkbook read(XMLStreamReader xml, XlsxMemory memory) throws XMLStreamException {
        List<Sheet> sheets = new ArrayList<>();
        boolean date1904 = false;
        boolean uncalculated = false;
        while (xml.hasNext()) {
            if (xml.next() == XMLStreamConstants.START_ELEMENT) {
                switch (xml.getLocalName()) {
                    case "sheet" -> {
                        Sheet sheet = sheet(xml);
                        memory.hold(sheet.name().length() + sheet.relation().length());
                        sheets.add(sheet);
                    }
                    case "workbookPr" -> date1904 = isTrue(attribute(xml, "date1904"));
                    case "calcPr" -> uncalculated = isTrue(attribute(xml, "fullCalcOnLoad"));
                    default -> {
                        // nothing else is needed
                    }
                }
            }
        }
        return new XlsxWorkbook(sheets, date1904, uncalculated);
    }

    private static Sheet sheet(XMLStreamReader xml) {
        String state = attribute(xml, "state");
        return new Sheet(attribute(xml, "name"), attribute(xml, "id"), state.endsWith("idden"));
    }

    static boolean isTrue(String value) {
        return value.equals("1") || value.equals("true");
    }

    /** An attribute by its local name, blank if it is not there. */
    static String attribute(XMLStreamReader xml, String localName) {
        for (int i = 0; i < xml.getAttributeCount(); i++) {
            if (xml.getAttributeLocalName(i).equals(localName)) {
                return xml.getAttributeValue(i);
            }
        }
        return "";
    }
}
