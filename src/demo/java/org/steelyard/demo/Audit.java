package org.steelyard.demo;

import java.util.Optional;
import org.steelyard.balance.Balance;
import org.steelyard.balance.Balancer;
import org.steelyard.check.flight.Checker;
import org.steelyard.check.result.Status;
import org.steelyard.model.loading.Loading;
import org.steelyard.model.policy.DuplicateRule;
import org.steelyard.model.policy.Policy;

/** Rejects loads that would be found: what the generator draws must be well inside every limit. */
final class Audit {

    private final Policy strict;

    /** Wants more room to every limit than the operator's policy does. */
    Audit(Policy policy) {
        strict = new Policy(
                2 * policy.marginalCgPercentMac(),
                2 * policy.marginalMassPercent(),
                2 * policy.marginalLoadPercent(),
                1.5 * policy.marginalTrimUnits(),
                policy.sharing(),
                Optional.empty(),
                Optional.empty(),
                DuplicateRule.FIRST,
                Optional.empty(),
                Optional.empty(),
                0,
                0);
    }

    Balance balance(DemoRow row) {
        return Balancer.balance(Loadings.of(row), strict);
    }

    boolean isClean(DemoRow row) {
        Loading loading = Loadings.of(row);
        return Checker.check(loading, Balancer.balance(loading, strict), strict).status() == Status.CLEAN;
    }
}
