package org.steelyard.report.season;

import java.io.Closeable;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.steelyard.model.input.RejectedRow;
import org.steelyard.model.input.SkippedRow;
import org.steelyard.report.file.OutputFile;
import org.steelyard.report.output.csv.RejectedCsv;
import org.steelyard.report.output.csv.SkippedCsv;

/** Rejected rows and rows passed over of a part of a season, each in a file of its own if there are any. */
public final class PartReports implements Closeable {

    private final Path rejectedFile;
    private final Path skippedFile;
    private final Path waiting;
    private Optional<RejectedCsv> rejected = Optional.empty();
    private Optional<SkippedCsv> skipped = Optional.empty();

    /**
     * A part without rows.
     *
     * @param folder an empty folder
     */
    public PartReports(Path folder) {
        rejectedFile = folder.resolve(OutputFile.REJECTED.fileName());
        skippedFile = folder.resolve(OutputFile.SKIPPED.fileName());
        waiting = folder.resolve("rejected.waiting");
    }

    /**
     * Takes the next row that is no flight.
     *
     * @param row the row with its reasons
     * @throws IOException if the file cannot be written
     */
    public void rejected(RejectedRow row) throws IOException {
        if (rejected.isEmpty()) {
            rejected = Optional.of(new RejectedCsv(rejectedFile, waiting));
        }
        rejected.get().rejected(row);
    }

    /**
     * Takes the next row that is passed over.
     *
     * @param row the row with its reason
     * @throws IOException if the file cannot be written
     */
    public void skipped(SkippedRow row) throws IOException {
        if (skipped.isEmpty()) {
            skipped = Optional.of(new SkippedCsv(skippedFile));
        }
        skipped.get().skipped(row);
    }

    /** The rejected rows once closed; empty if there are none. */
    public Optional<Path> rejectedFile() {
        return rejected.map(file -> rejectedFile);
    }

    /** The rows passed over once closed; empty if there are none. */
    public Optional<Path> skippedFile() {
        return skipped.map(file -> skippedFile);
    }

    /** Writes what is left. */
    @Override
    public void close() throws IOException {
        if (rejected.isPresent() && Files.exists(waiting)) {
            try (RejectedCsv file = rejected.get()) {
                file.write();
            }
        }
        if (skipped.isPresent()) {
            skipped.get().close();
        }
    }
}
