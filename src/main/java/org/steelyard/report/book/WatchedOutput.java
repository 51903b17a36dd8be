package org.steelyard.report.book;

import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.util.Optional;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** The library turns a disk that is full into a fault of its own, without the cause; this remembers the cause. */
public final class WatchedOutput extends FilterOutputStream {

    private Optional<IOException> failed = Optional.empty();

    public WatchedOutput(OutputStream out) {
        super(out);
    }

    /**
     * Writes a workbook.
     *
     * @throws IOException if the bytes cannot be written, whatever the library makes of it
     */
    public void write(XSSFWorkbook book) throws IOException {
        try {
            book.write(this);
        } catch (RuntimeException e) {
            if (failed.isEmpty()) {
                throw e;
            }
        }
        if (failed.isPresent()) {
            throw failed.get();
        }
    }

    @Override
    public void write(int one) throws IOException {
        write(new byte[] {(byte) one}, 0, 1);
    }

    @Override
    public void write(byte[] bytes, int from, int count) throws IOException {
        try {
            out.write(bytes, from, count);
        } catch (IOException e) {
            failed = Optional.of(failed.orElse(e));
            throw e;
        }
    }
}
