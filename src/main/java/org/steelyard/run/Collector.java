package org.steelyard.run;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Future;
import org.steelyard.check.result.AuditedFlight;
import org.steelyard.model.input.InputProblem;
import org.steelyard.model.input.RejectedRow;
import org.steelyard.model.input.SkippedRow;
import org.steelyard.model.loading.Loading;
import org.steelyard.model.loading.Origin;
import org.steelyard.read.table.SeasonFolder.Skipped;
import org.steelyard.report.output.RunFacts.InputFile;
import org.steelyard.report.output.SkippedRows;
import org.steelyard.report.season.SeasonReports;

/** Takes what the workers made in the order of the input, counts it and hands it to the reports. */
final class Collector implements ReadStep.Visitor, AuditedRow.Visitor {

    private final BlockingQueue<Future<ReadStep>> steps;
    private final SeasonReports reports;
    private final Progress progress;
    private final int files;
    private final List<InputFile> inputs = new ArrayList<>();
    private final List<InputProblem> problems = new ArrayList<>();
    private final List<Skipped> skippedSheets = new ArrayList<>();
    private final SkippedRowsTally skippedRows = new SkippedRowsTally();
    private final Duplicates duplicates;

    private ReadStep.FileBegins file = new ReadStep.FileBegins("", "", 0, 0);
    private long allRows;
    private long accepted;
    private long rejected;
    private long blank;
    private long items;
    private long skipped;
    private long countedAgain;
    private long countedToo;
    private String firstCounted = "";
    private List<AuditedFlight> flights = new ArrayList<>();
    private boolean ended;

    Collector(
            BlockingQueue<Future<ReadStep>> steps,
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
        while (!ended) {
            next().to(this);
        }
    }

    private ReadStep next() throws InterruptedException {
        try {
            return steps.take().get();
        } catch (ExecutionException e) {
            return new ReadStep.Failed(e.getCause());
        }
    }

    @Override
    public void take(ReadStep.FileBegins begins) {
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
    }

    @Override
    public void take(ReadStep.Rows rows) throws IOException {
        flights = new ArrayList<>(rows.rows().size());
        for (AuditedRow row : rows.rows()) {
            row.to(this);
        }
        accepted += flights.size();
        reports.flights(flights);
        allRows += rows.rows().size();
        progress.rows(allRows);
    }

    @Override
    public void take(ReadStep.End end) {
        ended = true;
    }

    @Override
    public void take(ReadStep.Failed failed) throws IOException {
        throw rethrown(failed.cause());
    }

    @Override
    public void take(AuditedRow.Flight flight) throws IOException {
        if (stands(flight)) {
            flights.add(flight.flight());
        }
    }

    @Override
    public void take(AuditedRow.Item item) {
        accepted++;
        items++;
    }

    @Override
    public void take(AuditedRow.Rejected reject) throws IOException {
        reject(reject.row());
    }

    @Override
    public void take(AuditedRow.Blank empty) {
        blank++;
    }

    @Override
    public void take(AuditedRow.Skipped skip) throws IOException {
        skip(skip.row());
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

    @Override
    public void take(ReadStep.FileEnds ends) {
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

    private List<String> notes(ReadStep.FileEnds ends) {
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
