package org.steelyard.run;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Future;
import org.steelyard.check.AuditedFlight;
import org.steelyard.model.InputProblem;
import org.steelyard.model.Loading;
import org.steelyard.model.Origin;
import org.steelyard.model.RejectedRow;
import org.steelyard.model.SkippedRow;
import org.steelyard.read.SeasonFolder.Skipped;
import org.steelyard.report.RunFacts.InputFile;
import org.steelyard.report.SeasonReports;
import org.steelyard.report.SkippedRows;

/** Takes what the workers made in the order of the input, counts it and hands it to the reports. */
final class Collector {

    private final BlockingQueue<Future<Step>> steps;
    private final SeasonReports reports;
    private final Progress progress;
    private final int files;
    private final List<InputFile> inputs = new ArrayList<>();
    private final List<InputProblem> problems = new ArrayList<>();
    private final List<Skipped> skippedSheets = new ArrayList<>();
    private final SkippedRowsTally skippedRows = new SkippedRowsTally();
    private final Duplicates duplicates;

    private Step.FileBegins file = new Step.FileBegins("", "", 0, 0);
    private long allRows;
    private long accepted;
    private long rejected;
    private long blank;
    private long items;
    private long skipped;
    private long countedAgain;
    private long countedToo;
    private String firstCounted = "";

    Collector(
            BlockingQueue<Future<Step>> steps,
            SeasonReports reports,
            Progress progress,
            int files,
            Duplicates duplicates) {
        this.steps = steps;
        this.reports = reports;
        this.progress = progress;
        this.files = files;
        this.duplicates = duplicates;
    }

    List<InputFile> inputs() {
        return inputs;
    }

    List<InputProblem> problems() {
        return problems;
    }

    List<Skipped> skippedSheets() {
        return skippedSheets;
    }

    SkippedRows skippedRows() {
        return skippedRows.all();
    }

    /** Runs until there are no more files. */
    void collect() throws IOException, InterruptedException {
        Step step = next();
        while (!(step instanceof Step.End)) {
            take(step);
            step = next();
        }
    }

    private Step next() throws InterruptedException {
        try {
            return steps.take().get();
        } catch (ExecutionException e) {
            return new Step.Failed(e.getCause());
        }
    }

    private void take(Step step) throws IOException {
        if (step instanceof Step.Rows rows) {
            take(rows.rows());
            allRows += rows.rows().size();
            progress.rows(allRows);
        } else if (step instanceof Step.FileBegins begins) {
            file = begins;
            accepted = 0;
            rejected = 0;
            blank = 0;
            items = 0;
            skipped = 0;
            countedAgain = 0;
            countedToo = 0;
            firstCounted = "";
            progress.file(begins.name(), begins.number(), files);
        } else if (step instanceof Step.FileEnds ends) {
            end(ends);
        } else if (step instanceof Step.Failed failed) {
            throw rethrown(failed.cause());
        }
    }

    private void take(List<AuditedRow> rows) throws IOException {
        List<AuditedFlight> flights = new ArrayList<>(rows.size());
        for (AuditedRow row : rows) {
            if (row instanceof AuditedRow.Flight flight) {
                if (stands(flight)) {
                    flights.add(flight.flight());
                }
            } else if (row instanceof AuditedRow.Rejected reject) {
                reject(reject.row());
            } else if (row instanceof AuditedRow.Item) {
                accepted++;
                items++;
            } else if (row instanceof AuditedRow.Skipped skip) {
                skip(skip.row());
            } else {
                blank++;
            }
        }
        accepted += flights.size();
        reports.flights(flights);
    }

    /** Whether the flight counts; one that does not goes where it is listed. */
    private boolean stands(AuditedRow.Flight flight) throws IOException {
        Loading loading = flight.flight().loading();
        Duplicates.Verdict verdict = duplicates.judge(flight.key(), loading.origin());
        return switch (verdict.kind()) {
            case REPEATS -> {
                skip(DuplicateText.repeats(loading, verdict.other().orElseThrow()));
                yield false;
            }
            case DIFFERS -> {
                Origin other = verdict.other().orElseThrow();
                reject(flight.reader().reject(flight.row(), DuplicateText.differs(loading, other, duplicates.rule())));
                yield false;
            }
            case STANDS -> true;
            case COUNTS_AGAIN -> {
                countedAgain++;
                told(loading, verdict.other().orElseThrow());
                yield true;
            }
            case COUNTS_TOO -> {
                countedToo++;
                told(loading, verdict.other().orElseThrow());
                yield true;
            }
        };
    }

    private void reject(RejectedRow row) throws IOException {
        rejected++;
        reports.rejected(row);
    }

    private void skip(SkippedRow row) throws IOException {
        skipped++;
        skippedRows.add(row);
        reports.skipped(row);
    }

    private void told(Loading loading, Origin other) {
        if (firstCounted.isEmpty()) {
            firstCounted = DuplicateText.counts(loading, other);
        }
    }

    private void end(Step.FileEnds ends) {
        inputs.add(new InputFile(
                file.name(),
                file.sha256(),
                file.bytes(),
                ends.mapName(),
                accepted + rejected + blank + skipped,
                accepted,
                rejected,
                blank,
                skipped,
                notes(ends)));
        skippedSheets.addAll(ends.skipped());
        for (InputProblem problem : ends.problems()) {
            problems.add(problem);
            reports.fileProblem(problem);
        }
    }

    private List<String> notes(Step.FileEnds ends) {
        List<String> notes = new ArrayList<>(ends.notes());
        if (items > 0) {
            notes.add(items + (items == 1 ? " accepted row is a load item" : " accepted rows are load items")
                    + " of the season's flights");
        }
        notes.addAll(DuplicateText.note(duplicates.rule(), countedAgain, countedToo, firstCounted));
        return notes;
    }

    /** Throws the cause if it may be thrown here, and hands it back wrapped otherwise. */
    private static IllegalStateException rethrown(Throwable cause) throws IOException {
        if (cause instanceof IOException io) {
            throw io;
        }
        if (cause instanceof RuntimeException runtime) {
            throw runtime;
        }
        if (cause instanceof Error error) {
            throw error;
        }
        return new IllegalStateException(cause);
    }
}
