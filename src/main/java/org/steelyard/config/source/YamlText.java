package org.steelyard.config.source;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import com.fasterxml.jackson.dataformat.yaml.YAMLParser;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Parses YAML without letting it guess: {@code no}, {@code 012}, {@code 1_000} and {@code .inf} stay the texts that
 * they are, and each key says later what it accepts. A key that stands twice is a fault, as are references to other
 * places.
 */
public final class YamlText {

    private static final YAMLFactory FACTORY = new YAMLFactory();
    private static final Pattern LINE = Pattern.compile("line (\\d+), column \\d+");

    private final String file;
    private final Faults faults;
    private final YAMLParser parser;

    private YamlText(String file, Faults faults, YAMLParser parser) {
        this.file = file;
        this.faults = faults;
        this.parser = parser;
    }

    /** The keys of a file; empty, and a fault, where it is not YAML or holds no keys. */
    public static Optional<YamlNode.Group> parse(String file, String text, Faults faults) {
        try (YAMLParser parser = FACTORY.createParser(text)) {
            return new YamlText(file, faults, parser).root();
        } catch (JsonProcessingException e) {
            faults.add(notYaml(file, e));
            return Optional.empty();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private Optional<YamlNode.Group> root() throws IOException {
        if (parser.nextToken() == null) {
            faults.add(file, "the file is empty", "keys and values as the README of the folder shows them");
            return Optional.empty();
        }
        YamlNode node = node("", line());
        if (parser.nextToken() != null) {
            fault("", "", "a second document begins here", "one document in a file");
        }
        if (node instanceof YamlNode.Group group) {
            return Optional.of(group);
        }
        faults.add(new ConfigFault(file, node.line(), "", "", "the file holds " + node.kind(), "keys and values"));
        return Optional.empty();
    }

    /** What stands at the current token; it counts as beginning in the line of its key. */
    private YamlNode node(String place, int line) throws IOException {
        JsonToken token = parser.currentToken();
        if (token == JsonToken.START_OBJECT) {
            return group(place, line);
        }
        if (token == JsonToken.START_ARRAY) {
            return items(place, line);
        }
        if (parser.isCurrentAlias()) {
            fault(place, "*" + parser.getText(), "a reference to another place", "the value itself");
        }
        return new YamlNode.Text(line, parser.getText().strip());
    }

    private YamlNode group(String place, int line) throws IOException {
        Map<String, YamlNode> values = new LinkedHashMap<>();
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            String key = parser.currentName();
            String inner = place.isEmpty() ? key : place + "." + key;
            if (values.containsKey(key)) {
                fault(inner, "", "the key stands twice", "each key once");
            }
            int keyLine = line();
            parser.nextToken();
            values.putIfAbsent(key, node(inner, keyLine));
        }
        return new YamlNode.Group(line, values);
    }

    private YamlNode items(String place, int line) throws IOException {
        List<YamlNode> items = new ArrayList<>();
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            items.add(node(place + "[" + (items.size() + 1) + "]", line()));
        }
        return new YamlNode.Items(line, items);
    }

    private int line() {
        return parser.currentTokenLocation().getLineNr();
    }

    private void fault(String place, String value, String reason, String expected) {
        faults.add(new ConfigFault(file, line(), place, value, reason, expected));
    }

    /** The parser's own words are several lines; the last one that is not indented says what is wrong. */
    private static ConfigFault notYaml(String file, JsonProcessingException e) {
        String problem = "";
        int line = Math.max(0, e.getLocation() == null ? 0 : e.getLocation().getLineNr());
        for (String text : e.getOriginalMessage().lines().toList()) {
            Matcher place = LINE.matcher(text);
            if (place.find()) {
                line = Integer.parseInt(place.group(1));
            } else if (!text.isBlank() && !text.startsWith(" ")) {
                problem = text.strip()
                        .replaceFirst(", got this instead.*|\\. \\(.*|\\(Do not.*", "")
                        .strip();
            }
        }
        return new ConfigFault(file, line, "", "", "not readable as YAML: " + problem, "YAML");
    }
}
