package org.steelyard.read.table.xlsx;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import javax.xml.stream.util.StreamReaderDelegate;

/**
 * The XML of one part. It declares no document type and refers to no entity (ECMA-376, part 2, forbids the first, and
 * without it there is none of the second), and no tag, text or comment takes more than {@link #MOST_TOKEN_BYTES}: the
 * parser holds each of them in memory at once.
 */
final class XlsxXml extends StreamReaderDelegate {

    /** Characters of one cell or shared text; spreadsheet programs take 32,767. */
    static final int MOST_CHARS = 1_000_000;

    private static final int MOST_TOKEN_BYTES = 1 << 24;
    private static final String PLAIN = "a workbook without declarations of its own, as spreadsheet programs save it";

    private final Bytes bytes;

    private XlsxXml(XMLStreamReader xml, Bytes bytes) {
        super(xml);
        this.bytes = bytes;
    }

    static XMLStreamReader of(InputStream part, XMLInputFactory factory) throws XMLStreamException {
        Bytes bytes = new Bytes(part);
        return new XlsxXml(factory.createXMLStreamReader(bytes), bytes);
    }

    @Override
    public int next() throws XMLStreamException {
        bytes.tokenBegins();
        int event = super.next();
        if (event == XMLStreamConstants.DTD) {
            throw new XlsxLimitException("the workbook declares a document type", PLAIN).whileParsing();
        }
        if (event == XMLStreamConstants.ENTITY_REFERENCE) {
            throw new XlsxLimitException("the workbook refers to an entity", PLAIN).whileParsing();
        }
        return event;
    }

    /** The text of the element that has just begun, to its end; as a rule it comes in one piece. */
    static String content(XMLStreamReader xml) throws XMLStreamException {
        String first = "";
        StringBuilder all = null;
        for (int event = xml.next(); event != XMLStreamConstants.END_ELEMENT; event = xml.next()) {
            if (event == XMLStreamConstants.START_ELEMENT) {
                throw new XMLStreamException("an element within a value");
            }
            if (xml.hasText()
                    && event != XMLStreamConstants.COMMENT
                    && event != XMLStreamConstants.PROCESSING_INSTRUCTION) {
                String piece = xml.getText();
                if (first.isEmpty()) {
                    first = piece;
                } else {
                    all = all == null ? new StringBuilder(first) : all;
                    all.append(piece);
                }
                requireShort(all == null ? first.length() : all.length());
            }
        }
        return all == null ? first : all.toString();
    }

    /** Refuses what is longer than a cell can be. */
    static void requireShort(int chars) throws XMLStreamException {
        if (chars > MOST_CHARS) {
            throw new XlsxLimitException(
                            "a cell of the workbook holds more than 1,000,000 characters", "cells of at most 32,767")
                    .whileParsing();
        }
    }

    /** Counts the bytes that the parser takes for one token. */
    private static final class Bytes extends FilterInputStream {

        private long ofToken;

        private Bytes(InputStream in) {
            super(in);
        }

        private void tokenBegins() {
            ofToken = 0;
        }

        @Override
        public int read() throws IOException {
            int one = super.read();
            count(one < 0 ? 0 : 1);
            return one;
        }

        @Override
        public int read(byte[] into, int offset, int length) throws IOException {
            int count = super.read(into, offset, length);
            count(count);
            return count;
        }

        private void count(int more) throws IOException {
            ofToken += Math.max(0, more);
            if (ofToken > MOST_TOKEN_BYTES) {
                throw new XlsxLimitException(
                        "a single cell, tag or comment of the workbook takes more than 16 MB",
                        "a workbook as spreadsheet programs save it");
            }
        }
    }
}
