package org.steelyard.run;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.steelyard.config.section.TrimYaml;
import org.steelyard.model.trim.FlapEffect;
import org.steelyard.model.type.AircraftType;
import org.steelyard.model.type.Airframe;
import org.steelyard.report.text.Caution;
import org.steelyard.trim.EstimatedScale;

/** Scales estimated from a type's airframe, ready for the type's file. */
public final class EstimatedScales {

    private EstimatedScales() {}

    /**
     * Estimates a scale for each flap setting of the airframe.
     *
     * @param type the type
     * @param airframe its airframe
     * @return scales in the order of the airframe's flap settings
     */
    public static List<EstimatedScale> of(AircraftType type, Airframe airframe) {
        List<EstimatedScale> scales = new ArrayList<>();
        for (FlapEffect flap : airframe.flaps()) {
            scales.add(EstimatedScale.of(type, airframe, flap));
        }
        return scales;
    }

    /**
     * A scale as an entry of a {@code trim} section, with what must be known of it above.
     *
     * @param estimated the scale
     * @param airframe where it comes from
     * @return the entry
     */
    public static TrimYaml.Entry entry(EstimatedScale estimated, Airframe airframe) {
        List<String> comments = new ArrayList<>();
        comments.add("ESTIMATE from the balance of moments; data: " + airframe.source());
        comments.addAll(warnings(estimated));
        comments.add(Caution.TEXT);
        return new TrimYaml.Entry(estimated.scale(), comments);
    }

    /** What speaks against an estimate. */
    public static List<String> warnings(EstimatedScale estimated) {
        List<String> warnings = new ArrayList<>();
        if (estimated.staticMarginPercentMac() <= 0) {
            warnings.add(String.format(
                    Locale.ROOT,
                    "The neutral point lies %.1f %% MAC ahead of the rearmost CG: as described, the airframe is not"
                            + " stable there.",
                    -estimated.staticMarginPercentMac()));
        }
        if (estimated.mostTailLift() > EstimatedScale.LINEAR_TAIL_LIFT) {
            warnings.add(String.format(
                    Locale.ROOT,
                    "The tail's lift coefficient reaches %.2f: near its stall lift is not linear, and the estimate says"
                            + " little.",
                    estimated.mostTailLift()));
        }
        return warnings;
    }
}
