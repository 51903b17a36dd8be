package org.steelyard.analyse.column;

import java.io.Serializable;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;
import org.steelyard.balance.Distribution;
import org.steelyard.model.type.AircraftType;

/**
 * A band of take-off mass or of load factor, lower end included.
 *
 * @param low lower end, in whole units
 * @param high upper end; the same as the lower where there is none
 * @param unit unit of both; blank where the figure is not known
 */
public record Band(long low, long high, String unit) implements Serializable {

    static final Comparator<Band> IN_ORDER = Comparator.comparing(
                    (Band band) -> band.unit().isBlank())
            .thenComparingLong(Band::low)
            .thenComparingLong(Band::high);

    private static final Band UNKNOWN = new Band(0, 0, "");
    private static final int FIFTHS = 5;
    private static final int LOAD_FACTOR_STEP = 100 / FIFTHS;
    private static final int BANDS_TO_MAX_MASS = 12;

    /** The band of a take-off mass; some twelve bands of a round width reach up to the type's maximum. */
    public static Band ofMass(AircraftType type, double massKg) {
        long stepKg = roundStep(type.limits().maxTakeoffKg() / BANDS_TO_MAX_MASS);
        long below = (long) Math.floor(massKg / stepKg);
        long low = below * stepKg;
        return new Band(low, low + stepKg, "kg");
    }

    /** The band of seats taken, in fifths; exactly all seats belong to the last fifth. */
    public static Band ofLoadFactor(AircraftType type, Optional<Distribution> distribution) {
        int seats = type.cabin().seats();
        if (distribution.isEmpty() || distribution.get().passengers().isEmpty() || seats == 0) {
            return UNKNOWN;
        }
        double percent = 100 * distribution.get().seatedByZone().sum() / seats;
        if (percent > 100) {
            return new Band(100, 100, "%");
        }
        long fifth = Math.min(FIFTHS - 1, (long) (percent / LOAD_FACTOR_STEP));
        return new Band(fifth * LOAD_FACTOR_STEP, (fifth + 1) * LOAD_FACTOR_STEP, "%");
    }

    /** The nearest of 1, 2, 5 and 10 times a power of ten, at least 1. */
    static long roundStep(double wanted) {
        double power = Math.pow(10, Math.floor(Math.log10(Math.max(1, wanted))));
        double digit = wanted / power;
        double round = digit < Math.sqrt(2) ? 1 : digit < Math.sqrt(10) ? 2 : digit < Math.sqrt(50) ? 5 : 10;
        return Math.max(1, Math.round(round * power));
    }

    String label() {
        if (unit.isBlank()) {
            return "not known";
        }
        return low == high
                ? String.format(Locale.ROOT, "over %,d %s", low, unit)
                : String.format(Locale.ROOT, "%,d to %,d %s", low, high, unit);
    }
}
