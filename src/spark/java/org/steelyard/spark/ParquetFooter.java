package org.steelyard.spark;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.apache.parquet.format.Encoding;
import org.apache.parquet.format.FileMetaData;
import org.apache.parquet.format.Util;

/**
 * The end of a Parquet file, which says what is in it: after the description follow its length in four bytes, least first,
 * and four letters. Parquet lists the encodings of a column in an order that is another in every process.
 */
final class ParquetFooter {

    private static final int LETTERS = 4;
    private static final int TAIL = LETTERS + Integer.BYTES;

    private ParquetFooter() {}

    /** Puts all lists of encodings in order, so that the same rows give the same bytes. */
    static void settle(Path file) throws IOException {
        try (RandomAccessFile open = new RandomAccessFile(file.toFile(), "rw")) {
            byte[] tail = read(open, open.length() - TAIL, Integer.BYTES);
            int length = ByteBuffer.wrap(tail).order(ByteOrder.LITTLE_ENDIAN).getInt();
            long from = open.length() - TAIL - length;
            byte[] settled = settled(read(open, from, length));
            if (settled.length != length) {
                throw new IOException("the description of " + file + " has another length in order");
            }
            open.seek(from);
            open.write(settled);
        }
    }

    private static byte[] read(RandomAccessFile file, long from, int length) throws IOException {
        byte[] bytes = new byte[length];
        file.seek(from);
        file.readFully(bytes);
        return bytes;
    }

    private static byte[] settled(byte[] description) throws IOException {
        FileMetaData all = Util.readFileMetaData(new ByteArrayInputStream(description));
        all.getRow_groups().stream()
                .flatMap(group -> group.getColumns().stream())
                .map(column -> column.getMeta_data())
                .forEach(column -> {
                    List<Encoding> encodings = new ArrayList<>(column.getEncodings());
                    Collections.sort(encodings);
                    column.setEncodings(encodings);
                });
        ByteArrayOutputStream out = new ByteArrayOutputStream(description.length);
        Util.writeFileMetaData(all, out);
        return out.toByteArray();
    }
}
