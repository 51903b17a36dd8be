package org.steelyard.model.type;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.limit.Envelope;
import org.steelyard.model.limit.MassLimits;
import org.steelyard.model.limit.Movement;
import org.steelyard.model.trim.TrimScale;
import org.steelyard.model.trim.TrimUnit;
import org.steelyard.model.unit.Require;

/**
 * An aircraft type: all that is the same for every tail of it.
 *
 * @param id short name used in inputs
 * @param name name in words
 * @param geometry chord, index and units
 * @param limits limits of mass
 * @param cabin crew, pantry and zones
 * @param holds baggage and cargo compartments from front to back
 * @param groups limits on several places together
 * @param fuel tanks and their order
 * @param envelopes at most one for each phase; at least take-off
 * @param trimScales scales by flap setting; empty where the type has no stabilizer trim scale
 * @param movements what moves without being on the load sheet; only an operational envelope looks at it
 */
public record AircraftType(
        String id,
        String name,
        Geometry geometry,
        MassLimits limits,
        Cabin cabin,
        List<Hold> holds,
        List<LoadGroup> groups,
        FuelSystem fuel,
        List<Envelope> envelopes,
        List<TrimScale> trimScales,
        List<Movement> movements) {

    /**
     * Checks that the parts belong together.
     *
     * @throws IllegalArgumentException if a phase has two envelopes, take-off has none, two scales are for the same
     *     setting, or a group names a place that is not there
     */
    public AircraftType {
        Require.text("type id", id);
        Require.text("type name", name);
        Objects.requireNonNull(geometry);
        Objects.requireNonNull(limits);
        Objects.requireNonNull(cabin);
        Objects.requireNonNull(fuel);
        holds = List.copyOf(holds);
        groups = List.copyOf(groups);
        envelopes = List.copyOf(envelopes);
        trimScales = List.copyOf(trimScales);
        movements = List.copyOf(movements);
        Require.that(
                envelopes.stream().map(Envelope::phase).distinct().count() == envelopes.size(),
                "a phase has at most one envelope");
        Require.that(
                envelopes.stream().anyMatch(envelope -> envelope.phase() == Phase.TAKEOFF),
                "a type needs an envelope for take-off");
        Require.that(
                trimScales.stream().map(AircraftType::setting).distinct().count() == trimScales.size(),
                "a setting has at most one trim scale");
        requirePlaces(groups, holds.size(), cabin.zones().size());
    }

    private static List<Object> setting(TrimScale scale) {
        return List.of(scale.phase(), scale.flaps(), scale.thrustRating());
    }

    private static void requirePlaces(List<LoadGroup> groups, int holds, int zones) {
        for (LoadGroup group : groups) {
            Require.that(
                    group.holds().stream().allMatch(i -> i >= 0 && i < holds)
                            && group.zones().stream().allMatch(i -> i >= 0 && i < zones),
                    "group " + group.id() + " names a place that is not there");
        }
    }

    /**
     * The envelope of a phase.
     *
     * @param phase which
     * @return the envelope, empty where the type has none for it
     */
    public Optional<Envelope> envelope(Phase phase) {
        for (int i = 0; i < envelopes.size(); i++) {
            if (envelopes.get(i).phase() == phase) {
                return Optional.of(envelopes.get(i));
            }
        }
        return Optional.empty();
    }

    /**
     * The phases whose CG nothing holds: those that an envelope can be for, but none is.
     *
     * @return of zero fuel, take-off, in flight and landing, in this order; empty where all have one
     */
    public List<Phase> phasesWithoutEnvelope() {
        return Envelope.PHASES.stream()
                .filter(phase -> envelope(phase).isEmpty())
                .toList();
    }

    /**
     * What the numbers of the trim scales are.
     *
     * @param phase take-off or landing
     * @return what they are on every scale of the phase; empty where they differ or there is no scale
     */
    public Optional<TrimUnit> trimUnit(Phase phase) {
        List<TrimUnit> units = trimScales.stream()
                .filter(scale -> scale.phase() == phase)
                .map(TrimScale::unit)
                .distinct()
                .toList();
        return units.size() == 1 ? Optional.of(units.get(0)) : Optional.empty();
    }

    /**
     * The trim scale for a setting: one for the thrust rating if there is, else one for any rating.
     *
     * @param phase take-off or landing
     * @param flaps flap setting
     * @param thrustRating thrust rating, blank if not given
     * @return the scale, empty where the type has none for it
     */
    public Optional<TrimScale> trimScale(Phase phase, String flaps, String thrustRating) {
        Optional<TrimScale> anyRating = Optional.empty();
        for (int i = 0; i < trimScales.size(); i++) {
            TrimScale scale = trimScales.get(i);
            if (scale.phase() == phase && scale.flaps().equals(flaps)) {
                if (scale.thrustRating().equals(thrustRating)) {
                    return Optional.of(scale);
                }
                if (scale.thrustRating().isBlank()) {
                    anyRating = Optional.of(scale);
                }
            }
        }
        return anyRating;
    }
}
