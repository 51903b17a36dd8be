package org.steelyard.check.result;

import java.util.List;
import java.util.Optional;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.loading.FlightSetting;
import org.steelyard.model.trim.TrimScale;
import org.steelyard.model.type.AircraftType;

/** Why there is no trim for a flight of a type that has scales, in words that go on after "because". */
public final class NoTrim {

    private NoTrim() {}

    /**
     * Why there is none for take-off.
     *
     * @param type the type
     * @param setting flaps and thrust of the flight
     * @return the reason, empty where the type has no scale for take-off at all
     */
    public static Optional<String> takeoff(AircraftType type, FlightSetting setting) {
        List<TrimScale> scales = scales(type, Phase.TAKEOFF);
        if (scales.isEmpty()) {
            return Optional.empty();
        }
        if (setting.flaps().isBlank()) {
            return Optional.of("the flap setting is not given");
        }
        List<String> ratings = scales.stream()
                .filter(scale -> scale.flaps().equals(setting.flaps()))
                .map(TrimScale::thrustRating)
                .toList();
        if (ratings.isEmpty()) {
            return Optional.of(noScale(setting.flaps(), flaps(scales)));
        }
        return Optional.of(
                setting.thrustRating().isBlank()
                        ? "the thrust rating is not given"
                        : noScale(setting.flaps() + " with thrust " + setting.thrustRating(), ratings));
    }

    /**
     * Why there is none for landing.
     *
     * @param type the type
     * @param setting flaps and thrust of the flight
     * @return the reason, empty where the type has no scale for landing at all, or the setting for it is not given
     */
    public static Optional<String> landing(AircraftType type, FlightSetting setting) {
        List<TrimScale> scales = scales(type, Phase.LANDING);
        return scales.isEmpty() || setting.landingFlaps().isBlank()
                ? Optional.empty()
                : Optional.of(noScale(setting.landingFlaps(), flaps(scales)));
    }

    private static List<TrimScale> scales(AircraftType type, Phase phase) {
        return type.trimScales().stream()
                .filter(scale -> scale.phase() == phase)
                .toList();
    }

    private static List<String> flaps(List<TrimScale> scales) {
        return scales.stream().map(TrimScale::flaps).distinct().toList();
    }

    private static String noScale(String setting, List<String> known) {
        return "the type has no scale for flaps " + setting + "; it has "
                + (known.size() == 1 ? "a scale for " : "scales for ") + and(known);
    }

    private static String and(List<String> words) {
        int last = words.size() - 1;
        return last == 0 ? words.get(0) : String.join(", ", words.subList(0, last)) + " and " + words.get(last);
    }
}
