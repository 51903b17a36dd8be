package org.steelyard.check;

import java.util.Objects;
import org.steelyard.balance.Balance;
import org.steelyard.model.Loading;

/**
 * One flight with all that was computed of it.
 *
 * @param loading the input
 * @param balance its states
 * @param assessment what the checks say
 */
public record AuditedFlight(Loading loading, Balance balance, Assessment assessment) {

    /** Checks that nothing is missing. */
    public AuditedFlight {
        Objects.requireNonNull(loading);
        Objects.requireNonNull(balance);
        Objects.requireNonNull(assessment);
    }
}
