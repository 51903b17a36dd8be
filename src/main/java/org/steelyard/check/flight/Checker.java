package org.steelyard.check.flight;

import java.util.List;
import java.util.Optional;
import org.steelyard.balance.Balance;
import org.steelyard.balance.FuelBalance;
import org.steelyard.check.chance.Uncertainty;
import org.steelyard.check.result.Assessment;
import org.steelyard.check.result.Assumed;
import org.steelyard.check.result.EnvelopeMargin;
import org.steelyard.check.result.TrafficLoad;
import org.steelyard.model.finding.Finding;
import org.steelyard.model.finding.FindingCode;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.finding.Severity;
import org.steelyard.model.loading.LoadPart;
import org.steelyard.model.loading.Loading;
import org.steelyard.model.loading.ZoneLoad;
import org.steelyard.model.policy.ChanceRule;
import org.steelyard.model.policy.Policy;
import org.steelyard.model.type.AircraftType;

/**
 * Holds a balance against every limit of the type, the day and the policy. Pure: the same arguments give the same
 * assessment. On a limit is inside.
 */
public final class Checker {

    /** So many blank cells are named in a note. */
    private static final int BLANKS = 6;

    private Checker() {}

    /**
     * Checks one flight.
     *
     * @param loading the input
     * @param balance its states
     * @param policy marginal distances
     * @return findings, margins and traffic load allowed
     */
    public static Assessment check(Loading loading, Balance balance, Policy policy) {
        AircraftType type = loading.type();
        Findings findings = new Findings(policy, balance.distribution().isPresent());
        MassCheck.run(balance, type.limits(), loading.performance(), findings);
        List<EnvelopeMargin> margins = CgCheck.run(balance, type, findings);
        places(loading, balance, findings);
        if (balance.fuel().isPresent()) {
            FuelCheck.run(balance.fuel().get(), type, findings);
        }
        TrimCheck trim = new TrimCheck(type, findings);
        trim.takeoff(balance.takeoffTrim(), loading.setting(), balance.takeoff());
        if (!balance.loadIsShared()) {
            trim.recorded(balance.takeoffTrim(), loading.recordedTrimUnits());
        }
        trim.landing(balance.landingTrim(), loading.setting(), balance.landing());
        LastMinuteCheck.run(loading, balance, findings);
        Optional<Uncertainty> uncertainty = ChanceCheck.run(loading, balance, policy, margins);
        Optional<ChanceRule> rule = policy.chance();
        if (uncertainty.isPresent() && rule.isPresent() && rule.get().decides()) {
            ChanceCheck.marginals(uncertainty.get(), rule.get(), findings);
        }
        assumptions(loading, balance, findings);
        return new Assessment(findings.sorted(), margins, trafficLoad(loading, balance), uncertainty);
    }

    private static void places(Loading loading, Balance balance, Findings findings) {
        PlaceCheck places = new PlaceCheck(loading.type(), findings);
        if (balance.dryOperating().isPresent()) {
            places.crew(loading.crew());
        }
        Optional<List<ZoneLoad>> zones = loading.load().zonesIfGiven();
        if (zones.isPresent()) {
            places.rows(zones.get());
        }
        if (balance.distribution().isPresent()) {
            places.load(balance.distribution().get());
        }
    }

    private static void assumptions(Loading loading, Balance balance, Findings findings) {
        List<LoadPart> assumed = Assumed.parts(loading, balance);
        boolean passengers = assumed.contains(LoadPart.PASSENGERS);
        boolean holds = assumed.contains(LoadPart.HOLDS);
        if (passengers || holds) {
            String what = passengers && holds
                    ? "totals were shared out among zones and holds "
                    : passengers
                            ? "passengers were shared out among the zones "
                            : "baggage and cargo were shared out among the holds ";
            note(
                    findings,
                    FindingCode.SHARED_LOAD,
                    Phase.ZERO_FUEL,
                    what + findings.policy().sharing().label());
        }
        if (assumed.contains(LoadPart.FUEL)) {
            note(
                    findings,
                    FindingCode.SHARED_FUEL,
                    Phase.RAMP,
                    "the fuel total was shared out among the tanks by the type's fill order");
        }
        if (!loading.blanksAsNone().isEmpty()) {
            note(findings, FindingCode.BLANK_LOAD, Phase.RAMP, blanks(loading.blanksAsNone()));
        }
        switch (loading.load().level()) {
            case ZERO_FUEL_GIVEN -> note(findings, FindingCode.GIVEN_STATE, Phase.ZERO_FUEL, given("zero-fuel", ""));
            case TAKEOFF_GIVEN ->
                note(
                        findings,
                        FindingCode.GIVEN_STATE,
                        Phase.TAKEOFF,
                        given("take-off", ", tanks, zero fuel, ramp, flight and landing"));
            case DETAIL, ZONES, HOLDS, TOTALS -> {}
        }
    }

    private static String given(String state, String more) {
        return "the " + state + " mass and CG were taken as given; crew, zones"
                + (more.isEmpty() ? " and holds" : ", holds" + more) + " are not checked";
    }

    private static String blanks(List<String> headings) {
        return (headings.size() == 1 ? "a blank load cell was" : headings.size() + " blank load cells were")
                + " counted as none: "
                + String.join(", ", headings.subList(0, Math.min(BLANKS, headings.size())))
                + (headings.size() > BLANKS ? " and " + (headings.size() - BLANKS) + " more" : "");
    }

    private static void note(Findings findings, FindingCode code, Phase phase, String subject) {
        findings.add(Finding.plain(code, Severity.NOTE, phase, subject));
    }

    private static Optional<TrafficLoad> trafficLoad(Loading loading, Balance balance) {
        if (balance.dryOperating().isEmpty()) {
            return Optional.empty();
        }
        double dryKg = balance.dryOperating().get().massKg();
        FuelBalance fuel = balance.fuel().orElseThrow();
        LimitingMasses limiting = LimitingMasses.of(
                loading.type().limits(),
                loading.performance(),
                fuel.rampKg().sum(),
                fuel.takeoffKg().sum(),
                fuel.landingKg().sum());
        double actualKg = balance.zeroFuel().orElseThrow().massKg() - dryKg;
        return Optional.of(limiting.trafficLoad(dryKg, actualKg));
    }
}
