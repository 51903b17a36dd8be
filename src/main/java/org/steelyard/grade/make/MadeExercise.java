package org.steelyard.grade.make;

import java.util.Objects;
import java.util.Optional;
import org.steelyard.model.loading.Loading;

/**
 * An exercise that was made.
 *
 * @param difficulty what it is about
 * @param given the loading as the student first sees it
 * @param change what then changes, in words; blank if nothing does
 * @param asked the loading whose figures are asked for, with the change
 * @param shift for a load shift, the least mass to move and between which holds
 */
public record MadeExercise(
        Difficulty difficulty, Loading given, String change, Loading asked, Optional<LoadShift> shift) {

    public MadeExercise {
        Objects.requireNonNull(difficulty);
        Objects.requireNonNull(given);
        Objects.requireNonNull(change);
        Objects.requireNonNull(asked);
        Objects.requireNonNull(shift);
    }
}
