package org.steelyard.report;

import java.io.Closeable;
import java.io.IOException;
import java.io.Writer;
import java.nio.file.Path;
import java.util.List;

/** A CSV file being written: UTF-8 without a mark, lines ended by a line feed, headings first. */
final class CsvFile implements Closeable {

    private final Writer writer;

    CsvFile(Path file, List<String> headings) throws IOException {
        writer = Utf8.writer(file);
        CsvLine line = new CsvLine();
        headings.forEach(line::text);
        write(line);
    }

    void write(CsvLine line) throws IOException {
        writer.write(line.end());
    }

    @Override
    public void close() throws IOException {
        writer.close();
    }
}
