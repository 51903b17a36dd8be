package org.steelyard.trim;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.limit.Envelope;
import org.steelyard.model.limit.LimitPoint;
import org.steelyard.model.trim.TrimScale;
import org.steelyard.model.trim.TrimTable;
import org.steelyard.model.type.AircraftType;
import org.steelyard.model.type.CgForm;
import org.steelyard.model.type.DisplayUnits;
import org.steelyard.model.type.MeanChord;
import org.steelyard.model.unit.Tolerance;
import org.steelyard.trim.TrimCard.Band;
import org.steelyard.trim.TrimCard.Cell;
import org.steelyard.trim.TrimCard.Place;
import org.steelyard.trim.TrimCard.SettingBand;

/** Makes trim cards over the envelope of a type. */
public final class TrimCards {

    private static final int MASSES_LOOKED_AT = 5;
    private static final double ROUNDING = 1e-9;
    private static final int ABOUT_MASS_BANDS = 7;

    private final AircraftType type;
    private final TrimScale scale;
    private final Envelope envelope;
    private final MeanChord chord;

    private TrimCards(AircraftType type, TrimScale scale) {
        this.type = type;
        this.scale = scale;
        chord = type.geometry().chord();
        envelope = type.envelope(scale.phase())
                .or(() -> type.envelope(Phase.TAKEOFF))
                .orElseThrow();
    }

    /**
     * The card of a scale.
     *
     * @param type the type
     * @param scale one of its scales
     * @param cgStepPercentMac width of the bands of CG in % MAC, more than zero; where the type's users think in arms,
     *     a round width in their unit that is nearest to it
     * @param massStepKg width of the bands of mass in kg; empty for a round one that makes about seven
     * @return the card
     * @throws IllegalArgumentException if a width is not more than zero, or so small that a page cannot hold the bands
     */
    public static TrimCard card(
            AircraftType type, TrimScale scale, double cgStepPercentMac, OptionalDouble massStepKg) {
        TrimCards cards = new TrimCards(type, scale);
        double stepKg = massStepKg.orElseGet(cards::roundMassStepKg);
        boolean byMass = scale.law() instanceof TrimTable;
        List<Band> cgs = cards.cgBands(cgStepPercentMac);
        List<Band> masses = byMass
                ? bands(cards.envelope.minMassKg(), cards.envelope.maxMassKg(), stepKg)
                : List.of(new Band(cards.envelope.minMassKg(), cards.envelope.maxMassKg()));
        return cards.fill(byMass, cgs, masses);
    }

    private double roundMassStepKg() {
        double perUnit = type.geometry().units().mass().toKg(1);
        return perUnit * round((envelope.maxMassKg() - envelope.minMassKg()) / perUnit / ABOUT_MASS_BANDS);
    }

    /** The nearest of 1, 2 and 5 times a power of ten. */
    private static double round(double rough) {
        double power = Math.pow(10, Math.floor(Math.log10(rough)));
        double digit = rough / power;
        return power * (digit < 1.5 ? 1 : digit < 3.5 ? 2 : digit < 7.5 ? 5 : 10);
    }

    /** Whole steps of % MAC, or where users think in arms round steps of their unit that are about as wide. */
    private List<Band> cgBands(double stepPercentMac) {
        DisplayUnits units = type.geometry().units();
        if (units.cg() == CgForm.PERCENT_MAC || !(stepPercentMac > 0)) {
            return bands(leastCg(), mostCg(), stepPercentMac);
        }
        double least = units.length().fromM(chord.armAt(leastCg()));
        double most = units.length().fromM(chord.armAt(mostCg()));
        double step = round(units.length().fromM(stepPercentMac / 100 * chord.lengthM()));
        return bands(least, most, step).stream()
                .map(band -> new Band(
                        chord.percentAt(units.length().toM(band.from())),
                        chord.percentAt(units.length().toM(band.to()))))
                .toList();
    }

    private double leastCg() {
        return chord.percentAt(envelope.forward().points().stream()
                .mapToDouble(LimitPoint::armM)
                .min()
                .orElseThrow());
    }

