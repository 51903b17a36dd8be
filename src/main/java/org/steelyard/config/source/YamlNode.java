package org.steelyard.config.source;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A YAML file as it is written: every value is the text that stands there, with its line. */
public sealed interface YamlNode permits YamlNode.Group, YamlNode.Items, YamlNode.Text {

    /** The line where it begins, from 1. */
    int line();

    /** What it is, in words. */
    String kind();

    /** What stands at a key; empty where there is no such key. */
    default Optional<YamlNode> inside(String key) {
        return this instanceof Group group ? Optional.ofNullable(group.values().get(key)) : Optional.empty();
    }

    /** Keys with their values, in order. */
    record Group(int line, Map<String, YamlNode> values) implements YamlNode {

        @Override
        public String kind() {
            return "a group of keys";
        }
    }

    /** A list. */
    record Items(int line, List<YamlNode> items) implements YamlNode {

        public Items {
            items = List.copyOf(items);
        }

        @Override
        public String kind() {
            return "a list";
        }
    }

    /** One value: what stands there, without quotes. */
    record Text(int line, String text) implements YamlNode {

        @Override
        public String kind() {
            return text.isEmpty() ? "nothing" : "a single value";
        }
    }
}
