package org.steelyard.report;

import org.steelyard.check.AuditedFlight;
import org.steelyard.check.Remedy;
import org.steelyard.model.Finding;
import org.steelyard.model.Severity;

/** What would put a flight right, beside its breaches. */
final class RemedyCell {

    private RemedyCell() {}

    /** The remedy of the flight for a breach; blank for another finding, or where none was looked for. */
    static String of(AuditedFlight flight, Finding finding) {
        return finding.severity() == Severity.BREACH ? of(flight) : "";
    }

    /** The remedy of the flight; blank where none was looked for. */
    static String of(AuditedFlight flight) {
        return flight.remedy().map(Remedy::sentence).orElse("");
    }
}
