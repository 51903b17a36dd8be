package org.steelyard.read.heading;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.steelyard.model.input.ColumnMap;
import org.steelyard.model.input.ColumnRule;
import org.steelyard.model.input.ProblemCode;
import org.steelyard.read.table.HeadingRow;
import org.steelyard.read.table.SourceFault;
import org.steelyard.read.table.TableName;

/** Two maps that fit a table equally well but read it differently: a person has to choose. */
final class MapRivals {

    private MapRivals() {}

    /**
     * Refuses to choose.
     *
     * @throws SourceFault if another map fits as well as the best and would read something differently
     */
    static void requireNone(HeadingSearch best, List<HeadingSearch> found, TableName name) throws SourceFault {
        for (HeadingSearch other : found) {
            boolean equal = best.fits()
                    && other.fits()
                    && other.known() == best.known()
                    && !other.map().equals(best.map());
            Optional<String> difference = equal ? difference(best, other) : Optional.empty();
            if (difference.isPresent()) {
                throw new SourceFault(name.problem(
                        best.row().number(),
                        ProblemCode.BAD_HEADING,
                        "the heading maps '" + best.map().name() + "' and '"
                                + other.map().name() + "' fit equally well, but differ in " + difference.get(),
                        String.join(", ", HeadingRow.headings(best.row())),
                        "--map with the name of one, or 'files' in the maps that tell the sources apart"));
            }
        }
    }

    private static Optional<String> difference(HeadingSearch one, HeadingSearch other) {
        if (one.row().number() != other.row().number()) {
            return Optional.of("the heading row");
        }
        ColumnMap map = one.map();
        if (map.decimalComma() != other.map().decimalComma()
                || map.grouping() != other.map().grouping()) {
            return Optional.of("how numbers are written");
        }
        Map<String, ColumnRule> rules = HeadingRow.rules(map);
        Map<String, ColumnRule> others = HeadingRow.rules(other.map());
        boolean unknownDiffer = map.unknownColumns() != other.map().unknownColumns();
        for (String heading : HeadingRow.headings(one.row())) {
            Optional<ColumnRule> rule = HeadingRow.rule(rules, heading);
            Optional<ColumnRule> second = HeadingRow.rule(others, heading);
            boolean bothUnknown = rule.isEmpty() && second.isEmpty();
            boolean same = bothUnknown
                    ? !unknownDiffer || heading.isEmpty()
                    : rule.isPresent() && second.isPresent() && sameMeaning(rule.get(), second.get());
            if (!same) {
                return Optional.of("the column '" + heading + "'");
            }
        }
        return Optional.empty();
    }

    private static boolean sameMeaning(ColumnRule one, ColumnRule other) {
        return one.field() == other.field()
                && one.place().equals(other.place())
                && one.category() == other.category()
                && one.unit() == other.unit()
                && one.dateFormats().equals(other.dateFormats());
    }
}
