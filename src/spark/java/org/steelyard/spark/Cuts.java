package org.steelyard.spark;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.hadoop.fs.FSDataInputStream;

/** Cuts a text into pieces of whole records. */
final class Cuts {

    private Cuts() {}

    /** The place nearest to one at which two signs of a line end are not parted. */
    static long place(long wanted, SeasonFile file, Store store) throws IOException {
        if (wanted <= 0 || wanted >= file.bytes()) {
            return Math.min(wanted, file.bytes());
        }
        try (FSDataInputStream in = store.openAnywhere(file.address())) {
            in.seek(wanted - 1);
            return in.read() == '\r' && in.read() == '\n' ? wanted + 1 : wanted;
        }
    }

    static TextScan scan(SeasonFile file, long from, long to, char delimiter, Store store) throws IOException {
        try (FSDataInputStream in = store.openAnywhere(file.address())) {
            in.seek(from);
            return TextScan.of(in, from, to, delimiter);
        }
    }

    /**
     * Puts scanned stretches together.
     *
     * @param file the file
     * @param look what is known of it
     * @param scans its stretches from the end of the head to the end of the file, in order
     * @return pieces in order; the whole file where it cannot be cut
     */
    static List<Piece> pieces(SeasonFile file, Inspected look, List<TextScan> scans) {
        List<Long> starts = new ArrayList<>();
        List<Long> before = new ArrayList<>();
        List<Long> records = new ArrayList<>();
        int state = TextScan.RECORD;
        long lines = 0;
        long ends = 0;
        for (TextScan scan : scans) {
            long first = scan.firstRecord(state);
            boolean isNew = starts.isEmpty() || first > starts.get(starts.size() - 1);
            if (first >= 0 && first < file.bytes() && isNew) {
                starts.add(first);
                before.add(lines + scan.linesToFirst(state));
                records.add(ends + (first == scan.from() ? 0 : 1));
            }
            lines += scan.lines();
            ends += scan.ends(state);
            state = scan.endState(state);
        }
        long last = ends + (state == TextScan.RECORD ? 0 : 1);
        List<Piece> pieces = new ArrayList<>();
        for (int i = 0; i < starts.size(); i++) {
            boolean isLast = i + 1 == starts.size();
            pieces.add(new Piece(
                    0,
                    look.file(),
                    file.address(),
                    file.name(),
                    look.headBytes(),
                    look.headRows(),
                    starts.get(i),
                    isLast ? file.bytes() : starts.get(i + 1),
                    before.get(i),
                    (isLast ? last : records.get(i + 1)) - records.get(i)));
        }
        if (pieces.isEmpty()) {
            pieces.add(Piece.whole(look.file(), file));
        }
        return pieces;
    }
}
