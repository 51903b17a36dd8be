package org.steelyard.config.value;

import java.util.Collection;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;

/** Choices among words, and lists of them for messages. */
public final class Words {

    private Words() {}

    /** The names as {@code a, b or c}. */
    public static String or(Collection<String> names) {
        List<String> list = names.stream().distinct().toList();
        int last = list.size() - 1;
        return last < 1 ? String.join("", list) : String.join(", ", list.subList(0, last)) + " or " + list.get(last);
    }

    /** One of the values, written as its word. */
    public static <T> Accepts<T> choice(Function<T, String> word, List<T> values) {
        return text -> {
            for (T value : values) {
                if (word.apply(value).equals(text)) {
                    return value;
                }
            }
            List<String> words = values.stream().map(word).toList();
            throw new NotAcceptedException("unknown word" + Nearest.hint(text, words), or(words));
        };
    }

    /** One of some words. */
    public static Accepts<String> choice(String... words) {
        return choice(Function.identity(), List.of(words));
    }

    /** A yes or a no. */
    public static boolean yes(String text) throws NotAcceptedException {
        boolean yes = Stream.of("yes", "true").anyMatch(text::equals);
        if (!yes && !text.equals("no") && !text.equals("false")) {
            throw new NotAcceptedException("neither yes nor no", "yes or no");
        }
        return yes;
    }
}
