package org.steelyard.check.result;

import java.util.Objects;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.unit.MassMoment;

/**
 * The room between one state, or the nearest point of the fuel path, and the limits of its envelope. Positive inside,
 * zero on the limit, negative outside.
 *
 * @param phase envelope that it is held against
 * @param forwardAt the state nearest to the forward limit (the state itself but in flight)
 * @param forwardPercentMac room to the forward limit in % MAC
 * @param forwardMomentKgM room to the forward limit in kg·m at that mass
 * @param aftAt the state nearest to the aft limit
 * @param aftPercentMac room to the aft limit in % MAC
 * @param aftMomentKgM room to the aft limit in kg·m at that mass
 * @param massKg room to the highest mass of the envelope in kg, negative above it, where the ends of its lines stand
 *     for the limits
 */
public record EnvelopeMargin(
        Phase phase,
        MassMoment forwardAt,
        double forwardPercentMac,
        double forwardMomentKgM,
        MassMoment aftAt,
        double aftPercentMac,
        double aftMomentKgM,
        double massKg) {

    public EnvelopeMargin {
        Objects.requireNonNull(phase);
        Objects.requireNonNull(forwardAt);
        Objects.requireNonNull(aftAt);
    }
}
