package org.steelyard.read;

import java.util.List;
import java.util.Locale;
import org.steelyard.model.ColumnMap;
import org.steelyard.model.ProblemCode;

/** Which heading maps come into question for a file: the one asked for, else those for its name, else all. */
final class MapChoice {

    private MapChoice() {}

    static List<ColumnMap> candidates(ReadOptions options, String fileName) throws SourceFault {
        if (options.mapName().isPresent()) {
            return List.of(named(options, options.mapName().get(), fileName));
        }
        List<ColumnMap> byName = options.maps().stream()
                .filter(map -> map.filePatterns().stream().anyMatch(pattern -> matches(pattern, fileName)))
                .toList();
        return byName.isEmpty() ? options.maps() : byName;
    }

    private static ColumnMap named(ReadOptions options, String name, String fileName) throws SourceFault {
        for (ColumnMap map : options.maps()) {
            if (map.name().equals(name)) {
                return map;
            }
        }
        String known =
                String.join(", ", options.maps().stream().map(ColumnMap::name).toList());
        throw new SourceFault(new TableName(fileName, "")
                .problem(0, ProblemCode.UNKNOWN_NAME, "there is no such heading map", name, "one of " + known));
    }

    /** Whether a name matches a pattern with * for any characters and ? for one, without regard to case. */
    static boolean matches(String pattern, String name) {
        return matches(pattern.toLowerCase(Locale.ROOT), 0, name.toLowerCase(Locale.ROOT), 0);
    }

    private static boolean matches(String pattern, int p, String name, int n) {
        if (p == pattern.length()) {
            return n == name.length();
        }
        char c = pattern.charAt(p);
        if (c == '*') {
            return matches(pattern, p + 1, name, n) || (n < name.length() && matches(pattern, p, name, n + 1));
        }
        return n < name.length() && (c == '?' || c == name.charAt(n)) && matches(pattern, p + 1, name, n + 1);
    }
}
