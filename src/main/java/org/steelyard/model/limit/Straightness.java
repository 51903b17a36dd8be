package org.steelyard.model.limit;

/**
 * In which quantity a limit line is straight between two vertices, as a function of mass. The two agree at vertices and
 * differ between them. A line straight in % MAC is straight in arm, as one is a linear function of the other; one
 * straight in index is straight in moment for the same reason.
 */
public enum Straightness {
    /** The arm (and % MAC) is a linear function of mass; the moment is quadratic. */
    ARM,
    /** The moment (and index) is a linear function of mass; the arm is a hyperbola. */
    MOMENT
}
