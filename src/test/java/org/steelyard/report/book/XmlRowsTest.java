package org.steelyard.report.book;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamReader;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class XmlRowsTest {

    private static String xml(XmlRows rows) {
        return new String(rows.take(), StandardCharsets.US_ASCII);
    }

    private static CellStyle plain() throws IOException {
        try (XSSFWorkbook book = new XSSFWorkbook()) {
            return book.getCellStyleAt(0);
        }
    }

    @Test
    void rowsAndCellsCarryTheirPlaceStyleAndContent() throws IOException {
        XmlRows rows = new XmlRows();
        rows.begin(2);
        rows.height(27.5f);
        rows.text(0, "a", plain());
        rows.blank(25, plain());
        rows.number(26, 72000, plain());
        rows.number(300, 0.1, plain());
        rows.begin(9);
        assertThat(xml(rows))
                .isEqualTo("<row r=\"3\" customHeight=\"1\" ht=\"27.5\">"
                        + "<c r=\"A3\" s=\"0\" t=\"inlineStr\"><is><t>a</t></is></c><c r=\"Z3\" s=\"0\"/>"
                        + "<c r=\"AA3\" s=\"0\"><v>72000</v></c><c r=\"KO3\" s=\"0\"><v>0.1</v></c></row>"
                        + "<row r=\"10\"/>");
        assertThat(rows.lastColumn()).isEqualTo(300);
    }

    @Test
    void aRowHasItsHeightBeforeItsCells() throws IOException {
        XmlRows rows = new XmlRows();
        rows.begin(0);
        rows.blank(0, plain());
        assertThatThrownBy(() -> rows.height(20)).isInstanceOf(IllegalStateException.class);
    }

    /** Read back with the JDK's parser. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "a<b>&\"'c",
                "● clean",
                " padded ",
                "two\nlines\tand a tab",
                "\uD83D\uDE00 and ø",
                "]]>",
                "&#10;",
                ""
            })
    void textComesBackAsItIs(String text) throws Exception {
        XmlRows rows = new XmlRows();
        rows.begin(0);
        rows.text(0, text, plain());
        List<String> read = new ArrayList<>();
        XMLStreamReader reader =
                XMLInputFactory.newDefaultFactory().createXMLStreamReader(new ByteArrayInputStream(rows.take()));
        while (reader.hasNext()) {
            if (reader.next() == XMLStreamReader.START_ELEMENT
                    && reader.getLocalName().equals("t")) {
                read.add(reader.getElementText());
            }
        }
        assertThat(read).containsExactly(text);
    }
}
