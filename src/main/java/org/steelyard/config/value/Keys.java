package org.steelyard.config.value;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;
import org.steelyard.config.source.ConfigFault;
import org.steelyard.config.source.Faults;
import org.steelyard.config.source.YamlNode;

/**
 * One group of keys being read. Each read hands back a value of the right kind even where the file is at fault, so that
 * reading goes on to the next fault; {@link #make} then builds nothing.
 */
public final class Keys {

    private final String file;
    private final String place;
    private final String known;
    private final YamlNode.Group group;
    private final Faults faults;
    private final Set<String> asked = new LinkedHashSet<>();
    private final Map<String, String> missing = new LinkedHashMap<>();
    private boolean sound = true;

    private Keys(String file, String place, String known, YamlNode.Group group, Faults faults) {
        this.file = file;
        this.place = place;
        this.known = known;
        this.group = group;
        this.faults = faults;
    }

    /** The keys of a whole file; the kind of file is what the list of known keys begins with. */
    public static Keys of(String file, String kind, YamlNode.Group group, Faults faults) {
        return new Keys(file, "", kind, group, faults);
    }

    /** What stands at a key that must be there, or the stand-in. */
    public <T> T read(String key, Accepts<T> accepts, T standIn) {
        return require(key, accepts).orElse(standIn);
    }

    /** What stands at a key that must be there. */
    public <T> Optional<T> require(String key, Accepts<T> accepts) {
        Optional<YamlNode> node = ask(key);
        if (node.isEmpty()) {
            missing.put(key, expected(accepts));
        }
        return take(node.flatMap(found -> readText(at(key), found, accepts)));
    }

    /** What a key accepts, as its refusal of nothing says it. */
    private static String expected(Accepts<?> accepts) {
        try {
            accepts.read("");
            return "";
        } catch (NotAcceptedException unfit) {
            return unfit.expected();
        }
    }

    /** What stands at a key that may be left out. */
    public <T> Optional<T> find(String key, Accepts<T> accepts) {
        return ask(key).flatMap(node -> readText(at(key), node, accepts));
    }

    public double number(String key, Accepts<Double> accepts) {
        return read(key, accepts, 1.0);
    }

    public String text(String key) {
        return read(key, Keys::notBlank, "?");
    }

    public static String notBlank(String text) throws NotAcceptedException {
        if (text.isBlank()) {
            throw new NotAcceptedException("nothing stands here", "a text");
        }
        return text;
    }

    public int count(String key, int least) {
        return read(key, WrittenNumber.count(least), least);
    }

    /** Values in a list that must be there and hold at least one. */
    public <T> List<T> values(String key, Accepts<T> accepts) {
        List<T> values = new ArrayList<>();
        int number = 0;
        for (YamlNode node : nodes(key, true)) {
            number++;
            readText(at(key) + "[" + number + "]", node, accepts).ifPresent(values::add);
        }
        return values;
    }

    /** Values in a list that may be left out. */
    public <T> List<T> valuesIfAny(String key, Accepts<T> accepts) {
        return ask(key).isEmpty() ? List.of() : values(key, accepts);
    }

    /** One value, or a list of them, at a key that may be left out. */
    public <T> List<T> oneOrMore(String key, Accepts<T> accepts) {
        boolean several =
                ask(key).filter(node -> node instanceof YamlNode.Items).isPresent();
        return several ? values(key, accepts) : find(key, accepts).map(List::of).orElse(List.of());
    }

    /** A group of keys in a list that must be there and hold at least one. */
    public <T> List<T> each(String key, Function<Keys, Optional<T>> reader) {
        return groups(key, true, reader);
    }

    /** The same for a list that may be left out. */
    public <T> List<T> eachIfAny(String key, Function<Keys, Optional<T>> reader) {
        return groups(key, false, reader);
    }

    private <T> List<T> groups(String key, boolean required, Function<Keys, Optional<T>> reader) {
        List<T> values = new ArrayList<>();
        int number = 0;
        for (YamlNode node : nodes(key, required)) {
            number++;
            take(inner(key, "[" + number + "]", node).flatMap(reader)).ifPresent(values::add);
        }
        return values;
    }

    /** A group of keys that must be there. */
    public <T> Optional<T> part(String key, Function<Keys, Optional<T>> reader) {
        Optional<YamlNode> node = ask(key);
        if (node.isEmpty()) {
            missing.put(key, "a group of keys");
        }
        return take(node.flatMap(found -> inner(key, "", found)).flatMap(reader));
    }

    /** A group of keys that may be left out. */
    public <T> Optional<T> partIfAny(String key, Function<Keys, Optional<T>> reader) {
        return ask(key).isEmpty() ? Optional.empty() : part(key, reader);
    }

    /** Passes on what another part of the file gives; without it nothing is built here. */
    public <T> Optional<T> take(Optional<T> value) {
        sound &= value.isPresent();
        return value;
    }

    private Optional<Keys> inner(String key, String suffix, YamlNode node) {
        if (node instanceof YamlNode.Group inner) {
            return Optional.of(new Keys(file, at(key) + suffix, known + "." + key, inner, faults));
        }
        wrongKind(at(key) + suffix, node, "a group of keys");
        return Optional.empty();
    }

