package org.steelyard.read.text;

/** A number with its noun. */
public final class CountedNoun {

    private CountedNoun() {}

    public static String of(long count, String noun) {
        return count + " " + noun + (count == 1 ? "" : "s");
    }
}