    private double mostCg() {
        return chord.percentAt(envelope.aft().points().stream()
                .mapToDouble(LimitPoint::armM)
                .max()
                .orElseThrow());
    }

    /** Bands that begin and end at whole steps and cover a range. */
    private static List<Band> bands(double least, double most, double step) {
        if (!(step > 0) || (most - least) / step > 60) {
            throw new IllegalArgumentException(
                    "bands must be more than zero wide, and not so narrow that more than 60 are needed from "
                            + Figure.of(least) + " to " + Figure.of(most));
        }
        List<Band> bands = new ArrayList<>();
        long first = (long) Math.floor(least / step + ROUNDING);
        long end = (long) Math.ceil(most / step - ROUNDING);
        for (long i = first; i < end; i++) {
            bands.add(new Band(i * step, (i + 1) * step));
        }
        return bands;
    }

    private TrimCard fill(boolean byMass, List<Band> cgs, List<Band> masses) {
        List<List<Cell>> rows = new ArrayList<>();
        double coarseness = 0;
        for (Band cg : cgs) {
            List<Cell> row = new ArrayList<>();
            for (Band mass : masses) {
                Cell cell = cell(cg, mass);
                row.add(cell);
                if (cell.place() == Place.USABLE) {
                    coarseness = Math.max(
                            coarseness, coarseness(cg, mass, cell.settingUnits().orElseThrow()));
                }
            }
            rows.add(row);
        }
        return new TrimCard(
                type, scale, byMass, cgs, masses, rows, byMass ? List.of() : settings(masses.get(0)), coarseness);
    }

    private List<SettingBand> settings(Band mass) {
        long most = Math.round(scale.settingFor(scale.bandHighUnits()) / scale.stepUnits());
        long least = Math.round(scale.settingFor(scale.bandLowUnits()) / scale.stepUnits());
        List<SettingBand> settings = new ArrayList<>();
        for (long i = most; i >= least; i--) {
            double setting = scale.settingFor(i * scale.stepUnits());
            if (scale.isInBand(setting)) {
                SettingRange.of(scale, setting, mass.middle())
                        .ifPresent(cgs -> settings.add(new SettingBand(setting, cgs)));
            }
        }
        return settings;
    }

    private Cell cell(Band cg, Band mass) {
        if (!touchesEnvelope(cg, mass)) {
            return new Cell(Place.OUTSIDE_ENVELOPE, OptionalDouble.empty());
        }
        OptionalDouble trim = scale.law().trimUnitsAt(cg.middle(), mass.middle());
        if (trim.isEmpty()) {
            return new Cell(Place.OFF_SCALE, OptionalDouble.empty());
        }
        double setting = scale.settingFor(trim.getAsDouble());
        return new Cell(scale.isInBand(setting) ? Place.USABLE : Place.OUTSIDE_BAND, OptionalDouble.of(setting));
    }

    private boolean touchesEnvelope(Band cg, Band mass) {
        for (int i = 0; i < MASSES_LOOKED_AT; i++) {
            double massKg = mass.from() + i * (mass.to() - mass.from()) / (MASSES_LOOKED_AT - 1);
            if (envelope.reaches(massKg)
                    && Tolerance.isAft(
                            cg.to(), chord.percentAt(envelope.forward().armAtM(massKg)))
                    && Tolerance.isAhead(
                            cg.from(), chord.percentAt(envelope.aft().armAtM(massKg)))) {
                return true;
            }
        }
        return false;
    }

    /** The greatest distance from the exact trim at those corners that the scale reaches. */
    private double coarseness(Band cg, Band mass, double setting) {
        double most = 0;
        for (double cornerCg : new double[] {cg.from(), cg.to()}) {
            for (double cornerKg : new double[] {mass.from(), mass.to()}) {
                OptionalDouble exact = scale.law().trimUnitsAt(cornerCg, cornerKg);
                if (exact.isPresent()) {
                    most = Math.max(most, Math.abs(exact.getAsDouble() - setting));
                }
            }
        }
        return most;
    }
}
