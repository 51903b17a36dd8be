package org.steelyard.config.section;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import org.steelyard.config.ConfigFolder;
import org.steelyard.model.input.BlankLoad;
import org.steelyard.model.input.ColumnMap;
import org.steelyard.model.input.ColumnMap.MergedCells;
import org.steelyard.model.input.ColumnRule;
import org.steelyard.model.input.ColumnUnit;
import org.steelyard.model.input.DigitGrouping;
import org.steelyard.model.input.Field;
import org.steelyard.model.input.SourceForm;
import org.steelyard.model.type.PassengerCategory;

/** Writes a heading map as a file of {@code columns/}, with comments. */
public final class MapYaml {

    /** Texts that YAML takes as they stand, also within brackets. */
    private static final Pattern PLAIN = Pattern.compile("[\\p{L}\\d][\\p{L}\\d _./()+-]*");

    private static final String BLANK_UNSAID = """
            # Say what a blank zone, hold or tank means: none, or missing, which rejects the row. Until then it counts as
            # none, with a note on each flight.
            # blank: none
            """;

    private MapYaml() {}

    /**
     * The text of the file.
     *
     * @param map the map
     * @param head lines of a comment above it
     * @param comments comments behind columns, by heading; none where a heading is not there
     * @return YAML that {@link ConfigFolder} reads back as the same map
     */
    public static String of(ColumnMap map, List<String> head, Map<String, String> comments) {
        StringBuilder out = new StringBuilder();
        head.forEach(line -> out.append("# ").append(oneLine(line)).append('\n'));
        out.append("map: ").append(text(map.name())).append('\n');
        if (!map.filePatterns().isEmpty()) {
            List<String> patterns =
                    map.filePatterns().stream().map(MapYaml::quoted).toList();
            out.append("files: [").append(String.join(", ", patterns)).append("]\n");
        }
        if (!map.charset().isBlank()) {
            out.append("charset: ").append(text(map.charset())).append('\n');
        }
        map.delimiter()
                .map(MapYaml::delimiter)
                .filter(word -> !word.isEmpty())
                .ifPresent(word -> out.append("delimiter: ").append(word).append('\n'));
        out.append("decimal: ").append(map.decimalComma() ? "comma" : "point").append('\n');
        if (map.grouping() != DigitGrouping.NONE) {
            out.append("grouping: ").append(map.grouping().label()).append('\n');
        }
        String unknown = map.unknownColumns().name().toLowerCase(Locale.ROOT).replace('_', ' ');
        out.append("unknown-columns: ").append(unknown).append('\n');
        if (map.form() != SourceForm.FLIGHTS) {
            out.append("form: ").append(map.form().key()).append('\n');
        }
        if (!map.scheme().isBlank()) {
            out.append("scheme: ").append(text(map.scheme())).append('\n');
        }
        if (map.mergedCells() != MergedCells.FIRST_ROW) {
            out.append("merged-cells: ").append(map.mergedCells().label()).append('\n');
        }
        if (map.blank() != BlankLoad.NOT_SAID) {
            out.append("blank: ").append(map.blank().label()).append('\n');
        } else if (map.columns().stream().anyMatch(rule -> rule.field().isLoad())) {
            out.append(BLANK_UNSAID);
        }
        out.append("columns:\n");
        map.columns().forEach(rule -> column(out, rule, comments.getOrDefault(rule.heading(), "")));
        return out.toString();
    }

    /** The word of a delimiter; blank for one that is found in the heading line. */
    private static String delimiter(char sign) {
        return switch (sign) {
            case ',' -> "comma";
            case ';' -> "semicolon";
            case '\t' -> "tab";
            default -> "";
        };
    }

    private static void column(StringBuilder out, ColumnRule rule, String comment) {
        out.append("  - {heading: ").append(text(rule.heading()));
        out.append(", field: ").append(rule.field().key());
        if (!rule.place().isBlank()) {
            out.append(", place: ").append(text(rule.place()));
        }
        if (rule.field() == Field.PASSENGERS && rule.category() != PassengerCategory.ADULT) {
            out.append(", category: ").append(rule.category().label());
        }
        if (rule.unit() != ColumnUnit.NONE) {
            out.append(", unit: ").append(text(rule.unit().symbol()));
        }
        dates(out, rule.dateFormats());
        if (rule.blank() != BlankLoad.NOT_SAID) {
            out.append(", blank: ").append(rule.blank().label());
        }
        out.append(rule.required() ? ", required: yes}" : "}");
        out.append(comment.isBlank() ? "\n" : " # " + oneLine(comment) + "\n");
    }

    private static void dates(StringBuilder out, List<String> patterns) {
        if (patterns.size() == 1) {
            out.append(", dates: ").append(text(patterns.get(0)));
        } else if (!patterns.isEmpty()) {
            List<String> texts = patterns.stream().map(MapYaml::text).toList();
            out.append(", dates: [").append(String.join(", ", texts)).append(']');
        }
    }

    private static String text(String text) {
        return PLAIN.matcher(text).matches() && text.equals(text.strip()) ? text : quoted(text);
    }

    private static String quoted(String text) {
        StringBuilder out = new StringBuilder("\"");
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '"' || c == '\\') {
                out.append('\\').append(c);
            } else if (Character.isISOControl(c)) {
                out.append(String.format(Locale.ROOT, "\\u%04x", (int) c));
            } else {
                out.append(c);
            }
        }
        return out.append('"').toString();
    }

    private static String oneLine(String text) {
        return text.replaceAll("\\p{Cntrl}", " ");
    }
}
