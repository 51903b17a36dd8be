package org.steelyard.balance;

import java.util.List;
import java.util.Optional;
import org.steelyard.model.AircraftType;
import org.steelyard.model.CgRange;
import org.steelyard.model.FlightSetting;
import org.steelyard.model.MassMoment;
import org.steelyard.model.Phase;
import org.steelyard.model.TrimScale;

/** Reads a type's trim scales for a state. */
final class TrimReader {

    /** Far below any reading of a CG, far above the rounding of doubles. */
    private static final double ROUNDING_PERCENT_MAC = 1e-7;

    private TrimReader() {}

    static Optional<TrimResult> takeoff(AircraftType type, FlightSetting setting, MassMoment state) {
        return read(type, type.trimScale(Phase.TAKEOFF, setting.flaps(), setting.thrustRating()), state);
    }

    /** Where the landing flap setting is not given but the type has a scale for one only, that one is read. */
    static Optional<TrimResult> landing(AircraftType type, FlightSetting setting, MassMoment state) {
        String flaps = setting.landingFlaps().isBlank() ? onlyLandingFlaps(type) : setting.landingFlaps();
        return read(type, type.trimScale(Phase.LANDING, flaps, ""), state);
    }

    private static String onlyLandingFlaps(AircraftType type) {
        List<String> flaps = type.trimScales().stream()
                .filter(scale -> scale.phase() == Phase.LANDING)
                .map(TrimScale::flaps)
                .distinct()
                .toList();
        return flaps.size() == 1 ? flaps.get(0) : "";
    }

    private static Optional<TrimResult> read(AircraftType type, Optional<TrimScale> scale, MassMoment state) {
        return scale.isPresent() ? Optional.of(read(type, scale.get(), state)) : Optional.empty();
    }

    private static TrimResult read(AircraftType type, TrimScale scale, MassMoment state) {
        double cgPercentMac = type.geometry().chord().percentAt(state.armM());
        double onScale = onto(scale.law().cgRange(), cgPercentMac);
        return new TrimResult(scale, scale.law().trimUnitsAt(onScale, state.massKg()));
    }

    /** A CG on an end of the scale is on the scale; rounding must not put it off. */
    private static double onto(CgRange range, double cgPercentMac) {
        double nearest = Math.min(Math.max(cgPercentMac, range.fromPercentMac()), range.toPercentMac());
        return Math.abs(nearest - cgPercentMac) <= ROUNDING_PERCENT_MAC ? nearest : cgPercentMac;
    }
}
