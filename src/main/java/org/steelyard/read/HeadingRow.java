package org.steelyard.read;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.steelyard.model.ColumnMap;
import org.steelyard.model.ColumnRule;
import org.steelyard.model.Field;

/** How well a row serves as the heading row of a map. Headings compare without regard to case and blanks. */
final class HeadingRow {

    /** What every map needs, whether it says so or not. */
    private static final List<Field> KEYS = List.of(Field.FLIGHT, Field.DATE, Field.TAIL);

    private HeadingRow() {}

    /** The headings of a row without blanks around them, up to the last that is not blank. */
    static List<String> headings(RawRow row) {
        List<String> headings = new ArrayList<>();
        int end = row.size();
        while (end > 0 && Blanks.isBlank(row.cell(end - 1))) {
            end--;
        }
        for (int i = 0; i < end; i++) {
            headings.add(Blanks.strip(row.cell(i)));
        }
        return headings;
    }

    /** The rules of a map by folded heading. */
    static Map<String, ColumnRule> rules(ColumnMap map) {
        Map<String, ColumnRule> rules = new HashMap<>();
        for (ColumnRule rule : map.columns()) {
            rules.putIfAbsent(Blanks.fold(rule.heading()), rule);
        }
        return rules;
    }

    /** How many headings of the map the row has. */
    static int known(ColumnMap map, RawRow row) {
        Set<String> known = folded(row);
        known.retainAll(rules(map).keySet());
        return known.size();
    }

    /** The headings that the map requires and the row lacks. */
    static List<String> missing(ColumnMap map, RawRow row) {
        Set<String> present = folded(row);
        List<String> missing = new ArrayList<>();
        for (ColumnRule rule : map.columns()) {
            if (rule.required() && !present.contains(Blanks.fold(rule.heading()))) {
                missing.add(rule.heading());
            }
        }
        for (Field key : holdsSheetsOnly(map) ? List.<Field>of() : KEYS) {
            List<String> names = map.columns().stream()
                    .filter(rule -> rule.field() == key)
                    .map(ColumnRule::heading)
                    .toList();
            if (names.stream().noneMatch(name -> present.contains(Blanks.fold(name)) || missing.contains(name))) {
                missing.add(names.isEmpty() ? "(none in the map for " + key.key() + ")" : names.get(0));
            }
        }
        return missing;
    }

    /** Whether a map is for students' figures alone, whose loadings stand elsewhere. */
    private static boolean holdsSheetsOnly(ColumnMap map) {
        return map.columns().stream().noneMatch(rule -> rule.field() == Field.TAIL)
                && map.columns().stream().anyMatch(rule -> rule.field().isOfSheet());
    }

    private static Set<String> folded(RawRow row) {
        Set<String> folded = new HashSet<>();
        for (String heading : headings(row)) {
            if (!heading.isEmpty()) {
                folded.add(Blanks.fold(heading));
            }
        }
        return folded;
    }
}
