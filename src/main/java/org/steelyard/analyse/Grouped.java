package org.steelyard.analyse;

import java.util.stream.IntStream;

/** The figures of one measure put together by group. */
interface Grouped {

    /** How many figures a place holds. */
    long n(int place);

    /** How many of them are of marginal flights. */
    long marginal(int place);

    /** How many of them are of breached flights. */
    long breached(int place);

    /** The figures of a place. */
    Values values(int place);

    /** The figures of several places together. */
    Values together(IntStream places);
}
