package org.steelyard.analyse.change;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.steelyard.analyse.change.SeasonChange.Figure;
import org.steelyard.analyse.figure.Holm;
import org.steelyard.check.result.Status;
import org.steelyard.model.finding.Severity;
import org.steelyard.samples.EdgeTable;
import org.steelyard.samples.EdgeTopic;
import org.steelyard.samples.FlownFlights;
import org.steelyard.samples.FlownFlights.Flown;

/**
 * How often two seasons without a difference are told apart, and how often a difference is told. The gate halves 60
 * seasons; {@code -Dsteelyard.halvings=200} halves as many as src/test/README.md reports,
 * {@code -Dsteelyard.powerDraws} measures the power.
 */
@Tag("validation")
class SeasonChangesTest {

    private static final long SEED = Long.getLong("steelyard.halvingSeed", 20_261_125);
    private static final int HALVINGS = Integer.getInteger("steelyard.halvings", 60);
    private static final int POWER_DRAWS = Integer.getInteger("steelyard.powerDraws", 20);

    private static final EdgeTable EDGES = new EdgeTable(SeasonChangesTest.class);
    private static final String AS_STATED = "no more than one of twenty, to within chance";

    @AfterAll
    static void write() {
        EDGES.write();
    }

    private static SeasonSide side(List<Flown> flights) {
        SeasonSide side = new SeasonSide();
        for (Flown flown : flights) {
            side.add(new SeasonSide.Flight(
                    flown.type(),
                    flown.flaps(),
                    "",
                    Map.of("tail", flown.tail(), "route", flown.route(), "pilot", flown.pilot()),
                    flown.cgPercentMac(),
                    OptionalDouble.of(flown.trimUnits()),
                    flown.status()));
            side.found(
                    flown.type(),
                    flown.found().stream()
                            .map(code -> new SeasonSide.Kind(code, Severity.BREACH))
                            .collect(Collectors.toSet()));
        }
        return side;
    }

    private static List<SeasonChange> told(List<Flown> before, List<Flown> after) {
        return SeasonChanges.between(side(before), side(after)).stream()
                .filter(change -> change.verdict().beyondChance())
                .toList();
    }

    /** Of 200 at most 19 if one in twenty does, of 60 at most 8: 3.1 of its standard errors. */
    @Test
    void halvesOfOneSeasonAreToldApartInNoMoreThanOneOfTwenty() {
        int apart = 0;
        StringBuilder what = new StringBuilder();
        for (int i = 0; i < HALVINGS; i++) {
            List<Flown> season = new ArrayList<>(new FlownFlights(SEED + i).season(3_200));
            Collections.shuffle(season, new Random(SEED - i));
            List<SeasonChange> told = told(season.subList(0, 1_600), season.subList(1_600, 3_200));
            apart += told.isEmpty() ? 0 : 1;
            told.forEach(one -> what.append(one.figure())
                    .append(" by ")
                    .append(one.grouping())
                    .append("; "));
        }
        String seen = "seed " + SEED + ": " + apart + " of " + HALVINGS + " halvings tell something: " + what;
        System.out.println(seen);
        double most = HALVINGS / 20.0 + 3.1 * Math.sqrt(HALVINGS * 0.0475);
        EDGES.row(
                EdgeTopic.CHANCE_OF_A_CHANGE,
                "seasons of 3,200 flights cut in two at random: how many of them tell of any change",
                AS_STATED,
                apart <= most ? AS_STATED : seen);
    }

    private static SeasonSide alternating(double middle) {
        SeasonSide side = new SeasonSide();
        for (int i = 0; i < 10; i++) {
            double cg = middle + (i % 2 == 0 ? 1 : -1);
            side.add(new SeasonSide.Flight("jet", "", "", Map.of(), cg, OptionalDouble.empty(), Status.CLEAN));
        }
        return side;
    }

