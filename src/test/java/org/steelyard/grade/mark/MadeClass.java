package org.steelyard.grade.mark;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import org.steelyard.config.ConfigFolder;
import org.steelyard.config.ConfigResult;
import org.steelyard.config.Configuration;
import org.steelyard.demo.SampleStudent;
import org.steelyard.demo.SampleStudent.Habits;
import org.steelyard.grade.make.Difficulty;
import org.steelyard.grade.make.ExerciseMaker;
import org.steelyard.grade.working.Exercise;
import org.steelyard.grade.working.Slip;
import org.steelyard.grade.working.SlipKind;
import org.steelyard.model.input.CgMeasure;
import org.steelyard.model.input.Claim;
import org.steelyard.model.input.SheetItem;
import org.steelyard.model.input.StudentSheet;
import org.steelyard.model.loading.Origin;
import org.steelyard.model.policy.MarkingScheme;
import org.steelyard.model.policy.MarkingScheme.ItemRule;
import org.steelyard.model.type.Tail;
import org.steelyard.samples.Plain;

/** A class of sheets with planted slips, on exercises of every type and difficulty that comes with the project. */
public final class MadeClass {

    public static final long SEED = 20260704;

    private static final Configuration SHIPPED = shipped();
    private static final int SHEETS_OF_AN_EXERCISE = 12;
    private static final int TRIES = 400;
    private static final List<Difficulty> DIFFICULTIES = List.of(Difficulty.values());
    private static final List<CgMeasure> MEASURES = List.of(CgMeasure.values());

    private final SplittableRandom random;
    private final List<Marker> markers = new ArrayList<>();
    private final List<Exercise> exercises = new ArrayList<>();
    private final List<Sheet> sheets = new ArrayList<>();

    /** A sheet with what was planted in it, and its marks. */
    public record Sheet(Exercise exercise, List<Slip> planted, MarkedSheet marked) {}

    private MadeClass(long seed) {
        random = new SplittableRandom(seed);
    }

    public static MarkingScheme scheme() {
        return Plain.markingScheme(
                "test", 60, 50, SheetItem.ALL.stream().map(MadeClass::rule).toList());
    }

    private static ItemRule rule(SheetItem item) {
        return switch (item.kind()) {
            case MASS -> new ItemRule(item, 1, 3, 0, 0.5);
            case CG -> new ItemRule(item, 1, 0.1, 0, 0.05);
            case TRIM -> new ItemRule(item, 1, 0.05, 0, 0.05);
            default -> new ItemRule(item, 1, 0, 0, 0);
        };
    }

    public static Configuration configuration() {
        return SHIPPED;
    }

    private static Configuration shipped() {
        return ConfigFolder.load(Path.of("config")) instanceof ConfigResult.Loaded loaded
                ? loaded.configuration()
                : null;
    }

    /** So many sheets with one slip each, of every kind in turn; with two; with none. */
    static List<Sheet> of(long seed, int singles, int pairs, int right) {
        MadeClass made = new MadeClass(seed);
        int all = singles + pairs + right;
        made.exercises(1 + all / SHEETS_OF_AN_EXERCISE);
        SlipKind[] kinds = SlipKind.values();
        for (int i = 0; i < singles; i++) {
            made.plant(List.of(kinds[i % kinds.length]));
        }
        for (int i = 0; i < pairs; i++) {
            made.plant(List.of(kinds[i % kinds.length], kinds[made.random.nextInt(kinds.length)]));
        }
        for (int i = 0; i < right; i++) {
            made.sheet(made.random.nextInt(made.exercises.size()), List.of(), made.habits(List.of()));
        }
        return made.sheets;
    }

    /** So many sheets that are right but for one mass or CG, which is off by chance and by no slip. */
    static List<Sheet> strays(long seed, int count) {
        MadeClass made = new MadeClass(seed);
        made.exercises(1 + count / SHEETS_OF_AN_EXERCISE);
        for (int i = 0; i < count; i++) {
            made.stray();
        }
        return made.sheets;
    }

