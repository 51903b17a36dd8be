package org.steelyard.run;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Future;
import org.steelyard.model.input.InputProblem;
import org.steelyard.model.input.ProblemCode;
import org.steelyard.model.loading.Origin;
import org.steelyard.read.season.SeasonFiles;
import org.steelyard.read.season.SourceFile;
import org.steelyard.read.table.Unreadable;
import org.steelyard.report.file.FileSum;

/**
 * The reading thread: goes through the files and hands batches of rows to the workers, in order; files of load items
 * after those of flights, which have claimed their items by then, and files of rejected rows last.
 */
final class Reading implements Runnable {

    private static final int BATCH_ROWS = 500;

    private final SeasonFiles files;
    private final RowAuditor auditor;
    private final ExecutorService workers;
    private final BlockingQueue<Future<ReadStep>> steps;

    Reading(SeasonFiles files, RowAuditor auditor, ExecutorService workers, BlockingQueue<Future<ReadStep>> steps) {
        this.files = files;
        this.auditor = auditor;
        this.workers = workers;
        this.steps = steps;
    }

    @Override
    public void run() {
        try {
            ReadStep last = new ReadStep.End();
            try {
                List<Path> ordered = files.inOrder();
                for (int i = 0; i < ordered.size(); i++) {
                    read(ordered.get(i), i + 1);
                }
            } catch (IOException | RuntimeException | Error e) {
                last = new ReadStep.Failed(e);
            }
            put(last);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt(); // the collector has given up and does not wait for anything
        }
    }

    private void read(Path file, int number) throws IOException, InterruptedException {
        String name = String.valueOf(file.getFileName());
        try {
            FileSum sum = FileSum.of(file);
            put(new ReadStep.FileBegins(name, sum.sha256(), sum.bytes(), number));
        } catch (IOException e) {
            put(new ReadStep.FileBegins(name, "", 0, number));
            put(new ReadStep.FileEnds("", List.of(), List.of(), List.of(unreadable(file, e))));
            return;
        }
        try (SourceFile source = files.open(file)) {
            source.forEachBatch(
                    BATCH_ROWS, rows -> steps.put(workers.submit(() -> new ReadStep.Rows(auditor.audit(rows)))));
            put(new ReadStep.FileEnds(
                    String.join(", ", source.mapNames()), source.notes(), source.skipped(), source.problems()));
        }
    }

    private static InputProblem unreadable(Path file, IOException e) {
        return new InputProblem(
                new Origin(String.valueOf(file.getFileName()), "", 0),
                "",
                ProblemCode.UNREADABLE,
                "the file cannot be read: " + Unreadable.why(file, e),
                "",
                "a file that may be read");
    }

    private void put(ReadStep step) throws InterruptedException {
        steps.put(CompletableFuture.completedFuture(step));
    }
}
