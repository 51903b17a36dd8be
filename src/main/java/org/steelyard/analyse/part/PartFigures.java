package org.steelyard.analyse.part;

import java.util.List;
import org.steelyard.check.result.AuditedFlight;
import org.steelyard.model.type.MeanChord;
import org.steelyard.model.unit.MassMoment;

/**
 * What each part does to one flight's take-off CG. With mass m at arm a and take-off mass M, {@code pull = 100 m (a -
 * a₀) / (M c)} in % MAC about a reference arm a₀ at 25 % MAC, c being the chord, and {@code fraction = m / M}. The
 * pulls add up to the CG less 25 % MAC exactly; about any other CG g they are {@code pull - (g - 25) fraction}.
 */
public final class PartFigures {

    static final double REFERENCE_PERCENT_MAC = 25;

    private final double[] figures;
    private final double[] massesKg;
    private final int parts;

    private PartFigures(int parts) {
        this.parts = parts;
        figures = new double[2 * parts];
        massesKg = new double[parts];
    }

    public static PartFigures of(AuditedFlight flight, LoadParts names) {
        MeanChord chord = names.type().geometry().chord();
        double referenceM = chord.armAt(REFERENCE_PERCENT_MAC);
        double takeoffKg = flight.balance().takeoff().massKg();
        List<MassMoment> parts = names.of(flight);
        PartFigures one = new PartFigures(parts.size());
        for (int j = 0; j < parts.size(); j++) {
            MassMoment part = parts.get(j);
            one.massesKg[j] = part.massKg();
            one.figures[j] = 100 * (part.momentKgM() - part.massKg() * referenceM) / (takeoffKg * chord.lengthM());
            one.figures[parts.size() + j] = part.massKg() / takeoffKg;
        }
        return one;
    }

    /** Pulls of all parts, then their fractions. */
    public double[] all() {
        return figures.clone();
    }

    /** Take-off CG less the reference, in % MAC. */
    double aboutReference() {
        double sum = 0;
        for (int j = 0; j < parts; j++) {
            sum += figures[j];
        }
        return sum;
    }

    public double pull(int part, double aboutReference) {
        return figures[part] - aboutReference * figures[parts + part];
    }

    public double massKg(int part) {
        return massesKg[part];
    }
}
