package org.steelyard.report.book;

import java.io.BufferedOutputStream;
import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/** A sheet whose rows wait on disk, compressed; widths, filters and pages are the library's. */
final class StreamedSheet implements Closeable {

    private final XSSFSheet sheet;
    private final Path file;
    private final OutputStream out;
    private long length;
    private long deflatedLength;
    private int crc;

    StreamedSheet(XSSFSheet sheet, Path file) throws IOException {
        this.sheet = sheet;
        this.file = file;
        out = new BufferedOutputStream(Files.newOutputStream(file), 1 << 16);
    }

    XSSFSheet sheet() {
        return sheet;
    }

    void add(DeflatedPart rows) throws IOException {
        rows.writeTo(out);
        length += rows.length();
        deflatedLength += rows.deflatedLength();
        crc = JoinedCrc.of(crc, rows.crc(), rows.length());
    }

    /** Length of all rows before compression. */
    long length() {
        return length;
    }

    /** Length of all rows after compression. */
    long deflatedLength() {
        return deflatedLength;
    }

    /** CRC-32 of all rows. */
    int crc() {
        return crc;
    }

    /** All rows; no more can be added. */
    InputStream rows() throws IOException {
        out.close();
        return Files.newInputStream(file);
    }

    @Override
    public void close() throws IOException {
        out.close();
        Files.deleteIfExists(file);
    }
}
