package org.steelyard.analyse.figure;

/** Some figures, all of them held or only what is to be known of them. */
public interface Values {

    long n();

    /** How they spread; there must be one at least. */
    Spread spread();

    /** Their typical range; there must be one at least. */
    TypicalRange range();

    /** Their number, mean and squared deviations; there must be one at least. */
    MeanDifference.Sample sample();

    /** Their median; there must be one at least. */
    double median();

    /** The median of their distances from some value. */
    double medianDistance(double from);

    /**
     * How often each value stands among them.
     *
     * @param inCells whether values are put in cells of one width, as others are that they are compared with; they may
     *     be in any case
     */
    Ranks ranks(boolean inCells);
}
