package org.steelyard.trim;

import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;
import org.steelyard.model.limit.CgRange;
import org.steelyard.model.trim.TrimScale;
import org.steelyard.model.type.AircraftType;

/**
 * A card from which a setting can be read: bands of CG down, bands of mass across. Each cell holds the setting for the
 * middle of its bands.
 *
 * @param type the type
 * @param scale the scale that it is made from
 * @param byMass whether the scale depends on mass; else there is one band of mass
 * @param cgBands bands of CG in % MAC, rising
 * @param massBands bands of take-off or landing mass in kg, rising
 * @param rows for each band of CG the cells of the bands of mass
 * @param settings the inverse, for each setting of the permitted band the CGs that it is right for, most nose-up first;
 *     empty where the scale depends on mass
 * @param coarsenessUnits how far, at most, a setting on the card is from the exact trim at a corner of its cell
 */
public record TrimCard(
        AircraftType type,
        TrimScale scale,
        boolean byMass,
        List<Band> cgBands,
        List<Band> massBands,
        List<List<Cell>> rows,
        List<SettingBand> settings,
        double coarsenessUnits) {

    public TrimCard {
        Objects.requireNonNull(type);
        Objects.requireNonNull(scale);
        cgBands = List.copyOf(cgBands);
        massBands = List.copyOf(massBands);
        rows = rows.stream().map(List::copyOf).toList();
        settings = List.copyOf(settings);
    }

    /**
     * A band of values.
     *
     * @param from lower end
     * @param to upper end, above the lower one
     */
    public record Band(double from, double to) {

        /**
         * The middle.
         *
         * @return value halfway
         */
        public double middle() {
            return (from + to) / 2;
        }
    }

    /**
     * A setting with the CGs that it is right for.
     *
     * @param settingUnits the setting, nose-up positive
     * @param cgs the CGs in % MAC
     */
    public record SettingBand(double settingUnits, CgRange cgs) {

        public SettingBand {
            Objects.requireNonNull(cgs);
        }
    }

    /** What is to be said of a cell. */
    public enum Place {
        /** A setting to use. */
        USABLE,
        /** The setting is outside the band that the type permits. */
        OUTSIDE_BAND,
        /** No mass and CG of the cell lies within the envelope. */
        OUTSIDE_ENVELOPE,
        /** The scale does not reach the middle of the cell: there is no setting. */
        OFF_SCALE
    }

    /**
     * A cell.
     *
     * @param place what is to be said of it
     * @param settingUnits setting for the middle of the bands, nose-up positive; empty where there is none to use
     */
    public record Cell(Place place, OptionalDouble settingUnits) {

        public Cell {
            Objects.requireNonNull(place);
            Objects.requireNonNull(settingUnits);
        }
    }
}