    private void stray() {
        int at = random.nextInt(exercises.size());
        Exercise exercise = exercises.get(at);
        Habits habits = new Habits(CgMeasure.PERCENT_MAC, 2, Set.of());
        Map<SheetItem, Claim> claims = new EnumMap<>(SheetItem.class);
        claims.putAll(new SampleStudent(exercise, random::nextInt).fill(List.of(), habits));
        List<SheetItem> numbers = claims.keySet().stream()
                .filter(item -> item.kind() == SheetItem.Kind.MASS || item.kind() == SheetItem.Kind.CG)
                .toList();
        SheetItem item = numbers.get(random.nextInt(numbers.size()));
        Claim.Figure right = (Claim.Figure) claims.get(item);
        double step = 2 * right.halfStep();
        double off = step * (20 + random.nextInt(item.kind() == SheetItem.Kind.MASS ? 3000 : 1000));
        double value = right.value() + (random.nextBoolean() ? off : -off);
        claims.put(item, new Claim.Figure(value, right.halfStep(), right.measure(), value + ""));
        StudentSheet sheet = Plain.studentSheet(new Origin("class.csv", "", 2), "stray", "", claims);
        sheets.add(new Sheet(exercise, List.of(), markers.get(at).mark(sheet)));
    }

    private void exercises(int count) {
        Map<String, ExerciseMaker> makers = new HashMap<>();
        List<String> types = List.copyOf(SHIPPED.types().keySet());
        for (int i = 0; exercises.size() < count; i++) {
            String type = types.get(i % types.size());
            List<Tail> tails = SHIPPED.tails().values().stream()
                    .filter(tail -> tail.type().id().equals(type))
                    .collect(Collectors.toList());
            ExerciseMaker maker =
                    makers.computeIfAbsent(type, id -> new ExerciseMaker(tails, SHIPPED.policy(), random::nextInt));
            Difficulty difficulty = DIFFICULTIES.get((i / types.size()) % DIFFICULTIES.size());
            maker.make("E" + i, difficulty).ifPresent(made -> {
                Exercise exercise = Exercise.of(made.asked(), SHIPPED.policy());
                exercises.add(exercise);
                markers.add(new Marker(exercise, scheme()));
            });
        }
    }

    /** Mostly % MAC, sometimes arm or index; sometimes a figure or two left blank. */
    private Habits habits(List<SlipKind> kinds) {
        CgMeasure measure = kinds.contains(SlipKind.INDEX_CONSTANT)
                ? CgMeasure.INDEX
                : kinds.contains(SlipKind.LEMAC_OR_MAC) || kinds.contains(SlipKind.DATUM_FOR_LEMAC)
                        ? CgMeasure.PERCENT_MAC
                        : MEASURES.get(Math.max(0, random.nextInt(6) - 3));
        int decimals = measure == CgMeasure.INDEX || random.nextInt(3) == 0 ? 1 : 2;
        Set<SheetItem> left = EnumSet.noneOf(SheetItem.class);
        if (random.nextInt(4) == 0) {
            left.add(SheetItem.ALL.get(random.nextInt(SheetItem.ALL.size())));
        }
        return new Habits(measure, decimals, left);
    }

    private void plant(List<SlipKind> kinds) {
        for (int i = 0; i < TRIES; i++) {
            int at = random.nextInt(exercises.size());
            Habits habits = habits(kinds);
            List<Slip> planted = new ArrayList<>();
            for (SlipKind kind : kinds) {
                List<Slip> ofKind = markers.get(at).slips().stream()
                        .filter(slip -> slip.kind() == kind)
                        .toList();
                if (!ofKind.isEmpty()) {
                    planted.add(ofKind.get(random.nextInt(ofKind.size())));
                }
            }
            SampleStudent student = new SampleStudent(exercises.get(at), random::nextInt);
            boolean apart = planted.size() < 2 || Diagnoser.canBothBe(planted.get(0), planted.get(1));
            if (planted.size() == kinds.size() && apart && student.eachShows(planted, habits, 1)) {
                sheet(at, planted, habits);
                return;
            }
        }
    }

    private void sheet(int at, List<Slip> planted, Habits habits) {
        Exercise exercise = exercises.get(at);
        Map<SheetItem, Claim> claims = new EnumMap<>(SheetItem.class);
        claims.putAll(new SampleStudent(exercise, random::nextInt).fill(planted, habits));
        StudentSheet sheet = Plain.studentSheet(
                new Origin("class.csv", "", sheets.size() + 2L),
                "student " + sheets.size(),
                exercise.loading().flight().flight(),
                claims);
        sheets.add(new Sheet(exercise, planted, markers.get(at).mark(sheet)));
    }
}
