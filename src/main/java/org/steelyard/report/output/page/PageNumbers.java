package org.steelyard.report.output.page;

import java.util.List;
import org.steelyard.check.result.Status;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.finding.Severity;

/** What stands for a status, a severity and a phase in the data of the page: its place in these lists. */
final class PageNumbers {

    static final List<Status> STATUSES = List.of(Status.CLEAN, Status.MARGINAL, Status.BREACHED);
    static final List<Severity> SEVERITIES = List.of(Severity.NOTE, Severity.MARGINAL, Severity.BREACH);
    static final List<Phase> PHASES =
            List.of(Phase.DRY_OPERATING, Phase.ZERO_FUEL, Phase.RAMP, Phase.TAKEOFF, Phase.FLIGHT, Phase.LANDING);

    private PageNumbers() {}

    static int of(Status status) {
        return STATUSES.indexOf(status);
    }

    static int of(Severity severity) {
        return SEVERITIES.indexOf(severity);
    }

    static int of(Phase phase) {
        return PHASES.indexOf(phase);
    }
}
