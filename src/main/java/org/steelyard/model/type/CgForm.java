package org.steelyard.model.type;

/** How a type's users speak of its centre of gravity. */
public enum CgForm {
    /** As % MAC. */
    PERCENT_MAC,
    /** As an arm from the datum. */
    ARM
}
