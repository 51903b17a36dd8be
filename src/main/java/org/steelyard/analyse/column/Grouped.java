package org.steelyard.analyse.column;

import java.util.stream.IntStream;
import org.steelyard.analyse.figure.Values;

/** The figures of one measure put together by group. */
public interface Grouped {

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
