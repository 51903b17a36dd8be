package org.steelyard.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.steelyard.read.row.Fixtures.MAP;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.steelyard.read.season.ReadAll;

/** Workbooks of which one bit was turned on the way: none is read as if nothing were. */
class DamagedWorkbookTest {

    private static final long SEED = 20261130;
    private static final int WORKBOOKS = 300;
    private static final String[] HEADINGS = {"Flight", "Date", "Tail", "Pax A", "Fuel", "Taxi", "Trip", "Pilot"};

    @TempDir
    private Path folder;

    private byte[] sound;

    @BeforeEach
    void write() throws IOException {
        try (XSSFWorkbook workbook = new XSSFWorkbook();
                ByteArrayOutputStream out = new ByteArrayOutputStream()) {
            Sheet sheet = workbook.createSheet("Season");
            fill(sheet.createRow(0), HEADINGS);
            for (int i = 1; i <= 20; i++) {
                fill(
                        sheet.createRow(i),
                        "T" + i,
                        "2024-05-01",
                        "SX-BAA",
                        "10",
                        String.valueOf(3000 + i),
                        "100",
                        "1500");
            }
            workbook.write(out);
            sound = out.toByteArray();
        }
    }

    private static void fill(Row row, String... cells) {
        for (int i = 0; i < cells.length; i++) {
            row.createCell(i).setCellValue(cells[i]);
        }
    }

    /** The same members, packed or as they are. */
    private static byte[] again(byte[] archive, boolean stored) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(archive));
                ZipOutputStream out = new ZipOutputStream(bytes)) {
            for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
                byte[] content = in.readAllBytes();
                ZipEntry copy = new ZipEntry(entry.getName());
                if (stored) {
                    CRC32 checksum = new CRC32();
                    checksum.update(content);
                    copy.setMethod(ZipEntry.STORED);
                    copy.setSize(content.length);
                    copy.setCrc(checksum.getValue());
                }
                out.putNextEntry(copy);
                out.write(content);
            }
        }
        return bytes.toByteArray();
    }

    private ReadAll read(byte[] archive) throws IOException {
        return ReadAll.of(Files.write(folder.resolve("s.xlsx"), archive), MAP);
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void oneBitTurnedIsToldOrChangesNothingThatWasRead(boolean stored) throws IOException {
        byte[] whole = again(sound, stored);
        ReadAll expected = read(whole);
        assertThat(expected.accepted()).hasSize(20);
        assertThat(expected.problems()).isEmpty();
        Random random = new Random(SEED);
        for (int i = 0; i < WORKBOOKS; i++) {
            byte[] damaged = whole.clone();
            int bit = random.nextInt(8 * damaged.length);
            damaged[bit / 8] ^= (byte) (1 << (bit % 8));
            ReadAll read = read(damaged);
            if (read.problems().isEmpty()) {
                assertThat(read).as("bit " + bit + ", seed " + SEED).isEqualTo(expected);
            }
        }
    }

    @Test
    void aFigureTurnedInAStoredMemberIsNotRead() throws IOException {
        byte[] whole = again(sound, true);
        String text = new String(whole, StandardCharsets.ISO_8859_1);
        int at = text.indexOf("<t>3007</t>");
        assertThat(at).isPositive();
        whole[at + "<t>".length()] ^= 1;
        ReadAll read = read(whole);
        assertThat(read.accepted()).isEmpty();
        assertThat(read.problems())
                .containsExactly("s.xlsx: the workbook is damaged: 'xl/sharedStrings.xml' is not what its checksum says"
                        + " (expected a workbook that opens without repair)");
    }

    @Test
    void aMemberThatTheTableDoesNotNeedIsCheckedToo() throws IOException {
        byte[] whole = again(sound, true);
        int at = new String(whole, StandardCharsets.ISO_8859_1).indexOf("<dc:creator>");
        assertThat(at).isPositive();
        whole[at + 13] ^= 1;
        assertThat(read(whole).problems())
                .singleElement()
                .asString()
                .contains("'docProps/core.xml' is not what its checksum says");
    }

    @Test
    void aWorkbookOfTheOpenDocumentKindIsCalledThat() throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream out = new ZipOutputStream(bytes)) {
            ZipEntry kind = new ZipEntry("mimetype");
            byte[] content = "application/vnd.oasis.opendocument.spreadsheet".getBytes(StandardCharsets.US_ASCII);
            CRC32 checksum = new CRC32();
            checksum.update(content);
            kind.setMethod(ZipEntry.STORED);
            kind.setSize(content.length);
            kind.setCrc(checksum.getValue());
            out.putNextEntry(kind);
            out.write(content);
            out.putNextEntry(new ZipEntry("content.xml"));
            out.write("<office:document-content/>".getBytes(StandardCharsets.US_ASCII));
        }
        assertThat(read(bytes.toByteArray()).problems())
                .containsExactly("s.xlsx: the file is an OpenDocument spreadsheet (.ods) under the name of a workbook"
                        + " (expected a workbook saved as .xlsx)");
    }

    @Test
    void anArchiveOfSomethingElseIsCalledThat() throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream out = new ZipOutputStream(bytes)) {
            out.putNextEntry(new ZipEntry("season.csv"));
            out.write("flight".getBytes(StandardCharsets.US_ASCII));
        }
        assertThat(read(bytes.toByteArray()).problems())
                .containsExactly(
                        "s.xlsx: the file is an archive, but no workbook (expected a workbook saved as .xlsx)");
    }
}
