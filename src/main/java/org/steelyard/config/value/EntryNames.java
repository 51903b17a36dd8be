package org.steelyard.config.value;

import java.util.List;
import java.util.Optional;
import org.steelyard.config.source.YamlNode;

/**
 * The names that the entries of a list give themselves, in its order, also of entries that are at fault: so that a
 * reference to one of those is not a second fault.
 *
 * @param noun what the entries are
 * @param names their names; blank where an entry has none
 */
public record EntryNames(String noun, List<String> names) {

    public EntryNames {
        names = List.copyOf(names);
    }

    /** The names in a list of groups of keys; none where there is no such list. */
    public static EntryNames in(String noun, Optional<YamlNode> list, String nameKey) {
        return list.isPresent() && list.get() instanceof YamlNode.Items items
                ? new EntryNames(
                        noun,
                        items.items().stream().map(item -> name(item, nameKey)).toList())
                : new EntryNames(noun, List.of());
    }

    private static String name(YamlNode item, String nameKey) {
        return item.inside(nameKey).orElse(item) instanceof YamlNode.Text text ? text.text() : "";
    }

    /** A reference to one of the names: its position, from 0. */
    public Accepts<Integer> reference() {
        return text -> {
            int position = names.indexOf(text);
            if (position < 0) {
                throw new NotAcceptedException("unknown " + noun + Nearest.hint(text, names), expected());
            }
            return position;
        };
    }

    private String expected() {
        return names.isEmpty() ? "none, as no " + noun + " is listed" : Words.or(names);
    }
}
