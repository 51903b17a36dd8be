package org.steelyard.read.heading;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.steelyard.model.input.BlankLoad;
import org.steelyard.model.input.ColumnMap;
import org.steelyard.model.input.ColumnMap.MergedCells;
import org.steelyard.model.input.ColumnRule;
import org.steelyard.model.input.ColumnUnit;
import org.steelyard.model.input.DigitGrouping;
import org.steelyard.model.input.Field;
import org.steelyard.model.input.SourceForm;
import org.steelyard.model.type.PassengerCategory;

/**
 * Headings that say themselves what they mean, so that no heading map is needed: a field, with a zone, hold or tank and
 * a passenger category behind points, and the unit in brackets, as {@code hold-mass.1 (kg)},
 * {@code passengers.A.child}, {@code claimed-takeoff-cg (% MAC)}.
 */
public final class PlainHeadings {

    private static final String MAP = "plain headings";
    private static final Pattern HEADING = Pattern.compile("([a-z-]+)((?:\\.[^().]+)*)(?: \\(([^()]+)\\))?");

    private PlainHeadings() {}

    /** A heading map for a line of headings; empty if one of them is not plain. */
    public static Optional<ColumnMap> map(String headingLine) {
        char delimiter = delimiter(headingLine);
        List<String> headings = List.of(headingLine.split(Pattern.quote("" + delimiter), -1));
        List<ColumnRule> rules = new ArrayList<>();
        for (String heading : headings) {
            Optional<ColumnRule> rule = rule(heading);
            if (rule.isEmpty()) {
                return Optional.empty();
            }
            rules.add(rule.get());
        }
        return Optional.of(new ColumnMap(
                MAP,
                List.of(),
                "",
                Optional.of(delimiter),
                false,
                DigitGrouping.NONE,
                ColumnMap.UnknownColumns.KEEP,
                rules,
                SourceForm.FLIGHTS,
                "",
                MergedCells.FIRST_ROW,
                BlankLoad.NOT_SAID));
    }

    /** Whichever stands there most often; plain headings hold neither. */
    private static char delimiter(String line) {
        char most = ',';
        for (char one : new char[] {';', '\t'}) {
            most = count(line, one) > count(line, most) ? one : most;
        }
        return most;
    }

    private static long count(String line, char sign) {
        return line.chars().filter(c -> c == sign).count();
    }

    private static Optional<ColumnRule> rule(String heading) {
        Matcher parts = HEADING.matcher(heading);
        if (!parts.matches()) {
            return Optional.empty();
        }
        Optional<Field> field = Stream.of(Field.values())
                .filter(one -> one.key().equals(parts.group(1)))
                .findFirst();
        String unit = parts.group(3) == null ? "" : parts.group(3);
        Optional<ColumnUnit> known = Stream.of(ColumnUnit.values())
                .filter(one -> one.symbol().equals(unit))
                .filter(one -> field.isPresent() && one.suits(field.get()))
                .findFirst();
        return field.isPresent() && known.isPresent()
                ? rule(heading, field.get(), parts.group(2), known.get())
                : Optional.empty();
    }

    private static Optional<ColumnRule> rule(String heading, Field field, String behind, ColumnUnit unit) {
        String[] words = behind.isEmpty() ? new String[0] : behind.substring(1).split("\\.", -1);
        String place = "";
        PassengerCategory category = PassengerCategory.ADULT;
        for (String word : words) {
            Optional<PassengerCategory> named = Stream.of(PassengerCategory.values())
                    .filter(one -> field == Field.PASSENGERS && one.label().equals(word))
                    .findFirst();
            category = named.orElse(category);
            place = named.isPresent() ? place : word;
        }
        return Optional.of(new ColumnRule(heading, field, place, category, unit, "", false));
    }
}
