package org.steelyard.model.input;

/** The parts of a field that stand apart from what its columns by place say: infants, and totals. */
public enum PartSlot implements Slot {
    /** Infants by zone, who are counted apart. */
    ZONE_INFANTS("infants by zone", Field.PASSENGERS),
    /** Passengers of all zones. */
    ALL_COUNT("passengers in total", Field.PASSENGERS),
    /** Infants of all zones. */
    ALL_INFANTS("infants in total", Field.PASSENGERS),
    /** Actual mass of all passengers. */
    ALL_PASSENGER_MASS("passengers' mass in total", Field.PASSENGER_MASS),
    /** Baggage and cargo of all holds. */
    ALL_HOLD_MASS("baggage and cargo in total", Field.HOLD_MASS),
    /** Bags of all holds. */
    ALL_BAGS("bags in total", Field.HOLD_BAGS),
    /** Actual mass of all counted bags. */
    ALL_BAG_MASS("bags' mass in total", Field.BAG_MASS),
    /** Fuel of all tanks. */
    ALL_FUEL("fuel in total", Field.FUEL);

    /** The index of the first of them, after the fields. */
    static final int FIRST = Field.IGNORED.index() + 1;

    private final String label;
    private final Field field;

    PartSlot(String label, Field field) {
        this.label = label;
        this.field = field;
    }

    @Override
    public Field field() {
        return field;
    }

    @Override
    public String label() {
        return label;
    }

    @Override
    @SuppressWarnings("EnumOrdinal")
    public int index() {
        return FIRST + ordinal();
    }

    @Override
    public boolean isTotal() {
        return this != ZONE_INFANTS;
    }

    @Override
    public boolean takesSeveral() {
        return true;
    }

    boolean isOfInfants() {
        return this == ZONE_INFANTS || this == ALL_INFANTS;
    }
}
