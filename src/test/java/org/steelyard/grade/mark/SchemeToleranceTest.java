package org.steelyard.grade.mark;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.steelyard.balance.Balance;
import org.steelyard.balance.FuelBalance;
import org.steelyard.config.ConfigFolder;
import org.steelyard.config.ConfigResult;
import org.steelyard.config.Configuration;
import org.steelyard.grade.make.Difficulty;
import org.steelyard.grade.make.ExerciseMaker;
import org.steelyard.grade.working.Exercise;
import org.steelyard.model.input.CgMeasure;
import org.steelyard.model.input.Claim;
import org.steelyard.model.input.SheetItem;
import org.steelyard.model.limit.MassLimits;
import org.steelyard.model.loading.Origin;
import org.steelyard.model.policy.MarkingScheme.ItemRule;
import org.steelyard.model.policy.SharingRule;
import org.steelyard.model.type.Tail;
import org.steelyard.model.unit.MassUnit;
import org.steelyard.samples.EdgeTable;
import org.steelyard.samples.EdgeTopic;
import org.steelyard.samples.Plain;
import org.steelyard.samples.SampleJet;

/** A figure is right within what the scheme says of its item, however it is written. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class SchemeToleranceTest {

    private static final EdgeTable EDGES = new EdgeTable(SchemeToleranceTest.class);
    private static final long SEED = 20260819;
    private static final int EXERCISES = 100;

    private Configuration configuration;

    @AfterAll
    static void write() {
        EDGES.write();
    }

    @BeforeAll
    void load() {
        configuration = ((ConfigResult.Loaded) ConfigFolder.load(Path.of("config"))).configuration();
    }

    /** The masses of a load sheet by the sums of any textbook. */
    private static Map<SheetItem, Double> massesKg(Exercise exercise) {
        Balance balance = exercise.balance();
        MassLimits limits = exercise.type().limits();
        FuelBalance fuel = balance.fuel().orElseThrow();
        double rampFuelKg = fuel.rampKg().sum();
        double takeoffFuelKg = fuel.takeoffKg().sum();
        double landingFuelKg = fuel.landingKg().sum();
        double zeroFuelKg = balance.zeroFuel().orElseThrow().massKg();
        double dryKg = balance.dryOperating().orElseThrow().massKg();
        double mostKg = Math.min(
                Math.min(limits.maxTakeoffKg(), limits.maxZeroFuelKg() + takeoffFuelKg),
                Math.min(
                        limits.maxLandingKg() + takeoffFuelKg - landingFuelKg,
                        limits.maxRampKg() - rampFuelKg + takeoffFuelKg));
        Map<SheetItem, Double> masses = new EnumMap<>(SheetItem.class);
        masses.put(SheetItem.ZERO_FUEL_MASS, zeroFuelKg);
        masses.put(SheetItem.RAMP_MASS, zeroFuelKg + rampFuelKg);
        masses.put(SheetItem.TAKEOFF_MASS, zeroFuelKg + takeoffFuelKg);
        masses.put(SheetItem.LANDING_MASS, zeroFuelKg + landingFuelKg);
        masses.put(SheetItem.LIMITING_MASS, mostKg);
        masses.put(SheetItem.TRAFFIC_LOAD, mostKg - takeoffFuelKg - dryKg);
        masses.put(SheetItem.UNDERLOAD, mostKg - takeoffFuelKg - zeroFuelKg);
        return masses;
    }

    private static Claim wholeUnits(double massKg, int to, MassUnit unit) {
        long written = to * Math.round(unit.fromKg(massKg) / to);
        return new Claim.Figure(
                unit.toKg((double) written), unit.toKg(0.5), CgMeasure.ARM, written + " " + unit.symbol());
    }

    @ParameterizedTest
    @ValueSource(strings = {"jet180", "prop70", "single4"})
    void rightMassesRoundedToTenGetEveryPoint(String type) {
        List<Tail> tails = configuration.tails().values().stream()
                .filter(tail -> tail.type().id().equals(type))
                .toList();
        ExerciseMaker maker = new ExerciseMaker(tails, configuration.policy(), new SplittableRandom(SEED)::nextInt);
        List<String> lost = new ArrayList<>();
        for (int i = 0; i < EXERCISES; i++) {
            Exercise exercise = Exercise.of(
                    maker.make("X" + i, Difficulty.INSIDE).orElseThrow().asked(), configuration.policy());
            MassUnit unit = exercise.type().geometry().units().mass();
            Map<SheetItem, Claim> claims = new EnumMap<>(SheetItem.class);
            massesKg(exercise).forEach((item, massKg) -> claims.put(item, wholeUnits(massKg, 10, unit)));
            MarkedSheet marked = new Marker(exercise, configuration.marking().orElseThrow())
                    .mark(Plain.studentSheet(new Origin("sheets.csv", "", i), "Wren", "X" + i, claims));
            marked.items().stream()
                    .filter(item -> claims.containsKey(item.item()) && item.outcome() != Outcome.RIGHT)
                    .forEach(item -> lost.add(item.item() + " " + item.claimed() + " for " + item.right()));
        }
        assertThat(lost).as("seed %d", SEED).isEmpty();
        EDGES.row(
                EdgeTopic.SCHEME_ROUNDING,
                type + ", 100 right sheets with masses to 10 kg or lb, rounding: 5 kg: figures that lose points",
                "0",
                String.valueOf(lost.size()));
    }

    /** The sample jet's take-off mass is 53,200 kg; its CG 25 % MAC. */
    private static String marked(SheetItem item, double value, double halfStep, ItemRule rule) {
        Exercise exercise =
                Exercise.of(SampleJet.loaded().loading(), Plain.policy(1, 0.5, 2, 0.2, SharingRule.BY_CAPACITY));
        Claim claim = new Claim.Figure(value, halfStep, CgMeasure.PERCENT_MAC, String.valueOf(value));
        return new Marker(exercise, Plain.markingScheme("one item", 50, 50, List.of(rule)))
                .mark(Plain.studentSheet(new Origin("sheets.csv", "", 2), "Wren", "S1", Map.of(item, claim)))
                .items()
                .get(0)
                .outcome()
                .label();
    }

    @ParameterizedTest
    @CsvSource({
        "53207, 0.5, right",
        "53207.1, 0.05, wrong",
        "53193, 5, right",
        "53190, 5, wrong",
        "53200, 500, right",
        "53000, 500, wrong"
    })
    void aMassIsRightWithinToleranceAndRoundingTogetherHoweverItIsWritten(double kg, double halfStep, String expected) {
        EDGES.row(
                EdgeTopic.SCHEME_ROUNDING,
                String.format(
                        Locale.ROOT,
                        "53,200 kg, within: 2 kg, rounding: 5 kg: %s kg, written to %s kg",
                        kg,
                        2 * halfStep),
                expected,
                marked(SheetItem.TAKEOFF_MASS, kg, halfStep, new ItemRule(SheetItem.TAKEOFF_MASS, 1, 2, 0, 5)));
    }

    @Test
    void withoutRoundingTheToleranceAloneDecides() {
        ItemRule rule = new ItemRule(SheetItem.TAKEOFF_CG, 1, 0.1, 0, 0);
        assertThat(marked(SheetItem.TAKEOFF_CG, 25.1, 0.05, rule)).isEqualTo("right");
        assertThat(marked(SheetItem.TAKEOFF_CG, 25.15, 0.05, rule)).isEqualTo("wrong");
    }
}
