package org.steelyard.demo;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.steelyard.config.Configuration;
import org.steelyard.demo.SampleStudent.Habits;
import org.steelyard.grade.make.Difficulty;
import org.steelyard.grade.make.ExerciseMaker;
import org.steelyard.grade.make.MadeExercise;
import org.steelyard.grade.mark.Marker;
import org.steelyard.grade.working.Exercise;
import org.steelyard.grade.working.Slip;
import org.steelyard.grade.working.SlipKind;
import org.steelyard.model.input.CgMeasure;
import org.steelyard.model.input.Claim;
import org.steelyard.model.input.SheetItem;
import org.steelyard.model.input.StudentSheet;
import org.steelyard.model.loading.Origin;
import org.steelyard.model.policy.MarkingScheme;
import org.steelyard.model.type.Tail;
import org.steelyard.report.file.Destination;
import org.steelyard.report.file.StagedFolder;
import org.steelyard.report.grade.ExerciseFiles;

/**
 * A small class of invented students: exercises on the twin-jet, a table of sheets, a few sheets as workbooks, and
 * beside the folder the key of the slips that were planted. The same configuration gives the same bytes.
 */
public final class ClassDemo {

    private static final String TYPE = "jet180";
    private static final long SEED = 77;
    private static final int EXERCISES = 4;
    private static final int TRIES = 2000;

    /** Students whose sheets are workbooks. */
    private static final Set<String> WORKBOOKS = Set.of("Kestrel", "Siskin", "Twite");

    /** Students who hand in a sheet with only a name, and one without a slip that leaves half of it blank. */
    private static final String EMPTY = "Dotterel";

    private static final String HALF = "Garganey";

    private static final List<String> STUDENTS = List.of(
            "Avocet",
            "Bittern",
            "Brambling",
            "Bullfinch",
            "Chough",
            "Crake",
            "Curlew",
            "Dabchick",
            EMPTY,
            "Dunlin",
            "Dunnock",
            "Eider",
            "Fieldfare",
            "Fulmar",
            "Gannet",
            HALF,
            "Godwit",
            "Goldcrest",
            "Hobby",
            "Hoopoe",
            "Kestrel",
            "Kite",
            "Knot",
            "Lapwing",
            "Linnet",
            "Merlin",
            "Nuthatch",
            "Ouzel",
            "Petrel",
            "Pipit",
            "Plover",
            "Redpoll",
            "Sanderling",
            "Siskin",
            "Skua",
            "Snipe",
            "Teal",
            "Twite",
            "Whimbrel",
            "Wryneck");

    private final Configuration configuration;
    private final Draws draws = new Draws(SEED);
    private final List<MadeExercise> exercises = new ArrayList<>();
    private final List<String> key = new ArrayList<>();

    private ClassDemo(Configuration configuration) {
        this.configuration = configuration;
    }

    /**
     * Writes the folder {@code class} and the key {@code class-key.csv}.
     *
     * @param to folder for both
     * @param configuration the configuration that comes with the project
     * @throws IOException if a file cannot be written
     */
    public static void write(Destination to, Configuration configuration) throws IOException {
        try (StagedFolder staged = StagedFolder.ofInputs(to)) {
            new ClassDemo(configuration).write(staged);
            staged.publish();
        }
    }

    private int below(int bound) {
        return draws.between(0, bound - 1);
    }

    private void write(StagedFolder staged) throws IOException {
        List<Tail> tails = configuration.tails().values().stream()
                .filter(tail -> tail.type().id().equals(TYPE))
                .toList();
        ExerciseMaker maker = new ExerciseMaker(tails, configuration.policy(), this::below);
        List<Difficulty> turn =
                List.of(Difficulty.INSIDE, Difficulty.OUT_TAKEOFF, Difficulty.LAST_MINUTE, Difficulty.MARGINAL);
        for (int i = 0; i < EXERCISES; i++) {
            exercises.add(maker.make("X" + (i + 1), turn.get(i)).orElseThrow());
        }
        ExerciseFiles.given(exercises, staged.file("class/given.csv"));
        List<String> rows = new ArrayList<>();
        rows.add(headings());
        key.add("student,exercise,planted");
        sheets(staged, rows);
        Files.writeString(staged.file("class/sheets.csv"), String.join("\n", rows) + "\n", StandardCharsets.UTF_8);
        Files.writeString(staged.file("class-key.csv"), String.join("\n", key) + "\n", StandardCharsets.UTF_8);
    }

