package org.steelyard.analyse.column;

import java.io.Serializable;
import java.util.Comparator;
import org.steelyard.balance.TrimResult;
import org.steelyard.check.result.AuditedFlight;

/**
 * What keeps trims together: one scale.
 *
 * @param typeId type
 * @param flaps take-off flap setting; blank where none was given
 * @param thrust thrust rating of the scale that was read; blank for a scale of any rating, and without a scale
 */
public record TrimSetting(String typeId, String flaps, String thrust) implements Serializable, Comparable<TrimSetting> {

    static final Comparator<TrimSetting> BY_NAME = Comparator.comparing(TrimSetting::typeId, GroupOrder.BY_NAME)
            .thenComparing(TrimSetting::flaps, GroupOrder.BY_NAME)
            .thenComparing(TrimSetting::thrust, GroupOrder.BY_NAME);

    private static final Comparator<TrimSetting> BY_CHARACTERS = Comparator.comparing(TrimSetting::typeId)
            .thenComparing(TrimSetting::flaps)
            .thenComparing(TrimSetting::thrust);

    /** By characters: an order for maps. {@link #BY_NAME} is the one that people look for. */
    @Override
    public int compareTo(TrimSetting other) {
        return BY_CHARACTERS.compare(this, other);
    }

    /** The setting under which a flight took off. */
    public static TrimSetting of(AuditedFlight flight) {
        return new TrimSetting(
                flight.loading().type().id(), flight.loading().setting().flaps(), thrust(flight));
    }

    /** The thrust rating of the take-off scale that was read for a flight; blank for a scale of any rating, or none. */
    public static String thrust(AuditedFlight flight) {
        TrimResult trim = flight.balance().takeoffTrim().orElse(null);
        return trim == null ? "" : trim.scale().thrustRating();
    }

    /** Flaps, and thrust where the scale is for one rating, as {@code 5, thrust TO1}; blank where none is given. */
    public static String words(String flaps, String thrust) {
        return thrust.isBlank() ? flaps : flaps + ", thrust " + thrust;
    }

    /** The same, and words where none is given. */
    public static String shown(String flaps, String thrust) {
        return flaps.isBlank() ? "not given" : words(flaps, thrust);
    }
}
