package org.steelyard.report.output.page;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.steelyard.analyse.season.SeasonTally;
import org.steelyard.check.result.AuditedFlight;
import org.steelyard.model.input.InputProblem;
import org.steelyard.model.input.ProblemCode;
import org.steelyard.model.input.RejectedRow;
import org.steelyard.model.loading.Origin;
import org.steelyard.report.output.RunFacts;
import org.steelyard.report.output.SeasonResult;
import org.steelyard.report.season.SeasonReports;
import org.steelyard.samples.Plain;

/** Writes whole seasons for the tests of reports. */
public final class Runs {

    public static final String SEASON = "2025";

    private Runs() {}

    public static RunFacts facts(long flights, long rejected) {
        return Plain.runFacts(
                SEASON,
                "0.1.0",
                List.of("threads=2"),
                List.of(Plain.inputFile(
                        "season.csv",
                        "ab".repeat(32),
                        1234,
                        "plain",
                        flights + rejected + 1,
                        flights,
                        rejected,
                        1,
                        List.of("column 'gate' is carried along"))),
                List.of(new RunFacts.ConfigFile("policy.yaml", "cd".repeat(32))),
                List.of(new RunFacts.SkippedFile("notes.txt", "not a CSV or XLSX file")));
    }

    public static RejectedRow rejected(long row, List<String> headings, String... cells) {
        Origin origin = new Origin("season.csv", "", row);
        InputProblem problem = new InputProblem(
                origin, headings.get(0), ProblemCode.NOT_A_NUMBER, "not a number", cells[0], "a mass in kg");
        return new RejectedRow(origin, "plain", headings, List.of(cells), List.of(problem));
    }

    /** Writes a season and hands back its folder. */
    public static Path write(Path reports, List<AuditedFlight> flights, List<RejectedRow> rejected) throws IOException {
        try (SeasonReports season = SeasonReports.open(reports, SEASON, Flights.POLICY)) {
            for (AuditedFlight flight : flights) {
                season.flight(flight);
            }
            for (RejectedRow row : rejected) {
                season.rejected(row);
            }
            season.finish(facts(flights.size(), rejected.size()));
        }
        return reports.resolve(SEASON);
    }

    /** Writes the page of a season with room for few flights. */
    static Path thinned(Path folder, List<AuditedFlight> flights, PageLimits limits) throws IOException {
        Path file = folder.resolve("thinned.html");
        SeasonTally tally = new SeasonTally(Flights.POLICY);
        try (ReportPage page = new ReportPage(file, folder.resolve("thinned.waiting"), limits)) {
            for (AuditedFlight flight : flights) {
                tally.add(flight);
                page.begin(List.of(flight)).make().add();
            }
            page.finish(
                    new SeasonResult(tally.summary(), facts(flights.size(), 0), List.of(), Flights.POLICY, List.of()));
        }
        return file;
    }

    public static String text(Path file) throws IOException {
        return Files.readString(file, StandardCharsets.UTF_8);
    }
}
