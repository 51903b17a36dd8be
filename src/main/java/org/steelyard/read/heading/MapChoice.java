package org.steelyard.read.heading;

import java.util.List;
import java.util.Locale;
import org.steelyard.model.input.ColumnMap;
import org.steelyard.model.input.ProblemCode;
import org.steelyard.read.table.ReadOptions;
import org.steelyard.read.table.SourceFault;
import org.steelyard.read.table.TableName;

/** Which heading maps come into question for a file: the one asked for, else those for its name, else all. */
public final class MapChoice {

    private MapChoice() {}

    public static List<ColumnMap> candidates(ReadOptions options, String fileName) throws SourceFault {
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

    /**
     * Whether a name matches a pattern with * for any characters and ? for one, without regard to case. What went wrong
     * behind a star is tried again from the last star alone, so that many stars cost no more than their number times
     * the name's length.
     */
    static boolean matches(String pattern, String name) {
        String wanted = pattern.toLowerCase(Locale.ROOT);
        String given = name.toLowerCase(Locale.ROOT);
        int p = 0;
        int n = 0;
        int star = -1;
        int behindStar = 0;
        while (n < given.length()) {
            if (p < wanted.length() && wanted.charAt(p) == '*') {
                star = p++;
                behindStar = n;
            } else if (p < wanted.length() && (wanted.charAt(p) == '?' || wanted.charAt(p) == given.charAt(n))) {
                p++;
                n++;
            } else if (star >= 0) {
                p = star + 1;
                n = ++behindStar;
            } else {
                return false;
            }
        }
        return wanted.substring(p).chars().allMatch(c -> c == '*');
    }
}
