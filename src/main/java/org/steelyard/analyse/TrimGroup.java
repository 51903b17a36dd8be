package org.steelyard.analyse;

import java.util.Optional;
import org.steelyard.model.TrimUnit;

/**
 * Take-off trim and CG of the flights of one type and flap setting.
 *
 * @param typeId type
 * @param flaps take-off flap setting; blank where none was given
 * @param unit what the numbers of the trim scale are
 * @param trimUnits spread of trim, nose-up positive, over the flights that have one; empty if none has
 * @param cgPercentMac spread of take-off CG in % MAC over all flights of the group
 * @param marginal flights with status marginal
 * @param breached flights with status breached
 * @param estimated whether the scale is only an estimate
 */
public record TrimGroup(
        String typeId,
        String flaps,
        TrimUnit unit,
        Optional<Spread> trimUnits,
        Spread cgPercentMac,
        long marginal,
        long breached,
        boolean estimated) {

    /** A group whose scale is no estimate. */
    public TrimGroup(
            String typeId,
            String flaps,
            TrimUnit unit,
            Optional<Spread> trimUnits,
            Spread cgPercentMac,
            long marginal,
            long breached) {
        this(typeId, flaps, unit, trimUnits, cgPercentMac, marginal, breached, false);
    }

    /** The flap setting in words, with a mark where the scale is only an estimate. */
    public String flapsShown() {
        String shown = flaps.isBlank() ? "not given" : flaps;
        return estimated ? shown + " (estimate)" : shown;
    }
}
