package org.steelyard.run;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.steelyard.config.Configuration;
import org.steelyard.grade.mark.MarkedItem;
import org.steelyard.grade.mark.MarkedSheet;
import org.steelyard.grade.mark.Marker;
import org.steelyard.grade.working.Exercise;
import org.steelyard.model.input.Claim;
import org.steelyard.model.input.InputProblem;
import org.steelyard.model.input.ProblemCode;
import org.steelyard.model.input.SheetItem;
import org.steelyard.model.input.StudentSheet;
import org.steelyard.model.loading.Loading;
import org.steelyard.model.loading.Origin;
import org.steelyard.model.policy.MarkingScheme;
import org.steelyard.read.row.Tails;
import org.steelyard.read.sheet.GradeInput;
import org.steelyard.read.sheet.GradeReader;
import org.steelyard.read.table.ReadOptions;
import org.steelyard.read.table.SeasonUnreadableException;
import org.steelyard.report.file.OutputList;

/** Marks a class of load sheets, for whoever calls it. */
public final class GradeRun {

    /** The name of the file of exercises that is looked for beside the sheets, and in the folder above. */
    public static final String EXERCISES = "given.csv";

    private final Configuration configuration;
    private final MarkingScheme scheme;
    private final HandedSheets handed;
    private final List<InputProblem> problems = new ArrayList<>();
    private final Map<String, Loading> exercises = new LinkedHashMap<>();
    private final Map<Loading, Marker> markers = new HashMap<>();

    /**
     * A marked class.
     *
     * @param sheets marked sheets in the order in which they were read, without those that give way to another
     * @param problems what could not be used
     */
    public record Outcome(List<MarkedSheet> sheets, List<InputProblem> problems) {

        public Outcome {
            sheets = List.copyOf(sheets);
            problems = List.copyOf(problems);
        }
    }

    private GradeRun(Configuration configuration, MarkingScheme scheme) {
        this.configuration = configuration;
        this.scheme = scheme;
        handed = new HandedSheets(scheme.handedInTwice());
    }

    /**
     * Marks a file or folder of sheets.
     *
     * @param path file or folder
     * @param given file of exercises; where it is empty, {@value #EXERCISES} beside the sheets or above them
     * @param options how files are read
     * @param configuration types, fleet, rules
     * @param scheme how sheets are marked
     * @return the marked sheets
     * @throws SeasonUnreadableException if there is nothing to read, or no exercise in the file that is given
     */
    public static Outcome mark(
            Path path, Optional<Path> given, ReadOptions options, Configuration configuration, MarkingScheme scheme)
            throws SeasonUnreadableException {
        GradeRun run = new GradeRun(configuration, scheme);
        Optional<Path> exercises = given.or(() -> beside(path));
        Tails tails = Tails.of(configuration.tails().values());
        exercises.ifPresent(file -> run.exercises(file, tails, options));
        if (given.isPresent() && run.exercises.isEmpty() && !run.problems.isEmpty()) {
            throw new SeasonUnreadableException(run.problems);
        }
        GradeInput input =
                GradeReader.sheets(path, tails, options, exercises.orElse(Path.of(EXERCISES)), OutputList.isIn(path));
        run.problems.addAll(input.problems());
        input.sheets().forEach(run::sheet);
        List<MarkedSheet> marked = run.marked();
        return new Outcome(marked, run.problems.stream().distinct().toList());
    }

    /**
     * The file of exercises that is looked for where none is given.
     *
     * @param path file or folder of sheets
     * @return the file, if there is one
     */
    public static Optional<Path> beside(Path path) {
        Path folder = Files.isDirectory(path) ? path : path.toAbsolutePath().getParent();
        for (int up = 0; up < 2 && folder != null; up++) {
            if (Files.isRegularFile(folder.resolve(EXERCISES))) {
                return Optional.of(folder.resolve(EXERCISES));
            }
            folder = folder.toAbsolutePath().normalize().getParent();
        }
        return Optional.empty();
    }

    private void exercises(Path file, Tails tails, ReadOptions options) {
        GradeInput read = GradeReader.exercises(file, tails, options);
        problems.addAll(read.problems());
        for (GradeInput.GivenSheet one : read.sheets()) {
            one.loading()
                    .ifPresent(loading -> exercises.put(key(loading.flight().flight()), loading));
        }
    }

    private static String key(String exercise) {
        return exercise.strip().toLowerCase(Locale.ROOT);
    }

    private void sheet(GradeInput.GivenSheet one) {
        Optional<Loading> loading = one.loading().or(() -> exercise(one.sheet()));
        if (loading.isEmpty()) {
            problems.add(new InputProblem(
                    one.sheet().origin(),
                    "exercise",
                    ProblemCode.UNKNOWN_NAME,
                    "the sheet of " + one.sheet().student() + " answers no exercise that is known",
                    one.sheet().exercise(),
                    exercises.isEmpty()
                            ? "a loading in the same row, or a file of exercises"
                            : "one of " + String.join(", ", names())));
            return;
        }
        handed.add(one.sheet(), alone(loading.get()));
    }

    private List<MarkedSheet> marked() {
        List<MarkedSheet> marked = new ArrayList<>();
        for (HandedSheets.Handed one : handed.standing(problems)) {
            Marker marker = markers.computeIfAbsent(
                    one.loading(), given -> new Marker(Exercise.of(given, configuration.policy()), scheme));
            MarkedSheet sheet = marker.mark(one.sheet()).with(handed.among(one));
            unread(sheet);
            marked.add(sheet);
        }
        return marked;
    }

    /** Tells what turned out to have no meaning, or two, when it was held against what was asked. */
    private void unread(MarkedSheet sheet) {
        for (MarkedItem item : sheet.items()) {
            Claim claim = sheet.sheet().claims().get(item.item());
            boolean told = claim instanceof Claim.Unreadable;
            if (item.outcome() == org.steelyard.grade.mark.Outcome.UNREADABLE && !told) {
                problems.add(new InputProblem(
                        sheet.sheet().origin(),
                        item.item().label(),
                        ProblemCode.CONTRADICTION,
                        "the answer of " + sheet.sheet().student() + " cannot be read",
                        item.claimed(),
                        expected(item.item())));
            }
        }
    }

    private static String expected(SheetItem item) {
        return switch (item.kind()) {
            case VERDICT -> "in limits or out of limits, and not both";
            case LIMIT -> "one of zero-fuel, take-off, landing, ramp";
            default -> "one reading: the sign may stand for thousands or for decimals";
        };
    }

    /** A loading without where it was read and what is carried along: rows with the same one share their answers. */
    private static Loading alone(Loading loading) {
        return new Loading(
                new Origin(EXERCISES, "", 0),
                loading.flight(),
                loading.tail(),
                loading.setting(),
                loading.scheme(),
                loading.crew(),
                loading.load(),
                loading.fuel(),
                loading.change(),
                loading.performance(),
                OptionalDouble.empty(),
                List.of(),
                List.of());
    }

    private List<String> names() {
        return exercises.values().stream()
                .map(loading -> loading.flight().flight())
                .toList();
    }

    /** The exercise that a sheet names; the only one, if it names none. */
    private Optional<Loading> exercise(StudentSheet sheet) {
        if (sheet.exercise().isBlank() && exercises.size() == 1) {
            return exercises.values().stream().findFirst();
        }
        return Optional.ofNullable(exercises.get(key(sheet.exercise())));
    }
}
