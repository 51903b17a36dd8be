package org.steelyard.read.table.xlsx;

import java.io.IOException;
import java.util.Optional;
import javax.xml.stream.XMLStreamException;

/** Says that a workbook holds more, or other things, than is read; the message is the reason in words. */
final class XlsxLimitException extends IOException {

    private static final long serialVersionUID = 1L;
    private static final int DEEPEST = 10;

    private final String expected;

    XlsxLimitException(String reason, String expected) {
        super(reason);
        this.expected = expected;
    }

    String expected() {
        return expected;
    }

    XMLStreamException whileParsing() {
        return new XMLStreamException(this);
    }

    /** The limit behind a fault, if one is behind it: parsers wrap what goes wrong beneath them. */
    static Optional<XlsxLimitException> behind(Throwable fault) {
        Throwable cause = fault;
        for (int i = 0; i < DEEPEST && cause != null; i++) {
            if (cause instanceof XlsxLimitException limit) {
                return Optional.of(limit);
            }
            boolean nested = cause instanceof XMLStreamException parsing && parsing.getNestedException() != null;
            cause = nested ? ((XMLStreamException) cause).getNestedException() : cause.getCause();
        }
        return Optional.empty();
    }
}
