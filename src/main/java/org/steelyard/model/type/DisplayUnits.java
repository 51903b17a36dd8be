package org.steelyard.model.type;

import org.steelyard.model.unit.LengthUnit;
import org.steelyard.model.unit.MassUnit;

/**
 * The units in which a type's users read their figures. Inside, everything is kg and m.
 *
 * @param mass unit of masses
 * @param length unit of arms
 * @param cg how the centre of gravity is spoken of
 */
public record DisplayUnits(MassUnit mass, LengthUnit length, CgForm cg) {

    /** Kilogram, metre and % MAC. */
    public static final DisplayUnits METRIC = new DisplayUnits(MassUnit.KG, LengthUnit.M, CgForm.PERCENT_MAC);

    public DisplayUnits {
        java.util.Objects.requireNonNull(mass);
        java.util.Objects.requireNonNull(length);
        java.util.Objects.requireNonNull(cg);
    }
}
