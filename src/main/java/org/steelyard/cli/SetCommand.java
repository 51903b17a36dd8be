package org.steelyard.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.steelyard.cli.option.CannotException;
import org.steelyard.cli.option.ConfigOption;
import org.steelyard.cli.option.ExitCode;
import org.steelyard.cli.option.ForceOption;
import org.steelyard.cli.option.Version;
import org.steelyard.cli.text.FlightAnswer;
import org.steelyard.cli.text.Terminal;
import org.steelyard.config.Configuration;
import org.steelyard.model.input.Field;
import org.steelyard.model.input.InputProblem;
import org.steelyard.read.loading.GivenFlight.Given;
import org.steelyard.report.flight.LoadSummary;
import org.steelyard.report.flight.LoadSummaryFile;
import org.steelyard.run.OneFlight;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Answers for one flight at once. */
@Command(
        name = "set",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        sortOptions = false,
        header = "The trim to set for one flight, now: with states, margins and findings.",
        description = {
            "",
            "Give a tail (or a type) with flaps, and what is known: take-off CG and mass; or zero-fuel mass and CG with"
                    + " fuel; or the whole loading. Numbers stand with their unit: 63.6t, 140200lb, 24.5%%, 12.3m,"
                    + " 45.3index. Without anything, or with --ask, it asks field by field.",
            "",
            "Everything can also be given as NAME=VALUE, by the names of heading maps, with place and category behind"
                    + " points: passengers.A=20 passengers.A.child=2 hold-mass.1=800kg fuel.left=3500kg.",
            ""
        },
        footer = {
            "",
            "Examples:",
            "  steelyard set --type jet180 -f 5 --takeoff-cg 24.5%%",
            "  steelyard set --tail QI-JAA -f 1 --takeoff-mass 63.6t --takeoff-cg 24.5%%",
            "  steelyard set --tail QI-JAA -f 5 --zero-fuel-mass 55t --zero-fuel-cg 25%% --fuel 8t --trip-fuel 5t",
            "  steelyard set tail=QI-JAA flaps=5 passengers=120 hold-mass=3t fuel=9t taxi-fuel=200kg trip-fuel=5t"
                    + " --write summary.html"
        })
