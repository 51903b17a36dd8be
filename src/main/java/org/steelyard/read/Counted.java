package org.steelyard.read;

/** A number with its noun. */
final class Counted {

    private Counted() {}

    static String of(long count, String noun) {
        return count + " " + noun + (count == 1 ? "" : "s");
    }
}
