package org.steelyard.model;

import java.util.Objects;

/**
 * The stabilizer trim of a type for one flap setting: the law, the step of the indicator, and the band of settings that
 * the type permits.
 *
 * @param phase take-off or landing
 * @param flaps the flap setting, as written in inputs
 * @param thrustRating the thrust rating that it is for; blank for any
 * @param unit what its numbers are
 * @param law trim against CG
 * @param stepUnits smallest step of the indicator, more than zero
 * @param bandLowUnits most nose-down setting permitted, nose-up positive
 * @param bandHighUnits most nose-up setting permitted
 * @param basis where the scale comes from
 */
public record TrimScale(
        Phase phase,
        String flaps,
        String thrustRating,
        TrimUnit unit,
        TrimLaw law,
        double stepUnits,
        double bandLowUnits,
        double bandHighUnits,
        TrimBasis basis) {

    private static final double CLEAN = 1e6;

    /**
     * Checks the values, and names the flap setting ({@link FlapName}).
     *
     * @throws IllegalArgumentException if the phase is neither take-off nor landing, the flap setting is blank, the
     *     step is not more than zero, the band is empty, or it reaches below 0 on a scale of plain numbers
     */
    public TrimScale {
        Require.that(phase == Phase.TAKEOFF || phase == Phase.LANDING, "a trim scale is for take-off or landing");
        Require.text("flaps", flaps);
        flaps = FlapName.of(flaps);
        Objects.requireNonNull(thrustRating);
        Objects.requireNonNull(unit);
        Objects.requireNonNull(law);
        Require.positive("stepUnits", stepUnits);
        Require.finite("bandLowUnits", bandLowUnits);
        Require.finite("bandHighUnits", bandHighUnits);
        Require.that(bandLowUnits < bandHighUnits, "the trim band must run from its nose-down to its nose-up end");
        Objects.requireNonNull(basis);
        Require.that(
                !unit.numbering().isPlain()
                        || Math.min(
                                        unit.numbering().turned(bandLowUnits),
                                        unit.numbering().turned(bandHighUnits))
                                >= 0,
                "the band of a scale of plain numbers must not begin below 0");
    }

    /**
     * A scale from the type's documents.
     *
     * @param phase take-off or landing
     * @param flaps the flap setting, as written in inputs
     * @param thrustRating the thrust rating that it is for; blank for any
     * @param unit what its numbers are
     * @param law trim against CG
     * @param stepUnits smallest step of the indicator, more than zero
     * @param bandLowUnits most nose-down setting permitted, nose-up positive
     * @param bandHighUnits most nose-up setting permitted
     */
    public TrimScale(
            Phase phase,
            String flaps,
            String thrustRating,
            TrimUnit unit,
            TrimLaw law,
            double stepUnits,
            double bandLowUnits,
            double bandHighUnits) {
        this(phase, flaps, thrustRating, unit, law, stepUnits, bandLowUnits, bandHighUnits, TrimBasis.DOCUMENT);
    }

    /**
     * The setting to select: the step nearest to the trim; halfway between two, the more nose-up one.
     *
     * @param trimUnits trim in units, nose-up positive
     * @return a whole number of steps, in units
     */
    public double settingFor(double trimUnits) {
        double steps = Math.floor(trimUnits / stepUnits + 0.5);
        return Math.round(steps * stepUnits * CLEAN) / CLEAN;
    }
}
