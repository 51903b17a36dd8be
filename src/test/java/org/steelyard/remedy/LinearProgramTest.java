package org.steelyard.remedy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.hipparchus.exception.MathRuntimeException;
import org.hipparchus.optim.linear.LinearConstraint;
import org.hipparchus.optim.linear.LinearConstraintSet;
import org.hipparchus.optim.linear.LinearObjectiveFunction;
import org.hipparchus.optim.linear.NonNegativeConstraint;
import org.hipparchus.optim.linear.Relationship;
import org.hipparchus.optim.linear.SimplexSolver;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.steelyard.model.unit.Amounts;
import org.steelyard.samples.Draws;

/** The solver against the simplex solver of Hipparchus, and whole numbers against trying them all. */
@Tag("validation")
class LinearProgramTest {

    private record Drawn(LinearProgram program, Amounts costs, Amounts uppers, List<Amounts> rows, Amounts bounds) {}

    private static Drawn drawn(long seed, int unknowns, boolean whole) {
        SplittableRandom random = new SplittableRandom(seed);
        LinearProgram program = new LinearProgram();
        double[] costs = new double[unknowns];
        double[] uppers = new double[unknowns];
        for (int j = 0; j < unknowns; j++) {
            costs[j] = random.nextInt(4) == 0 ? 0 : random.nextDouble(1, 10);
            uppers[j] = whole ? random.nextInt(1, 4) : random.nextDouble(1, 10);
            program.unknown(costs[j], uppers[j], whole);
        }
        int count = random.nextInt(2, 7);
        double[][] rows = new double[count][unknowns];
        double[] bounds = new double[count];
        for (int i = 0; i < count; i++) {
            for (int j = 0; j < unknowns; j++) {
                rows[i][j] = random.nextInt(3) == 0 ? 0 : random.nextDouble(-5, 5);
            }
            bounds[i] = i == 0 ? 0 : random.nextDouble(-12, 8);
            if (i == 0 && !whole) {
                program.equal(rows[i], bounds[i]);
            } else {
                program.atMost(rows[i], bounds[i]);
            }
        }
        return new Drawn(
                program,
                Amounts.of(costs),
                Amounts.of(uppers),
                Arrays.stream(rows).map(Amounts::of).toList(),
                Amounts.of(bounds));
    }

    @Test
    void theLeastCostIsThatOfAnotherSolver() {
        int solved = 0;
        for (long seed = 1; seed <= Draws.of(1500); seed++) {
            Drawn drawn = drawn(seed, new SplittableRandom(-seed).nextInt(2, 14), false);
            Optional<BranchAndBound.Solution> ours = BranchAndBound.least(drawn.program());
            Optional<Double> theirs = other(drawn);
            assertThat(ours.isPresent()).as("seed %d", seed).isEqualTo(theirs.isPresent());
            if (theirs.isPresent()) {
                solved++;
                assertThat(ours.orElseThrow().cost()).as("seed %d", seed).isCloseTo(theirs.get(), within(1e-6));
            }
        }
        assertThat(solved).isGreaterThan(Draws.of(1500) / 10);
    }

    private static Optional<Double> other(Drawn drawn) {
        List<LinearConstraint> constraints = new ArrayList<>();
        for (int i = 0; i < drawn.rows().size(); i++) {
            constraints.add(new LinearConstraint(
                    drawn.rows().get(i).toArray(),
                    i == 0 ? Relationship.EQ : Relationship.LEQ,
                    drawn.bounds().at(i)));
        }
        for (int j = 0; j < drawn.uppers().size(); j++) {
            double[] one = new double[drawn.uppers().size()];
            one[j] = 1;
            constraints.add(
                    new LinearConstraint(one, Relationship.LEQ, drawn.uppers().at(j)));
        }
        try {
            return Optional.of(new SimplexSolver()
                    .optimize(
                            new LinearObjectiveFunction(drawn.costs().toArray(), 0),
                            new LinearConstraintSet(constraints),
                            GoalType.MINIMIZE,
                            new NonNegativeConstraint(true))
                    .getValue());
        } catch (MathRuntimeException infeasible) {
            return Optional.empty();
        }
    }

    @Test
    void theLeastCostInWholeNumbersIsThatOfTryingThemAll() {
        int solved = 0;
        for (long seed = 1; seed <= Draws.of(400); seed++) {
            Drawn drawn = drawn(seed, 5, true);
            double tried = tried(drawn, new double[5], 0);
            Optional<BranchAndBound.Solution> ours = BranchAndBound.least(drawn.program());
            assertThat(ours.isPresent()).as("seed %d", seed).isEqualTo(tried < Double.POSITIVE_INFINITY);
            if (ours.isPresent()) {
                solved++;
                assertThat(ours.get().proved()).isTrue();
                assertThat(ours.get().cost()).as("seed %d", seed).isCloseTo(tried, within(1e-6));
            }
        }
        assertThat(solved).isGreaterThan(Draws.of(400) / 10);
    }

    private static double tried(Drawn drawn, double[] values, int at) {
        if (at == values.length) {
            for (int i = 0; i < drawn.rows().size(); i++) {
                if (dot(drawn.rows().get(i), values) > drawn.bounds().at(i) + 1e-9) {
                    return Double.POSITIVE_INFINITY;
                }
            }
            return dot(drawn.costs(), values);
        }
        double least = Double.POSITIVE_INFINITY;
        for (int value = 0; value <= drawn.uppers().at(at); value++) {
            values[at] = value;
            least = Math.min(least, tried(drawn, values, at + 1));
        }
        values[at] = 0;
        return least;
    }

    private static double dot(Amounts one, double[] other) {
        double sum = 0;
        for (int j = 0; j < other.length; j++) {
            sum += one.at(j) * other[j];
        }
        return sum;
    }
}
