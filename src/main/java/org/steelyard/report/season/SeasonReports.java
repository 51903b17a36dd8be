package org.steelyard.report.season;

import java.io.Closeable;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Executor;
import org.steelyard.analyse.season.SeasonSummary;
import org.steelyard.analyse.season.SeasonTally;
import org.steelyard.check.result.AuditedFlight;
import org.steelyard.model.input.InputProblem;
import org.steelyard.model.input.RejectedRow;
import org.steelyard.model.input.SkippedRow;
import org.steelyard.model.policy.Policy;
import org.steelyard.report.file.Destination;
import org.steelyard.report.file.OutputFile;
import org.steelyard.report.file.StagedFolder;
import org.steelyard.report.output.RunFacts;
import org.steelyard.report.output.SeasonOutput;
import org.steelyard.report.output.SeasonResult;
import org.steelyard.report.output.book.SeasonWorkbookOutput;
import org.steelyard.report.output.csv.ListCsv;
import org.steelyard.report.output.csv.RejectedCsv;
import org.steelyard.report.output.csv.RunJson;
import org.steelyard.report.output.csv.SkippedCsv;
import org.steelyard.report.output.csv.StatisticsCsv;
import org.steelyard.report.output.page.ReportPage;

/**
 * All reports of a season, written while the flights go by. Everything goes into a hidden folder first; only
 * {@link #finish} moves the complete files into {@code reports/<season>/}, and removes what an earlier run wrote there
 * and this one does not. Closing without finishing leaves what was there before as it was. For one thread, which may
 * have workers write for it.
 *
 * <pre>{@code
 * try (SeasonReports reports = SeasonReports.open(folder, "2025", policy)) {
 *     reports.flight(flight); // each, in order
 *     reports.rejected(row);
 *     SeasonSummary summary = reports.finish(facts);
 * }
 * }</pre>
 */
public final class SeasonReports implements AutoCloseable {

    private static final int BATCH_FLIGHTS = 500;

    private final StagedFolder folder;
    private final Policy policy;
    private final SeasonTally tally;
    private final List<SeasonOutput> outputs = new ArrayList<>();
    private final List<InputProblem> fileProblems = new ArrayList<>();
    private final List<AuditedFlight> single = new ArrayList<>();
    private OrderedBatches line = new OrderedBatches(Runnable::run, 0);

    /** Opens the files of one season's reports in their staging folder. */
    @FunctionalInterface
    interface Outputs {
        void open(StagedFolder folder, Policy policy, List<SeasonOutput> outputs) throws IOException;
    }

    private SeasonReports(StagedFolder folder, Policy policy, List<String> by) {
        this.folder = folder;
        this.policy = policy;
        tally = new SeasonTally(policy, by);
    }

    /**
     * Begins the reports of a season.
     *
     * @param reportsFolder folder of all seasons; made if it is not there
     * @param season name of the season, which names its folder
     * @param policy the operator's rules
     * @return reports that wait for flights
     * @throws IOException if the folder cannot be written
     * @throws IllegalArgumentException if the season's name cannot be that of a folder
     */
    public static SeasonReports open(Path reportsFolder, String season, Policy policy) throws IOException {
        return open(Destination.of(reportsFolder), season, policy, List.of(), false);
    }

    /**
     * Begins the reports of a season with groupings of its own, with or without the room at each place.
     *
     * @param to folder of all seasons; made if it is not there
     * @param season name of the season, which names its folder
     * @param policy the operator's rules
     * @param by headings of carried columns by which statistics are grouped, too
     * @param room whether {@code room.csv} is written, which takes time for each flight
     * @return reports that wait for flights
     * @throws IOException if the folder cannot be written
     * @throws IllegalArgumentException if the season's name cannot be that of a folder
     */
    public static SeasonReports open(Destination to, String season, Policy policy, List<String> by, boolean room)
            throws IOException {
        Outputs files = room
                ? (folder, rules, outputs) -> {
                    outputs.add(ListCsv.room(folder.file(OutputFile.ROOM)));
                    all(folder, rules, outputs);
                }
                : SeasonReports::all;
        return open(to, season, policy, by, files);
    }

    static SeasonReports open(Path reportsFolder, String season, Policy policy, Outputs files) throws IOException {
        return open(Destination.of(reportsFolder), season, policy, List.of(), files);
    }

