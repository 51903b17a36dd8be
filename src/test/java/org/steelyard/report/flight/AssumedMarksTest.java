package org.steelyard.report.flight;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.steelyard.balance.Balance;
import org.steelyard.balance.Balancer;
import org.steelyard.check.flight.Checker;
import org.steelyard.check.result.AuditedFlight;
import org.steelyard.model.loading.Fuel;
import org.steelyard.model.loading.HoldLoad;
import org.steelyard.model.loading.Load;
import org.steelyard.model.loading.Loading;
import org.steelyard.model.loading.Passengers;
import org.steelyard.model.policy.Policy;
import org.steelyard.model.policy.SharingRule;
import org.steelyard.report.flight.LoadSummary.Fact;
import org.steelyard.samples.Plain;
import org.steelyard.samples.SampleJet;

/** A load summary marks what was shared out from totals, place by place, and nothing else. */
class AssumedMarksTest {

    private static LoadSummary summary(SampleJet jet) {
        Loading loading = jet.loading();
        Policy policy = Plain.policy(0, 0, 0, 0, SharingRule.BY_CAPACITY);
        Balance balance = Balancer.balance(loading, policy);
        return new LoadSummary(new AuditedFlight(loading, balance, Checker.check(loading, balance, policy)), true);
    }

    private static List<String> marked(LoadSummary summary) {
        return summary.places().stream()
                .filter(fact -> fact.value().endsWith(" (assumed)"))
                .map(Fact::name)
                .toList();
    }

    @Test
    void everyPlaceOfAPartInTotalIsMarked() {
        Load load = new Load.ByHold(
                Passengers.adults(40),
                OptionalDouble.empty(),
                List.of(new HoldLoad(500, 0), HoldLoad.EMPTY, HoldLoad.EMPTY));
        LoadSummary summary = summary(SampleJet.loaded().load(load).fuel(new Fuel.Total(8000, 100, 4000)));
        assertThat(marked(summary))
                .containsExactly("zone A", "zone B", "zone C", "left tank", "right tank", "tail tank");
        assertThat(summary.facts()).contains(new Fact("ASSUMED", "passengers, fuel (shared out from totals)"));
        assertThat(summary.findings())
                .extracting(LoadSummary.Line::sentence)
                .contains(
                        "passengers were shared out among the zones by capacity",
                        "the fuel total was shared out among the tanks by the type's fill order");
    }

    @Test
    void detailIsNotMarked() {
        LoadSummary summary = summary(SampleJet.loaded());
        assertThat(marked(summary)).isEmpty();
        assertThat(summary.facts()).extracting(Fact::name).doesNotContain("ASSUMED");
    }
}
