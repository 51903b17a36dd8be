package org.steelyard.run;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.SplittableRandom;
import org.steelyard.config.section.TrimYaml;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.trim.SettingRounding;
import org.steelyard.model.trim.TrimBasis;
import org.steelyard.model.trim.TrimPoint;
import org.steelyard.model.trim.TrimScale;
import org.steelyard.model.trim.TrimUnit;
import org.steelyard.report.text.Caution;
import org.steelyard.trim.ScaleFit;
import org.steelyard.trim.ScaleFitter;

/**
 * A scale fitted to evidence, ready for the type's file.
 *
 * @param evidence what it was fitted to
 * @param fit how
 * @param scale the scale, marked as fitted to recorded settings
 */
public record FittedScale(ScaleEvidence evidence, ScaleFit fit, TrimScale scale) {

    /** The step where neither an option nor a scale of the type says one. */
    public static final double USUAL_STEP_UNITS = 0.1;

    /**
     * Fits a scale.
     *
     * @param evidence pairs
     * @param stepUnits step of the indicator; empty for that of the type's scale, or 0.1
     * @param resamples how many resamples the intervals come from
     * @param seed seed of the resampling
     * @return the scale
     * @throws IllegalArgumentException if the pairs do not make a scale
     */
    public static FittedScale of(ScaleEvidence evidence, Optional<Double> stepUnits, int resamples, long seed) {
        Optional<TrimScale> present = evidence.present();
        double step = stepUnits.orElse(present.map(TrimScale::stepUnits).orElse(USUAL_STEP_UNITS));
        ScaleFit fit = ScaleFitter.fit(evidence.pairs(), step, resamples, new SplittableRandom(seed)::nextInt);
        TrimScale scale = new TrimScale(
                Phase.TAKEOFF,
                evidence.flaps(),
                evidence.thrustRating(),
                present.map(TrimScale::unit).orElse(TrimUnit.UNITS),
                fit.law(),
                step,
                present.map(TrimScale::bandLowUnits).orElseGet(() -> outwards(fit, step, false)),
                present.map(TrimScale::bandHighUnits).orElseGet(() -> outwards(fit, step, true)),
                present.map(TrimScale::rounding).orElse(SettingRounding.NEAREST_HALFWAY_UP),
                TrimBasis.EVIDENCE);
        return new FittedScale(evidence, fit, scale);
    }

    /** The end of the fitted trims, to a whole step outwards. */
    private static double outwards(ScaleFit fit, double step, boolean high) {
        List<Double> trims = new ArrayList<>();
        List<Double> masses = fit.massesKg().isEmpty() ? List.of(0.0) : fit.massesKg();
        for (double massKg : masses) {
            fit.law().pointsAt(massKg).stream().map(TrimPoint::trimUnits).forEach(trims::add);
        }
        double end = high
                ? trims.stream().mapToDouble(Double::doubleValue).max().orElseThrow()
                : trims.stream().mapToDouble(Double::doubleValue).min().orElseThrow();
        double steps = high ? Math.floor(end / step) + 1 : Math.ceil(end / step) - 1;
        return Math.round(steps * step * 1e6) / 1e6;
    }

    /** The scale as an entry of a {@code trim} section, with what must be known of it above. */
    public TrimYaml.Entry entry() {
        List<String> comments = new ArrayList<>();
        comments.add(String.format(
                Locale.ROOT,
                "Fitted to %d recorded settings, %d of them without weight; rest %.3f units (robust sd);"
                        + " 95 %% interval of a point at most ± %.3f units, from %d resamples.",
                fit.pairs(),
                fit.outliers().size(),
                fit.residualSdUnits(),
                fit.uncertaintyUnits(),
                fit.resamples()));
        if (evidence.present().isEmpty()) {
            comments.add("The band is only what the fit spans: put in the one that the type permits.");
        }
        comments.add(Caution.TEXT);
        return new TrimYaml.Entry(scale, comments);
    }
}
