package org.steelyard.read.table.xlsx;

import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.zip.CRC32;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.poi.openxml4j.util.ZipSecureFile;

/**
 * The archive that a workbook is, looked through before anything of it is used: the library hands out members whose
 * checksums do not fit, and one bit makes another figure. What is packed suspiciously small is not unpacked.
 */
final class XlsxArchive {

    private static final String EXPECTED = "a workbook saved as .xlsx";
    private static final String KIND = "mimetype";
    private static final String CONTENTS = "[Content_Types].xml";
    private static final String OPEN_DOCUMENT = "application/vnd.oasis.opendocument.";
    private static final int LONGEST_KIND = 200;
    private static final long MOST_DIRECTORY_BYTES = 4 << 20;

    private XlsxArchive() {}

    /**
     * Goes through all members.
     *
     * @throws XlsxLimitException if it is an archive of another kind, a member is not what its checksum says, or its
     *     list of contents is too large
     */
    static void requireSound(File file) throws IOException {
        try (ZipSecureFile zip = new ZipSecureFile(file)) {
            requireWorkbook(zip);
            for (ZipArchiveEntry member : Collections.list(zip.getEntries())) {
                requireSound(zip, member);
            }
        }
    }

    private static void requireWorkbook(ZipSecureFile zip) throws IOException {
        ZipArchiveEntry kind = zip.getEntry(KIND);
        if (kind != null) {
            try (InputStream bytes = zip.getInputStream(kind)) {
                String text = new String(bytes.readNBytes(LONGEST_KIND), StandardCharsets.US_ASCII);
                if (text.startsWith(OPEN_DOCUMENT)) {
                    throw new XlsxLimitException(
                            text.startsWith("spreadsheet", OPEN_DOCUMENT.length())
                                    ? "the file is an OpenDocument spreadsheet (.ods) under the name of a workbook"
                                    : "the file is an OpenDocument file, not a spreadsheet",
                            EXPECTED);
                }
            }
        }
        List<ZipArchiveEntry> members = Collections.list(zip.getEntries());
        if (!members.isEmpty()
                && members.stream().noneMatch(member -> member.getName().equalsIgnoreCase(CONTENTS))) {
            throw new XlsxLimitException("the file is an archive, but no workbook", EXPECTED);
        }
    }

    private static void requireSound(ZipSecureFile zip, ZipArchiveEntry member) throws IOException {
        long most = isDirectory(member) ? MOST_DIRECTORY_BYTES : Long.MAX_VALUE;
        CRC32 checksum = new CRC32();
        long size = 0;
        try (InputStream bytes = zip.getInputStream(member)) {
            byte[] chunk = new byte[1 << 13];
            for (int n = bytes.read(chunk); n >= 0; n = bytes.read(chunk)) {
                checksum.update(chunk, 0, n);
                size += n;
                if (size > most) {
                    throw new XlsxLimitException(
                            "the workbook's list of contents unpacks to a suspicious size",
                            "a workbook as spreadsheet programs save it");
                }
            }
        }
        if (checksum.getValue() != member.getCrc() || size != member.getSize()) {
            throw new XlsxLimitException(
                    "the workbook is damaged: '" + member.getName() + "' is not what its checksum says",
                    "a workbook that opens without repair");
        }
    }

    /** Lists of contents, relationships and properties, which the library takes into memory as they are. */
    private static boolean isDirectory(ZipArchiveEntry member) {
        String name = member.getName().toLowerCase(Locale.ROOT);
        return name.endsWith(".rels") || name.startsWith("[content") || name.startsWith("docprops/");
    }
}