final class SetCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Mixin
    private ConfigOption config;

    @Mixin
    private ForceOption force;

    @Option(names = "--tail", paramLabel = "TAIL", description = "Registration of the aircraft.")
    private Optional<String> tail;

    @Option(names = "--type", paramLabel = "TYPE", description = "Type in place of a tail, where a state is given.")
    private Optional<String> type;

    @Option(
            names = {"-f", "--flaps"},
            paramLabel = "FLAPS",
            description = "Take-off flap setting.")
    private Optional<String> flaps;

    @Option(names = "--thrust", paramLabel = "RATING", description = "Thrust rating, where the scale has one.")
    private Optional<String> thrust;

    @Option(
            names = {"-g", "--takeoff-cg"},
            paramLabel = "CG",
            description = "Take-off CG: %% MAC, m, mm, in or index.")
    private Optional<String> takeoffCg;

    @Option(
            names = {"-m", "--takeoff-mass"},
            paramLabel = "MASS",
            description = "Take-off mass: kg, lb or t; may be left out where the scale does not need it.")
    private Optional<String> takeoffMass;

    @Option(names = "--zero-fuel-mass", paramLabel = "MASS", description = "Zero-fuel mass.")
    private Optional<String> zeroFuelMass;

    @Option(names = "--zero-fuel-cg", paramLabel = "CG", description = "Zero-fuel CG.")
    private Optional<String> zeroFuelCg;

    @Option(names = "--fuel", paramLabel = "FUEL", description = "Fuel at the ramp: kg, lb, t, L, US gal or imp gal.")
    private Optional<String> fuel;

    @Option(names = "--taxi-fuel", paramLabel = "FUEL", description = "Fuel burnt before take-off (none).")
    private Optional<String> taxiFuel;

    @Option(names = "--trip-fuel", paramLabel = "FUEL", description = "Fuel burnt from take-off to landing.")
    private Optional<String> tripFuel;

    @Option(
            names = {"-r", "--recorded-trim"},
            paramLabel = "TRIM",
            description = "A setting to compare, as 0.6UP: what it would be right for, and what it risks.")
    private Optional<String> recordedTrim;

    @Parameters(paramLabel = "NAME=VALUE", description = "Anything else of the flight, or all of it.")
    private List<String> pairs = List.of();

    @Option(names = "--ask", description = "Ask field by field in the terminal.")
    private boolean ask;

    @Option(
            names = {"-w", "--write"},
            paramLabel = "FILE",
            description = "Write the load summary as a page to print: FILE ends in .html or .xlsx.")
    private Optional<Path> write;

    @Option(
            names = "--ascii",
            description = "Draw with plain signs only (so it is anyway where the terminal is not UTF-8).")
    private boolean ascii;

    @Override
    public Integer call() throws CannotException {
        List<Given> given = given();
        if (write.isPresent() && !LoadSummaryFile.knows(write.get())) {
            throw new CannotException("--write: '" + write.get() + "' is of no known kind; expected a name that ends in"
                    + " .html or .xlsx");
        }
        boolean asks = ask || (given.isEmpty() && Terminal.isThere());
        if (given.isEmpty() && !asks) {
            throw new CannotException("Nothing is given. --help shows what to give, --ask asks for it.");
        }
        Configuration configuration = asks
                ? config.load()
                : config.loadForFlight(value(given, OneFlight.TYPE), value(given, Field.TAIL.key()));
        LoadSummary summary = summary(asks ? asked(configuration) : given, configuration);
        PrintWriter out = spec.commandLine().getOut();
        new FlightAnswer(summary, ascii || !isUtf8()).lines().forEach(out::println);
        write(summary, configuration, out);
        return ExitCode.FINISHED;
    }

    private static Optional<String> value(List<Given> given, String name) {
        return given.stream()
                .filter(one -> one.name().equals(name))
                .map(Given::value)
                .findFirst();
    }

    private List<Given> asked(Configuration configuration) throws CannotException {
        BufferedReader in = new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8));
        return new FlightQuestions(configuration, in, spec.commandLine().getOut()).ask();
    }

    private static boolean isUtf8() {
        String name = System.getProperty("stdout.encoding", System.getProperty("native.encoding", "UTF-8"));
        return Charset.isSupported(name) && Charset.forName(name).equals(StandardCharsets.UTF_8);
    }

    private static LoadSummary summary(List<Given> given, Configuration configuration) throws CannotException {
        OneFlight.Result result = OneFlight.answer(given, configuration);
        if (result instanceof OneFlight.Answer answer) {
            return new LoadSummary(answer.flight(), answer.massKnown());
        }
        throw new CannotException(((OneFlight.Refusal) result)
                .problems().stream().map(InputProblem::detail).toList());
    }

    private void write(LoadSummary summary, Configuration configuration, PrintWriter out) throws CannotException {
        if (write.isPresent()) {
            try {
                LoadSummaryFile.write(summary, force.to(write.get(), configuration, config.folder()), Version.number());
                out.println("The load summary is in " + write.get());
            } catch (IOException e) {
                throw CannotException.unwritten("The load summary", write.get(), e);
            }
        }
    }

    private List<Given> given() throws CannotException {
        List<Given> given = new ArrayList<>();
        add(given, Field.TAIL.key(), tail);
        add(given, OneFlight.TYPE, type);
        add(given, Field.FLAPS.key(), flaps);
        add(given, Field.THRUST.key(), thrust);
        add(given, Field.TAKEOFF_CG.key(), takeoffCg);
        add(given, Field.TAKEOFF_MASS.key(), takeoffMass);
        add(given, Field.ZERO_FUEL_MASS.key(), zeroFuelMass);
        add(given, Field.ZERO_FUEL_CG.key(), zeroFuelCg);
        add(given, Field.FUEL.key(), fuel);
        add(given, Field.TAXI_FUEL.key(), taxiFuel);
        add(given, Field.TRIP_FUEL.key(), tripFuel);
        add(given, Field.RECORDED_TRIM.key(), recordedTrim);
        for (String pair : pairs) {
            int equals = pair.indexOf('=');
            if (equals < 1) {
                throw new CannotException(
                        "'" + pair + "' is not a name with a value; expected one as flaps=5 or" + " hold-mass.1=800kg");
            }
            String name = pair.substring(0, equals).strip();
            if (given.stream().anyMatch(one -> one.name().equals(name))) {
                throw new CannotException(name + " is given twice; expected each name once");
            }
            given.add(new Given(name, pair.substring(equals + 1)));
        }
        return given;
    }

    private static void add(List<Given> given, String name, Optional<String> value) {
        value.ifPresent(text -> given.add(new Given(name.toLowerCase(Locale.ROOT), text)));
    }
}
