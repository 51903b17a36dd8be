package org.steelyard.analyse.part;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.steelyard.analyse.column.TrimSetting;
import org.steelyard.analyse.figure.Measure;

/**
 * What drives the spread of take-off CG or trim: its variance split exactly among the parts of the load.
 *
 * <p>The CG is a ratio, Σ m a / Σ m. With the mean CG ā of the flights and take-off mass M, the pull of part i is
 * {@code c_i = m_i (a_i - ā) / M}; the pulls of a flight add up to its CG less ā. So the variance of CG is the sum of
 * the covariances of the pulls with it, and {@code Cov(c_i, CG) / Var(CG)} are shares that add up to 1. A negative
 * share belongs to a part that evens out what others do. Trim goes by way of CG: slope of trim on CG times
 * {@code Cov(c_i, trim) / Var(trim)}; what a straight line in CG does not explain is the share of the scale itself (its
 * bends, mass). The shares hold for what flew together, whatever the cause: parts that go together share.
 *
 * @param measure take-off CG, or trim within one scale
 * @param typeId type
 * @param flaps flap setting; blank for CG
 * @param thrust thrust rating of the scale; blank for a scale of any rating and for CG
 * @param flights flights of which it is known what lay in each zone, hold and tank: these count
 * @param without flights of the type or setting without that detail: these do not
 * @param sd standard deviation over the flights that count, in the measure's unit
 * @param drivers parts by share, greatest first
 * @param scaleShare share of the scale itself; 0 for CG
 */
public record SpreadDrivers(
        Measure measure,
        String typeId,
        String flaps,
        String thrust,
        long flights,
        long without,
        double sd,
        List<Driver> drivers,
        double scaleShare) {

    /** Below so many flights no split is made. */
    public static final int FEWEST = 30;

    /**
     * One part of the load.
     *
     * @param part its name
     * @param kind passengers, holds, fuel, basic mass or crew and pantry
     * @param meanMassKg mean mass
     * @param meanPullPercentMac mean pull about the mean CG, aft positive; a part ahead of it pulls forward
     * @param share share of the variance, all together 1
     */
    public record Driver(String part, String kind, double meanMassKg, double meanPullPercentMac, double share) {}

    public SpreadDrivers {
        drivers = List.copyOf(drivers);
    }

    /** Shares of the kinds of parts, greatest first, as {@code holds 84 %, fuel 10 %}. */
    public String kinds() {
        Map<String, Double> sums = new LinkedHashMap<>();
        drivers.forEach(driver -> sums.merge(driver.kind(), driver.share(), Double::sum));
        return sums.entrySet().stream()
                .filter(kind -> Math.abs(kind.getValue()) >= 0.0005)
                .sorted(Map.Entry.<String, Double>comparingByValue().reversed())
                .map(kind -> String.format(Locale.ROOT, "%s %.1f %%", kind.getKey(), 100 * kind.getValue()))
                .collect(Collectors.joining(", "));
    }

    /** The greatest driver in words. */
    public String sentence() {
        Driver first = drivers.get(0);
        String which = flaps.isBlank() ? typeId : typeId + " with flaps " + TrimSetting.words(flaps, thrust);
        String text = String.format(
                Locale.ROOT,
                "%s: %s explains %.0f %% of the spread of %s",
                which,
                first.part(),
                100 * first.share(),
                measure.label());
        List<String> next = drivers.stream()
                .skip(1)
                .limit(2)
                .filter(driver -> driver.share() >= 0.05)
                .map(driver -> String.format(Locale.ROOT, "%s %.0f %%", driver.part(), 100 * driver.share()))
                .toList();
        return text + (next.isEmpty() ? "." : ", " + String.join(", ", next) + ".");
    }
}
