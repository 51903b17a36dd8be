package org.steelyard.read.propose;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.steelyard.model.input.ColumnRule;
import org.steelyard.model.input.Field;
import org.steelyard.model.type.PassengerCategory;
import org.steelyard.read.propose.ProposedColumn.Confidence;
import org.steelyard.read.table.UnitHeading;

/** Columns that mean the same: the reader would add them up or refuse them, so that all but the surest are left out. */
final class ProposalRivals {

    private final List<ProposedColumn> columns;

    ProposalRivals(List<ProposedColumn> columns) {
        this.columns = List.copyOf(columns);
    }

    List<ProposedColumn> settled() {
        Map<String, ProposedColumn> chosen = new HashMap<>();
        for (ProposedColumn column : columns) {
            if (meansSomething(column) && !isTotalOfCategories(column.rule())) {
                chosen.merge(meaning(column.rule()), column, ProposalRivals::surer);
            }
        }
        List<ProposedColumn> settled = new ArrayList<>();
        for (ProposedColumn column : columns) {
            settled.add(settled(column, chosen));
        }
        return settled;
    }

    private ProposedColumn settled(ProposedColumn column, Map<String, ProposedColumn> chosen) {
        if (meansSomething(column) && isTotalOfCategories(column.rule())) {
            return ColumnVerdict.leftOut(
                    column, "columns count the passengers by category already, and would be added to it");
        }
        ProposedColumn other = meansSomething(column) ? chosen.get(meaning(column.rule())) : column;
        return column.equals(other)
                ? column
                : ColumnVerdict.leftOut(column, "'" + other.heading() + "' means the same already");
    }

    private static boolean meansSomething(ProposedColumn column) {
        return column.confidence() == Confidence.SURE || column.confidence() == Confidence.LIKELY;
    }

    private static ProposedColumn surer(ProposedColumn one, ProposedColumn other) {
        return other.confidence().compareTo(one.confidence()) < 0 ? other : one;
    }

    private static String meaning(ColumnRule rule) {
        return rule.field() + "\n" + rule.place() + "\n" + rule.category();
    }

    /** Whether a column counts all passengers while others count adults, men, women or children without a place. */
    private boolean isTotalOfCategories(ColumnRule rule) {
        boolean total = rule.field() == Field.PASSENGERS
                && rule.place().isEmpty()
                && rule.category() == PassengerCategory.ADULT
                && category(rule).isEmpty();
        return total
                && columns.stream()
                        .map(ProposedColumn::rule)
                        .anyMatch(other -> other.field() == Field.PASSENGERS
                                && other.place().isEmpty()
                                && category(other)
                                        .filter(one -> one != PassengerCategory.INFANT)
                                        .isPresent());
    }

    private static Optional<PassengerCategory> category(ColumnRule rule) {
        return FieldWords.category(
                HeadingTokens.of(UnitHeading.of(rule.heading()).words()));
    }
}
