package org.steelyard.report;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import org.steelyard.balance.TrimResult;
import org.steelyard.check.AuditedFlight;
import org.steelyard.check.EnvelopeMargin;
import org.steelyard.check.FindingText;
import org.steelyard.check.LimitChance;
import org.steelyard.check.StateSpread;
import org.steelyard.check.Sureness;
import org.steelyard.check.TrafficLoad;
import org.steelyard.model.FindingCode;
import org.steelyard.model.LastMinuteChange;
import org.steelyard.model.LoadPart;
import org.steelyard.model.Loading;
import org.steelyard.model.MassMoment;
import org.steelyard.model.Phase;

/** Figures of one flight as outputs show them; empty where they are not known. */
final class FlightFigures {

    private FlightFigures() {}

    static Function<AuditedFlight, OptionalDouble> massKg(Phase phase) {
        return flight -> number(flight.balance().state(phase), MassMoment::massKg);
    }

    static Function<AuditedFlight, OptionalDouble> cgPercentMac(Phase phase) {
        return flight -> number(flight.balance().state(phase), state -> cgPercentMac(flight.loading(), state));
    }

    static double cgPercentMac(Loading loading, MassMoment state) {
        return loading.type().geometry().chord().percentAt(state.armM());
    }

    static Function<AuditedFlight, OptionalDouble> index(Phase phase) {
        return flight -> number(
                flight.balance().state(phase),
                state -> flight.loading().type().geometry().index().indexOf(state));
    }

    static Function<AuditedFlight, OptionalDouble> margin(Phase phase, ToDoubleFunction<EnvelopeMargin> figure) {
        return flight -> {
            for (EnvelopeMargin margin : flight.assessment().margins()) {
                if (margin.phase() == phase) {
                    return OptionalDouble.of(figure.applyAsDouble(margin));
                }
            }
            return OptionalDouble.empty();
        };
    }

    static Function<AuditedFlight, OptionalDouble> traffic(ToDoubleFunction<TrafficLoad> figure) {
        return flight -> number(flight.assessment().trafficLoad(), figure);
    }

    static OptionalDouble trimUnits(Optional<TrimResult> trim) {
        return trim.isPresent() ? trim.get().trimUnits() : OptionalDouble.empty();
    }

    /** The setting as pilots say it; blank where there is none. */
    static String trimSetting(Optional<TrimResult> trim) {
        if (trim.isEmpty() || trim.get().settingUnits().isEmpty()) {
            return "";
        }
        return FindingText.trim(
                trim.get().settingUnits().getAsDouble(),
                trim.get().scale().stepUnits(),
                trim.get().scale().unit());
    }

    /** Recorded less right setting for take-off. */
    static OptionalDouble recordedLessRightUnits(AuditedFlight flight) {
        OptionalDouble recorded = flight.loading().recordedTrimUnits();
        Optional<TrimResult> trim = flight.balance().takeoffTrim();
        return recorded.isPresent() && trim.isPresent()
                ? trim.get().differenceUnits(recorded.getAsDouble())
                : OptionalDouble.empty();
    }

    /** Where the scale comes from; blank where there is none. */
    static String trimBasis(Optional<TrimResult> trim) {
        return trim.map(result -> result.scale().basis().label()).orElse("");
    }

    /** Standard deviation of the mass of a state in kg. */
    static Function<AuditedFlight, OptionalDouble> massSdKg(Phase phase) {
        return flight -> number(state(flight, phase), StateSpread::massSdKg);
    }

    /** Standard deviation of the CG of a state in % MAC. */
    static Function<AuditedFlight, OptionalDouble> cgSdPercentMac(Phase phase) {
        return flight -> number(
                state(flight, phase),
                state -> state.cgSdPercentMac(flight.loading().type().geometry().chord()));
    }

    private static Optional<StateSpread> state(AuditedFlight flight, Phase phase) {
        return flight.assessment().sureness().flatMap(sure -> sure.state(phase));
    }

    /** Chance of being outside a limit, from 0 to 1, to twelve decimals. */
    static Function<AuditedFlight, OptionalDouble> chance(FindingCode code, Phase phase) {
        return flight ->
                number(flight.assessment().sureness().flatMap(sure -> sure.chance(code, phase)), FlightFigures::chance);
    }

    /** The limit that is most likely broken. */
    static Optional<LimitChance> greatestChance(AuditedFlight flight) {
        return flight.assessment().sureness().flatMap(Sureness::greatest);
    }

    static double chance(LimitChance chance) {
        return Math.rint(chance.chance() * 1e12) / 1e12;
    }

    /** Which parts of the load were shared out by a rule, as {@code passengers, fuel}; blank for none. */
    static String assumed(AuditedFlight flight) {
        return flight.assumed().stream().map(LoadPart::label).collect(Collectors.joining(", "));
    }

    /** What came less what went at the last minute, of one part of the load; empty where nothing changed. */
    static OptionalDouble lastMinuteKg(AuditedFlight flight, LoadPart... parts) {
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

    static <T> OptionalDouble number(Optional<T> of, ToDoubleFunction<T> figure) {
        return of.isPresent() ? OptionalDouble.of(figure.applyAsDouble(of.get())) : OptionalDouble.empty();
    }
}
