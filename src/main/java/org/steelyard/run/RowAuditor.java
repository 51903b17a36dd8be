package org.steelyard.run;

import java.util.ArrayList;
import java.util.List;
import org.steelyard.balance.Balance;
import org.steelyard.balance.Balancer;
import org.steelyard.check.AuditedFlight;
import org.steelyard.check.Checker;
import org.steelyard.model.Loading;
import org.steelyard.model.Policy;
import org.steelyard.read.ParsedRow;
import org.steelyard.read.RawRows;
import org.steelyard.remedy.RemedySearch;

/** A worker's job: rows to audited flights. Safe for many threads. */
final class RowAuditor {

    private final Policy policy;

    RowAuditor(Policy policy) {
        this.policy = policy;
    }

    List<AuditedRow> audit(RawRows rows) {
        List<AuditedRow> audited = new ArrayList<>(rows.rows().size());
        for (ParsedRow row : rows.parse()) {
            audited.add(audit(row));
        }
        return audited;
    }

    private AuditedRow audit(ParsedRow row) {
        if (row instanceof ParsedRow.Accepted accepted) {
            return new AuditedRow.Flight(audit(accepted.loading(), policy));
        }
        if (row instanceof ParsedRow.Rejected rejected) {
            return new AuditedRow.Rejected(rejected.row());
        }
        return row instanceof ParsedRow.Item ? new AuditedRow.Item() : new AuditedRow.Blank();
    }

    /** One flight. */
    static AuditedFlight audit(Loading loading, Policy policy) {
        Balance balance = Balancer.balance(loading, policy);
        AuditedFlight flight = new AuditedFlight(loading, balance, Checker.check(loading, balance, policy));
        return flight.withRemedy(RemedySearch.of(flight, policy));
    }
}
