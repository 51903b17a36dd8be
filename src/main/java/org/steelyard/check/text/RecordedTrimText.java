package org.steelyard.check.text;

import java.util.Locale;
import org.steelyard.model.trim.TrimScale;

/** What a recorded setting off the right one means, in words. */
public final class RecordedTrimText {

    private RecordedTrimText() {}

    /**
     * Says how far a recorded setting is off, and what that does.
     *
     * @param scale the scale that both settings are read on
     * @param setUnits the setting that was recorded, trim units
     * @param rightUnits the right one, trim units
     * @param difference recorded less right, trim units, nose-up positive
     * @return a clause without a full stop
     */
    public static String of(TrimScale scale, double setUnits, double rightUnits, double difference) {
        return String.format(
                Locale.ROOT,
                "take-off trim was recorded as %s where %s is right, %s too far %s: %s",
                FindingText.trim(setUnits, scale.stepUnits(), scale.unit()),
                FindingText.trim(rightUnits, scale.stepUnits(), scale.unit()),
                FindingText.trimAmount(difference, scale.stepUnits(), scale.unit()),
                difference > 0 ? "nose-up" : "nose-down",
                risk(difference));
    }

    /**
     * What a setting off the right one risks (common practice).
     *
     * @param differenceUnits recorded less right setting, nose-up positive
     * @return the risk in words, without a full stop; blank for no difference
     */
    public static String risk(double differenceUnits) {
        if (differenceUnits == 0) {
            return "";
        }
        return differenceUnits > 0
                ? "it may rotate early or too far, with risk of a tail strike or a stall after take-off"
                : "it may rotate late and feel heavy, with risk of a long take-off";
    }
}
