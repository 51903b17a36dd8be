package org.steelyard.read.table;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.steelyard.model.input.ColumnMap;
import org.steelyard.model.input.ColumnRule;
import org.steelyard.model.input.ColumnUnit;
import org.steelyard.model.input.Field;
import org.steelyard.model.input.SourceForm;
import org.steelyard.read.text.Blanks;

/** How well a row serves as the heading row of a map. Headings compare without regard to case and blanks. */
public final class HeadingRow {

    /** What every map needs, whether it says so or not. */
    private static final List<Field> KEYS = List.of(Field.FLIGHT, Field.DATE, Field.TAIL);

    private static final List<Field> ITEM_KEYS = List.of(Field.FLIGHT);

    private HeadingRow() {}

    /** The headings of a row without blanks around them, up to the last that is not blank. */
    public static List<String> headings(RawRow row) {
        List<String> headings = new ArrayList<>();
        for (int i = row.nextFilled(0); i >= 0; i = row.nextFilled(i + 1)) {
            while (headings.size() < i) {
                headings.add("");
            }
            headings.add(Blanks.strip(row.cell(i)));
        }
        return headings;
    }

    /** The rules of a map by folded heading. */
    public static Map<String, ColumnRule> rules(ColumnMap map) {
        Map<String, ColumnRule> rules = new HashMap<>();
        for (ColumnRule rule : map.columns()) {
            rules.putIfAbsent(Blanks.fold(rule.heading()), rule);
        }
        return rules;
    }

    /** The rule of a heading: by its words, else by them without the unit behind them, which is then its unit. */
    public static Optional<ColumnRule> rule(Map<String, ColumnRule> rules, String heading) {
        ColumnRule exact = rules.get(Blanks.fold(heading));
        if (exact != null && exact.unit() != ColumnUnit.IN_HEADING) {
            return Optional.of(exact);
        }
        UnitHeading parts = UnitHeading.of(heading);
        return Optional.ofNullable(rules.get(Blanks.fold(parts.words())))
                .filter(rule -> rule.unit() == ColumnUnit.IN_HEADING)
                .flatMap(rule ->
                        parts.unit().filter(unit -> unit.suits(rule.field())).map(rule::in));
    }

    /** Why a heading that ought to name its unit does not do so. */
    public static Optional<String> unitFault(Map<String, ColumnRule> rules, String heading) {
        UnitHeading parts = UnitHeading.of(heading);
        boolean bare = Optional.ofNullable(rules.get(Blanks.fold(heading)))
                .filter(rule -> rule.unit() == ColumnUnit.IN_HEADING)
                .isPresent();
        if (bare) {
            return Optional.of("the heading names no unit");
        }
        Optional<ColumnRule> rule = Optional.ofNullable(rules.get(Blanks.fold(parts.words())))
                .filter(found -> found.unit() == ColumnUnit.IN_HEADING);
        if (rule.isEmpty() || rule(rules, heading).isPresent()) {
            return Optional.empty();
        }
        return Optional.of(
                parts.anyGallon()
                        ? "the heading may mean US or imperial gallons"
                        : "the heading names a unit of another kind");
    }

    /** How many headings of the map the row has. */
    public static int known(ColumnMap map, RawRow row) {
        return known(rules(map), row).size();
    }

    /** The headings of the map that the row has, as they compare. */
    public static Set<String> known(Map<String, ColumnRule> rules, RawRow row) {
        Set<String> known = new HashSet<>();
        for (String heading : headings(row)) {
            rule(rules, heading).ifPresent(rule -> known.add(Blanks.fold(rule.heading())));
        }
        return known;
    }

    /** The headings that the map requires and the row lacks. */
    public static List<String> missing(ColumnMap map, RawRow row) {
        Set<String> present = known(rules(map), row);
        List<String> missing = new ArrayList<>();
        for (ColumnRule rule : map.columns()) {
            if (rule.required() && !present.contains(Blanks.fold(rule.heading()))) {
                missing.add(rule.heading());
            }
        }
        for (Field key : keys(map)) {
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

    private static List<Field> keys(ColumnMap map) {
        if (holdsSheetsOnly(map)) {
            return List.of();
        }
        return map.form() == SourceForm.ITEMS ? ITEM_KEYS : KEYS;
    }

    /** Whether a map is for students' figures alone, whose loadings stand elsewhere. */
    private static boolean holdsSheetsOnly(ColumnMap map) {
        return map.columns().stream().noneMatch(rule -> rule.field() == Field.TAIL)
                && map.columns().stream().anyMatch(rule -> rule.field().isOfSheet());
    }
}
