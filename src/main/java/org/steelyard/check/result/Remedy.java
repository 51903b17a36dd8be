package org.steelyard.check.result;

import java.util.Objects;
import java.util.Optional;
import org.steelyard.model.loading.Loading;

/**
 * What would put a breached flight right.
 *
 * @param means by what kind of change, or by none
 * @param massKg how much is moved, left behind, put aboard as ballast or as fuel, taken off as fuel, or put into other
 *     tanks, in kg; zero where there is no remedy
 * @param sentence what to do and what comes of it, or why nothing helps, in the users' units, without a full stop; with
 *     the other way, if there is one
 * @param loading the flight put right; empty where there is no remedy
 * @param proved whether it is proved that no less is enough
 * @param other another way that does as well
 */
public record Remedy(
        RemedyMeans means,
        double massKg,
        String sentence,
        Optional<Loading> loading,
        boolean proved,
        Optional<Remedy> other) {

    public Remedy {
        Objects.requireNonNull(means);
        Objects.requireNonNull(sentence);
        Objects.requireNonNull(loading);
        Objects.requireNonNull(other);
    }

    /**
     * This way, with another one told after it.
     *
     * @param another another remedy of the same flight
     * @return this remedy, with both in its sentence
     */
    public Remedy or(Remedy another) {
        return new Remedy(means, massKg, sentence + "; or " + another.sentence, loading, proved, Optional.of(another));
    }

    /**
     * That there is no remedy.
     *
     * @param why the reason, as a clause that follows "because"
     * @return a remedy by no means
     */
    public static Remedy none(String why) {
        return new Remedy(RemedyMeans.NONE, 0, "no remedy, because " + why, Optional.empty(), true, Optional.empty());
    }
}
