package org.steelyard.model.unit;

/**
 * Units of volume, each with its exact factor to L: 1 US gal = 3.785411784 L (231 cubic inches; NIST SP 811, appendix
 * B), 1 imp gal = 4.54609 L (Weights and Measures Act 1985, United Kingdom).
 */
public enum VolumeUnit {
    /** Litre. */
    L("L", 1),
    /** United States gallon. */
    US_GAL("US gal", 3.785411784),
    /** Imperial gallon. */
    IMP_GAL("imp gal", 4.54609);

    private final String symbol;
    private final double litres;

    VolumeUnit(String symbol, double litres) {
        this.symbol = symbol;
        this.litres = litres;
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
     * From this unit to litres.
     *
     * @param volume in this unit
     * @return volume in L
     */
    public double toL(double volume) {
        return volume * litres;
    }

    /**
     * From litres to this unit.
     *
     * @param volumeL in L
     * @return volume in this unit
     */
    public double fromL(double volumeL) {
        return volumeL / litres;
    }

    /**
     * The mass of a volume.
     *
     * @param volume in this unit
     * @param densityKgPerL density in kg/L
     * @return mass in kg
     */
    public double toKg(double volume, double densityKgPerL) {
        return toL(volume) * densityKgPerL;
    }

    /**
     * The volume of a mass.
     *
     * @param massKg mass in kg
     * @param densityKgPerL density in kg/L, not zero
     * @return volume in this unit
     */
    public double fromKg(double massKg, double densityKgPerL) {
        return fromL(massKg / densityKgPerL);
    }
}
