package org.steelyard.spark.merge;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.steelyard.analyse.season.SeasonSummary;
import org.steelyard.check.result.Status;
import org.steelyard.model.input.InputProblem;
import org.steelyard.model.input.ProblemCode;
import org.steelyard.model.input.RejectedRow;
import org.steelyard.model.policy.Policy;
import org.steelyard.report.file.Destination;
import org.steelyard.report.file.FileSum;
import org.steelyard.report.file.OutputFile;
import org.steelyard.report.file.StagedFolder;
import org.steelyard.report.output.RunFacts;
import org.steelyard.report.output.SeasonResult;
import org.steelyard.report.output.book.SeasonWorkbook;
import org.steelyard.report.output.book.SheetPoints;
import org.steelyard.report.output.book.WorkbookPart;
import org.steelyard.report.output.csv.RunJson;
import org.steelyard.report.output.csv.StatisticsCsv;
import org.steelyard.report.output.page.PageLimits;
import org.steelyard.report.output.page.PageSample;
import org.steelyard.report.output.page.Rejections;
import org.steelyard.report.output.page.ReportPage;
import org.steelyard.report.season.SeasonReports;

/**
 * The reports of a season of which not all flights are at hand: workbook, page, statistics and run facts as
 * {@link SeasonReports} writes them, with the flights that a {@link FlightChoice} chose. Where that is all of the
 * season, they say the same.
 */
public final class MergedReports {

    /** So many flights are listed in the workbook. */
    public static final int LISTED = 10_000;

    /** So many rejected rows are shown. */
    public static final int REJECTED = Rejections.KEPT;

    private static final int WORST = 10;

    private static final List<OutputFile> IN_PARTS = List.of(
            OutputFile.FLIGHTS_IN_PARTS,
            OutputFile.FINDINGS_IN_PARTS,
            OutputFile.REJECTED_IN_PARTS,
            OutputFile.SKIPPED_IN_PARTS);

    private static final List<OutputFile> WHOLE =
            List.of(OutputFile.STATISTICS, OutputFile.SEASON, OutputFile.PAGE, OutputFile.RUN);

    /**
     * What is known of a season.
     *
     * @param summary what the flights come to
     * @param facts what was read and under which rules
     * @param fileProblems files that could not be read, or not to their end
     * @param shown the chosen flights in order of place
     * @param rejected the first rejected rows, at most {@link #REJECTED}
     * @param reasons how often each reason was given
     * @param parts size and checksum of each file that is a part of an output, by its name with that of its folder
     */
    public record Season(
            SeasonSummary summary,
            RunFacts facts,
            List<InputProblem> fileProblems,
            List<PlacedFlight> shown,
            List<RejectedRow> rejected,
            Map<ProblemCode, Long> reasons,
            SortedMap<String, FileSum> parts) {

        public Season {
            fileProblems = List.copyOf(fileProblems);
            shown = List.copyOf(shown);
            rejected = List.copyOf(rejected);
            reasons = Map.copyOf(reasons);
            parts = Collections.unmodifiableSortedMap(new TreeMap<>(parts));
        }

        private boolean has(OutputFile file) {
            return parts.keySet().stream().anyMatch(part -> part.startsWith(file.fileName() + "/"));
        }
    }

    private MergedReports() {}

    /**
     * The folders of what is written in parts.
     *
     * @return their names
     */
    public static List<String> folders() {
        return IN_PARTS.stream().map(OutputFile::fileName).toList();
    }

    /**
     * The files that are written whole.
     *
     * @return their names; the one that lists all outputs comes last
     */
    public static List<String> files() {
        return WHOLE.stream().map(OutputFile::fileName).toList();
    }

    /**
     * The files that only an audit on one machine writes.
     *
     * @return their names
     */
    public static List<String> former() {
        return OutputFile.fileNames().stream()
                .filter(name -> !folders().contains(name) && !files().contains(name))
                .toList();
    }

    /** How many flights are to be chosen. */
    public static FlightChoice.Sizes sizes() {
        PageLimits page = PageLimits.USUAL;
        return new FlightChoice.Sizes(LISTED, WORST, page.breached(), page.outside(), page.all(), SheetPoints.MOST);
    }

    /** The rank of a flight in the page's sample; the lowest are shown. */
    public static long pageRank(long place) {
        return PageSample.random(place);
    }

    /**
     * Writes the reports.
     *
     * @param folder folder that holds a folder of reports for each season
     * @param policy the operator's rules
     * @param season what is known of the season
     * @throws IOException if a file cannot be written; reports of an earlier run are then still whole
     */
    public static void write(Path folder, Policy policy, Season season) throws IOException {
        RunFacts facts = season.facts();
        long flights = season.summary().all().flights();
        WorkbookPart part = new WorkbookPart(LISTED, flights, season.rejected().size(), facts.rejected());
        try (StagedFolder staged = StagedFolder.in(Destination.of(folder), facts.season())) {
            StatisticsCsv statistics = new StatisticsCsv(staged.file(OutputFile.STATISTICS));
            RunJson run = new RunJson(staged.file(OutputFile.RUN), season.parts());
            try (SeasonWorkbook book = SeasonWorkbook.open(staged.file(OutputFile.SEASON), policy, part);
                    ReportPage page = new ReportPage(staged.file(OutputFile.PAGE), staged.scratch("page.waiting"))) {
                for (PlacedFlight placed : season.shown()) {
                    if (placed.place() < LISTED) {
                        book.flight(placed.flight());
                    }
                    page.flight(placed.flight(), placed.place());
                }
                for (RejectedRow row : season.rejected()) {
                    book.rejected(row);
                    page.rejected(row);
                }
                page.seen(counts(season.summary()), season.reasons());
                SeasonResult result = SeasonResult.of(
                        season.summary(),
                        facts,
                        season.fileProblems(),
                        policy,
                        Stream.concat(IN_PARTS.stream().filter(season::has), WHOLE.stream())
                                .toList());
                statistics.finish(result);
                book.finish(season.summary(), facts);
                page.finish(result);
                run.finish(result);
            }
            staged.publish();
        }
    }

    private static Map<Status, Long> counts(SeasonSummary summary) {
        return Map.of(
                Status.CLEAN, summary.all().clean(),
                Status.MARGINAL, summary.all().marginal(),
                Status.BREACHED, summary.all().breached());
    }
}
