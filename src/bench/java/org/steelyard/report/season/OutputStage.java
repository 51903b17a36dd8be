package org.steelyard.report.season;

import org.steelyard.report.output.SkippedRows;
import org.steelyard.report.file.OutputFile;
import org.steelyard.report.output.RunFacts;
import org.steelyard.report.output.book.SeasonWorkbookOutput;
import org.steelyard.report.output.csv.ListCsv;
import org.steelyard.report.output.page.ReportPage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.steelyard.model.policy.Policy;

/** Reports of one file alone, to see what it costs. */
public final class OutputStage {

    private static final String SEASON = "stage";

    private OutputStage() {}

    /** Reports that write only what is named: flights, findings, workbook or page. */
    public static SeasonReports open(Path folder, Policy policy, String name) throws IOException {
        return SeasonReports.open(folder, SEASON, policy, (staged, rules, outputs) -> outputs.add(
                switch (name) {
                    case "flights" -> ListCsv.flights(staged.file(OutputFile.FLIGHTS));
                    case "findings" -> ListCsv.findings(staged.file(OutputFile.FINDINGS));
                    case "workbook" -> new SeasonWorkbookOutput(staged.file(OutputFile.SEASON), rules);
                    case "page" -> new ReportPage(staged.file(OutputFile.PAGE), staged.scratch("page.waiting"));
                    default -> throw new IllegalArgumentException(name);
                }));
    }

    /** Ends them. */
    public static void finish(SeasonReports reports, long flights) throws IOException {
        RunFacts.InputFile input =
                new RunFacts.InputFile("season-bench.csv", "0".repeat(64), 0, "house", flights, flights, 0, 0, 0, List.of());
        reports.finish(new RunFacts(SEASON, "bench", List.of(), List.of(input), List.of(), List.of(), SkippedRows.NONE, List.of(), List.of()));
    }
}
