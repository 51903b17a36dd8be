package org.steelyard.report.words;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import org.steelyard.balance.TrimResult;
import org.steelyard.check.chance.LimitChance;
import org.steelyard.check.chance.StateSpread;
import org.steelyard.check.chance.Uncertainty;
import org.steelyard.check.result.AuditedFlight;
import org.steelyard.check.result.EnvelopeMargin;
import org.steelyard.check.result.TrafficLoad;
import org.steelyard.check.text.FindingText;
import org.steelyard.model.finding.FindingCode;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.loading.LastMinuteChange;
import org.steelyard.model.loading.LoadPart;
import org.steelyard.model.loading.Loading;
import org.steelyard.model.unit.MassMoment;

/** Figures of one flight as outputs show them; empty where they are not known. */
public final class FlightFigures {

    private FlightFigures() {}

    public static Function<AuditedFlight, OptionalDouble> massKg(Phase phase) {
        return flight -> number(flight.balance().state(phase), MassMoment::massKg);
    }

    public static Function<AuditedFlight, OptionalDouble> cgPercentMac(Phase phase) {
        return flight -> number(flight.balance().state(phase), state -> cgPercentMac(flight.loading(), state));
    }

    public static double cgPercentMac(Loading loading, MassMoment state) {
        return loading.type().geometry().chord().percentAt(state.armM());
    }

    public static Function<AuditedFlight, OptionalDouble> index(Phase phase) {
        return flight -> number(
                flight.balance().state(phase),
                state -> flight.loading().type().geometry().index().indexOf(state));
    }

    public static Function<AuditedFlight, OptionalDouble> margin(Phase phase, ToDoubleFunction<EnvelopeMargin> figure) {
        return flight -> {
            for (EnvelopeMargin margin : flight.assessment().margins()) {
                if (margin.phase() == phase) {
                    return OptionalDouble.of(figure.applyAsDouble(margin));
                }
            }
            return OptionalDouble.empty();
        };
    }

    public static Function<AuditedFlight, OptionalDouble> traffic(ToDoubleFunction<TrafficLoad> figure) {
        return flight -> number(flight.assessment().trafficLoad(), figure);
    }

    public static OptionalDouble trimUnits(Optional<TrimResult> trim) {
        return trim.isPresent() ? trim.get().trimUnits() : OptionalDouble.empty();
    }

    /** The setting as pilots say it; blank where there is none. */
    public static String trimSetting(Optional<TrimResult> trim) {
        if (trim.isEmpty() || trim.get().settingUnits().isEmpty()) {
            return "";
        }
        return FindingText.trim(
                trim.get().settingUnits().getAsDouble(),
                trim.get().scale().stepUnits(),
                trim.get().scale().unit());
    }

    /** Recorded less right setting for take-off. */
    public static OptionalDouble recordedLessRightUnits(AuditedFlight flight) {
        OptionalDouble recorded = flight.loading().recordedTrimUnits();
        Optional<TrimResult> trim = flight.balance().takeoffTrim();
        return recorded.isPresent() && trim.isPresent()
                ? trim.get().differenceUnits(recorded.getAsDouble())
                : OptionalDouble.empty();
    }

    /** Where the scale comes from; blank where there is none. */
    public static String trimBasis(Optional<TrimResult> trim) {
        return trim.map(result -> result.scale().basis().label()).orElse("");
    }

    /** Standard deviation of the mass of a state in kg. */
    public static Function<AuditedFlight, OptionalDouble> massSdKg(Phase phase) {
        return flight -> number(state(flight, phase), StateSpread::massSdKg);
    }

    /** Standard deviation of the CG of a state in % MAC. */
    public static Function<AuditedFlight, OptionalDouble> cgSdPercentMac(Phase phase) {
        return flight -> number(
                state(flight, phase),
                state -> state.cgSdPercentMac(flight.loading().type().geometry().chord()));
    }

    private static Optional<StateSpread> state(AuditedFlight flight, Phase phase) {
        return flight.assessment().uncertainty().flatMap(sure -> sure.state(phase));
    }

    /** Chance of being outside a limit, from 0 to 1, to twelve decimals. */
    public static Function<AuditedFlight, OptionalDouble> chance(FindingCode code, Phase phase) {
        return flight -> number(
                flight.assessment().uncertainty().flatMap(sure -> sure.chance(code, phase)), FlightFigures::chance);
    }

    /** The limit that is most likely broken. */
    public static Optional<LimitChance> greatestChance(AuditedFlight flight) {
        return flight.assessment().uncertainty().flatMap(Uncertainty::greatest);
    }

    public static double chance(LimitChance chance) {
        return Math.rint(chance.chance() * 1e12) / 1e12;
    }

    /** Which parts of the load were shared out by a rule, as {@code passengers, fuel}; blank for none. */
    public static String assumed(AuditedFlight flight) {
        return flight.assumed().stream().map(LoadPart::label).collect(Collectors.joining(", "));
    }

    /** What came less what went at the last minute, of one part of the load; empty where nothing changed. */
    public static OptionalDouble lastMinuteKg(AuditedFlight flight, LoadPart... parts) {
        LastMinuteChange change = flight.loading().change();
        if (change.isNone()) {
            return OptionalDouble.empty();
        }
        double massKg = 0;
        for (LoadPart what : parts) {
            for (LastMinuteChange.Part part : change.of(what)) {
                massKg += part.massKg();
            }
        }
        return OptionalDouble.of(massKg);
    }

    public static <T> OptionalDouble number(Optional<T> of, ToDoubleFunction<T> figure) {
        return of.isPresent() ? OptionalDouble.of(figure.applyAsDouble(of.get())) : OptionalDouble.empty();
    }
}
