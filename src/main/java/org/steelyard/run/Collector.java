package org.steelyard.run;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Future;
import org.steelyard.check.AuditedFlight;
import org.steelyard.model.InputProblem;
import org.steelyard.report.RunFacts.InputFile;
import org.steelyard.report.SeasonReports;

/** Takes what the workers made in the order of the input, counts it and hands it to the reports. */
final class Collector {

    private final BlockingQueue<Future<Step>> steps;
    private final SeasonReports reports;
    private final Progress progress;
    private final int files;
    private final List<InputFile> inputs = new ArrayList<>();
    private final List<InputProblem> problems = new ArrayList<>();

    private Step.FileBegins file = new Step.FileBegins("", "", 0, 0);
    private long allRows;
    private long accepted;
    private long rejected;
    private long blank;

    Collector(BlockingQueue<Future<Step>> steps, SeasonReports reports, Progress progress, int files) {
        this.steps = steps;
        this.reports = reports;
        this.progress = progress;
        this.files = files;
    }

    List<InputFile> inputs() {
        return inputs;
    }

    List<InputProblem> problems() {
        return problems;
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
                flights.add(flight.flight());
            } else if (row instanceof AuditedRow.Rejected reject) {
                rejected++;
                reports.rejected(reject.row());
            } else {
                blank++;
            }
        }
        accepted += flights.size();
        reports.flights(flights);
    }

    private void end(Step.FileEnds ends) {
        inputs.add(new InputFile(
                file.name(),
                file.sha256(),
                file.bytes(),
                ends.mapName(),
                accepted + rejected + blank,
                accepted,
                rejected,
                blank,
                ends.notes()));
        for (InputProblem problem : ends.problems()) {
            problems.add(problem);
            reports.fileProblem(problem);
        }
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
