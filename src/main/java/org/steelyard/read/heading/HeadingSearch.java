package org.steelyard.read.heading;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.steelyard.model.input.ColumnMap;
import org.steelyard.model.input.InputProblem;
import org.steelyard.model.input.ProblemCode;
import org.steelyard.read.table.HeadingRow;
import org.steelyard.read.table.RawRow;
import org.steelyard.read.table.SourceFault;
import org.steelyard.read.table.Table;
import org.steelyard.read.table.TableName;

/**
 * The heading row of a table and the map that fits it best: all required headings are there, and of several such the
 * most headings are known.
 *
 * @param map the map
 * @param row the row
 * @param rowsAbove filled rows above it
 * @param known how many of its headings the map knows
 * @param missing headings that the map requires and the row lacks
 */
public record HeadingSearch(ColumnMap map, RawRow row, int rowsAbove, int known, List<String> missing) {

    private static final String DRAFT = "; 'steelyard propose-map' drafts one";

    private static final Comparator<HeadingSearch> NEARER = Comparator.comparing(HeadingSearch::fits)
            .thenComparing(HeadingSearch::known)
            .thenComparing(search -> -search.missing().size());

    /**
     * Looks through the head of a table.
     *
     * @return the best match, which may not fit; empty if the table has no filled row
     * @throws SourceFault if no map can read the table
     */
    public static Optional<HeadingSearch> in(Table table, List<ColumnMap> candidates) throws SourceFault {
        List<HeadingSearch> found = new ArrayList<>();
        Optional<SourceFault> fault = Optional.empty();
        for (ColumnMap map : candidates) {
            try {
                List<RawRow> head = table.head(map);
                for (int i = 0; i < head.size(); i++) {
                    RawRow row = head.get(i);
                    found.add(of(map, row, i));
                    if (i + 1 < head.size()) {
                        int above = i;
                        JoinedHeadings.of(row, head.get(i + 1), table.merged())
                                .ifPresent(joined -> found.add(of(map, joined, above)));
                    }
                }
            } catch (SourceFault e) {
                fault = fault.or(() -> Optional.of(e));
            }
        }
        Optional<HeadingSearch> best = best(found);
        if (fault.isPresent() && best.filter(HeadingSearch::fits).isEmpty()) {
            throw fault.get();
        }
        if (best.isPresent()) {
            MapRivals.requireNone(best.get(), found, table.name());
        }
        return best;
    }

    private static HeadingSearch of(ColumnMap map, RawRow row, int rowsAbove) {
        return new HeadingSearch(map, row, rowsAbove, HeadingRow.known(map, row), HeadingRow.missing(map, row));
    }

    /** The first of the best. */
    static Optional<HeadingSearch> best(List<HeadingSearch> found) {
        return found.stream().reduce((one, other) -> NEARER.compare(other, one) > 0 ? other : one);
    }

    /** Whether all required headings are there. */
    public boolean fits() {
        return missing.isEmpty() && known > 0;
    }

    /** Why the search failed. */
    InputProblem problem(TableName name, int candidates) {
        String found = String.join(", ", HeadingRow.headings(row));
        if (known == 0) {
            return name.problem(
                    row.number(),
                    ProblemCode.BAD_HEADING,
                    "there is no heading row that a heading map knows",
                    found,
                    "headings of " + (candidates == 1 ? "the heading map '" + map.name() + "'" : "a heading map")
                            + DRAFT);
        }
        String lacking = "'" + String.join("', '", missing) + "'";
        return candidates == 1
                ? name.problem(
                        row.number(),
                        ProblemCode.BAD_HEADING,
                        "required headings are missing: " + lacking,
                        found,
                        "every required heading of the heading map '" + map.name() + "'" + DRAFT)
                : name.problem(
                        row.number(),
                        ProblemCode.BAD_HEADING,
                        "no heading map fits; the nearest, '" + map.name() + "', requires " + lacking,
                        found,
                        "a heading map for this file" + DRAFT);
    }
}
