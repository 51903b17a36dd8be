package org.steelyard.grade.text;

import java.util.HashSet;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.steelyard.check.result.LimitingMass;

/** What a limit or a verdict in a student's words means. */
public final class ClaimWords {

    private static final Set<String> IN = Set.of("in", "inside", "within", "ok", "okay", "yes", "clean", "legal");
    private static final Set<String> OUT = Set.of(
            "out", "outside", "beyond", "breach", "breached", "exceed", "exceeds", "exceeded", "over", "illegal");

    /** Turns the next word that says in or out; alone, {@code no} says out. */
    private static final Set<String> NOT = Set.of("no", "not", "nothing", "none", "without", "never");

    private static final Pattern WORD = Pattern.compile("[a-z]+|[^a-z\\s]+");

    private ClaimWords() {}

    /** In or out; empty where the words say neither, or both. */
    public static Optional<Boolean> inLimits(String words) {
        Set<Boolean> said = new HashSet<>();
        boolean turned = false;
        Matcher word = WORD.matcher(words.toLowerCase(Locale.ROOT));
        while (word.find()) {
            String one = word.group();
            if (IN.contains(one) || OUT.contains(one)) {
                said.add(IN.contains(one) != turned);
                turned = false;
            } else if (NOT.contains(one)) {
                turned = true;
            } else if (turned && !Character.isLetter(one.charAt(0))) {
                said.add(false);
                turned = false;
            }
        }
        if (turned) {
            said.add(false);
        }
        return said.size() == 1 ? said.stream().findFirst() : Optional.empty();
    }

    public static Optional<LimitingMass> limit(String words) {
        String folded = folded(words);
        boolean performance = folded.contains("perf") || folded.contains("regulated") || folded.contains("field");
        if (folded.contains("zero") || folded.contains("zf")) {
            return Optional.of(LimitingMass.ZERO_FUEL);
        }
        if (folded.contains("land")
                || folded.equals("lm")
                || folded.contains("mlm")
                || folded.contains("mlw")
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
