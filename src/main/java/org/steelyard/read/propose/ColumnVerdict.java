package org.steelyard.read.propose;

import java.util.List;
import java.util.function.Predicate;
import org.steelyard.model.input.ColumnRule;
import org.steelyard.model.input.ColumnUnit;
import org.steelyard.model.input.Field;
import org.steelyard.model.type.PassengerCategory;
import org.steelyard.read.propose.ProposedColumn.Confidence;

/**
 * The ways in which the look at one column can end.
 *
 * @param heading its heading
 * @param cells its cells
 */
record ColumnVerdict(String heading, ColumnCells cells) {

    /** A column of which more cells than this do not fit is left out. */
    private static final double MOST_STRANGE = 0.1;

    ColumnRule rule(Field field, ColumnUnit unit) {
        boolean key = field == Field.FLIGHT || field == Field.DATE || field == Field.TAIL;
        return new ColumnRule(heading, field, "", PassengerCategory.ADULT, unit, List.of(), key);
    }

    ColumnRule dated(List<String> patterns) {
        return new ColumnRule(heading, Field.DATE, "", PassengerCategory.ADULT, ColumnUnit.NONE, patterns, true);
    }

    ProposedColumn sure(Field field, String why) {
        return of(rule(field, ColumnUnit.NONE), Confidence.SURE, why);
    }

    ProposedColumn likely(Field field, String why) {
        return of(rule(field, ColumnUnit.NONE), Confidence.LIKELY, why);
    }

    ProposedColumn carried(String why) {
        return of(rule(Field.EXTRA, ColumnUnit.NONE), Confidence.CARRIED, why);
    }

    /** Aircraft by type and not by tail: carried along, as it cannot say which tail flew. */
    ProposedColumn carriedIfTypes(String why, ColumnCells column) {
        return column.distinct().size() <= 2 ? carried(why) : doubtful(why);
    }

    ProposedColumn doubtful(String why) {
        return of(rule(Field.IGNORED, ColumnUnit.NONE), Confidence.DOUBTFUL, why);
    }

    ProposedColumn withoutUnit(Field field) {
        return doubtful("it looks like " + field.key() + ", but neither heading nor cells name a unit of it");
    }

    /** By how many cells fit: all, nearly all, or too few. */
    ProposedColumn judge(ColumnRule rule, String what, Predicate<ColumnCells.Cell> fits, String noun) {
        if (cells.filled() == 0) {
            return of(rule, Confidence.LIKELY, "no cell is filled");
        }
        int strange = cells.filled() - cells.count(fits);
        if (strange == 0) {
            return of(rule, Confidence.SURE, what);
        }
        String why = strange + " of " + cells.filled() + " cells are no " + noun + ": " + cells.strange(fits);
        return strange > MOST_STRANGE * cells.filled() ? doubtful(why) : of(rule, Confidence.LIKELY, what + "; " + why);
    }

    private ProposedColumn of(ColumnRule rule, Confidence confidence, String why) {
        return new ProposedColumn(heading, cells.samples(), rule, confidence, why);
    }

    /** The same column left out after all. */
    static ProposedColumn leftOut(ProposedColumn column, String why) {
        ColumnRule ignored = new ColumnRule(
                column.heading(), Field.IGNORED, "", PassengerCategory.ADULT, ColumnUnit.NONE, List.of(), false);
        return new ProposedColumn(column.heading(), column.samples(), ignored, Confidence.DOUBTFUL, why);
    }
}
