package org.steelyard.check.result;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.steelyard.balance.Balance;
import org.steelyard.model.loading.LoadPart;
import org.steelyard.model.loading.Loading;

/**
 * One flight with all that was computed of it.
 *
 * @param loading the input
 * @param balance its states
 * @param assessment what the checks say
 * @param remedy what would put it right; empty where it was not looked for, or nothing is to be put right
 */
public record AuditedFlight(Loading loading, Balance balance, Assessment assessment, Optional<Remedy> remedy) {

    public AuditedFlight {
        Objects.requireNonNull(loading);
        Objects.requireNonNull(balance);
        Objects.requireNonNull(assessment);
        Objects.requireNonNull(remedy);
    }

    /**
     * A flight for which no remedy was looked for.
     *
     * @param loading the input
     * @param balance its states
     * @param assessment what the checks say
     */
    public AuditedFlight(Loading loading, Balance balance, Assessment assessment) {
        this(loading, balance, assessment, Optional.empty());
    }

    /**
     * The same flight with its remedy.
     *
     * @param found what would put it right; empty for nothing
     * @return the flight
     */
    public AuditedFlight withRemedy(Optional<Remedy> found) {
        return new AuditedFlight(loading, balance, assessment, found);
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
