package org.steelyard.balance;

import java.util.Objects;
import java.util.Optional;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.unit.MassMoment;

/**
 * The states of one loading, each a mass with its moment about the datum. Which are known depends on how much the input
 * gives; take-off always is.
 *
 * @param dryOperating basic mass, crew and pantry; empty where a later state is given
 * @param zeroFuel dry operating and traffic load; empty where the take-off state is given
 * @param ramp zero fuel and all fuel
 * @param takeoff ramp less taxi fuel
 * @param landing take-off less trip fuel
 * @param distribution zones and holds; empty where a state is given
 * @param fuel tanks and fuel path; empty where the take-off state is given
 * @param takeoffTrim trim for take-off; empty where the type has no scale for the setting
 * @param landingTrim trim for landing; empty where the type has no scale for the setting
 */
public record Balance(
        Optional<MassMoment> dryOperating,
        Optional<MassMoment> zeroFuel,
        Optional<MassMoment> ramp,
        MassMoment takeoff,
        Optional<MassMoment> landing,
        Optional<Distribution> distribution,
        Optional<FuelBalance> fuel,
        Optional<TrimResult> takeoffTrim,
        Optional<TrimResult> landingTrim) {

    public Balance {
        Objects.requireNonNull(dryOperating);
        Objects.requireNonNull(zeroFuel);
        Objects.requireNonNull(ramp);
        Objects.requireNonNull(takeoff);
        Objects.requireNonNull(landing);
        Objects.requireNonNull(distribution);
        Objects.requireNonNull(fuel);
        Objects.requireNonNull(takeoffTrim);
        Objects.requireNonNull(landingTrim);
    }

    /**
     * A state.
     *
     * @param phase which; {@link Phase#FLIGHT} is a stretch and has no single state
     * @return its mass and moment, empty where it is not known
     */
    public Optional<MassMoment> state(Phase phase) {
        return switch (phase) {
            case DRY_OPERATING -> dryOperating;
            case ZERO_FUEL -> zeroFuel;
            case RAMP -> ramp;
            case TAKEOFF -> Optional.of(takeoff);
            case LANDING -> landing;
            case FLIGHT -> Optional.empty();
        };
    }

    /**
     * Whether the load was given in total and shared out among zones and holds by a rule, so that every CG with it is
     * an assumption.
     *
     * @return true for a load in total
     */
    public boolean loadIsShared() {
        return distribution.map(Distribution::assumed).orElse(false);
    }
}
