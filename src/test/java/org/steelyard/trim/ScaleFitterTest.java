package org.steelyard.trim;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.steelyard.model.trim.TrimLaw;
import org.steelyard.model.trim.TrimPoint;
import org.steelyard.model.trim.TrimPoints;
import org.steelyard.model.trim.TrimTable;

/** Made pairs whose scale is known, a fifth of them grossly wrong. */
class ScaleFitterTest {

    private static final double STEP = 0.1;
    private static final int RESAMPLES = 60;
    private static final TrimLaw BENT = new TrimPoints(
            List.of(new TrimPoint(8, 3.4), new TrimPoint(18, 2.6), new TrimPoint(26, 0.4), new TrimPoint(38, -1.0)));
    private static final TrimLaw STRAIGHT = new TrimPoints(List.of(new TrimPoint(8, 3.2), new TrimPoint(38, -1.4)));

    private record Made(List<TrimEvidence> pairs, Set<String> wrong) {}

    /** Settings rounded to the step with noise, every fifth wrong by one to three units, most of them to one side. */
    private static Made made(TrimLaw truth, int n, long seed, double unitsPerTonne) {
        SplittableRandom random = new SplittableRandom(seed);
        List<TrimEvidence> pairs = new ArrayList<>();
        Set<String> wrong = new HashSet<>();
        for (int i = 0; i < n; i++) {
            double cg = random.nextDouble(8, 38);
            double massKg = random.nextDouble(46_000, 74_000);
            double noise = (random.nextDouble() + random.nextDouble() + random.nextDouble() - 1.5) * 0.1;
            double trim = truth.trimUnitsAt(cg, massKg).orElseThrow() + noise + unitsPerTonne * (massKg / 1000 - 60);
            if (i % 5 == 0) {
                wrong.add("pair " + i);
                trim += (random.nextInt(4) == 0 ? -1 : 1) * random.nextDouble(1, 3);
            }
            pairs.add(new TrimEvidence("pair " + i, cg, OptionalDouble.of(massKg), Math.rint(trim / STEP) * STEP));
        }
        return new Made(pairs, wrong);
    }

    private static ScaleFit fit(List<TrimEvidence> pairs, long seed) {
        return ScaleFitter.fit(pairs, STEP, RESAMPLES, new SplittableRandom(seed)::nextInt);
    }

    private static double worst(ScaleFit fit, TrimLaw truth) {
        double worst = 0;
        for (double cg = fit.cgRange().fromPercentMac() + 0.2;
                cg < fit.cgRange().toPercentMac() - 0.2;
                cg += 0.1) {
            double error = fit.law().trimUnitsAt(cg, 0).orElseThrow()
                    - truth.trimUnitsAt(cg, 0).orElseThrow();
            worst = Math.max(worst, Math.abs(error));
        }
        return worst;
    }

    @Test
    void aFifthOfWrongPairsBendsNeitherAStraightNorABentScale() {
        for (long seed = 0; seed < 60; seed++) {
            for (TrimLaw truth : List.of(STRAIGHT, BENT)) {
                Made made = made(truth, 300, seed, 0);
                ScaleFit fit = fit(made.pairs(), seed);
                assertThat(worst(fit, truth)).as("seed %d of %s", seed, truth).isLessThan(truth == BENT ? 0.25 : 0.08);
                assertThat(fit.outliers())
                        .as("seed %d", seed)
                        .extracting(outlier -> outlier.pair().label())
                        .containsExactlyInAnyOrderElementsOf(made.wrong());
                assertThat(fit.unitsPerKg()).as("seed %d", seed).isEmpty();
            }
        }
    }

    /** Some twenty points read off a printed scale, four of them misread. */
    @Test
    void twentyPointsOfWhichFourAreMisreadGiveTheScale() {
        for (long seed = 0; seed < 60; seed++) {
            Made made = made(STRAIGHT, 20, seed, 0);
            ScaleFit fit = fit(made.pairs(), seed);
            assertThat(worst(fit, STRAIGHT)).as("seed %d", seed).isLessThan(0.15);
            assertThat(fit.outliers())
                    .as("seed %d", seed)
                    .extracting(outlier -> outlier.pair().label())
                    .containsExactlyInAnyOrderElementsOf(made.wrong());
        }
    }

    @Test
    void leastSquaresIsBentByTheSamePairs() {
        Made made = made(STRAIGHT, 300, 1, 0);
        ScaleFit fit = fit(made.pairs(), 1);
        LeastSquaresLine bent = fit.leastSquares();
        double atMiddle = STRAIGHT.trimUnitsAt(23, 0).orElseThrow();
        assertThat(bent.intercept() + 23 * bent.slope() - atMiddle).isGreaterThan(0.15);
        assertThat(fit.law().trimUnitsAt(23, 0).orElseThrow()).isCloseTo(atMiddle, within(0.03));
    }

