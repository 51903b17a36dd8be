package org.steelyard.report.text;

/** The caution that every output carries. */
public final class Caution {

    /** In one paragraph. */
    public static final String TEXT = "For simulation, training and analysis only. For real flight the approved manual"
            + " of the aircraft, the operator's procedures, local rules and licensed people decide.";

    private Caution() {}
}
