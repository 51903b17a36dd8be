package org.steelyard.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.steelyard.cli.option.CannotException;
import org.steelyard.config.Configuration;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.input.Field;
import org.steelyard.model.input.InputProblem;
import org.steelyard.model.trim.TrimScale;
import org.steelyard.model.type.AircraftType;
import org.steelyard.model.type.CabinZone;
import org.steelyard.model.type.Hold;
import org.steelyard.model.type.Tail;
import org.steelyard.model.type.Tank;
import org.steelyard.read.loading.GivenFlight;
import org.steelyard.read.loading.GivenFlight.Given;
import org.steelyard.read.row.Tails;
import org.steelyard.run.OneFlight;

/** Asks for one flight, field by field. What does not fit is told at once and asked for again. */
final class FlightQuestions {

    private final Configuration configuration;
    private final Tails tails;
    private final BufferedReader in;
    private final PrintWriter out;
    private final List<Given> given = new ArrayList<>();
    private Tail tail;

    FlightQuestions(Configuration configuration, BufferedReader in, PrintWriter out) {
        this.configuration = configuration;
        this.in = in;
        this.out = out;
        tails = Tails.of(configuration.tails().values(), configuration.schemes().values());
    }

    List<Given> ask() throws CannotException {
        out.println("Numbers stand with their unit, as 63.6t, 140200lb, 24.5%, 12.3m. Enter alone leaves out what may"
                + " be left out.");
        AircraftType type = aircraft();
        setting(type);
        boolean byType = given.get(0).name().equals(OneFlight.TYPE);
        String known = choice(
                "What is known: 1 take-off mass and CG, 2 zero-fuel mass and CG with fuel"
                        + (byType ? "" : ", 3 passengers, holds and tanks"),
                byType ? List.of("1", "2") : List.of("1", "2", "3"));
        switch (known) {
            case "1" -> {
                value(Field.TAKEOFF_CG.key(), "take-off CG", false);
                value(Field.TAKEOFF_MASS.key(), "take-off mass", needsNoMass(type));
            }
            case "2" -> {
                value(Field.ZERO_FUEL_MASS.key(), "zero-fuel mass", false);
                value(Field.ZERO_FUEL_CG.key(), "zero-fuel CG", false);
                fuel();
            }
            default -> load(type);
        }
        return given;
    }

    private AircraftType aircraft() throws CannotException {
        while (true) {
            String name = line(
                    "tail, or type (" + String.join(", ", configuration.types().keySet()) + ")");
            Optional<AircraftType> type = OneFlight.type(name, configuration);
            if (type.isPresent()) {
                tail = configuration.tails().values().stream()
                        .filter(one -> one.type().equals(type.get()))
                        .findFirst()
                        .orElseThrow(() -> new CannotException("No tail of the fleet is a " + name + "."));
                given.add(new Given(OneFlight.TYPE, type.get().id()));
                return type.get();
            }
            Given asked = new Given(Field.TAIL.key(), name);
            List<InputProblem> faults = GivenFlight.faults(asked, name, tails);
            Optional<Tail> found = configuration.tails().values().stream()
                    .filter(one -> one.registration().equalsIgnoreCase(name))
                    .findFirst();
            if (found.isPresent() && faults.isEmpty()) {
                tail = found.get();
                given.add(new Given(Field.TAIL.key(), tail.registration()));
                return tail.type();
            }
            tell(faults);
        }
    }

    private void setting(AircraftType type) throws CannotException {
        List<TrimScale> scales = type.trimScales().stream()
                .filter(scale -> scale.phase() == Phase.TAKEOFF)
                .toList();
        List<String> flaps = scales.stream().map(TrimScale::flaps).distinct().toList();
        if (flaps.isEmpty()) {
            return;
        }
        String chosen = choice("take-off flaps (" + String.join(", ", flaps) + ")", flaps);
        given.add(new Given(Field.FLAPS.key(), chosen));
        List<String> ratings = scales.stream()
                .filter(scale -> scale.flaps().equals(chosen))
                .map(TrimScale::thrustRating)
                .filter(rating -> !rating.isBlank())
                .toList();
        if (!ratings.isEmpty()) {
            given.add(new Given(
                    Field.THRUST.key(), choice("thrust rating (" + String.join(", ", ratings) + ")", ratings)));
        }
    }

    private boolean needsNoMass(AircraftType type) {
        String flaps = given.stream()
                .filter(one -> one.name().equals(Field.FLAPS.key()))
                .map(Given::value)
                .findFirst()
                .orElse("");
        return type.trimScales().stream()
                .filter(scale -> scale.phase() == Phase.TAKEOFF && scale.flaps().equals(flaps))
                .noneMatch(scale -> scale.law() instanceof org.steelyard.model.trim.TrimTable);
    }

    private void load(AircraftType type) throws CannotException {
        for (CabinZone zone : type.cabin().zones()) {
            value(Field.PASSENGERS.key() + "." + zone.id(), "passengers in " + zone.name(), true);
        }
        for (Hold hold : type.holds()) {
            value(Field.HOLD_MASS.key() + "." + hold.id(), "mass in " + hold.name(), true);
        }
        boolean any = given.stream()
                .anyMatch(one -> Stream.of(Field.PASSENGERS, Field.HOLD_MASS)
                        .anyMatch(field -> one.name().startsWith(field.key() + ".")));
        if (!any) {
            given.add(new Given(Field.PASSENGERS.key(), "0"));
        }
        boolean tanks = false;
        for (Tank tank : type.fuel().tanks()) {
            tanks |= value(Field.FUEL.key() + "." + tank.id(), "fuel in " + tank.name(), true);
        }
        if (!tanks) {
            value(Field.FUEL.key(), "fuel in total", false);
        }
        burn();
    }

    private void fuel() throws CannotException {
        value(Field.FUEL.key(), "fuel at the ramp", false);
        burn();
    }

    private void burn() throws CannotException {
        value(Field.TAXI_FUEL.key(), "taxi fuel", true);
        value(Field.TRIP_FUEL.key(), "trip fuel", false);
    }

    /** Whether a value was given. */
    private boolean value(String name, String words, boolean mayBeLeftOut) throws CannotException {
        while (true) {
            String text = line(words + (mayBeLeftOut ? " (or Enter)" : ""));
            if (text.isBlank() && mayBeLeftOut) {
                return false;
            }
            Given one = new Given(name, text);
            List<InputProblem> faults =
                    text.isBlank() ? List.of() : GivenFlight.faults(one, tail.registration(), tails);
            if (!text.isBlank() && faults.isEmpty()) {
                given.add(one);
                return true;
            }
            tell(faults);
        }
    }

    private void tell(List<InputProblem> faults) {
        faults.forEach(fault -> out.println("  " + fault.detail()));
        if (faults.isEmpty()) {
            out.println("  a value is needed here");
        }
    }

    private String choice(String words, List<String> choices) throws CannotException {
        while (true) {
            String text = line(words);
            for (String one : choices) {
                if (one.equalsIgnoreCase(text)) {
                    return one;
                }
            }
            out.println("  one of " + String.join(", ", choices));
        }
    }

    private String line(String words) throws CannotException {
        out.print(words + ": ");
        out.flush();
        try {
            String line = in.readLine();
            if (line == null) {
                throw new CannotException("The input ended before all was known.");
            }
            return line.strip();
        } catch (IOException e) {
            throw new CannotException("The input cannot be read: " + e.getMessage());
        }
    }
}
