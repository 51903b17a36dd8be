package org.steelyard.report.season;

import java.io.IOException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;
import java.util.Queue;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.Executor;
import org.steelyard.check.result.AuditedFlight;
import org.steelyard.report.output.SeasonOutput;
import org.steelyard.report.text.Work;
import org.steelyard.report.text.Work.Addition;

/**
 * Batches of flights on their way into the outputs: begun in order, made by workers, added in the order in which they
 * were begun. For one thread but for the making.
 */
final class OrderedBatches {

    private final Executor workers;
    private final int mostWaiting;
    private final Queue<CompletableFuture<Addition>> waiting = new ArrayDeque<>();

    /**
     * A line.
     *
     * @param workers do the making
     * @param mostWaiting how many batches may be on their way
     */
    OrderedBatches(Executor workers, int mostWaiting) {
        this.workers = workers;
        this.mostWaiting = mostWaiting;
    }

    void put(List<AuditedFlight> flights, List<SeasonOutput> outputs) throws IOException {
        List<Work> works = new ArrayList<>(outputs.size());
        for (SeasonOutput output : outputs) {
            works.add(output.begin(flights));
        }
        waiting.add(CompletableFuture.supplyAsync(Work.all(works)::make, workers));
        while (waiting.size() > mostWaiting) {
            addFirst();
        }
    }

    /** Adds all that is on its way. */
    void drain() throws IOException {
        while (!waiting.isEmpty()) {
            addFirst();
        }
    }

    private void addFirst() throws IOException {
        made(waiting.remove()).add();
    }

    private static Addition made(CompletableFuture<Addition> made) {
        try {
            return made.join();
        } catch (CompletionException e) {
            if (e.getCause() instanceof RuntimeException cause) {
                throw cause;
            }
            if (e.getCause() instanceof Error cause) {
                throw cause;
            }
            throw e;
        }
    }
}
