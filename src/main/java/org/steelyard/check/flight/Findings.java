package org.steelyard.check.flight;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Supplier;
import org.steelyard.model.finding.Finding;
import org.steelyard.model.finding.FindingCode;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.finding.Severity;
import org.steelyard.model.policy.ChanceRule;
import org.steelyard.model.policy.Policy;
import org.steelyard.model.unit.Quantity;
import org.steelyard.model.unit.Tolerance;

/** Gathers the findings of one flight. */
final class Findings {

    private static final Comparator<Finding> MOST_SERIOUS_FIRST =
            Comparator.comparing(Finding::severity).reversed();

    private final Policy policy;
    private final boolean byChance;
    private final List<Finding> found = new ArrayList<>(0);

    /** Gathers findings by a policy; where no chance can be computed the distance decides after all. */
    Findings(Policy policy, boolean chanceKnown) {
        this.policy = policy;
        this.byChance = chanceKnown && policy.chance().map(ChanceRule::decides).orElse(false);
    }

    Policy policy() {
        return policy;
    }

    /** Whether the chance of being outside decides which mass and CG are marginal, not their distance. */
    boolean byChance() {
        return byChance;
    }

    /**
     * Adds a breach or a marginal, or nothing if there is room enough.
     *
     * @param subject what it concerns; asked for only if there is something to add, as most flights have room
     * @param margin room to the limit, negative outside
     * @param nearby a margin below this is marginal; what lies on the limit but for rounding counts as zero
     */
    void measure(
            FindingCode code,
            Phase phase,
            Supplier<String> subject,
            Quantity quantity,
            double value,
            double limit,
            double margin,
            double nearby) {
        boolean outside = Tolerance.isOutside(margin, quantity);
        if (outside || Tolerance.isOutside(Math.max(margin, 0) - nearby, quantity)) {
            Severity severity = outside ? Severity.BREACH : Severity.MARGINAL;
            found.add(new Finding(code, severity, phase, subject.get(), quantity, value, limit, margin));
        }
    }

    void add(Finding finding) {
        found.add(finding);
    }

    boolean hasBreach(FindingCode code, Phase phase) {
        for (Finding finding : found) {
            if (finding.code() == code && finding.phase() == phase && finding.severity() == Severity.BREACH) {
                return true;
            }
        }
        return false;
    }

    /** The most serious first; within one severity in the order of the checks. */
    List<Finding> sorted() {
        if (found.size() > 1) {
            found.sort(MOST_SERIOUS_FIRST);
        }
        return found;
    }
}
