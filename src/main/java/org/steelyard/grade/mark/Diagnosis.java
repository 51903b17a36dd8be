package org.steelyard.grade.mark;

import java.util.List;
import java.util.Optional;
import org.steelyard.model.input.SheetItem;

/** Why figures of a sheet are wrong. */
public sealed interface Diagnosis permits Diagnosis.Nothing, Diagnosis.Rounding, Diagnosis.Found, Diagnosis.CannotTell {

    /** No figure that was entered is wrong. */
    record Nothing() implements Diagnosis {}

    /**
     * No slip: every figure is within what the rounding that the sheet shows can do, or follows from such figures. Some
     * are off by more than the scheme lets through all the same.
     *
     * @param items which, in the order of the sheet
     */
    record Rounding(List<SheetItem> items) implements Diagnosis {

        public Rounding {
            items = List.copyOf(items);
        }
    }

    /**
     * Slips that explain every figure.
     *
     * @param explanations the likeliest first; where there are several, the sheet does not tell which it was
     * @param whole whether every wrong figure is explained; else only those up to the first error
     */
    record Found(List<Explanation> explanations, boolean whole) implements Diagnosis {

        /**
         * Copies the list.
         *
         * @throws IllegalArgumentException if it is empty
         */
        public Found {
            explanations = List.copyOf(explanations);
            if (explanations.isEmpty()) {
                throw new IllegalArgumentException("a cause that was found has an explanation");
            }
        }

        /**
         * The explanation, where there is only one.
         *
         * @return empty if the sheet does not tell which of several it was
         */
        public Optional<Explanation> certain() {
            return explanations.size() == 1 ? Optional.of(explanations.get(0)) : Optional.empty();
        }
    }

    /**
     * No slip and no pair of slips explains the figures.
     *
     * @param first items that are wrong and do not follow from earlier ones
     */
    record CannotTell(List<SheetItem> first) implements Diagnosis {

        public CannotTell {
            first = List.copyOf(first);
        }
    }
}
