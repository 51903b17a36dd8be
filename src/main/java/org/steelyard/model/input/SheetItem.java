package org.steelyard.model.input;

import java.util.List;
import java.util.Optional;
import org.steelyard.model.finding.Phase;

/** A figure that a load sheet asks for, in the order in which it is worked out. */
public enum SheetItem {
    /** Mass without fuel. */
    ZERO_FUEL_MASS("zero-fuel-mass", "zero-fuel mass", Kind.MASS, Phase.ZERO_FUEL),
    /** CG without fuel. */
    ZERO_FUEL_CG("zero-fuel-cg", "zero-fuel CG", Kind.CG, Phase.ZERO_FUEL),
    /** Mass before taxi. */
    RAMP_MASS("ramp-mass", "ramp mass", Kind.MASS, Phase.RAMP),
    /** CG before taxi. */
    RAMP_CG("ramp-cg", "ramp CG", Kind.CG, Phase.RAMP),
    /** Mass at take-off. */
    TAKEOFF_MASS("takeoff-mass", "take-off mass", Kind.MASS, Phase.TAKEOFF),
    /** CG at take-off. */
    TAKEOFF_CG("takeoff-cg", "take-off CG", Kind.CG, Phase.TAKEOFF),
    /** Mass at landing. */
    LANDING_MASS("landing-mass", "landing mass", Kind.MASS, Phase.LANDING),
    /** CG at landing. */
    LANDING_CG("landing-cg", "landing CG", Kind.CG, Phase.LANDING),
    /** The take-off mass that the nearest of all limits allows. */
    LIMITING_MASS("limiting-mass", "limiting take-off mass", Kind.MASS, Phase.DRY_OPERATING),
    /** Which limit that is. */
    LIMITED_BY("limited-by", "set by which limit", Kind.LIMIT, Phase.DRY_OPERATING),
    /** The traffic load that it allows. */
    TRAFFIC_LOAD("traffic-load", "traffic load allowed", Kind.MASS, Phase.DRY_OPERATING),
    /** What could still be loaded. */
    UNDERLOAD("underload", "underload", Kind.MASS, Phase.DRY_OPERATING),
    /** Stabilizer trim for take-off. */
    TRIM("trim", "take-off trim", Kind.TRIM, Phase.TAKEOFF),
    /** In or out of limits. */
    VERDICT("verdict", "verdict", Kind.VERDICT, Phase.DRY_OPERATING);

    /** What is entered. */
    public enum Kind {
        /** A mass. */
        MASS,
        /** A CG as % MAC, arm or index. */
        CG,
        /** The name of a limit. */
        LIMIT,
        /** A trim setting. */
        TRIM,
        /** In or out. */
        VERDICT
    }

    /** All of them, in order. */
    public static final List<SheetItem> ALL = List.of(values());

    private final String key;
    private final String label;
    private final Kind kind;
    private final Phase phase;

    SheetItem(String key, String label, Kind kind, Phase phase) {
        this.key = key;
        this.label = label;
        this.kind = kind;
        this.phase = phase;
    }

    /**
     * How a marking scheme names it.
     *
     * @return lower-case words joined by hyphens
     */
    public String key() {
        return key;
    }

    /**
     * How sheets name it.
     *
     * @return its name in words
     */
    public String label() {
        return label;
    }

    /**
     * What is entered.
     *
     * @return the kind of figure
     */
    public Kind kind() {
        return kind;
    }

    /**
     * The state that a mass or CG belongs to.
     *
     * @return the phase, empty for what belongs to no single state
     */
    public Optional<Phase> phase() {
        return phase == Phase.DRY_OPERATING ? Optional.empty() : Optional.of(phase);
    }
}
