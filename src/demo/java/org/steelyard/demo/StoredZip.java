package org.steelyard.demo;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.time.LocalDateTime;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;

/**
 * Packs a zip archive again without compression and with one time for all: what compression gives differs by machine.
 */
final class StoredZip {

    private static final LocalDateTime STAMP = LocalDateTime.of(2026, 9, 1, 6, 0);

    private StoredZip() {}

    static byte[] of(byte[] zip) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(zip));
                ZipOutputStream out = new ZipOutputStream(bytes)) {
            for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
                byte[] content = in.readAllBytes();
                out.putNextEntry(stored(entry.getName(), content));
                out.write(content);
                out.closeEntry();
            }
        }
        return bytes.toByteArray();
    }

    private static ZipEntry stored(String name, byte[] content) {
        CRC32 checksum = new CRC32();
        checksum.update(content);
        ZipEntry entry = new ZipEntry(name);
        entry.setMethod(ZipEntry.STORED);
        entry.setSize(content.length);
        entry.setCrc(checksum.getValue());
        entry.setTimeLocal(STAMP);
        return entry;
    }
}
