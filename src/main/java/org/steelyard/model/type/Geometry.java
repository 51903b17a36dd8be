package org.steelyard.model.type;

import java.util.Objects;

/**
 * The rulers of a type: its chord, its index, and the units of its users.
 *
 * @param chord mean aerodynamic chord
 * @param index index formula
 * @param units display units
 */
public record Geometry(MeanChord chord, IndexFormula index, DisplayUnits units) {

    public Geometry {
        Objects.requireNonNull(chord);
        Objects.requireNonNull(index);
        Objects.requireNonNull(units);
    }
}
