package org.steelyard.model.trim;

import java.util.Objects;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.unit.Require;

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
 * @param rounding how a trim becomes a setting
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
        SettingRounding rounding,
        TrimBasis basis) {

    private static final double CLEAN = 1e6;

    /** A share of a step, far below what an indicator shows and far above the rounding of doubles. */
    private static final double ON_END_STEPS = 1e-6;

    /**
     * Checks the values, and names the flap setting ({@link FlapName}).
     *
     * @throws IllegalArgumentException if the phase is neither take-off nor landing, the flap setting is blank, the
     *     step is not more than zero, the band is empty or holds no whole step, or it reaches below 0 on a scale of
     *     plain numbers
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
        Objects.requireNonNull(rounding);
        Objects.requireNonNull(basis);
        Require.that(
                lowestSteps(bandLowUnits, stepUnits) <= highestSteps(bandHighUnits, stepUnits),
                "the trim band must hold at least one whole step");
        Require.that(
                !unit.numbering().isPlain()
                        || Math.min(
                                        unit.numbering().turned(bandLowUnits),
                                        unit.numbering().turned(bandHighUnits))
                                >= 0,
                "the band of a scale of plain numbers must not begin below 0");
    }

    private static double lowestSteps(double bandLowUnits, double stepUnits) {
        return SettingRounding.NOSE_UP.whole(bandLowUnits / stepUnits);
    }

    private static double highestSteps(double bandHighUnits, double stepUnits) {
        return SettingRounding.NOSE_DOWN.whole(bandHighUnits / stepUnits);
    }

    /**
     * The setting to select, by the scale's rounding; for a trim in the band never a setting beyond it.
     *
     * @param trimUnits trim in units, nose-up positive
     * @return a whole number of steps, in units
     */
    public double settingFor(double trimUnits) {
        double steps = rounding.whole(trimUnits / stepUnits);
        if (isInBand(trimUnits)) {
            steps = Math.max(
                    lowestSteps(bandLowUnits, stepUnits), Math.min(highestSteps(bandHighUnits, stepUnits), steps));
        }
        return units(steps);
    }

    private double units(double steps) {
        return Math.round(steps * stepUnits * CLEAN) / CLEAN;
    }

    /**
     * A trim that lies on an end of the band, but for rounding, is moved onto it.
     *
     * @param trimUnits trim in units, nose-up positive
     * @return the trim, or the end of the band that it is on
     */
    public double onBand(double trimUnits) {
        for (double end : new double[] {bandLowUnits, bandHighUnits}) {
            if (Math.abs(trimUnits - end) <= ON_END_STEPS * stepUnits) {
                return end;
            }
        }
        return trimUnits;
    }

    /**
     * The least trim that a setting stands for.
     *
     * @param settingUnits a setting in units, nose-up positive
     * @return trim in units; the setting beside it towards nose-down stands for those below
     */
    public double leastTrimUnits(double settingUnits) {
        double least = settingUnits - rounding.stepsBelow() * stepUnits;
        if (settingUnits > units(highestSteps(bandHighUnits, stepUnits))) {
            return Math.max(least, bandHighUnits);
        }
        return settingUnits <= units(lowestSteps(bandLowUnits, stepUnits)) && isInBand(settingUnits)
                ? Math.min(least, bandLowUnits)
                : least;
    }

    /**
     * The greatest trim that a setting stands for.
     *
     * @param settingUnits a setting in units, nose-up positive
     * @return trim in units; the setting beside it towards nose-up stands for those above
     */
    public double greatestTrimUnits(double settingUnits) {
        double greatest = settingUnits + rounding.stepsAbove() * stepUnits;
        if (settingUnits < units(lowestSteps(bandLowUnits, stepUnits))) {
            return Math.min(greatest, bandLowUnits);
        }
        return settingUnits >= units(highestSteps(bandHighUnits, stepUnits)) && isInBand(settingUnits)
                ? Math.max(greatest, bandHighUnits)
                : greatest;
    }

    /**
     * Whether a setting is permitted.
     *
     * @param settingUnits a setting in units, nose-up positive
     * @return true within the band and on its ends
     */
    public boolean isInBand(double settingUnits) {
        double on = onBand(settingUnits);
        return on >= bandLowUnits && on <= bandHighUnits;
    }
}