    /** Student's table: 2.101 at 5 % with 18 degrees of freedom; the error is √(2 · (10 / 9) / 10). */
    @Test
    void whatNeverHappensIsNotMadeUpFor() {
        double apart = 2.101 * Math.sqrt(2.0 / 9);
        SeasonChange cg = SeasonChanges.between(alternating(25), alternating(25 + apart)).stream()
                .filter(change -> change.figure() == Figure.TAKEOFF_CG)
                .findFirst()
                .orElseThrow();
        EDGES.row(
                EdgeTopic.CHANCE_OF_A_CHANGE,
                "10 flights of one type in each season, CG 1 % MAC either side of 25 and of 25.99 (t = 2.101), none"
                        + " marginal or breached: adjusted chance",
                "0.0500",
                String.format(Locale.ROOT, "%.4f", cg.chance().orElseThrow()));
    }

    private static SeasonSide atThrust(String thrust, double trimUnits) {
        SeasonSide side = new SeasonSide();
        for (int i = 0; i < 30; i++) {
            double off = i % 2 == 0 ? 1 : -1;
            side.add(new SeasonSide.Flight(
                    "jet", "5", thrust, Map.of(), 25 + off, OptionalDouble.of(trimUnits - 0.1 * off), Status.CLEAN));
        }
        return side;
    }

    @Test
    void trimsOfTwoThrustRatingsAreNotCompared() {
        List<SeasonChange> trims = SeasonChanges.between(atThrust("full", 1), atThrust("reduced", 1.5)).stream()
                .filter(change -> change.figure() == Figure.TAKEOFF_TRIM)
                .toList();
        EDGES.row(
                EdgeTopic.THRUST,
                "30 flights at full thrust (1.0 units) against 30 reduced at the same CGs (1.5): what is said of trim",
                "full only before; reduced only after",
                trims.stream()
                        .map(change -> change.thrust() + " " + change.verdict().label())
                        .sorted()
                        .collect(Collectors.joining("; ")));
    }

    @Test
    void aFigureOfManyGroupsTakesNothingFromAFigureOfOne() {
        double[] adjusted =
                Holm.adjusted(new double[] {0.2, 0.02, 0.02, 0.9, 0.7}, new double[] {0.25, 1, 0.25, 0.25, 0.25});
        EDGES.row(
                EdgeTopic.CHANCE_OF_A_CHANGE,
                "chance 0.02 of the one group of a figure, 0.02, 0.2, 0.7 and 0.9 of the four groups of another: adjusted",
                "0.04; 0.08, 0.60, 1, 1",
                String.format(
                        Locale.ROOT,
                        "%.2f; %.2f, %.2f, %.0f, %.0f",
                        adjusted[1],
                        adjusted[2],
                        adjusted[0],
                        adjusted[4],
                        adjusted[3]));
    }

    /** A hundred flights of the tail in each season. */
    private static int found(double sd) {
        int found = 0;
        int flights = 100 * FlownFlights.tails();
        for (int i = 0; i < POWER_DRAWS; i++) {
            FlownFlights flown = new FlownFlights(SEED + i);
            boolean told = told(flown.season(flights), flown.season(flights, sd)).stream()
                    .anyMatch(change -> change.figure() == Figure.TAKEOFF_CG
                            && change.group().equals(FlownFlights.firstTail()));
            found += told ? 1 : 0;
        }
        System.out.printf(
                Locale.ROOT,
                "a tail of 100 flights %.1f sd farther aft: told %d of %d times%n",
                sd,
                found,
                POWER_DRAWS);
        return found;
    }

    @Test
    void aTailThatMovedFarIsTold() {
        assertThat(found(1)).isGreaterThanOrEqualTo((int) (0.95 * POWER_DRAWS)).isGreaterThan(found(0.3));
        if (POWER_DRAWS > 20) {
            assertThat(found(0.6)).isGreaterThan(POWER_DRAWS / 2);
        }
    }
}
