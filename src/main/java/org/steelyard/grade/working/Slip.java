package org.steelyard.grade.working;

import java.util.Objects;

/**
 * One slip in the working of a load sheet.
 *
 * @param kind what
 * @param target which figure it befell
 * @param index which of the figures of the target, as its class says; -1 where there is no choice
 * @param amount a factor, arm or difference, as the kind needs it; 0 where it needs none
 * @param what the figure in words
 */
public record Slip(SlipKind kind, Target target, int index, double amount, String what) {

    /** What a slip can befall. */
    public enum Target {
        /** One line of the loading; index of the line. */
        LINE,
        /** All passengers. */
        ZONES,
        /** All holds. */
        HOLDS,
        /** Ramp fuel. */
        FUEL,
        /** Taxi fuel. */
        TAXI,
        /** Trip fuel. */
        TRIP,
        /** A result; index of the item, -1 for every mass. */
        ITEM,
        /** The method. */
        METHOD
    }

    public Slip {
        Objects.requireNonNull(kind);
        Objects.requireNonNull(target);
        Objects.requireNonNull(what);
    }

    static Slip method(SlipKind kind, int index, double amount, String what) {
        return new Slip(kind, Target.METHOD, index, amount, what);
    }

    /** Two slips with the very same figure cannot both be told. */
    public boolean meets(Slip other) {
        return target == other.target && target != Target.METHOD && (index == other.index || target == Target.TAXI);
    }

    /**
     * The slip in a few words.
     *
     * @return kind and figure
     */
    public String label() {
        return kind.label() + (what.isBlank() ? "" : ": " + what);
    }
}
