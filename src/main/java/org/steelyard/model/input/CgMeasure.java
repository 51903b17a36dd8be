package org.steelyard.model.input;

/** In what a CG is given. */
public enum CgMeasure {
    /** Percent of the mean aerodynamic chord. */
    PERCENT_MAC,
    /** Arm from the type's datum in m, aft positive. */
    ARM,
    /** The type's index. */
    INDEX
}
