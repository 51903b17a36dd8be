package org.steelyard.balance;

import java.util.List;
import java.util.Optional;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.loading.FlightSetting;
import org.steelyard.model.trim.TrimScale;
import org.steelyard.model.type.AircraftType;
import org.steelyard.model.unit.MassMoment;

/** Reads a type's trim scales for a state. */
final class TrimReader {

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
        return new TrimResult(scale, scale.law().trimUnitsAt(cgPercentMac, state.massKg()));
    }
}
