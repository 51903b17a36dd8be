package org.steelyard.check;

import java.util.List;
import java.util.Objects;
import org.steelyard.balance.Balance;
import org.steelyard.model.LoadPart;
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

    /**
     * Which parts of the load were given in total, so that where they lie follows from a rule.
     *
     * @return passengers, holds, fuel, as far as they are assumed; empty where nothing is
     */
    public List<LoadPart> assumed() {
        return Assumed.parts(loading, balance);
    }
}
