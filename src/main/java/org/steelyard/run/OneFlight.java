package org.steelyard.run;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.steelyard.check.result.AuditedFlight;
import org.steelyard.config.Configuration;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.input.Field;
import org.steelyard.model.input.InputProblem;
import org.steelyard.model.input.ProblemCode;
import org.steelyard.model.limit.Envelope;
import org.steelyard.model.loading.Loading;
import org.steelyard.model.loading.Origin;
import org.steelyard.model.trim.TrimTable;
import org.steelyard.model.type.AircraftType;
import org.steelyard.model.type.Tail;
import org.steelyard.model.unit.MassMoment;
import org.steelyard.read.loading.GivenFlight;
import org.steelyard.read.loading.GivenFlight.Given;
import org.steelyard.read.row.ParsedRow;
import org.steelyard.read.row.Tails;

/**
 * Answers for one flight at once. Beside the names of {@link GivenFlight} it knows {@code type} in place of a tail,
 * where a state is given; and a take-off CG without a mass, where the trim scale does not need one.
 */
public final class OneFlight {

    /** The name that stands for a type in place of a tail. */
    public static final String TYPE = "type";

    private static final Origin ORIGIN = new Origin("given", "", 1);
    private static final String TAKEOFF_MASS = Field.TAKEOFF_MASS.key();

    /** An answer, or why there is none. */
    public sealed interface Result permits Answer, Refusal {}

    /**
     * The flight with all that was computed of it.
     *
     * @param flight the flight
     * @param massKnown false where only the CG was given, so that nothing but the trim says anything
     */
    public record Answer(AuditedFlight flight, boolean massKnown) implements Result {}

    /**
     * Why there is no answer.
     *
     * @param problems every reason
     */
    public record Refusal(List<InputProblem> problems) implements Result {

        public Refusal {
            problems = List.copyOf(problems);
        }
    }

    private OneFlight() {}

    /**
     * Computes and checks one flight.
     *
     * @param given names with values
     * @param configuration types, fleet and policy
     * @return the answer, or all that is wrong with what was given
     */
    public static Result answer(List<Given> given, Configuration configuration) {
        Optional<Given> type = find(given, TYPE);
        if (type.isEmpty()) {
            return answer(
                    given,
                    Tails.of(
                            configuration.tails().values(),
                            configuration.schemes().values()),
                    configuration,
                    false);
        }
        Optional<AircraftType> known = type(type.get().value(), configuration);
        if (known.isEmpty()) {
            return refusal(
                    TYPE,
                    ProblemCode.UNKNOWN_NAME,
                    "unknown type",
                    type.get().value(),
                    "one of " + String.join(", ", configuration.types().keySet()));
        }
        if (find(given, Field.TAIL.key()).isPresent()) {
            return refusal(TYPE, ProblemCode.CONTRADICTION, "both type and tail are given", "", "one of them");
        }
        Tail anyTail = new Tail(known.get().name(), known.get(), new MassMoment(1, 0), Optional.empty());
        List<Given> withTail = new ArrayList<>(given);
        withTail.remove(given.stream().map(Given::name).toList().indexOf(TYPE));
        withTail.add(new Given(Field.TAIL.key(), anyTail.registration()));
        return answer(
                withTail, Tails.of(List.of(anyTail), configuration.schemes().values()), configuration, true);
    }

    /** A type by its id, in any case of letters. */
    public static Optional<AircraftType> type(String id, Configuration configuration) {
        return configuration.types().values().stream()
                .filter(one -> one.id().equalsIgnoreCase(id.strip()))
                .findFirst();
    }

    private static Optional<Given> find(List<Given> given, String name) {
        return given.stream().filter(one -> one.name().equals(name)).findFirst();
    }

    private static Result answer(List<Given> given, Tails tails, Configuration configuration, boolean anyTail) {
        boolean massKnown = find(given, Field.TAKEOFF_CG.key()).isEmpty()
                || find(given, TAKEOFF_MASS).isPresent();
        if (!massKnown) {
            return withoutMass(given, tails, configuration);
        }
        ParsedRow parsed = GivenFlight.read(given, tails);
        if (!(parsed instanceof ParsedRow.Accepted accepted)) {
            return refusal(parsed);
        }
        Loading loading = accepted.loading();
        if (anyTail && !loading.load().isState()) {
            return refusal(
                    TYPE,
                    ProblemCode.MISSING,
                    "a load needs the basic mass of a tail",
                    loading.type().id(),
                    "a tail of the fleet, or a zero-fuel or take-off mass and CG");
        }
        return new Answer(RowAuditor.audit(loading, configuration.policy()), true);
    }

    /** With a mass that stands in; the scale must not look at it. */
    private static Result withoutMass(List<Given> given, Tails tails, Configuration configuration) {
        if (find(given, Field.TAKEOFF_CG.key()).map(Given::value).orElse("").endsWith("index")) {
            return refusal(TAKEOFF_MASS, ProblemCode.MISSING, "an index means nothing without its mass", "", "a mass");
        }
        List<Given> complete = new ArrayList<>(given);
        complete.add(new Given(TAKEOFF_MASS, "1 kg"));
        ParsedRow parsed = GivenFlight.read(complete, tails);
        if (!(parsed instanceof ParsedRow.Accepted accepted)) {
            return refusal(parsed);
        }
        AuditedFlight flight = RowAuditor.audit(accepted.loading(), configuration.policy());
        boolean byMass = flight.balance()
                .takeoffTrim()
                .filter(trim -> trim.scale().law() instanceof TrimTable)
                .isPresent();
        if (byMass) {
            Envelope envelope =
                    accepted.loading().type().envelope(Phase.TAKEOFF).orElseThrow();
            return refusal(
                    TAKEOFF_MASS,
                    ProblemCode.MISSING,
                    "the trim scale for flaps " + accepted.loading().setting().flaps() + " depends on take-off mass",
                    "",
                    "a take-off mass from " + Math.round(envelope.minMassKg()) + " to "
                            + Math.round(envelope.maxMassKg()) + " kg");
        }
        return new Answer(flight, false);
    }

    private static Refusal refusal(ParsedRow parsed) {
        return new Refusal(Stream.of(parsed)
                .filter(ParsedRow.Rejected.class::isInstance)
                .flatMap(row -> ((ParsedRow.Rejected) row).row().problems().stream())
                .toList());
    }

    private static Refusal refusal(String name, ProblemCode code, String reason, String value, String expected) {
        return new Refusal(List.of(new InputProblem(ORIGIN, name, code, reason, value, expected)));
    }
}
