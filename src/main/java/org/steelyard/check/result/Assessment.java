package org.steelyard.check.result;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.steelyard.check.chance.Uncertainty;
import org.steelyard.model.finding.Finding;
import org.steelyard.model.finding.Severity;

/**
 * What the checks say of one flight.
 *
 * @param findings breaches first, then marginals, then notes; within each in the order of the checks
 * @param margins one for each envelope that a known state could be held against, in order of phase; none for a mass
 *     below those of its envelope
 * @param trafficLoad traffic load allowed; empty where the dry operating mass is not known
 * @param uncertainty spread of the states and chance of being outside; empty where the policy or the input does not
 *     give enough
 */
public record Assessment(
        List<Finding> findings,
        List<EnvelopeMargin> margins,
        Optional<TrafficLoad> trafficLoad,
        Optional<Uncertainty> uncertainty) {

    public Assessment {
        findings = List.copyOf(findings);
        margins = List.copyOf(margins);
        Objects.requireNonNull(trafficLoad);
        Objects.requireNonNull(uncertainty);
    }

    /**
     * The verdict.
     *
     * @return breached, marginal or clean, by the most serious finding; notes leave a flight clean
     */
    public Status status() {
        Status status = Status.CLEAN;
        for (Finding finding : findings) {
            if (finding.severity() == Severity.BREACH) {
                return Status.BREACHED;
            }
            if (finding.severity() == Severity.MARGINAL) {
                status = Status.MARGINAL;
            }
        }
        return status;
    }
}
