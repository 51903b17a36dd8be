package org.steelyard.read.text;

import org.steelyard.model.input.ColumnUnit;
import org.steelyard.model.type.AircraftType;
import org.steelyard.model.unit.LengthUnit;
import org.steelyard.model.unit.MassMoment;
import org.steelyard.model.unit.MassUnit;
import org.steelyard.model.unit.VolumeUnit;

/** From the units of columns to kg, m and kg/L: the only place where inputs change their unit. */
public final class ColumnUnits {

    private ColumnUnits() {}

    public static boolean isVolume(ColumnUnit unit) {
        return unit == ColumnUnit.LITRE || unit == ColumnUnit.US_GALLON || unit == ColumnUnit.IMPERIAL_GALLON;
    }

    /** A mass in kg, or a volume in L. */
    public static double toKgOrL(ColumnUnit unit, double value) {
        return switch (unit) {
            case KG, LITRE -> value;
            case LB -> MassUnit.LB.toKg(value);
            case TONNE -> MassUnit.TONNE.toKg(value);
            case US_GALLON -> VolumeUnit.US_GAL.toL(value);
            case IMPERIAL_GALLON -> VolumeUnit.IMP_GAL.toL(value);
            default -> throw new IllegalStateException("not a unit of mass or volume: " + unit);
        };
    }

    /** A density in kg/L. */
    public static double toKgPerL(ColumnUnit unit, double value) {
        return unit == ColumnUnit.LB_PER_US_GALLON ? MassUnit.LB.toKg(value) / VolumeUnit.US_GAL.toL(1) : value;
    }

    /** A mass with the moment that its CG, in % MAC, arm or index, stands for. */
    public static MassMoment state(AircraftType type, double massKg, ColumnUnit unit, double cg) {
        return switch (unit) {
            case PERCENT_MAC -> MassMoment.at(massKg, type.geometry().chord().armAt(cg));
            case METRE -> MassMoment.at(massKg, cg);
            case MILLIMETRE -> MassMoment.at(massKg, LengthUnit.MM.toM(cg));
            case INCH -> MassMoment.at(massKg, LengthUnit.IN.toM(cg));
            case INDEX -> type.geometry().index().at(massKg, cg);
            default -> throw new IllegalStateException("not a unit of CG: " + unit);
        };
    }
}
