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
 */
public record TrimGroup(
        String typeId,
        String flaps,
        TrimUnit unit,
        Optional<Spread> trimUnits,
        Spread cgPercentMac,
        long marginal,
        long breached) {}
