package org.steelyard.run;

import java.io.IOException;
import java.util.List;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Stream;
import org.steelyard.analyse.season.SeasonSummary;
import org.steelyard.check.type.NotChecked;
import org.steelyard.read.row.Tails;
import org.steelyard.read.season.SeasonFiles;
import org.steelyard.read.table.SeasonFolder;
import org.steelyard.read.table.SeasonUnreadableException;
import org.steelyard.report.file.Destination;
import org.steelyard.report.file.OutputList;
import org.steelyard.report.output.RunFacts;
import org.steelyard.report.season.SeasonReports;

/** Audits one season. */
public final class SeasonRun {

    private static final int BATCHES_AHEAD_PER_THREAD = 2;

    private SeasonRun() {}

    /**
     * Reads a season, audits every flight and writes the reports.
     *
     * @param request what and how
     * @param progress hears how it gets on
     * @return what came of it
     * @throws SeasonUnreadableException if there is nothing to read where the season should be
     * @throws IOException if the reports cannot be written; those of an earlier run are then still whole
     * @throws InterruptedException if the calling thread is interrupted
     */
    public static SeasonOutcome audit(SeasonRequest request, Progress progress)
            throws SeasonUnreadableException, IOException, InterruptedException {
        SeasonFolder folder = SeasonFolder.list(request.season(), OutputList.isIn(request.season()));
        Destination to = new Destination(request.reports(), folder.files(), request.force());
        to.at(request.reports().resolve(request.name())).requireApartFrom(request.season());
        SeasonFiles files = SeasonFiles.of(
                folder.files(),
                request.reading(),
                Tails.of(
                        request.configuration().tails().values(),
                        request.configuration().schemes().values()));
        Duplicates duplicates = new Duplicates(request.configuration().policy().duplicates());
        duplicates.survey(files);
        ExecutorService workers = Executors.newFixedThreadPool(request.threads());
        try (SeasonReports reports = SeasonReports.open(
                        to, request.name(), request.configuration().policy(), request.by(), request.room())
                .writtenBy(workers, request.threads() * BATCHES_AHEAD_PER_THREAD)) {
            BlockingQueue<Future<ReadStep>> steps =
                    new ArrayBlockingQueue<>(request.threads() * BATCHES_AHEAD_PER_THREAD);
            Collector collector =
                    new Collector(steps, reports, progress, folder.files().size(), duplicates);
            collect(request, files, workers, steps, collector);
            duplicates.forget();
            requireRows(collector);
            progress.finishing();
            RunFacts facts = facts(request, folder, collector);
            SeasonSummary summary = reports.finish(facts);
            return new SeasonOutcome(
                    summary,
                    facts,
                    collector.problems(),
                    request.reports().resolve(request.name()),
                    reports.fileNames(),
                    request.configuration().policy().chance());
        } finally {
            workers.shutdownNow();
        }
    }

    private static void collect(
            SeasonRequest request,
            SeasonFiles files,
            ExecutorService workers,
            BlockingQueue<Future<ReadStep>> steps,
            Collector collector)
            throws IOException, InterruptedException {
        Thread reader = new Thread(
                new Reading(files, new RowAuditor(request.configuration().policy()), workers, steps),
                "steelyard-reading");
        try {
            reader.start();
            collector.collect();
        } finally {
            reader.interrupt();
            reader.join();
        }
    }

    /** Where no file gave a single row, the reports of an earlier run are worth more than empty ones. */
    private static void requireRows(Collector collector) throws SeasonUnreadableException {
        boolean nothing = collector.inputs().stream().allMatch(input -> input.rowsSeen() == 0);
        if (nothing && !collector.problems().isEmpty()) {
            throw new SeasonUnreadableException(collector.problems());
        }
    }

    private static RunFacts facts(SeasonRequest request, SeasonFolder folder, Collector collector) {
        List<RunFacts.ConfigFile> config = request.configuration().sources().stream()
                .map(source -> new RunFacts.ConfigFile(source.path(), source.sha256()))
                .toList();
        List<RunFacts.SkippedFile> skipped = Stream.concat(
                        folder.skipped().stream(), collector.skippedSheets().stream())
                .map(entry -> new RunFacts.SkippedFile(entry.name(), entry.reason()))
                .toList();
        return new RunFacts(
                request.name(),
                request.version(),
                request.options(),
                collector.inputs(),
                config,
                skipped,
                collector.skippedRows(),
                List.of(),
                request.configuration().types().values().stream()
                        .flatMap(type -> NotChecked.of(type).stream())
                        .toList());
    }
}
