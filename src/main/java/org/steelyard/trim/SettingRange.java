package org.steelyard.trim;

import java.util.Optional;
import org.steelyard.model.limit.CgRange;
import org.steelyard.model.trim.TrimScale;

/** The inverse of a scale as its indicator shows it: for which CGs a setting is the right one. */
public final class SettingRange {

    private SettingRange() {}

    /**
     * The CGs whose trim rounds to a setting, by the scale's rounding and band.
     *
     * @param scale the scale
     * @param settingUnits a setting in units, nose-up positive
     * @param massKg take-off mass in kg; of no matter where the law does not depend on it
     * @return the range of CG in % MAC; empty where no CG of the scale has that setting
     */
    public static Optional<CgRange> of(TrimScale scale, double settingUnits, double massKg) {
        return scale.law().cgFor(scale.leastTrimUnits(settingUnits), scale.greatestTrimUnits(settingUnits), massKg);
    }
}
