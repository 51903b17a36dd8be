package org.steelyard.grade.make;

import java.util.Optional;
import org.steelyard.model.finding.Phase;

/** What an exercise is about. */
public enum Difficulty {
    /** Everything inside, with room. */
    INSIDE("inside", Phase.FLIGHT),
    /** Inside, but close to a limit of CG or mass. */
    MARGINAL("marginal", Phase.FLIGHT),
    /** Outside at zero fuel. */
    OUT_ZERO_FUEL("out-at-zero-fuel", Phase.ZERO_FUEL),
    /** Outside at take-off. */
    OUT_TAKEOFF("out-at-take-off", Phase.TAKEOFF),
    /** Outside at landing. */
    OUT_LANDING("out-at-landing", Phase.LANDING),
    /** A last-minute change of load after the sheet was begun. */
    LAST_MINUTE("last-minute-change", Phase.FLIGHT),
    /** Another quantity of fuel after the sheet was begun. */
    FUEL_CHANGE("fuel-change", Phase.FLIGHT),
    /** Outside by its CG, and to be put right by moving load between holds. */
    LOAD_SHIFT("load-shift", Phase.FLIGHT);

    private final String key;
    private final Phase phase;

    Difficulty(String key, Phase phase) {
        this.key = key;
        this.phase = phase;
    }

    /**
     * How it is asked for.
     *
     * @return lower-case words joined by hyphens
     */
    public String key() {
        return key;
    }

    /**
     * The phase in which the loading is to be outside.
     *
     * @return empty where it is not, or in any
     */
    public Optional<Phase> outsideAt() {
        return phase == Phase.FLIGHT ? Optional.empty() : Optional.of(phase);
    }

    /**
     * By its name.
     *
     * @param key as {@link #key()}
     * @return empty for another word
     */
    public static Optional<Difficulty> of(String key) {
        for (Difficulty one : values()) {
            if (one.key.equals(key)) {
                return Optional.of(one);
            }
        }
        return Optional.empty();
    }
}
