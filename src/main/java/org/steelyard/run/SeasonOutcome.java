package org.steelyard.run;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.steelyard.analyse.season.SeasonSummary;
import org.steelyard.model.input.InputProblem;
import org.steelyard.model.policy.ChanceRule;
import org.steelyard.report.output.RunFacts;

/**
 * What came of an audit.
 *
 * @param summary what the season comes to
 * @param facts what was read
 * @param fileProblems files that could not be read, or not to their end
 * @param folder the season's folder of reports
 * @param files names of the files in it that this audit wrote
 * @param chance when the chance of being outside counts, if the policy looks at it
 */
public record SeasonOutcome(
        SeasonSummary summary,
        RunFacts facts,
        List<InputProblem> fileProblems,
        Path folder,
        List<String> files,
        Optional<ChanceRule> chance) {

    public SeasonOutcome {
        fileProblems = List.copyOf(fileProblems);
        files = List.copyOf(files);
    }
}
