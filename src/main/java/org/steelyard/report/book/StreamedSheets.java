package org.steelyard.report.book;

import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.io.SequenceInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipEntry;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipArchiveOutputStream;
import org.apache.commons.compress.archivers.zip.ZipFile;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.steelyard.report.text.Utf8;

/**
 * The sheets of a workbook that are too long for memory. The library writes the workbook as if they were empty; then
 * each entry of its archive is taken over as it is, and into those of these sheets go their rows, compressed long ago.
 */
public final class StreamedSheets implements Closeable {

    private static final String EMPTY = "<sheetData/>";

    private final XSSFWorkbook book;
    private final Path file;
    private final List<StreamedSheet> sheets = new ArrayList<>();

    /**
     * No sheets yet.
     *
     * @param book the workbook
     * @param file where it will stand; rows wait beside it
     */
    public StreamedSheets(XSSFWorkbook book, Path file) {
        this.book = book;
        this.file = file;
    }

    XSSFWorkbook book() {
        return book;
    }

    StreamedSheet create(String name) throws IOException {
        StreamedSheet sheet = new StreamedSheet(book.createSheet(name), beside(".rows" + sheets.size()));
        sheets.add(sheet);
        return sheet;
    }

    private Path beside(String ending) {
        return file.resolveSibling("." + file.getFileName() + ending);
    }

    /** Writes the workbook with all rows. */
    public void write(Path target) throws IOException {
        Path frame = beside(".frame");
        try {
            try (WatchedOutput out = new WatchedOutput(Files.newOutputStream(frame))) {
                out.write(book);
            }
            Map<String, StreamedSheet> byEntry = new HashMap<>();
            for (StreamedSheet sheet : sheets) {
                byEntry.put(
                        sheet.sheet().getPackagePart().getPartName().getName().substring(1), sheet);
            }
            try (ZipFile from = ZipFile.builder().setPath(frame).get();
                    ZipArchiveOutputStream to = new ZipArchiveOutputStream(target)) {
                for (ZipArchiveEntry entry : Collections.list(from.getEntriesInPhysicalOrder())) {
                    StreamedSheet sheet = byEntry.get(entry.getName());
                    if (sheet == null) {
                        to.addRawArchiveEntry(like(entry), from.getRawInputStream(entry));
                    } else {
                        splice(text(from, entry), entry, sheet, to);
                    }
                }
            }
        } finally {
            Files.deleteIfExists(frame);
        }
    }

    private static String text(ZipFile from, ZipArchiveEntry entry) throws IOException {
        try (InputStream in = from.getInputStream(entry)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    /**
     * An entry of the same name, without the time of the clock: what lies before its calendar becomes its first day.
     */
    private static ZipArchiveEntry named(ZipArchiveEntry entry) {
        ZipArchiveEntry named = new ZipArchiveEntry(entry.getName());
        named.setTime(0);
        named.setMethod(ZipEntry.DEFLATED);
        return named;
    }

    /** An entry of the same name and content. */
    private static ZipArchiveEntry like(ZipArchiveEntry entry) {
        ZipArchiveEntry like = named(entry);
        like.setMethod(entry.getMethod());
        like.setSize(entry.getSize());
        like.setCompressedSize(entry.getCompressedSize());
        like.setCrc(entry.getCrc());
        return like;
    }

    private static void splice(String frame, ZipArchiveEntry empty, StreamedSheet rows, ZipArchiveOutputStream to)
            throws IOException {
        int at = frame.indexOf(EMPTY);
        if (at < 0) {
            throw new IllegalStateException(
                    "the library wrote rows into a sheet whose rows are ours: " + empty.getName());
        }
        DeflatedPart head = DeflatedPart.of(Utf8.bytes(frame.substring(0, at) + "<sheetData>"));
        DeflatedPart tail = DeflatedPart.last(Utf8.bytes("</sheetData>" + frame.substring(at + EMPTY.length())));
        ZipArchiveEntry entry = named(empty);
        entry.setSize(head.length() + rows.length() + tail.length());
        entry.setCompressedSize(head.deflatedLength() + rows.deflatedLength() + tail.deflatedLength());
        int crc = JoinedCrc.of(head.crc(), rows.crc(), rows.length());
        entry.setCrc(Integer.toUnsignedLong(JoinedCrc.of(crc, tail.crc(), tail.length())));
        try (InputStream all =
                new SequenceInputStream(Collections.enumeration(List.of(head.stream(), rows.rows(), tail.stream())))) {
            to.addRawArchiveEntry(entry, all);
        }
    }

    /** Removes all rows that wait. */
    @Override
    public void close() throws IOException {
        IOException failed = null;
        for (StreamedSheet sheet : sheets) {
            try {
                sheet.close();
            } catch (IOException e) {
                failed = e;
            }
        }
        if (failed != null) {
            throw failed;
        }
    }
}
