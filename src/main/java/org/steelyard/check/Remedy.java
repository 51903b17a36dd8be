package org.steelyard.check;

import java.util.Objects;
import java.util.Optional;
import org.steelyard.model.Loading;

/**
 * What would put a breached flight right.
 *
 * @param means by what kind of change, or by none
 * @param massKg how much is moved, left behind, put aboard as ballast or as fuel, or taken off as fuel, in kg; zero
 *     where there is no remedy
 * @param sentence what to do and what comes of it, or why nothing helps, in the users' units, without a full stop
 * @param loading the flight put right; empty where there is no remedy
 * @param proved whether it is proved that no less is enough
 */
public record Remedy(RemedyMeans means, double massKg, String sentence, Optional<Loading> loading, boolean proved) {

    /** Checks that nothing is missing. */
    public Remedy {
        Objects.requireNonNull(means);
        Objects.requireNonNull(sentence);
        Objects.requireNonNull(loading);
    }

    /**
     * That there is no remedy.
     *
     * @param why the reason, as a clause that follows "because"
     * @return a remedy by no means
     */
    public static Remedy none(String why) {
        return new Remedy(RemedyMeans.NONE, 0, "no remedy, because " + why, Optional.empty(), true);
    }
}