    @Test
    void theIntervalsCoverTheTruthAtMostKnots() {
        int knots = 0;
        int covered = 0;
        for (long seed = 0; seed < 40; seed++) {
            ScaleFit fit = ScaleFitter.fit(
                    made(STRAIGHT, 200, seed, 0).pairs(), STEP, 200, new SplittableRandom(seed)::nextInt);
            for (ScaleFit.FittedPoint point : fit.points()) {
                double truth = STRAIGHT.trimUnitsAt(point.cgPercentMac(), 0).orElseThrow();
                knots++;
                covered += point.lowUnits() <= truth && truth <= point.highUnits() ? 1 : 0;
            }
        }
        assertThat(covered / (double) knots).isBetween(0.85, 1.0);
    }

    @Test
    void trimThatChangesWithMassBecomesATable() {
        for (long seed = 0; seed < 20; seed++) {
            Made made = made(STRAIGHT, 400, seed, 0.02);
            ScaleFit fit = fit(made.pairs(), seed);
            assertThat(fit.unitsPerKg().orElseThrow() * 1000)
                    .as("seed %d", seed)
                    .isCloseTo(0.02, within(0.003));
            assertThat(fit.law()).isInstanceOf(TrimTable.class);
            double light = fit.law().trimUnitsAt(23, 50_000).orElseThrow();
            assertThat(light)
                    .as("seed %d", seed)
                    .isCloseTo(STRAIGHT.trimUnitsAt(23, 0).orElseThrow() - 0.2, within(0.06));
        }
    }

    @Test
    void aFitNeverRisesWhateverThePairsSay() {
        for (long seed = 0; seed < 60; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            List<TrimEvidence> pairs = new ArrayList<>();
            for (int i = 0; i < 60; i++) {
                double cg = random.nextDouble(10, 30);
                double wave = 0.4 * Math.sin(cg) - 0.02 * cg;
                pairs.add(new TrimEvidence("p" + i, cg, OptionalDouble.empty(), wave + random.nextDouble(-0.1, 0.1)));
            }
            List<ScaleFit.FittedPoint> points = fit(pairs, seed).points();
            for (int i = 1; i < points.size(); i++) {
                assertThat(points.get(i).trimUnits())
                        .as("seed %d", seed)
                        .isLessThanOrEqualTo(points.get(i - 1).trimUnits() + 1e-12);
            }
        }
    }

    @Test
    void theSameSeedGivesTheSameFit() {
        List<TrimEvidence> pairs = made(BENT, 200, 7, 0).pairs();
        assertThat(fit(pairs, 3)).isEqualTo(fit(pairs, 3));
    }

    @Test
    void aSlipOfOneStepIsNoOutlier() {
        List<TrimEvidence> pairs = new ArrayList<>();
        for (int i = 0; i < 30; i++) {
            double cg = 10 + i;
            double right = Math.rint((3 - 0.1 * cg) / STEP) * STEP;
            pairs.add(new TrimEvidence("p" + i, cg, OptionalDouble.empty(), i == 11 ? right + STEP : right));
        }
        assertThat(fit(pairs, 1).outliers()).isEmpty();
    }

    @Test
    void tooFewPairsOrTooNarrowARangeOrTheWrongSignAreRefused() {
        List<TrimEvidence> few = made(STRAIGHT, 7, 1, 0).pairs();
        assertThatIllegalArgumentException().isThrownBy(() -> fit(few, 1)).withMessageContaining("at least 8 pairs");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> fit(line(20, 21, -0.1), 1))
                .withMessageContaining("must span");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> fit(line(10, 30, 0.1), 1))
                .withMessageContaining("is the sign of the settings right");
    }

    private static List<TrimEvidence> line(double from, double to, double slope) {
        List<TrimEvidence> pairs = new ArrayList<>();
        for (int i = 0; i <= 20; i++) {
            double cg = from + i * (to - from) / 20;
            pairs.add(new TrimEvidence("p" + i, cg, OptionalDouble.empty(), slope * cg));
        }
        return pairs;
    }

    @ParameterizedTest
    @ValueSource(ints = {9000, 20_000})
    void manyPairsAreThinnedButAllAreJudged(int n) {
        Made made = made(STRAIGHT, n, 5, 0);
        ScaleFit fit = ScaleFitter.fit(made.pairs(), STEP, 40, new SplittableRandom(1)::nextInt);
        assertThat(fit.pairs()).isEqualTo(n);
        assertThat(fit.outliers()).hasSize(made.wrong().size());
        assertThat(worst(fit, STRAIGHT)).isLessThan(0.02);
    }
}
