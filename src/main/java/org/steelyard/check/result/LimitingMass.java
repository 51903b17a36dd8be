package org.steelyard.check.result;

/** Which limit of mass sets the traffic load allowed. */
public enum LimitingMass {
    /** Maximum zero-fuel mass. */
    ZERO_FUEL("maximum zero-fuel mass"),
    /** Maximum take-off mass of the structure. */
    TAKEOFF("maximum take-off mass"),
    /** Take-off mass limited by performance. */
    TAKEOFF_PERFORMANCE("performance-limited take-off mass"),
    /** Maximum landing mass of the structure. */
    LANDING("maximum landing mass"),
    /** Landing mass limited by performance. */
    LANDING_PERFORMANCE("performance-limited landing mass"),
    /** Maximum ramp mass. */
    RAMP("maximum ramp mass");

    private final String label;

    LimitingMass(String label) {
        this.label = label;
    }

    /**
     * How the limit is called on outputs.
     *
     * @return its name in words
     */
    public String label() {
        return label;
    }
}
