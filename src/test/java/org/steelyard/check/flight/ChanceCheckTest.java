package org.steelyard.check.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.steelyard.balance.Balancer;
import org.steelyard.check.chance.LimitChance;
import org.steelyard.check.chance.Uncertainty;
import org.steelyard.check.result.Assessment;
import org.steelyard.check.text.FindingText;
import org.steelyard.model.finding.Finding;
import org.steelyard.model.finding.FindingCode;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.finding.Severity;
import org.steelyard.model.loading.Load;
import org.steelyard.model.loading.Loading;
import org.steelyard.model.policy.ChanceRule;
import org.steelyard.model.policy.DuplicateRule;
import org.steelyard.model.policy.Policy;
import org.steelyard.model.policy.SeatingRule;
import org.steelyard.model.policy.SharingRule;
import org.steelyard.model.policy.SpreadRule;
import org.steelyard.model.unit.MassMoment;
import org.steelyard.samples.Plain;
import org.steelyard.samples.SampleJet;

class ChanceCheckTest {

    /** Bags and positions apart, 30 adults of 16 kg: the mass varies by 16 √30 = 87.6 kg. */
    private static final SpreadRule PEOPLE = new SpreadRule(SeatingRule.RANDOM, 0, 0, 16, 0, 0, 0.5, 0, 0, 0, 0);

    private static Policy policy(boolean decides) {
        return Plain.policy(
                1,
                0.5,
                2,
                0.2,
                SharingRule.BY_CAPACITY,
                Optional.empty(),
                Optional.empty(),
                DuplicateRule.FIRST,
                Optional.of(new ChanceRule(5, decides)),
                Optional.of(PEOPLE),
                0);
    }

    private static Assessment check(Loading loading, Policy policy) {
        return Checker.check(loading, Balancer.balance(loading, policy), policy);
    }

    private static List<String> marginals(Assessment assessment) {
        return assessment.findings().stream()
                .filter(finding -> finding.severity() == Severity.MARGINAL)
                .map(Finding::code)
                .map(FindingCode::code)
                .toList();
    }

    @Test
    void theChanceOfTooMuchMassIsThatOfTheTable() {
        // take-off mass 53,200 kg against 53,200 + 87.64: one standard deviation, 15.87 %
        Loading loading =
                SampleJet.loaded().takeoffLimit(53_200 + 16 * Math.sqrt(30)).loading();
        Uncertainty uncertainty = check(loading, policy(false)).uncertainty().orElseThrow();

        LimitChance chance =
                uncertainty.chance(FindingCode.MASS_HIGH, Phase.TAKEOFF).orElseThrow();
        assertThat(chance.chance()).isCloseTo(0.158655253931457, within(1e-9));
        assertThat(chance.inside()).isTrue();
        assertThat(uncertainty.greatest()).contains(chance);
        assertThat(uncertainty.isInsideButLikelyOutside(15)).isTrue();
        assertThat(uncertainty.isInsideButLikelyOutside(16)).isFalse();
    }

    @Test
    void ofLimitsThatAreAllFarOffTheNearestInDeviationsIsTheGreatest() {
        LimitChance near = new LimitChance(FindingCode.CG_AFT, Phase.TAKEOFF, true, 9, 0);
        LimitChance far = new LimitChance(FindingCode.CG_FORWARD, Phase.TAKEOFF, true, 20, 0);
        LimitChance likely = new LimitChance(FindingCode.MASS_HIGH, Phase.LANDING, true, 7, 1e-12);

        assertThat(new Uncertainty(List.of(), List.of(far, near)).greatest()).contains(near);
        assertThat(new Uncertainty(List.of(), List.of(near, far)).greatest()).contains(near);
        assertThat(new Uncertainty(List.of(), List.of(far, likely, near)).greatest())
                .contains(likely);
        assertThat(new Uncertainty(List.of(), List.of()).greatest()).isEmpty();
    }

    @Test
    void distanceDecidesWhatIsMarginalUnlessThePolicySaysChance() {
        Loading near =
                SampleJet.loaded().takeoffLimit(53_200 + 16 * Math.sqrt(30)).loading();
        Loading farther = SampleJet.loaded().takeoffLimit(53_450).loading();

        assertThat(marginals(check(near, policy(false)))).containsExactly("mass-high");
        assertThat(marginals(check(near, policy(true)))).containsExactly("likely-outside");
        assertThat(marginals(check(farther, policy(false)))).containsExactly("mass-high");
        assertThat(marginals(check(farther, policy(true)))).isEmpty();
    }

    @Test
    void whatIsLikelyOutsideIsSaidWithItsChance() {
        Loading loading =
                SampleJet.loaded().takeoffLimit(53_200 + 16 * Math.sqrt(30)).loading();

        assertThat(check(loading, policy(true)).findings())
                .extracting(finding -> FindingText.sentence(finding, loading.type()))
                .contains("inside on paper, but with a chance of 15.9 % the take-off mass is above its limit");
    }

    @Test
    void aGivenStateHasNoChanceAndIsJudgedByDistance() {
        Loading loading = SampleJet.loaded()
                .load(new Load.ZeroFuelGiven(MassMoment.at(46_000, 17.19)))
                .loading();
        Assessment assessment = check(loading, policy(true));

        assertThat(assessment.uncertainty()).isEmpty();
        assertThat(marginals(assessment)).contains("cg-aft");
    }
}
