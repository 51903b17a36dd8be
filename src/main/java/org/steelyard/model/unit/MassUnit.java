package org.steelyard.model.unit;

/**
 * Units of mass, each with its exact factor to kg: 1 lb = 0.45359237 kg (international yard and pound agreement of
 * 1959; NIST SP 811, appendix B).
 */
public enum MassUnit {
    /** Kilogram. */
    KG("kg", 1),
    /** International avoirdupois pound. */
    LB("lb", 0.45359237),
    /** Metric ton. */
    TONNE("t", 1000);

    private final String symbol;
    private final double kg;

    MassUnit(String symbol, double kg) {
        this.symbol = symbol;
        this.kg = kg;
    }

    /**
     * How the unit is written.
     *
     * @return its symbol
     */
    public String symbol() {
        return symbol;
    }

    /**
     * From this unit to kg.
     *
     * @param mass in this unit
     * @return mass in kg
     */
    public double toKg(double mass) {
        return mass * kg;
    }

    /**
     * From kg to this unit.
     *
     * @param massKg in kg
     * @return mass in this unit
     */
    public double fromKg(double massKg) {
        return massKg / kg;
    }
}
