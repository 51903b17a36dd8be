package org.steelyard.grade.working;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.steelyard.balance.Balance;
import org.steelyard.balance.Balancer;
import org.steelyard.check.flight.Checker;
import org.steelyard.check.result.Assessment;
import org.steelyard.check.result.TrafficLoad;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.input.CgMeasure;
import org.steelyard.model.input.SheetItem;
import org.steelyard.model.limit.Envelope;
import org.steelyard.model.limit.MassLimits;
import org.steelyard.model.loading.Fuel;
import org.steelyard.model.loading.LoadPart;
import org.steelyard.model.loading.Loading;
import org.steelyard.model.policy.Policy;
import org.steelyard.model.type.AircraftType;
import org.steelyard.model.type.Tail;
import org.steelyard.model.unit.MassMoment;

/** A given loading with its right answers: what a student's sheet is held against. */
public final class Exercise {

    /** Which reading of the limits a verdict is made with. */
    public enum LimitReading {
        RIGHT,
        LANDING_ENVELOPE_AT_TAKEOFF,
        ZERO_FUEL_ENVELOPE_AT_TAKEOFF,
        TAKEOFF_ENVELOPE_AT_LANDING,
        TAKEOFF_MASS_AT_LANDING;

        static final List<LimitReading> ALL = List.of(values());
    }

    private final Loading loading;
    private final Policy policy;
    private final Balance balance;
    private final Assessment assessment;
    private final List<Line> lines;
    private final Map<LimitReading, Optional<Loading>> readings = new EnumMap<>(LimitReading.class);
    private final Working right;

    private Exercise(Loading loading, Policy policy) {
        this.loading = loading;
        this.policy = policy;
        balance = Balancer.balance(loading, policy);
        assessment = Checker.check(loading, balance, policy);
        lines = List.copyOf(Lines.of(loading, policy, balance));
        for (LimitReading reading : LimitReading.values()) {
            readings.put(reading, misread(reading));
        }
        right = new Working(this, List.of());
    }

    /**
     * Computes the right answers.
     *
     * @param loading the given loading
     * @param policy the operator's rules
     * @return the exercise
     */
    public static Exercise of(Loading loading, Policy policy) {
        return new Exercise(loading, policy);
    }

    /**
     * The given loading.
     *
     * @return as it was read
     */
    public Loading loading() {
        return loading;
    }

    /**
     * The aircraft's type.
     *
     * @return of the loading's tail
     */
    public AircraftType type() {
        return loading.type();
    }

    /**
     * The right states.
     *
     * @return of the loading
     */
    public Balance balance() {
        return balance;
    }

    /**
     * The right findings.
     *
     * @return of the loading
     */
    public Assessment assessment() {
        return assessment;
    }

    /**
     * The lines that add up to the zero-fuel state.
     *
     * @return in the order of a load sheet; none for a given take-off state
     */
    public List<Line> lines() {
        return lines;
    }

    /**
     * The right answer to an item.
     *
     * @param item which
     * @param measure in what a CG is wanted
     * @return kg, % MAC, m, index, units or a word; empty where the loading does not give it
     */
    public Optional<Answer> right(SheetItem item, CgMeasure measure) {
        return right.answer(item, measure);
    }

    /**
     * The traffic load, as the checks see it.
     *
     * @return allowed, actual and what limits it; empty where a state is given
     */
    public Optional<TrafficLoad> trafficLoad() {
        return assessment.trafficLoad();
    }

    /** The fuel that is flown: with what changed at the last minute, if anything of it did. */
    public Fuel fuel() {
        Fuel given = loading.fuel();
        return loading.change().of(LoadPart.FUEL).isEmpty()
                ? given
                : given.inTanks(balance.fuel().orElseThrow().rampKg());
    }

    public Policy policy() {
        return policy;
    }

    public Working right() {
        return right;
    }

    /** Whether two answers in words come to the same: verdicts that agree, limits that allow the same mass. */
    public boolean isSameWord(Answer one, Answer other) {
        return (one instanceof Answer.Limit limit && other instanceof Answer.Limit beside)
                ? Limits.allowTheSame(this, limit.limit(), beside.limit())
                : one.equals(other);
    }

    /** What one % MAC is in a measure, at the right mass of the item's state. */
    public double perPercentMac(SheetItem item, CgMeasure measure) {
        double armM = type().geometry().chord().lengthM() / 100;
        double massKg =
                item.phase().flatMap(right::state).map(MassMoment::massKg).orElse(1.0);
        return switch (measure) {
            case PERCENT_MAC -> 1;
            case ARM -> armM;
            case INDEX -> massKg * armM / type().geometry().index().divisorKgM();
        };
    }

    /** The loading with limits as somebody may misread them; empty where the type has no such line. */
    Optional<Loading> reading(LimitReading reading) {
        return readings.get(reading);
    }

    private Optional<Loading> misread(LimitReading reading) {
        return switch (reading) {
            case RIGHT -> Optional.of(loading);
            case LANDING_ENVELOPE_AT_TAKEOFF -> withEnvelope(Phase.TAKEOFF, Phase.LANDING);
            case ZERO_FUEL_ENVELOPE_AT_TAKEOFF -> withEnvelope(Phase.TAKEOFF, Phase.ZERO_FUEL);
            case TAKEOFF_ENVELOPE_AT_LANDING -> withEnvelope(Phase.LANDING, Phase.TAKEOFF);
            case TAKEOFF_MASS_AT_LANDING -> {
                MassLimits given = type().limits();
                yield Optional.of(withType(
                        type().envelopes(),
                        new MassLimits(
                                given.maxRampKg(),
                                given.maxTakeoffKg(),
                                given.maxTakeoffKg(),
                                given.maxZeroFuelKg(),
                                given.minFlightKg())));
            }
        };
    }

    private Optional<Loading> withEnvelope(Phase of, Phase from) {
        Optional<Envelope> taken = type().envelope(from);
        if (taken.isEmpty() || type().envelope(of).isEmpty()) {
            return Optional.empty();
        }
        List<Envelope> envelopes = type().envelopes().stream()
                .map(one -> one.phase() == of
                        ? new Envelope(of, taken.get().forward(), taken.get().aft())
                        : one)
                .toList();
        return Optional.of(withType(envelopes, type().limits()));
    }

    private Loading withType(List<Envelope> envelopes, MassLimits limits) {
        AircraftType is = type();
        AircraftType other = new AircraftType(
                is.id(),
                is.name(),
                is.geometry(),
                limits,
                is.cabin(),
                is.holds(),
                is.groups(),
                is.fuel(),
                envelopes,
                is.trimScales(),
                List.of());
        Tail tail = loading.tail();
        return loading.with(new Tail(tail.registration(), other, tail.basic(), tail.ownScheme()));
    }
}
