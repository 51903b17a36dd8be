package org.steelyard.model.unit;

/** What the numbers of a finding measure, and so in which unit they are held inside. */
public enum Quantity {
    /** Mass in kg. */
    MASS,
    /** Centre of gravity in % MAC. */
    CG,
    /** Persons or seats. */
    COUNT,
    /** Persons who come or go. */
    PERSONS,
    /** Stabilizer trim in units, nose-up positive. */
    TRIM,
    /** Stabilizer trim in degrees, nose-up positive. */
    TRIM_DEGREES,
    /** Running load in kg/m. */
    RUNNING_LOAD,
    /** Area load in kg/m². */
    AREA_LOAD,
    /** No numbers: value, limit and margin are zero. */
    NONE
}
