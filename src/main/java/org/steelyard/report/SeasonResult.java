package org.steelyard.report;

import java.util.List;
import org.steelyard.analyse.SeasonSummary;
import org.steelyard.model.InputProblem;
import org.steelyard.model.Policy;

/**
 * What is known at the end of a season.
 *
 * @param summary what the flights come to
 * @param facts what was read and under which rules
 * @param fileProblems files that could not be read, or not to their end
 * @param policy the operator's rules
 * @param files all files of the reports
 */
record SeasonResult(
        SeasonSummary summary, RunFacts facts, List<InputProblem> fileProblems, Policy policy, List<OutputFile> files) {

    SeasonResult {
        fileProblems = List.copyOf(fileProblems);
        files = List.copyOf(files);
    }
}
