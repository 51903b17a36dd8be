package org.steelyard.spark.merge;

import java.io.Serializable;

/** Remembers of many figures which stands at which rank, within a bound. Made elsewhere, from a library. */
public interface RankSketch extends Serializable {

    /** Makes empty sketches. */
    interface Maker extends Serializable {

        /** An empty sketch. */
        RankSketch make();
    }

    /**
     * Takes a figure.
     *
     * @param value a finite number
     */
    void add(double value);

    /**
     * Takes all that another holds.
     *
     * @param other one of the same maker
     */
    void merge(RankSketch other);

    /**
     * The figure at a rank.
     *
     * @param rank from 0 to 1
     * @return a figure that was added; its true rank is within {@link #rankError}
     */
    double quantile(double rank);

    /**
     * The rank of a figure.
     *
     * @param value any number
     * @return the share of figures at or below it, from 0 to 1, within {@link #rankError}
     */
    double rank(double value);

    /** By how much a rank may be off, with 99 % confidence, from 0 to 1. */
    double rankError();
}