    private void sheets(StagedFolder staged, List<String> rows) throws IOException {
        MarkingScheme scheme = configuration.marking().orElseThrow();
        List<Marker> markers = new ArrayList<>();
        List<Exercise> asked = new ArrayList<>();
        for (MadeExercise made : exercises) {
            asked.add(Exercise.of(made.asked(), configuration.policy()));
            markers.add(new Marker(asked.get(asked.size() - 1), scheme));
        }
        for (int i = 0; i < STUDENTS.size(); i++) {
            int at = i % EXERCISES;
            StudentSheet sheet =
                    sheet(STUDENTS.get(i), i, asked.get(at), markers.get(at).slips());
            if (WORKBOOKS.contains(sheet.student())) {
                ExerciseFiles.filled(
                        exercises.get(at),
                        configuration.policy(),
                        CgMeasure.PERCENT_MAC,
                        sheet,
                        staged.file("class/sheet-" + sheet.student().toLowerCase(Locale.ROOT) + ".xlsx"));
            } else {
                rows.add(row(sheet));
            }
        }
    }

    private StudentSheet sheet(String student, int number, Exercise exercise, List<Slip> slips) {
        SampleStudent writer = new SampleStudent(exercise, this::below);
        Habits habits = new Habits(CgMeasure.PERCENT_MAC, 1 + below(2), left(student));
        List<Slip> planted = student.equals(EMPTY) || student.equals(HALF) || number % 7 == 0
                ? List.of()
                : planted(number, writer, habits, slips);
        Map<SheetItem, Claim> claims = new EnumMap<>(SheetItem.class);
        if (!student.equals(EMPTY)) {
            claims.putAll(writer.fill(planted, habits));
        }
        String exerciseName = exercise.loading().flight().flight();
        key.add(student + "," + exerciseName + ","
                + String.join(" and ", planted.stream().map(Slip::label).toList()));
        return new StudentSheet(
                new Origin("class", "", 1), student, exerciseName, EnumSet.allOf(SheetItem.class), claims);
    }

    private static Set<SheetItem> left(String student) {
        return student.equals(HALF)
                ? Set.of(
                        SheetItem.LIMITING_MASS,
                        SheetItem.LIMITED_BY,
                        SheetItem.TRAFFIC_LOAD,
                        SheetItem.UNDERLOAD,
                        SheetItem.TRIM,
                        SheetItem.VERDICT)
                : Set.of();
    }

    /** Kinds go round the class, so that many are met; every fifth sheet has two. */
    private List<Slip> planted(int number, SampleStudent writer, Habits habits, List<Slip> slips) {
        SlipKind[] kinds = SlipKind.values();
        for (int i = 0; i < TRIES; i++) {
            List<Slip> tried = new ArrayList<>(List.of(one(slips, kinds[(number + i / 20) % kinds.length])));
            if (number % 5 == 0) {
                tried.add(slips.get(below(slips.size())));
            }
            boolean apart =
                    tried.size() < 2 || tried.get(0).kind() != tried.get(1).kind();
            if (apart && writer.eachShows(tried, habits, 1)) {
                return tried;
            }
        }
        return List.of();
    }

    private Slip one(List<Slip> slips, SlipKind kind) {
        List<Slip> ofKind = slips.stream().filter(slip -> slip.kind() == kind).toList();
        return ofKind.isEmpty() ? slips.get(below(slips.size())) : ofKind.get(below(ofKind.size()));
    }

    private static String headings() {
        StringBuilder headings = new StringBuilder("student,flight");
        for (SheetItem item : SheetItem.ALL) {
            headings.append(",claimed-")
                    .append(item.key())
                    .append(
                            switch (item.kind()) {
                                case MASS -> " (kg)";
                                case CG -> " (% MAC)";
                                case TRIM -> " (nose-up)";
                                case LIMIT, VERDICT -> "";
                            });
        }
        return headings.toString();
    }

    private static String row(StudentSheet sheet) {
        StringBuilder row = new StringBuilder(sheet.student()).append(',').append(sheet.exercise());
        for (SheetItem item : SheetItem.ALL) {
            Claim claim = sheet.claims().get(item);
            String shown = claim == null ? "" : claim.shown();
            boolean unit = item.kind() == SheetItem.Kind.MASS || item.kind() == SheetItem.Kind.CG;
            row.append(',').append(unit ? shown.replaceFirst(" .*", "") : shown);
        }
        return row.toString();
    }
}
