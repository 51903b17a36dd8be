package org.steelyard.grade;

import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.steelyard.check.LimitingMass;

/** What a limit or a verdict in a student's words means. */
final class ClaimWords {

    private static final Set<String> IN =
            Set.of("in", "inlimits", "withinlimits", "inside", "within", "ok", "yes", "clean", "insidelimits");
    private static final Set<String> OUT = Set.of(
            "out",
            "outoflimits",
            "outside",
            "outsidelimits",
            "no",
            "notok",
            "notinlimits",
            "breach",
            "breached",
            "exceeded");

    private ClaimWords() {}

    static Optional<Boolean> inLimits(String words) {
        String folded = folded(words);
        if (IN.contains(folded)) {
            return Optional.of(true);
        }
        return OUT.contains(folded) ? Optional.of(false) : Optional.empty();
    }

    static Optional<LimitingMass> limit(String words) {
        String folded = folded(words);
        boolean performance = folded.contains("perf") || folded.contains("regulated") || folded.contains("field");
        if (folded.contains("zero") || folded.contains("zf")) {
            return Optional.of(LimitingMass.ZERO_FUEL);
        }
        if (folded.contains("land")
                || folded.equals("lm")
                || folded.contains("mlm")
                || folded.equals("mlw")
                || folded.equals("lw")) {
            return Optional.of(performance ? LimitingMass.LANDING_PERFORMANCE : LimitingMass.LANDING);
        }
        if (folded.contains("ramp") || folded.contains("taxi")) {
            return Optional.of(LimitingMass.RAMP);
        }
        if (performance) {
            return Optional.of(LimitingMass.TAKEOFF_PERFORMANCE);
        }
        return folded.contains("takeoff") || folded.contains("tom") || folded.contains("tow")
                ? Optional.of(LimitingMass.TAKEOFF)
                : Optional.empty();
    }

    private static String folded(String words) {
        return words.toLowerCase(Locale.ROOT).replaceAll("[^a-z]", "");
    }
}
