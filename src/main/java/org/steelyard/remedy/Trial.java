package org.steelyard.remedy;

import java.util.EnumSet;
import java.util.Set;
import org.steelyard.balance.Balance;
import org.steelyard.balance.Balancer;
import org.steelyard.check.flight.Checker;
import org.steelyard.check.result.Assessment;
import org.steelyard.model.finding.Finding;
import org.steelyard.model.finding.FindingCode;
import org.steelyard.model.finding.Severity;
import org.steelyard.model.loading.Loading;
import org.steelyard.model.policy.Policy;

/** A flight put through balance and checks, as it is or as it would be. */
record Trial(Loading loading, Balance balance, Assessment assessment) {

    /** What load and fuel can put right; crew, fuel too short or out of balance and recorded settings are not. */
    private static final Set<FindingCode> CURABLE = EnumSet.of(
            FindingCode.MASS_HIGH,
            FindingCode.MASS_LOW,
            FindingCode.CG_FORWARD,
            FindingCode.CG_AFT,
            FindingCode.MASS_OFF_ENVELOPE,
            FindingCode.ZONE_SEATS,
            FindingCode.HOLD_MASS,
            FindingCode.FLOOR_RUNNING,
            FindingCode.FLOOR_AREA,
            FindingCode.GROUP_MASS,
            FindingCode.TRIM_OFF_SCALE,
            FindingCode.TRIM_BAND);

    static Trial of(Loading loading, Policy policy) {
        Balance balance = Balancer.balance(loading, policy);
        return new Trial(loading, balance, Checker.check(loading, balance, policy));
    }

    static boolean isCurable(Finding finding) {
        return finding.severity() == Severity.BREACH && CURABLE.contains(finding.code());
    }

    /** The breaches that no remedy looks for. */
    Set<FindingCode> otherBreaches() {
        Set<FindingCode> codes = EnumSet.noneOf(FindingCode.class);
        for (Finding finding : assessment.findings()) {
            if (finding.severity() == Severity.BREACH && !CURABLE.contains(finding.code())) {
                codes.add(finding.code());
            }
        }
        return codes;
    }

    /** Whether a flight before it is put right by it: nothing curable is left, and nothing else is broken anew. */
    boolean cures(Trial before) {
        return assessment.findings().stream().noneMatch(Trial::isCurable)
                && before.otherBreaches().containsAll(otherBreaches());
    }
}