    private List<YamlNode> nodes(String key, boolean required) {
        Optional<YamlNode> node = ask(key);
        if (node.isEmpty()) {
            if (required) {
                missing.put(key, "a list");
                sound = false;
            }
            return List.of();
        }
        if (!(node.get() instanceof YamlNode.Items items)) {
            wrongKind(at(key), node.get(), "a list");
            return List.of();
        }
        if (items.items().isEmpty()) {
            fault(items.line(), at(key), "", "the list is empty", "at least one entry");
        }
        return items.items();
    }

    private <T> Optional<T> readText(String where, YamlNode node, Accepts<T> accepts) {
        if (!(node instanceof YamlNode.Text text)) {
            wrongKind(where, node, "a single value");
            return Optional.empty();
        }
        try {
            return Optional.of(accepts.read(text.text()));
        } catch (NotAcceptedException unfit) {
            fault(text.line(), where, text.text(), unfit.getMessage(), unfit.expected());
            return Optional.empty();
        }
    }

    /** What stands along a path of keys, without asking for it: for names that other parts refer to. */
    public Optional<YamlNode> peek(String... path) {
        Optional<YamlNode> node = Optional.of(group);
        for (String key : path) {
            node = node.flatMap(found -> found.inside(key));
        }
        return node;
    }

    private Optional<YamlNode> ask(String key) {
        asked.add(key);
        faults.known(known + "." + key);
        return group.inside(key);
    }

    /** The names of the entries of a list; one that stands twice is a fault. */
    public EntryNames names(String noun, String list, String nameKey) {
        EntryNames names = EntryNames.in(noun, peek(list), nameKey);
        for (int i = 1; i < names.names().size(); i++) {
            String name = names.names().get(i);
            if (names.names().indexOf(name) < i && !name.isEmpty()) {
                fault(list, i + 1, nameKey, "the " + noun + " '" + name + "' stands twice", "each name once");
            }
        }
        return names;
    }

    /** Entries of a list stand in order of their arms, front to back: that is what front first and back first mean. */
    public void requireAftward(String list, List<Double> armsM) {
        for (int i = 1; i < armsM.size(); i++) {
            if (armsM.get(i) < armsM.get(i - 1)) {
                fault(list, i + 1, "arm", "lies ahead of the entry before it", "entries from front to back");
            }
        }
    }

    public int line() {
        return group.line();
    }

    public boolean has(String key) {
        return group.inside(key).isPresent();
    }

    /** A fault of the group as a whole. */
    public void faultHere(String reason, String expected) {
        fault(group.line(), place, "", reason, expected);
    }

    /** A fault at a key, with what stands there. */
    public void fault(String key, String reason, String expected) {
        fault(group.inside(key).orElse(group), at(key), reason, expected);
    }

    /** A fault at a key of an entry of a list, counted from 1. */
    public void fault(String list, int number, String key, String reason, String expected) {
        if (peek(list).orElse(group) instanceof YamlNode.Items items) {
            YamlNode item = items.items().get(number - 1);
            fault(item.inside(key).orElse(item), at(list) + "[" + number + "]." + key, reason, expected);
        }
    }

    private void fault(YamlNode node, String where, String reason, String expected) {
        fault(node.line(), where, node instanceof YamlNode.Text text ? text.text() : "", reason, expected);
    }

    private void wrongKind(String where, YamlNode node, String expected) {
        fault(node, where, "here stands " + node.kind(), expected);
    }

    private void fault(int line, String where, String value, String reason, String expected) {
        sound = false;
        faults.add(new ConfigFault(file, line, where, value, reason, expected));
    }

    private String at(String key) {
        return place.isEmpty() ? key : place + "." + key;
    }

    /**
     * Names the keys that are missing or not known, and builds the value if all its parts are there. A refusal of the
     * model becomes a fault of this group.
     */
    public <T> Optional<T> make(Supplier<T> maker) {
        nameUnknownKeys();
        missing.forEach((key, expected) -> fault(group.line(), at(key), "", "the key is missing", expected));
        if (!sound) {
            return Optional.empty();
        }
        try {
            return Optional.of(maker.get());
        } catch (IllegalArgumentException e) {
            fault(group.line(), place, "", e.getMessage(), "");
            return Optional.empty();
        }
    }

    /** A key that is not known and looks like a missing one is that one, mistyped: one fault, not two. */
    private void nameUnknownKeys() {
        for (Map.Entry<String, YamlNode> entry : group.values().entrySet()) {
            String key = entry.getKey();
            if (asked.contains(key)) {
                continue;
            }
            Optional<String> meant = Nearest.to(key, missing.keySet());
            meant.ifPresent(missing::remove);
            String hint = meant.map(name -> "; the missing key '" + name + "' is meant, perhaps")
                    .orElse(Nearest.hint(key, asked));
            fault(entry.getValue().line(), at(key), "", "unknown key" + hint, Words.or(asked));
        }
    }
}
