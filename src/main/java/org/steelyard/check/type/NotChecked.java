package org.steelyard.check.type;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.type.AircraftType;

/**
 * The conditions of a type's flights in which no CG is held against anything, as the type has no envelope for them. So
 * a clean flight is inside every limit that there is, not inside every limit.
 *
 * @param type id of the type
 * @param phases zero fuel, in flight or landing, in this order; at least one
 */
public record NotChecked(String type, List<Phase> phases) {

    public NotChecked {
        Objects.requireNonNull(type);
        phases = List.copyOf(phases);
    }

    /**
     * What is not checked of a type.
     *
     * @param type the type
     * @return empty where each phase has an envelope
     */
    public static Optional<NotChecked> of(AircraftType type) {
        List<Phase> phases = type.phasesWithoutEnvelope();
        return phases.isEmpty() ? Optional.empty() : Optional.of(new NotChecked(type.id(), phases));
    }

    /**
     * The phases in words.
     *
     * @return as {@code at zero fuel, in flight and at landing}
     */
    public String when() {
        StringBuilder words = new StringBuilder();
        for (int i = 0; i < phases.size(); i++) {
            String before = i == 0 ? "" : i == phases.size() - 1 ? " and " : ", ";
            words.append(before)
                    .append(phases.get(i) == Phase.FLIGHT ? "" : "at ")
                    .append(phases.get(i).label());
        }
        return words.toString();
    }

    /**
     * What is not checked, in words.
     *
     * @return a clause without a full stop
     */
    public String sentence() {
        return "no CG is checked " + when() + ": the type has no envelope for " + (phases.size() == 1 ? "it" : "them");
    }
}
