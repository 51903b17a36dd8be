package org.steelyard.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.steelyard.cli.option.CannotException;
import org.steelyard.cli.option.ConfigOption;
import org.steelyard.cli.option.ExitCode;
import org.steelyard.cli.option.ForceOption;
import org.steelyard.cli.option.Version;
import org.steelyard.config.Configuration;
import org.steelyard.grade.make.Difficulty;
import org.steelyard.grade.make.ExerciseMaker;
import org.steelyard.grade.make.MadeExercise;
import org.steelyard.grade.text.FigureText;
import org.steelyard.model.input.CgMeasure;
import org.steelyard.model.type.AircraftType;
import org.steelyard.model.type.Tail;
import org.steelyard.report.grade.ExerciseFiles;
import org.steelyard.run.OneFlight;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Makes exercises with their keys. */
@Command(
        name = "make-exercises",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        header = "Make load sheet exercises: blank sheets, the key with its working, and the loadings to mark by.",
        description = {
            "",
            "Writes " + ExerciseFiles.PAGES + " and " + ExerciseFiles.KEY + " to print, a blank sheet as a workbook for"
                    + " each exercise in " + ExerciseFiles.BLANKS + "/, and " + ExerciseFiles.GIVEN
                    + ", by which 'steelyard grade' marks what comes back. The same seed gives the same exercises.",
            ""
        },
        footer = {
            "",
            "Difficulties: inside, marginal, out-at-zero-fuel, out-at-take-off, out-at-landing, last-minute-change,"
                    + " fuel-change, load-shift. Several are taken in turn.",
            "",
            "Examples:",
            "  steelyard make-exercises jet180",
            "  steelyard make-exercises single4 --count 12 --difficulty inside,marginal --cg arm --seed 7"
        })
final class MakeExercisesCommand implements Callable<Integer> {

    private static final int MOST = 500;

    @Spec
    private CommandSpec spec;

    @Mixin
    private ConfigOption config;

    @Mixin
    private ForceOption force;

    @Parameters(paramLabel = "TYPE", description = "Aircraft type.")
    private String type;

    @Option(
            names = {"-k", "--count"},
            paramLabel = "N",
            defaultValue = "8",
            description = "How many exercises (${DEFAULT-VALUE}).")
    private int count;

    @Option(
            names = {"-d", "--difficulty"},
            paramLabel = "WORD",
            split = ",",
            description = "What they are about (all that the type allows, in turn).")
    private List<String> difficulties = List.of();

    @Option(
            names = "--cg",
            paramLabel = "WORD",
            description = "In what CGs are asked for: percent-mac, arm or index (as the type's users give them).")
    private Optional<String> cg;

    @Option(names = "--seed", paramLabel = "N", defaultValue = "1", description = "Seed (${DEFAULT-VALUE}).")
    private long seed;

    @Option(
            names = {"-o", "--into"},
            paramLabel = "FOLDER",
            description = "Where they are written (reports/exercises-TYPE).")
    private Optional<Path> into;

    @Override
    public Integer call() throws CannotException {
        if (count < 1 || count > MOST) {
            throw new ParameterException(
                    spec.commandLine(), "--count: " + count + " is not possible; expected 1 to " + MOST);
        }
        Configuration configuration = config.load();
        AircraftType known = OneFlight.type(type, configuration)
                .orElseThrow(() -> new CannotException("There is no type '" + type + "'; there are "
                        + String.join(", ", configuration.types().keySet()) + "."));
        List<MadeExercise> made = made(configuration, known);
        Path folder = into.orElse(Path.of("reports", ExerciseFiles.folderName(known)));
        try {
            ExerciseFiles.write(
                    made,
                    configuration.policy(),
                    measure(known),
                    force.to(folder, configuration, config.folder()),
                    Version.number());
        } catch (IOException e) {
            throw CannotException.unwritten("The exercises", folder, e);
        }
        spec.commandLine()
                .getOut()
                .println(made.size() + (made.size() == 1 ? " exercise is" : " exercises are") + " in " + folder + ": "
                        + ExerciseFiles.PAGES + ", " + ExerciseFiles.KEY + ", " + ExerciseFiles.GIVEN + ", "
                        + ExerciseFiles.BLANKS + "/");
        return ExitCode.FINISHED;
    }

    private CgMeasure measure(AircraftType known) {
        if (cg.isEmpty()) {
            return new FigureText(known).usualMeasure();
        }
        return switch (cg.get().toLowerCase(Locale.ROOT)) {
            case "percent-mac" -> CgMeasure.PERCENT_MAC;
            case "arm" -> CgMeasure.ARM;
            case "index" -> CgMeasure.INDEX;
            default ->
                throw new ParameterException(
                        spec.commandLine(), "--cg: '" + cg.get() + "' is unknown; expected percent-mac, arm or index");
        };
    }

    private List<Difficulty> wanted() {
        List<Difficulty> wanted = new ArrayList<>();
        for (String word : difficulties) {
            wanted.add(Difficulty.of(word)
                    .orElseThrow(() -> new ParameterException(
                            spec.commandLine(),
                            "--difficulty: '" + word + "' is unknown; expected "
                                    + String.join(
                                            ", ",
                                            Stream.of(Difficulty.values())
                                                    .map(Difficulty::key)
                                                    .toList()))));
        }
        return wanted;
    }

    private List<MadeExercise> made(Configuration configuration, AircraftType known) throws CannotException {
        List<Tail> tails = configuration.tails().values().stream()
                .filter(tail -> tail.type().id().equals(known.id()))
                .toList();
        if (tails.isEmpty()) {
            throw new CannotException("The fleet has no " + known.id() + " (expected a tail of it in fleet.csv).");
        }
        ExerciseMaker maker = new ExerciseMaker(tails, configuration.policy(), new SplittableRandom(seed)::nextInt);
        List<Difficulty> wanted = wanted();
        List<Difficulty> turn = new ArrayList<>(wanted.isEmpty() ? List.of(Difficulty.values()) : wanted);
        List<MadeExercise> made = new ArrayList<>();
        for (int i = 0; made.size() < count && !turn.isEmpty(); ) {
            Difficulty difficulty = turn.get(i % turn.size());
            Optional<MadeExercise> one = maker.make("X" + (made.size() + 1), difficulty);
            if (one.isPresent()) {
                made.add(one.get());
                i++;
            } else if (wanted.contains(difficulty)) {
                throw new CannotException("No loading of " + known.id() + " was found for '" + difficulty.key()
                        + "': its limits hardly allow it. Take another difficulty.");
            } else {
                turn.remove(difficulty);
            }
        }
        return made;
    }
}
