package org.steelyard.config.value;

import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What other files refer to by name. A name that is declared but whose entry is at fault is known all the same: one
 * slip is one fault.
 *
 * @param noun what the names stand for
 * @param values the sound ones
 * @param names all that are declared
 * @param complete whether nothing that could declare a name was unreadable
 */
public record KnownValues<T>(String noun, Map<String, T> values, Set<String> names, boolean complete) {

    public KnownValues {
        values = Map.copyOf(values);
        names = Set.copyOf(names);
    }

    /** Whether everything that is declared is sound. */
    public boolean allSound() {
        return complete && values.keySet().containsAll(names);
    }

    /** A reference by name; empty where what it stands for is at fault elsewhere. */
    public Accepts<Optional<T>> reference() {
        return text -> {
            if (complete && !names.contains(text)) {
                throw new NotAcceptedException(
                        "unknown " + noun + Nearest.hint(text, names),
                        Words.or(names.stream().sorted().toList()));
            }
            return Optional.ofNullable(values.get(text));
        };
    }
}
