package org.steelyard.grade.working;

/**
 * One line of a loading as it stands on paper.
 *
 * @param kind what it is
 * @param name in words
 * @param massKg its mass in kg
 * @param armM its arm in m from the datum, aft positive
 * @param childrenKg by how much the children in it would weigh more as adults, in kg
 */
public record Line(Kind kind, String name, double massKg, double armM, double childrenKg) {

    /** What a line is. */
    public enum Kind {
        /** The weighed aircraft. */
        BASIC,
        /** Flight or cabin crew. */
        CREW,
        /** Pantry. */
        PANTRY,
        /** A passenger zone. */
        ZONE,
        /** A hold. */
        HOLD,
        /** A zero-fuel state that is given as a whole. */
        STATE
    }

    boolean isDry() {
        return kind == Kind.BASIC || kind == Kind.CREW || kind == Kind.PANTRY;
    }

    public boolean isTraffic() {
        return kind == Kind.ZONE || kind == Kind.HOLD;
    }

    /**
     * Its moment.
     *
     * @return kg·m
     */
    public double momentKgM() {
        return massKg * armM;
    }
}
