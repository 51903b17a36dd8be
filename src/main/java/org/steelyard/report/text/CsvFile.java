package org.steelyard.report.text;

import java.io.BufferedOutputStream;
import java.io.Closeable;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** A CSV file being written: UTF-8 without a mark, lines ended by a line feed, headings first. */
public final class CsvFile implements Closeable {

    private final OutputStream out;

    public CsvFile(Path file, List<String> headings) throws IOException {
        out = new BufferedOutputStream(Files.newOutputStream(file), 1 << 16);
        CsvLine line = new CsvLine();
        headings.forEach(line::text);
        write(line);
    }

    public void write(CsvLine line) throws IOException {
        write(line.end());
    }

    /** Adds whole lines. */
    public void write(byte[] lines) throws IOException {
        out.write(lines);
    }

    @Override
    public void close() throws IOException {
        out.close();
    }
}
