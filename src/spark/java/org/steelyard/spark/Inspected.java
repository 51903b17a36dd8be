package org.steelyard.spark;

import java.io.IOException;
import java.io.InputStream;
import java.io.Serializable;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.steelyard.read.season.SeasonFiles;
import org.steelyard.read.season.SourceFile;
import org.steelyard.read.table.TextForm;
import org.steelyard.report.file.FileSum;

/**
 * What a look at a file says of how it is to be read.
 *
 * @param file its place in the season
 * @param sha256 its checksum
 * @param items whether it holds load items
 * @param rejected whether it holds rejected rows
 * @param delimiter what stands between its cells; 0 if it is to be read as a whole
 * @param headBytes length of the head behind which pieces of it are read
 * @param headRows lines of the head
 */
record Inspected(int file, String sha256, boolean items, boolean rejected, char delimiter, long headBytes, long headRows)
        implements Serializable {

    /** The reader of season files decides by so many bytes how a text is to be read. */
    private static final int HEAD_BYTES = 1 << 16;

    private static final int LOOK_BYTES = 1 << 17;
    private static final int FARTHEST_BYTES = 1 << 22;

    static Inspected of(int number, SeasonFile file, Setup setup, Store store) throws IOException {
        String sha256;
        try (InputStream in = store.open(file.address())) {
            sha256 = FileSum.of(in).sha256();
        }
        if (file.isParquet()) {
            return new Inspected(number, sha256, false, false, '\0', 0, 0);
        }
        boolean text = !file.name().toLowerCase(Locale.ROOT).endsWith(".xlsx");
        try (Scratch scratch = new Scratch()) {
            Path local = scratch.folder().resolve(file.name());
            store.fetch(file.address(), text ? Math.min(file.bytes(), LOOK_BYTES) : file.bytes(), local);
            SeasonFiles alone = SeasonFiles.of(List.of(local), setup.reading(), setup.tails());
            Inspected whole =
                    new Inspected(number, sha256, alone.haveItems(), alone.haveRejectedRows(), '\0', 0, 0);
            if (!text || file.bytes() <= 2L * HEAD_BYTES) {
                return whole;
            }
            try (SourceFile source = SourceFile.open(local, setup.reading(), setup.tails())) {
                Optional<TextForm> form = source.form().filter(Inspected::canBeCut);
                return form.isPresent() ? whole.withHead(file, form.get(), store) : whole;
            }
        }
    }

    /** Whether delimiters, quotation marks and line ends are single bytes that mean nothing else. */
    private static boolean canBeCut(TextForm form) {
        String charset = form.charset().name();
        boolean plain = form.charset().equals(StandardCharsets.UTF_8)
                || form.charset().equals(StandardCharsets.US_ASCII)
                || charset.startsWith("ISO-8859-")
                || charset.startsWith("windows-125");
        return plain && form.delimiter() < 128;
    }

    private Inspected withHead(SeasonFile of, TextForm form, Store store) throws IOException {
        long middle = Cuts.place(HEAD_BYTES, of, store);
        long end = Cuts.place(Math.min(of.bytes(), middle + FARTHEST_BYTES), of, store);
        TextScan head = Cuts.scan(of, form.markBytes(), middle, form.delimiter(), store);
        TextScan behind = Cuts.scan(of, middle, end, form.delimiter(), store);
        int state = head.endState(TextScan.RECORD);
        long first = behind.firstRecord(state);
        return first < 0 || first >= of.bytes()
                ? this
                : new Inspected(
                        file,
                        sha256,
                        items,
                        rejected,
                        form.delimiter(),
                        first,
                        head.lines() + behind.linesToFirst(state));
    }
}
