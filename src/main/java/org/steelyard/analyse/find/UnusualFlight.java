package org.steelyard.analyse.find;

import java.util.List;
import java.util.Locale;
import org.steelyard.analyse.figure.Measure;
import org.steelyard.analyse.figure.Spread;
import org.steelyard.analyse.part.PartPull;
import org.steelyard.model.loading.FlightIdent;
import org.steelyard.model.loading.Origin;
import org.steelyard.model.unit.MassUnit;

/**
 * A flight far from the others of its type, flap setting and, where its scale is for one rating, thrust.
 *
 * <p>Score: {@code 0.6745 (x - median) / MAD}, MAD being the median of the absolute distances from the median, so that
 * the unusual ones do not hide themselves by widening the spread; listed beyond {@link #SCORE} to either side (Iglewicz
 * and Hoaglin, How to Detect and Handle Outliers, 1993). Were the values normally distributed, chance alone would list
 * one flight in 2,000 from groups of thousands, one in 900 from groups of 100 and one in 150 from groups of 21. No
 * score is given in groups of fewer than {@link Spread#FEW} flights or where more than half of the values are the same.
 *
 * @param flight which flight
 * @param origin where its row stands
 * @param tail registration
 * @param typeId type
 * @param flaps flap setting
 * @param thrust thrust rating of the scale; blank for a scale of any rating, or none
 * @param measure what is unusual
 * @param value its value, in the measure's unit
 * @param median median of the type, flap setting and thrust
 * @param score robust score, positive aft or nose-up
 * @param reasons parts of its load against the mean of type and setting, in % MAC of take-off CG; empty where the input
 *     gives no detail
 * @param partMass mass of the first of them and its usual mass; empty without detail
 */
public record UnusualFlight(
        FlightIdent flight,
        Origin origin,
        String tail,
        String typeId,
        String flaps,
        String thrust,
        Measure measure,
        double value,
        double median,
        double score,
        List<PartPull> reasons,
        List<PartMass> partMass) {

    /** Robust score beyond which a flight is listed. */
    public static final double SCORE = 3.5;

    /** At most so many flights to either side are kept for each scale and measure. */
    public static final int KEPT_EACH_SIDE = 50;

    /**
     * How much of a part lay aboard.
     *
     * @param massKg on this flight
     * @param usualKg mean of the type and setting
     * @param unit the unit of the type's users
     */
    public record PartMass(double massKg, double usualKg, MassUnit unit) {

        String shown() {
            return String.format(
                    Locale.ROOT,
                    "%,.0f %s where %,.0f are usual",
                    unit.fromKg(massKg),
                    unit.symbol(),
                    unit.fromKg(usualKg));
        }
    }

    public UnusualFlight {
        reasons = List.copyOf(reasons);
        partMass = List.copyOf(partMass);
    }

    /** Why, in words. */
    public String reason() {
        if (reasons.isEmpty()) {
            return "The input gives no zones, holds and tanks to tell why.";
        }
        PartPull first = reasons.get(0);
        return String.format(
                Locale.ROOT,
                "%s: %s (%+.2f %% MAC)%s.",
                first.part(),
                partMass.get(0).shown(),
                first.percentMac(),
                others());
    }

    private String others() {
        List<String> words = reasons.stream()
                .skip(1)
                .filter(pull -> Math.abs(pull.percentMac()) >= 0.1)
                .map(PartPull::shown)
                .toList();
        return words.isEmpty() ? "" : "; then " + String.join(", ", words);
    }
}
