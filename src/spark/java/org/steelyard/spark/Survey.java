package org.steelyard.spark;

import java.io.IOException;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.steelyard.model.loading.Loading;
import org.steelyard.read.row.FlightKey;
import org.steelyard.read.row.ParsedRow;
import org.steelyard.read.season.RawRows;
import org.steelyard.read.season.SourceFile;

/**
 * The first pass over a piece: how many flights it holds, so that each flight's place in the season is known, and the
 * keys of its flights, by which those that stand twice are found.
 *
 * @param piece number of the piece
 * @param file place of its file
 * @param flights rows that are flights
 * @param doubtful whether the file is to be read as a whole
 * @param said what the reading of the file says of it as a whole
 * @param keys keys of the flights in order
 */
record Survey(int piece, int file, long flights, boolean doubtful, Said said, List<Key> keys)
        implements Serializable {

    /**
     * What is said of a file.
     *
     * @param maps names of the heading maps
     * @param notes what is to be known of it
     * @param skipped sheets that were not read, each with the reason behind it
     * @param problems what is wrong with it
     */
    record Said(
            List<String> maps,
            List<String> notes,
            List<String> skipped,
            List<Sent.Problem> problems)
            implements Serializable {}

    /** The key of a flight, and where it stands. */
    record Key(long high, long low, int places, long content, int piece, int index, Sent.Place place)
            implements Serializable {

        FlightKey key() {
            return new FlightKey(high, low, places, content);
        }
    }

    static Survey of(Piece piece, Setup setup, Store store) throws IOException {
        List<Key> keys = new ArrayList<>();
        try (OpenPiece open = OpenPiece.open(piece, setup, store)) {
            for (Optional<RawRows> batch = open.next(); batch.isPresent(); batch = open.next()) {
                keys(batch.get(), piece.number(), keys);
            }
            return new Survey(piece.number(), piece.file(), keys.size(), open.isDoubtful(), said(open.source()), keys);
        }
    }

    private static void keys(RawRows rows, int piece, List<Key> keys) {
        List<ParsedRow> parsed = rows.parse();
        for (int i = 0; i < parsed.size(); i++) {
            if (parsed.get(i) instanceof ParsedRow.Accepted accepted) {
                Loading loading = accepted.loading();
                FlightKey key = rows.reader().key(rows.rows().get(i), loading);
                keys.add(new Key(
                        key.high(),
                        key.low(),
                        key.places(),
                        key.content(),
                        piece,
                        keys.size(),
                        Sent.Place.of(loading.origin())));
            }
        }
    }

    private static Said said(SourceFile source) {
        List<String> skipped = new ArrayList<>();
        source.skipped().forEach(sheet -> {
            skipped.add(sheet.name());
            skipped.add(sheet.reason());
        });
        return new Said(
                new ArrayList<>(source.mapNames()),
                new ArrayList<>(source.notes()),
                skipped,
                Sent.problems(source.problems()));
    }

    Survey withoutKeys() {
        return new Survey(piece, file, flights, doubtful, said, new ArrayList<>());
    }
}
