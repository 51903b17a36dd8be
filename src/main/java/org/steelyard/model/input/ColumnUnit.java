package org.steelyard.model.input;

import java.util.Set;

/** Units that a column of an input can be in. */
public enum ColumnUnit {
    /** No unit: text, dates and counts. */
    NONE("", Set.of(Field.Kind.TEXT, Field.Kind.DATE, Field.Kind.COUNT)),
    /** Kilogram. */
    KG("kg", Set.of(Field.Kind.MASS, Field.Kind.FUEL)),
    /** Pound. */
    LB("lb", Set.of(Field.Kind.MASS, Field.Kind.FUEL)),
    /** Metric ton. */
    TONNE("t", Set.of(Field.Kind.MASS, Field.Kind.FUEL)),
    /** Litre. */
    LITRE("L", Set.of(Field.Kind.FUEL)),
    /** United States gallon. */
    US_GALLON("US gal", Set.of(Field.Kind.FUEL)),
    /** Imperial gallon. */
    IMPERIAL_GALLON("imp gal", Set.of(Field.Kind.FUEL)),
    /** Kilogram for litre. */
    KG_PER_LITRE("kg/L", Set.of(Field.Kind.DENSITY)),
    /** Pound for United States gallon. */
    LB_PER_US_GALLON("lb/US gal", Set.of(Field.Kind.DENSITY)),
    /** % MAC. */
    PERCENT_MAC("% MAC", Set.of(Field.Kind.CG)),
    /** Arm in metres. */
    METRE("m", Set.of(Field.Kind.CG)),
    /** Arm in millimetres. */
    MILLIMETRE("mm", Set.of(Field.Kind.CG)),
    /** Arm in inches. */
    INCH("in", Set.of(Field.Kind.CG)),
    /** Index of the type. */
    INDEX("index", Set.of(Field.Kind.CG)),
    /** Trim units; a number without UP or DN is nose-up positive. */
    NOSE_UP("nose-up", Set.of(Field.Kind.TRIM)),
    /** Trim units; a number without UP or DN is nose-down positive. */
    NOSE_DOWN("nose-down", Set.of(Field.Kind.TRIM)),
    /** Each cell says its own unit behind the number; a trim says UP or DN. */
    IN_CELL("in-cell", Set.of(Field.Kind.MASS, Field.Kind.FUEL, Field.Kind.DENSITY, Field.Kind.CG, Field.Kind.TRIM)),
    /** The heading says the unit behind its words, as {@code Fuel (kg)} for the heading {@code Fuel}. */
    IN_HEADING("in-heading", Set.of(Field.Kind.MASS, Field.Kind.FUEL, Field.Kind.DENSITY, Field.Kind.CG));

    private final String symbol;

    @SuppressWarnings("ImmutableEnumChecker") // Set.of is immutable
    private final Set<Field.Kind> kinds;

    ColumnUnit(String symbol, Set<Field.Kind> kinds) {
        this.symbol = symbol;
        this.kinds = kinds;
    }

    /**
     * How the unit is written in a heading map.
     *
     * @return its symbol, blank for none
     */
    public String symbol() {
        return symbol;
    }

    /**
     * Whether numbers can be in it, which is not so where the source says the unit elsewhere.
     *
     * @return true for a unit, and for none
     */
    public boolean isUnit() {
        return this != IN_CELL && this != IN_HEADING;
    }

    /**
     * Whether a field can be in this unit.
     *
     * @param field the field
     * @return true if it makes sense
     */
    public boolean suits(Field field) {
        return kinds.contains(field.kind());
    }
}
