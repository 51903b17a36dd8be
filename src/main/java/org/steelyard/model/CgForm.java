package org.steelyard.model;

/** How a type's users speak of its centre of gravity. */
public enum CgForm {
    /** As % MAC. */
    PERCENT_MAC,
    /** As an arm from the datum. */
    ARM
}