    private static SeasonReports open(Destination to, String season, Policy policy, List<String> by, Outputs files)
            throws IOException {
        SeasonReports reports = new SeasonReports(StagedFolder.in(to, season), policy, by);
        try {
            files.open(reports.folder, policy, reports.outputs);
            return reports;
        } catch (IOException | RuntimeException e) {
            try (reports) {
                throw e;
            }
        }
    }

    /** The files of a season in the order in which they are written and moved; what names the others comes last. */
    static void all(StagedFolder folder, Policy policy, List<SeasonOutput> outputs) throws IOException {
        outputs.add(ListCsv.flights(folder.file(OutputFile.FLIGHTS)));
        outputs.add(ListCsv.findings(folder.file(OutputFile.FINDINGS)));
        outputs.add(new StatisticsCsv(folder.file(OutputFile.STATISTICS)));
        outputs.add(new RejectedCsv(folder.file(OutputFile.REJECTED), folder.scratch("rejected.waiting")));
        outputs.add(new SkippedCsv(folder.file(OutputFile.SKIPPED)));
        outputs.add(new SeasonWorkbookOutput(folder.file(OutputFile.SEASON), policy));
        outputs.add(new ReportPage(folder.file(OutputFile.PAGE), folder.scratch("page.waiting")));
        outputs.add(new RunJson(folder.file(OutputFile.RUN)));
    }

    /**
     * Lets workers share in the writing from now on. The bytes stay the same.
     *
     * @param workers run what they are given, in any order, at the latest when this object waits for it
     * @param batches how many batches may be on their way at a time, at least 1
     * @return this object
     */
    public SeasonReports writtenBy(Executor workers, int batches) {
        line = new OrderedBatches(workers, batches);
        return this;
    }

    /**
     * Takes the next flight.
     *
     * @param flight the flight
     * @throws IOException if a file cannot be written
     */
    public void flight(AuditedFlight flight) throws IOException {
        single.add(flight);
        if (single.size() == BATCH_FLIGHTS) {
            putSingle();
        }
    }

    private void putSingle() throws IOException {
        List<AuditedFlight> batch = List.copyOf(single);
        single.clear();
        put(batch);
    }

    /**
     * Takes the next flights.
     *
     * @param flights some hundred flights in order
     * @throws IOException if a file cannot be written
     */
    public void flights(List<AuditedFlight> flights) throws IOException {
        putSingle();
        put(List.copyOf(flights));
    }

    private void put(List<AuditedFlight> batch) throws IOException {
        if (!batch.isEmpty()) {
            batch.forEach(tally::add);
            line.put(batch, outputs);
        }
    }

    /**
     * Takes the next row that is no flight.
     *
     * @param row the row with its reasons
     * @throws IOException if a file cannot be written
     */
    public void rejected(RejectedRow row) throws IOException {
        for (SeasonOutput output : outputs) {
            output.rejected(row);
        }
    }

    /**
     * Takes the next row that is passed over.
     *
     * @param row the row with its reason
     * @throws IOException if a file cannot be written
     */
    public void skipped(SkippedRow row) throws IOException {
        for (SeasonOutput output : outputs) {
            output.skipped(row);
        }
    }

    /**
     * Notes that a whole file could not be read, or not to its end.
     *
     * @param problem what is wrong with it
     */
    public void fileProblem(InputProblem problem) {
        fileProblems.add(problem);
    }

    /**
     * Writes what is left and moves all files to their place.
     *
     * @param facts what was read and under which rules
     * @return what the season came to
     * @throws IOException if a file cannot be written or moved
     */
    public SeasonSummary finish(RunFacts facts) throws IOException {
        putSingle();
        line.drain();
        SeasonResult result = SeasonResult.of(tally.summary(), facts, fileProblems, policy, folder.files());
        for (SeasonOutput output : outputs) {
            output.finish(result);
        }
        folder.publish(OutputFile.fileNames());
        return result.summary();
    }

    /**
     * The files of this season.
     *
     * @return their names
     */
    public List<String> fileNames() {
        return folder.files().stream().sorted().map(OutputFile::fileName).toList();
    }

    /**
     * Lets go of all files and removes the hidden folder.
     *
     * @throws IOException if that fails
     */
    @Override
    public void close() throws IOException {
        IOException failed = null;
        List<Closeable> all = new ArrayList<>(outputs);
        all.add(folder);
        for (Closeable one : all) {
            try {
                one.close();
            } catch (IOException e) {
                if (failed == null) {
                    failed = e;
                } else {
                    failed.addSuppressed(e);
                }
            }
        }
        if (failed != null) {
            throw failed;
        }
    }
}
