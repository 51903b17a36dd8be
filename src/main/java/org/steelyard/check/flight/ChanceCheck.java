package org.steelyard.check.flight;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.steelyard.balance.Balance;
import org.steelyard.balance.FuelAtBurn;
import org.steelyard.balance.FuelBalance;
import org.steelyard.check.chance.LimitChance;
import org.steelyard.check.chance.LineChance;
import org.steelyard.check.chance.LoadSpread;
import org.steelyard.check.chance.NormalChance;
import org.steelyard.check.chance.StateSpread;
import org.steelyard.check.chance.Uncertainty;
import org.steelyard.check.result.EnvelopeMargin;
import org.steelyard.model.finding.Finding;
import org.steelyard.model.finding.FindingCode;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.finding.Severity;
import org.steelyard.model.limit.Envelope;
import org.steelyard.model.limit.LimitLine;
import org.steelyard.model.limit.MassLimits;
import org.steelyard.model.loading.Loading;
import org.steelyard.model.policy.ChanceRule;
import org.steelyard.model.policy.Policy;
import org.steelyard.model.unit.Amounts;
import org.steelyard.model.unit.MassMoment;
import org.steelyard.model.unit.Quantity;
import org.steelyard.model.unit.Tolerance;

/** The spread of a flight's states and the chance of being outside each limit of mass and CG. */
final class ChanceCheck {

    private static final List<Phase> STATES = List.of(Phase.ZERO_FUEL, Phase.RAMP, Phase.TAKEOFF, Phase.LANDING);

    private final Loading loading;
    private final Balance balance;
    private final LoadSpread load;
    private final List<StateSpread> states = new ArrayList<>(4);
    private final List<LimitChance> chances = new ArrayList<>(13);

    private ChanceCheck(Loading loading, Balance balance, LoadSpread load) {
        this.loading = loading;
        this.balance = balance;
        this.load = load;
    }

    /** Empty where the policy gives no spread, or the input gives a state whose making is not known. */
    static Optional<Uncertainty> run(Loading loading, Balance balance, Policy policy, List<EnvelopeMargin> margins) {
        if (policy.spread().isEmpty() || balance.distribution().isEmpty()) {
            return Optional.empty();
        }
        LoadSpread load = LoadSpread.of(loading, balance, policy.spread().get(), policy);
        ChanceCheck check = new ChanceCheck(loading, balance, load);
        for (int i = 0; i < STATES.size(); i++) {
            Phase phase = STATES.get(i);
            check.states.add(load.with(phase, balance.state(phase).orElseThrow(), check.fuelKg(phase)));
        }
        check.masses();
        margins.forEach(check::cg);
        return Optional.of(new Uncertainty(check.states, check.chances));
    }

    private FuelBalance fuel() {
        return balance.fuel().orElseThrow();
    }

    private Amounts fuelKg(Phase phase) {
        return switch (phase) {
            case RAMP -> fuel().rampKg();
            case TAKEOFF, FLIGHT -> fuel().takeoffKg();
            case LANDING -> fuel().landingKg();
            case ZERO_FUEL, DRY_OPERATING -> Amounts.zeros(0);
        };
    }

    private void masses() {
        MassLimits limits = loading.type().limits();
        high(states.get(0), limits.maxZeroFuelKg());
        high(states.get(1), limits.maxRampKg());
        high(states.get(2), least(limits.maxTakeoffKg(), loading.performance().takeoffKg()));
        high(states.get(3), least(limits.maxLandingKg(), loading.performance().landingKg()));
        mass(FindingCode.MASS_LOW, states.get(3), states.get(3).expected().massKg() - limits.minFlightKg());
    }

    private static double least(double structuralKg, OptionalDouble performanceKg) {
        return Math.min(structuralKg, performanceKg.orElse(Double.POSITIVE_INFINITY));
    }

    private void high(StateSpread state, double limitKg) {
        mass(FindingCode.MASS_HIGH, state, limitKg - state.expected().massKg());
    }

    private void mass(FindingCode code, StateSpread state, double roomKg) {
        boolean inside = !Tolerance.isOutside(roomKg, Quantity.MASS);
        double nothingVaries = inside ? Double.POSITIVE_INFINITY : Double.NEGATIVE_INFINITY;
        double roomSds = state.massSdKg() > 0 ? roomKg / state.massSdKg() : nothingVaries;
        chances.add(new LimitChance(code, state.phase(), inside, roomSds, NormalChance.outside(roomSds)));
    }

    private void cg(EnvelopeMargin margin) {
        Envelope envelope = loading.type().envelope(margin.phase()).orElseThrow();
        line(
                FindingCode.CG_FORWARD,
                envelope.forward(),
                margin.phase(),
                margin.forwardAt(),
                margin.forwardPercentMac());
        line(FindingCode.CG_AFT, envelope.aft(), margin.phase(), margin.aftAt(), margin.aftPercentMac());
    }

    private void line(FindingCode code, LimitLine line, Phase phase, MassMoment at, double roomPercentMac) {
        if (EnvelopeCheck.isAbove(line, at)) {
            return;
        }
        StateSpread state = phase == Phase.FLIGHT ? inFlight(at) : states.get(STATES.indexOf(phase));
        boolean inside = !Tolerance.isOutside(roomPercentMac, Quantity.CG);
        LineChance chance = LineChance.of(line, state, loading.type().geometry().chord());
        chances.add(new LimitChance(code, phase, inside, chance.roomSds(), chance.chance()));
    }

    private StateSpread inFlight(MassMoment at) {
        double burntKg = Math.max(0, balance.takeoff().massKg() - at.massKg());
        return load.with(Phase.FLIGHT, at, FuelAtBurn.of(fuel().system(), fuel().takeoffKg(), burntKg));
    }

    /** Where the chance decides what is marginal: what is inside, but more likely outside than the rule's chance. */
    static void marginals(Uncertainty uncertainty, ChanceRule rule, Findings findings) {
        for (LimitChance chance : uncertainty.chances()) {
            if (chance.inside() && chance.chance() > rule.chance()) {
                findings.add(
                        Finding.plain(FindingCode.LIKELY_OUTSIDE, Severity.MARGINAL, chance.phase(), sentence(chance)));
            }
        }
    }

    private static String sentence(LimitChance chance) {
        String what = switch (chance.code()) {
            case MASS_HIGH -> "mass is above its limit";
            case MASS_LOW -> "mass is below the minimum";
            case CG_FORWARD -> "CG is ahead of the forward limit";
            default -> "CG is behind the aft limit";
        };
        return String.format(
                Locale.ROOT,
                "inside on paper, but with a chance of %.1f %% the %s %s",
                100 * chance.chance(),
                chance.phase().label(),
                what);
    }
}
