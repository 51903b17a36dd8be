package org.steelyard.spark;

import java.io.Closeable;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.steelyard.read.season.RawRows;
import org.steelyard.read.season.SourceFile;

/** A piece of a season being read, on this machine, by the reader of season files. */
final class OpenPiece implements Closeable {

    private static final int BATCH_ROWS = 500;

    private final Scratch scratch;
    private final SourceFile source;
    private final Piece piece;
    private long rows;

    private OpenPiece(Scratch scratch, SourceFile source, Piece piece) {
        this.scratch = scratch;
        this.source = source;
        this.piece = piece;
    }

    static OpenPiece open(Piece piece, Setup setup, Store store) throws IOException {
        Scratch scratch = new Scratch();
        try {
            SourceFile source;
            if (piece.name().endsWith(".parquet")) {
                source = ParquetInput.open(piece.address(), piece.name(), setup);
            } else {
                Path local = scratch.folder().resolve(piece.name());
                try (OutputStream out = Files.newOutputStream(local)) {
                    if (!piece.isWhole()) {
                        store.fetch(piece.address(), 0, piece.headBytes(), out);
                    }
                    store.fetch(piece.address(), piece.from(), piece.to(), out);
                }
                source = SourceFile.open(local, setup.reading(), setup.tails());
            }
            return new OpenPiece(scratch, source, piece);
        } catch (IOException | RuntimeException e) {
            try (scratch) {
                throw e;
            }
        }
    }

    /** The next rows, numbered as in the whole file; empty at the end. */
    Optional<RawRows> next() {
        Optional<RawRows> batch = source.nextBatch(BATCH_ROWS);
        if (batch.isPresent() && !piece.isWhole()) {
            RawRows own = batch.get().ofPiece(piece.headRows(), piece.before());
            rows += own.rows().size();
            return piece.first() ? batch : Optional.of(own); // the first piece has the rows of the head, too
        }
        return batch;
    }

    /** Whether its rows make sense only with what it does not hold, or are not those that were counted. */
    boolean isDoubtful() {
        return !piece.isWhole()
                && (source.lookedAbove() || !source.problems().isEmpty() || rows != piece.records());
    }

    SourceFile source() {
        return source;
    }

    @Override
    public void close() throws IOException {
        try (scratch) {
            source.close();
        }
    }
}
