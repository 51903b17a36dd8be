package org.steelyard.model.finding;

/**
 * The states of one flight in order, each with a mass and a centre of gravity. {@link #FLIGHT} is the stretch between
 * take-off and landing while fuel burns.
 */
public enum Phase {
    /** Basic mass, crew and pantry. */
    DRY_OPERATING("dry operating"),
    /** Dry operating and traffic load. */
    ZERO_FUEL("zero fuel"),
    /** Zero fuel and all fuel aboard before taxi. */
    RAMP("ramp"),
    /** Ramp less taxi fuel. */
    TAKEOFF("take-off"),
    /** Between take-off and landing. */
    FLIGHT("in flight"),
    /** Take-off less trip fuel. */
    LANDING("landing");

    private final String label;

    Phase(String label) {
        this.label = label;
    }

    /**
     * How the state is called on outputs.
     *
     * @return its name in words
     */
    public String label() {
        return label;
    }
}
