package org.steelyard.check.chance;

import java.util.List;
import java.util.Optional;
import org.steelyard.model.finding.FindingCode;
import org.steelyard.model.finding.Phase;

/**
 * How sure a flight's states are.
 *
 * @param states spread of zero fuel, ramp, take-off and landing
 * @param chances chance of being outside each limit of mass and CG
 */
public record Uncertainty(List<StateSpread> states, List<LimitChance> chances) {

    public Uncertainty {
        states = List.copyOf(states);
        chances = List.copyOf(chances);
    }

    /**
     * The spread of a state.
     *
     * @param phase zero fuel, ramp, take-off or landing
     * @return the spread; empty for another phase
     */
    public Optional<StateSpread> state(Phase phase) {
        for (StateSpread state : states) {
            if (state.phase() == phase) {
                return Optional.of(state);
            }
        }
        return Optional.empty();
    }

    /**
     * The chance of being outside one limit.
     *
     * @param code kind of limit
     * @param phase of which state
     * @return the chance; empty where there is no such limit
     */
    public Optional<LimitChance> chance(FindingCode code, Phase phase) {
        for (int i = 0; i < chances.size(); i++) {
            if (chances.get(i).code() == code && chances.get(i).phase() == phase) {
                return Optional.of(chances.get(i));
            }
        }
        return Optional.empty();
    }

    /**
     * The limit that is most likely broken.
     *
     * @return the greatest chance, of equal ones that of the limit that is nearest in standard deviations; empty where
     *     there is no limit
     */
    public Optional<LimitChance> greatest() {
        LimitChance greatest = null;
        for (LimitChance chance : chances) {
            if (greatest == null || chance.isMoreThan(greatest)) {
                greatest = chance;
            }
        }
        return Optional.ofNullable(greatest);
    }

    /**
     * Whether all is inside on paper, but a limit more likely broken than some chance.
     *
     * @param percent that chance in per cent
     * @return true where it is so
     */
    public boolean isInsideButLikelyOutside(double percent) {
        double greatest = 0;
        for (int i = 0; i < chances.size(); i++) {
            if (!chances.get(i).inside()) {
                return false;
            }
            greatest = Math.max(greatest, chances.get(i).chance());
        }
        return greatest > percent / 100;
    }
}
