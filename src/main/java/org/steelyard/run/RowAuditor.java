package org.steelyard.run;

import java.util.ArrayList;
import java.util.List;
import org.steelyard.balance.Balance;
import org.steelyard.balance.Balancer;
import org.steelyard.check.flight.Checker;
import org.steelyard.check.result.AuditedFlight;
import org.steelyard.model.input.RejectedRow;
import org.steelyard.model.input.SkippedRow;
import org.steelyard.model.loading.Loading;
import org.steelyard.model.policy.Policy;
import org.steelyard.read.row.ParsedRow;
import org.steelyard.read.season.RawRows;
import org.steelyard.read.season.RowReader;
import org.steelyard.read.table.RawRow;
import org.steelyard.remedy.RemedySearch;

/** A worker's job: rows to audited flights. Safe for many threads. */
public final class RowAuditor {

    private final Policy policy;

    RowAuditor(Policy policy) {
        this.policy = policy;
    }

    List<AuditedRow> audit(RawRows rows) {
        List<AuditedRow> audited = new ArrayList<>(rows.rows().size());
        List<ParsedRow> parsed = rows.parse();
        for (int i = 0; i < parsed.size(); i++) {
            audited.add(audit(parsed.get(i), rows.reader(), rows.rows().get(i)));
        }
        return audited;
    }

    private AuditedRow audit(ParsedRow parsed, RowReader reader, RawRow row) {
        return parsed.match(new ParsedRow.Cases<AuditedRow, RuntimeException>() {
            @Override
            public AuditedRow accepted(Loading loading) {
                return new AuditedRow.Flight(RowAuditor.audit(loading, policy), reader.key(row, loading), reader, row);
            }

            @Override
            public AuditedRow item() {
                return new AuditedRow.Item();
            }

            @Override
            public AuditedRow rejected(RejectedRow rejected) {
                return new AuditedRow.Rejected(rejected);
            }

            @Override
            public AuditedRow blank() {
                return new AuditedRow.Blank();
            }

            @Override
            public AuditedRow skipped(SkippedRow skipped) {
                return new AuditedRow.Skipped(skipped);
            }
        });
    }

    /**
     * Computes and judges one flight.
     *
     * @param loading how it was loaded
     * @param policy the operator's rules
     * @return the flight with its balance, findings and, if it is breached, what would put it right
     */
    public static AuditedFlight audit(Loading loading, Policy policy) {
        Balance balance = Balancer.balance(loading, policy);
        AuditedFlight flight = new AuditedFlight(loading, balance, Checker.check(loading, balance, policy));
        return flight.withRemedy(RemedySearch.of(flight, policy));
    }
}
