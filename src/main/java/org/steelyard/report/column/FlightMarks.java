package org.steelyard.report.column;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import org.steelyard.check.result.AuditedFlight;
import org.steelyard.check.result.EnvelopeMargin;
import org.steelyard.model.finding.Finding;
import org.steelyard.model.finding.FindingCode;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.finding.Severity;
import org.steelyard.model.unit.Quantity;
import org.steelyard.model.unit.Tolerance;

/** What findings say of a figure of a flight, and where the flight is nearest to a limit. */
final class FlightMarks {

    static final Set<FindingCode> CG = EnumSet.of(FindingCode.CG_FORWARD, FindingCode.CG_AFT);
    static final Set<FindingCode> MASS =
            EnumSet.of(FindingCode.MASS_HIGH, FindingCode.MASS_LOW, FindingCode.MASS_OFF_ENVELOPE);
    static final Set<FindingCode> TRIM = EnumSet.of(FindingCode.TRIM_BAND, FindingCode.TRIM_OFF_SCALE);

    private FlightMarks() {}

    /** The worst finding of a kind in any state. */
    static Function<AuditedFlight, Severity> worst(FindingCode code) {
        return flight -> worst(flight, finding -> finding.code() == code);
    }

    /** The worst finding of some kinds in a state. */
    static Function<AuditedFlight, Severity> worst(Set<FindingCode> codes, Phase phase) {
        return flight -> worst(flight, finding -> finding.phase() == phase && codes.contains(finding.code()));
    }

    private static Severity worst(AuditedFlight flight, Predicate<Finding> concerned) {
        List<Finding> findings = flight.assessment().findings();
        Severity worst = Severity.NOTE;
        for (int i = 0; i < findings.size(); i++) {
            Finding finding = findings.get(i);
            if (finding.severity().compareTo(worst) > 0 && concerned.test(finding)) {
                worst = finding.severity();
            }
        }
        return worst;
    }

    /** A breach where a room for mass is less than none. */
    static Severity ofRoom(double roomKg) {
        return Tolerance.isOutside(roomKg, Quantity.MASS) ? Severity.BREACH : Severity.NOTE;
    }

    /** The envelope to whose limit there is the least room; empty where none was looked at. */
    static Optional<EnvelopeMargin> least(AuditedFlight flight, ToDoubleFunction<EnvelopeMargin> room) {
        EnvelopeMargin least = null;
        double leastRoom = Double.POSITIVE_INFINITY;
        for (EnvelopeMargin margin : flight.assessment().margins()) {
            double here = room.applyAsDouble(margin);
            if (least == null || here < leastRoom) {
                least = margin;
                leastRoom = here;
            }
        }
        return Optional.ofNullable(least);
    }
}
