package org.steelyard.report.words;

import org.steelyard.check.result.AuditedFlight;
import org.steelyard.check.result.Remedy;
import org.steelyard.model.finding.Finding;
import org.steelyard.model.finding.Severity;

/** What would put a flight right, beside its breaches. */
public final class RemedyCell {

    private RemedyCell() {}

    /** The remedy of the flight for a breach; blank for another finding, or where none was looked for. */
    public static String of(AuditedFlight flight, Finding finding) {
        return finding.severity() == Severity.BREACH ? of(flight) : "";
    }

    /** The remedy of the flight; blank where none was looked for. */
    public static String of(AuditedFlight flight) {
        return flight.remedy().map(Remedy::sentence).orElse("");
    }
}
