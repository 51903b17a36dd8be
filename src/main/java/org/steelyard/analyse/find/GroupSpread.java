package org.steelyard.analyse.find;

import java.util.Comparator;
import org.steelyard.analyse.column.GroupOrder;
import org.steelyard.analyse.column.TrimSetting;
import org.steelyard.analyse.figure.Measure;
import org.steelyard.analyse.figure.Spread;
import org.steelyard.analyse.figure.TypicalRange;

/**
 * How a measure spreads over the flights of one group of one type. A trim stays within one scale, too.
 *
 * @param grouping what the flights have in common: type, tail, route …, or the heading of a carried column
 * @param typeId type
 * @param flaps flap setting; blank where all of the type are together
 * @param thrust thrust rating of the scale; blank for a scale of any rating, and where all of the type are together
 * @param group which group
 * @param measure what was measured
 * @param spread how it spreads; its n is the number of flights that have the measure
 * @param range its typical range
 * @param marginal of these flights, those with status marginal
 * @param breached of these flights, those with status breached
 */
public record GroupSpread(
        String grouping,
        String typeId,
        String flaps,
        String thrust,
        String group,
        Measure measure,
        Spread spread,
        TypicalRange range,
        long marginal,
        long breached) {

    /** The order of flap settings: numbers by value, then words. */
    public static final Comparator<String> BY_FLAPS = GroupOrder.BY_NAME;

    /** Type, flaps and thrust. */
    public TrimSetting setting() {
        return new TrimSetting(typeId, flaps, thrust);
    }

    /** Whether the group is so small that its figures say little. */
    public boolean few() {
        return spread.few();
    }

    /** Share of marginal flights, from 0 to 1. */
    public double shareMarginal() {
        return (double) marginal / spread.n();
    }

    /** Share of breached flights, from 0 to 1. */
    public double shareBreached() {
        return (double) breached / spread.n();
    }
}
