package org.steelyard.analyse.part;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.IntToDoubleFunction;

/**
 * How far a part of the load moves the take-off CG against a reference; over all parts these add up to the whole
 * difference.
 *
 * @param part name of the part
 * @param percentMac its move in % MAC, aft positive
 */
public record PartPull(String part, double percentMac) {

    private static final int SHOWN = 3;
    private static final double WORTH_A_WORD = 0.15;

    /** The parts that move most, whichever way. */
    public static List<PartPull> greatest(LoadParts parts, IntToDoubleFunction percentMac) {
        List<PartPull> pulls = new ArrayList<>();
        for (int j = 0; j < parts.size(); j++) {
            pulls.add(new PartPull(parts.name(j), percentMac.applyAsDouble(j)));
        }
        pulls.sort(Comparator.comparingDouble((PartPull pull) -> -Math.abs(pull.percentMac()))
                .thenComparing(PartPull::part));
        return pulls.subList(0, Math.min(SHOWN, pulls.size()));
    }

    /** Those that push the way of the difference, as the end of a sentence; nothing if there are none. */
    public static String because(List<PartPull> pulls, double differencePercentMac) {
        List<String> words = pulls.stream()
                .filter(pull -> pull.percentMac() * differencePercentMac > 0
                        && Math.abs(pull.percentMac()) >= WORTH_A_WORD * Math.abs(differencePercentMac))
                .map(PartPull::shown)
                .toList();
        return words.isEmpty() ? "" : ": " + String.join(", ", words);
    }

    /** The part with its move, signed. */
    public String shown() {
        return String.format(Locale.ROOT, "%s %+.2f", part, percentMac);
    }
}
