package org.steelyard.model.input;

import org.steelyard.model.type.PassengerCategory;

/**
 * What the cells of one column add to: a field, by place where it has places, or that part of a field which stands
 * apart, as its total. Sets of them are the bits of a long.
 */
public sealed interface Slot permits Field, PartSlot {

    /**
     * The field whose values it takes.
     *
     * @return the field
     */
    Field field();

    /**
     * What it is called in messages.
     *
     * @return words in small letters
     */
    String label();

    /**
     * Its position in the arrays of one row, which are never stored.
     *
     * @return from 0 to below {@link #count}
     */
    int index();

    /**
     * Whether it is for all places of its field together.
     *
     * @return true for totals
     */
    default boolean isTotal() {
        return false;
    }

    /**
     * Whether several columns may mean it: their values add up, or stand beside each other.
     *
     * @return true if a second column is no fault
     */
    boolean takesSeveral();

    /**
     * Whether its sums are in kg.
     *
     * @return true for masses of loads, crew, fuel and states
     */
    default boolean isMass() {
        Field.Kind kind = field().kind();
        return (kind == Field.Kind.MASS || kind == Field.Kind.FUEL) && field() != Field.ITEM_MASS;
    }

    /**
     * The slot as a set of one.
     *
     * @return one bit
     */
    default long bit() {
        return 1L << index();
    }

    /**
     * How many there are.
     *
     * @return fields of loadings, and parts of fields
     */
    static int count() {
        return PartSlot.FIRST + PartSlot.values().length;
    }

    /**
     * A set of slots.
     *
     * @param slots members of the set
     * @return their bits
     */
    static long bits(Slot... slots) {
        long bits = 0;
        for (Slot slot : slots) {
            bits |= slot.bit();
        }
        return bits;
    }

    /**
     * The first of a set that is not empty.
     *
     * @param slots bits of a set
     * @return the slot of the lowest bit
     */
    @SuppressWarnings("EnumOrdinal")
    static Slot first(long slots) {
        int index = Long.numberOfTrailingZeros(slots);
        return index < PartSlot.FIRST ? Field.values()[index] : PartSlot.values()[index - PartSlot.FIRST];
    }

    /**
     * The slot of a column. A student's figures do not belong to the loading and are carried along.
     *
     * @param rule what the column means
     * @return where its cells go
     */
    static Slot of(ColumnRule rule) {
        Field field = rule.field();
        boolean infants = field == Field.PASSENGERS && rule.category() == PassengerCategory.INFANT;
        if (rule.place().isBlank() || infants) {
            for (PartSlot part : PartSlot.values()) {
                if (part.field() == field
                        && part.isTotal() == rule.place().isBlank()
                        && part.isOfInfants() == infants) {
                    return part;
                }
            }
        }
        return field.isOfSheet() ? Field.EXTRA : field;
    }
}
