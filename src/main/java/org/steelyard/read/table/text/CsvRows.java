package org.steelyard.read.table.text;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Iterator;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVException;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.steelyard.model.input.InputProblem;
import org.steelyard.model.input.ProblemCode;
import org.steelyard.read.table.RawRow;
import org.steelyard.read.table.RowStream;
import org.steelyard.read.table.SourceFault;
import org.steelyard.read.table.TableName;

/**
 * The records of a delimited text (RFC 4180, with any delimiter and line end), each with the number of its first line.
 */
final class CsvRows implements RowStream {

    /** How Commons CSV says where a quotation mark opened that is never closed. */
    private static final Pattern OPENED_AT = Pattern.compile("\\(startline (\\d+)\\)");

    private final StrictReader reader;
    private final CSVParser parser;
    private final Iterator<CSVRecord> records;
    private final TableName name;

    CsvRows(StrictReader reader, char delimiter, TableName name) throws IOException {
        CSVFormat format = CSVFormat.RFC4180
                .builder()
                .setDelimiter(delimiter)
                .setIgnoreSurroundingSpaces(true)
                .setIgnoreEmptyLines(false)
                .get();
        this.reader = reader;
        this.parser = CSVParser.builder().setReader(reader).setFormat(format).get();
        this.records = parser.iterator();
        this.name = name;
    }

    @Override
    public Optional<RawRow> next() throws SourceFault {
        long firstLine = parser.getCurrentLineNumber() + 1;
        reader.beginRecord();
        try {
            return records.hasNext()
                    ? Optional.of(RawRow.ofText(firstLine, records.next().values()))
                    : Optional.empty();
        } catch (UncheckedIOException e) {
            throw new SourceFault(problem(firstLine, e.getCause()), e);
        }
    }

    private InputProblem problem(long firstLine, IOException cause) {
        if (cause instanceof UndecodableException undecodable) {
            long line = parser.getCurrentLineNumber() + (undecodable.lineBegins() ? 1 : 0);
            return name.unreadable(
                    line,
                    "bytes that are no text; the rows from here on were not read",
                    undecodable.bytes(),
                    "UTF-8, or another encoding told by --charset or the heading map, as windows-1252");
        }
        if (cause instanceof EndlessRecordException) {
            return badQuote(
                    firstLine,
                    "the row has more than 1,000,000 characters; a quotation mark in it is probably never closed");
        }
        if (cause instanceof CSVException) {
            Matcher opened = OPENED_AT.matcher(String.valueOf(cause.getMessage()));
            return opened.find()
                    ? badQuote(Long.parseLong(opened.group(1)), "a quotation mark opens here and is never closed")
                    : badQuote(firstLine, "a quotation mark closes before the cell ends");
        }
        return name.unreadable(firstLine, "the file cannot be read on", "", "a file that may be read");
    }

    private InputProblem badQuote(long line, String reason) {
        return name.problem(
                line,
                ProblemCode.MALFORMED_ROW,
                reason + "; the rows from here on were not read",
                "",
                "quotation marks around a whole cell, doubled inside it");
    }

    @Override
    public long size() {
        return reader.chars();
    }

    @Override
    public long formulas() {
        return 0;
    }

    @Override
    public void close() throws IOException {
        parser.close();
    }
}
