package org.steelyard.read.text;

import java.util.List;
import java.util.Optional;

/**
 * The names that a type knows for one thing, each once.
 *
 * @param known as the type writes them
 */
public record KnownNames(List<String> known) {

    public KnownNames {
        known = known.stream().distinct().toList();
    }

    /** The position of a name: exactly, else without regard to case; -1 if it is unknown. */
    public int indexOf(String name) {
        for (int i = 0; i < known.size(); i++) {
            if (known.get(i).equals(name)) {
                return i;
            }
        }
        for (int i = 0; i < known.size(); i++) {
            if (known.get(i).equalsIgnoreCase(name)) {
                return i;
            }
        }
        return -1;
    }

    /** The name as the type writes it. */
    public Optional<String> find(String name) {
        int index = indexOf(name);
        return index < 0 ? Optional.empty() : Optional.of(known.get(index));
    }

    public boolean isEmpty() {
        return known.isEmpty();
    }

    @Override
    public String toString() {
        return known.isEmpty() ? "none" : String.join(", ", known);
    }
}
