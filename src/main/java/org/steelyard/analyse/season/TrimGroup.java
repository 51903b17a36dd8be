package org.steelyard.analyse.season;

import java.util.Optional;
import org.steelyard.analyse.column.TrimSetting;
import org.steelyard.analyse.figure.Spread;
import org.steelyard.model.trim.TrimUnit;

/**
 * Take-off trim and CG of the flights of one type, flap setting and, where the scales depend on it, thrust rating.
 *
 * @param typeId type
 * @param flaps take-off flap setting; blank where none was given
 * @param thrust thrust rating of their scale; blank for a scale of any rating, or none
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
        String thrust,
        TrimUnit unit,
        Optional<Spread> trimUnits,
        Spread cgPercentMac,
        long marginal,
        long breached,
        boolean estimated) {

    /** What its trims have in common. */
    public TrimSetting setting() {
        return new TrimSetting(typeId, flaps, thrust);
    }

    /** Flaps and thrust in words, with a mark where the scale is only an estimate. */
    public String flapsShown() {
        String shown = TrimSetting.shown(flaps, thrust);
        return estimated ? shown + " (estimate)" : shown;
    }
}
