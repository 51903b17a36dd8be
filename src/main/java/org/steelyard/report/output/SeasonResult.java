package org.steelyard.report.output;

import java.util.List;
import java.util.Locale;
import org.steelyard.analyse.season.SeasonSummary;
import org.steelyard.model.finding.FindingCode;
import org.steelyard.model.input.InputProblem;
import org.steelyard.model.policy.Policy;
import org.steelyard.report.file.OutputFile;

/**
 * What is known at the end of a season.
 *
 * @param summary what the flights come to
 * @param facts what was read and under which rules
 * @param fileProblems files that could not be read, or not to their end
 * @param policy the operator's rules
 * @param files all files of the reports
 */
public record SeasonResult(
        SeasonSummary summary, RunFacts facts, List<InputProblem> fileProblems, Policy policy, List<OutputFile> files) {

    public SeasonResult {
        fileProblems = List.copyOf(fileProblems);
        files = List.copyOf(files);
    }

    /** The end of a season, with the facts told what its flights say of the inputs. */
    public static SeasonResult of(
            SeasonSummary summary,
            RunFacts facts,
            List<InputProblem> fileProblems,
            Policy policy,
            List<OutputFile> files) {
        long blank = summary.flightsWith(FindingCode.BLANK_LOAD);
        RunFacts told = facts;
        for (String leftOut : LeftOutGroupings.of(summary)) {
            told = told.with(leftOut);
        }
        if (blank > 0) {
            told = told.with(String.format(
                    Locale.ROOT,
                    "%,d %s blank load cells, which were counted as none because no heading map says what a blank"
                            + " means (blank: none, or blank: missing).",
                    blank,
                    blank == 1 ? "flight has" : "flights have"));
        }
        return new SeasonResult(summary, told, fileProblems, policy, files);
    }
}
