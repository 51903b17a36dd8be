package org.steelyard.model.policy;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.steelyard.model.input.SheetItem;
import org.steelyard.model.unit.Require;

/**
 * How load sheets are marked.
 *
 * @param name name of the scheme
 * @param passPercent share of all points that passes, from 0 to 100
 * @param followPercent share of an item's points for a figure that is wrong only because an earlier one was
 * @param handedInTwice which sheet stands where a student hands in an exercise more than once
 * @param items what is marked, in the order of the sheet
 */
public record MarkingScheme(
        String name, double passPercent, double followPercent, DuplicateRule handedInTwice, List<ItemRule> items) {

    /**
     * How one item is marked. A figure is right if it lies within {@code max(within, sharePercent of the right figure)
     * + rounding} of the right one, however many places it is written with.
     *
     * @param item which
     * @param points points for the right figure, more than zero
     * @param within absolute tolerance: kg, % MAC or trim units; 0 for words
     * @param sharePercent relative tolerance in % of the right mass; 0 for what is no mass
     * @param rounding how far rounding on the sheet may carry a figure beyond that, in the unit of {@code within}
     */
    public record ItemRule(SheetItem item, double points, double within, double sharePercent, double rounding) {

        public ItemRule {
            Objects.requireNonNull(item);
            Require.positive("points", points);
            Require.notNegative("within", within);
            Require.notNegative("sharePercent", sharePercent);
            Require.notNegative("rounding", rounding);
        }
    }

    /**
     * Checks the shares and the items.
     *
     * @throws IllegalArgumentException if a share is not from 0 to 100, or an item stands twice or none at all
     */
    public MarkingScheme {
        Require.text("scheme name", name);
        Objects.requireNonNull(handedInTwice);
        Require.that(passPercent >= 0 && passPercent <= 100, "the pass mark must be from 0 to 100 %");
        Require.that(followPercent >= 0 && followPercent <= 100, "the share for following on must be from 0 to 100 %");
        items = items.stream()
                .sorted(java.util.Comparator.comparing(ItemRule::item))
                .toList();
        Require.that(!items.isEmpty(), "a marking scheme needs at least one item");
        Require.that(items.stream().map(ItemRule::item).distinct().count() == items.size(), "each item is marked once");
    }

    /**
     * The rule of an item.
     *
     * @param item which
     * @return its rule, empty if it is not marked
     */
    public Optional<ItemRule> rule(SheetItem item) {
        return items.stream().filter(rule -> rule.item() == item).findFirst();
    }

    /**
     * The points of a sheet without a fault.
     *
     * @return the sum over all items
     */
    public double outOf() {
        return items.stream().mapToDouble(ItemRule::points).sum();
    }
}
