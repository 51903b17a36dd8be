package org.steelyard.report.words;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.steelyard.analyse.column.StatusCount;
import org.steelyard.analyse.season.FindingCount;
import org.steelyard.analyse.season.SeasonSummary;
import org.steelyard.check.text.FindingText;
import org.steelyard.model.finding.Severity;
import org.steelyard.model.policy.Policy;
import org.steelyard.model.unit.Counted;
import org.steelyard.report.output.RunFacts;

/** What the season comes to, in a sentence or two. */
public final class WorkbookNews {

    private WorkbookNews() {}

    public static String of(SeasonSummary season, RunFacts facts) {
        String checked = facts.notChecked(season).isEmpty() ? "" : " that was checked";
        String notChecked = facts.notCheckedSentence(season);
        return of(season, facts.rejected(), checked) + (notChecked.isEmpty() ? "" : " " + notChecked);
    }

    public static String of(SeasonSummary season, long rejected) {
        return of(season, rejected, "");
    }

    private static String of(SeasonSummary season, long rejected, String checked) {
        StatusCount all = season.all();
        if (all.flights() == 0) {
            return "No flight was accepted" + (rejected == 0 ? "." : "; " + rows(rejected) + " rejected.");
        }
        if (all.breached() > 0) {
            String worst = String.join(" ", SeasonWords.worstGroups(season));
            return share(all.breached(), all.flights()) + " outside a limit." + most(season, Severity.BREACH)
                    + (worst.isEmpty() ? "" : " " + worst);
        }
        String inside = all.flights() == 1
                ? "The one flight is inside every limit" + checked
                : "All " + Counted.of(all.flights(), "flight") + " are inside every limit" + checked;
        return all.marginal() == 0
                ? inside + " and close to none."
                : inside + "; " + share(all.marginal(), all.flights()) + " close to one."
                        + most(season, Severity.MARGINAL);
    }

    /** How many flights are inside on paper but more likely outside than the policy's chance; blank without one. */
    public static String likelyOutside(SeasonSummary season, Policy policy) {
        if (policy.chance().isEmpty() || season.all().flights() == 0) {
            return "";
        }
        return String.format(
                Locale.ROOT,
                " Inside on paper, but outside with a chance of more than %.1f %%: %s.",
                policy.chance().get().percent(),
                Counted.of(season.likelyOutside(), "flight"));
    }

    private static String rows(long rejected) {
        return rejected == 1 ? "one row was" : Counted.number(rejected) + " rows were";
    }

    private static String share(long some, long all) {
        return Counted.number(some) + " of " + Counted.of(all, "flight") + (some == 1 ? " is" : " are");
    }

    private static String most(SeasonSummary season, Severity severity) {
        return mostFrequent(season.findings(), severity)
                .map(count -> " Most often: " + FindingText.kind(count.code(), severity) + " ("
                        + Counted.of(count.flights(), "flight") + ").")
                .orElse("");
    }

    private static Optional<FindingCount> mostFrequent(List<FindingCount> counts, Severity severity) {
        return counts.stream()
                .filter(count -> count.severity() == severity)
                .reduce((a, b) -> b.flights() > a.flights() ? b : a);
    }
}
