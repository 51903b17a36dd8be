package org.steelyard.read.propose;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/**
 * The words of a heading in lower case: parted at signs, at capitals within a word and between letters and digits;
 * without accents; terms of several words made one.
 */
final class HeadingTokens {

    private static final List<List<String>> TERMS = List.of(
            List.of("t/o", " takeoff "),
            List.of("take-off", " takeoff "),
            List.of("take off", " takeoff "),
            List.of("zero-fuel", " zerofuel "),
            List.of("zero fuel", " zerofuel "),
            List.of("a/c", " aircraft "),
            List.of("c.g.", " cg "),
            List.of("c of g", " cg "),
            List.of("flight deck", " cockpit "));

    private static final String ACCENTED = "àáâãäåçèéêëìíîïñòóôõöùúûüýÿ";
    private static final String PLAIN = "aaaaaaceeeeiiiinooooouuuuyy";

    private final Set<String> words;

    private HeadingTokens(Set<String> words) {
        this.words = words;
    }

    static HeadingTokens of(String heading) {
        String text = parted(heading).toLowerCase(Locale.ROOT);
        for (List<String> term : TERMS) {
            text = text.replace(term.get(0), term.get(1));
        }
        Set<String> words = new LinkedHashSet<>();
        for (String word : withoutAccents(text).split("[^a-z0-9]+", -1)) {
            if (!word.isEmpty()) {
                words.add(word);
            }
        }
        return new HeadingTokens(words);
    }

    private static String parted(String heading) {
        return heading.replaceAll("(?<=\\p{Ll})(?=\\p{Lu})", " ")
                .replaceAll("(?<=\\p{L})(?=\\d)", " ")
                .replaceAll("(?<=\\d)(?=\\p{L})", " ");
    }

    private static String withoutAccents(String text) {
        StringBuilder plain = new StringBuilder(text.length());
        for (int i = 0; i < text.length(); i++) {
            int accented = ACCENTED.indexOf(text.charAt(i));
            plain.append(accented < 0 ? text.charAt(i) : PLAIN.charAt(accented));
        }
        return plain.toString();
    }

    boolean has(String... any) {
        for (String word : any) {
            boolean found = word.endsWith("*")
                    ? words.stream().anyMatch(one -> one.startsWith(word.substring(0, word.length() - 1)))
                    : words.contains(word);
            if (found) {
                return true;
            }
        }
        return false;
    }

    /** The words that are not among some others, in their order. */
    List<String> without(Collection<String> others) {
        List<String> rest = new ArrayList<>(words);
        rest.removeAll(others);
        return rest;
    }

    boolean isEmpty() {
        return words.isEmpty();
    }
}
