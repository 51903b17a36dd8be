package org.steelyard.trim;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.util.SplittableRandom;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Straight lines against NIST's reference data set Norris (Statistical Reference Datasets, linear regression). */
class LinesTest {

    private static final double CERTIFIED_DIGITS = 1e-11;

    private static JsonNode norris() {
        try (InputStream file = LinesTest.class.getResourceAsStream("/reference/nist-strd.json")) {
            return new ObjectMapper().readTree(file).get("Norris");
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private static double[] numbers(JsonNode list) {
        return StreamSupport.stream(list.spliterator(), false)
                .mapToDouble(JsonNode::asDouble)
                .toArray();
    }

    private static double certified(String name) {
        return norris().get("certified").get(name).asDouble();
    }

    @Test
    @Tag("validation")
    void leastSquaresHitsTheCertifiedDigitsOfNorris() {
        LeastSquaresLine line = LeastSquaresLine.of(numbers(norris().get("x")), numbers(norris().get("y")));
        assertThat(line.n()).isEqualTo(36);
        assertThat(line.slope() / certified("B1")).isCloseTo(1, within(CERTIFIED_DIGITS));
        assertThat(line.intercept() / certified("B0")).isCloseTo(1, within(CERTIFIED_DIGITS));
        assertThat(line.slopeSd() / certified("sd_B1")).isCloseTo(1, within(CERTIFIED_DIGITS));
        assertThat(line.interceptSd() / certified("sd_B0")).isCloseTo(1, within(CERTIFIED_DIGITS));
        assertThat(line.residualSd() / certified("residual_sd")).isCloseTo(1, within(CERTIFIED_DIGITS));
    }

    @Test
    @Tag("validation")
    void theLineByMediansAgreesWithTheCertifiedOneWithinItsInterval() {
        TheilSenLine line = TheilSenLine.of(numbers(norris().get("x")), numbers(norris().get("y")));
        assertThat(certified("B1")).isBetween(line.slopeLow(), line.slopeHigh());
        assertThat(line.slope()).isBetween(line.slopeLow(), line.slopeHigh());
        assertThat(line.slopeHigh() - line.slopeLow()).isLessThan(8 * certified("sd_B1"));
        assertThat(line.intercept()).isCloseTo(certified("B0"), within(2 * certified("sd_B0")));
    }

    /** Sen's own example: n = 7 points, 21 slopes of which all differ in x; the definition applied by hand. */
    @Test
    void theSlopeIsTheMedianOfAllSlopesAndTheInterceptTheMedianOfTheRest() {
        TheilSenLine line = TheilSenLine.of(new double[] {0, 1, 2, 3}, new double[] {0, 1, 2, 30});
        // slopes 1, 1, 10, 1, 14.5, 28: the median of 1 1 1 10 14.5 28 is 5.5; rests 0, -4.5, -9, 13.5
        assertThat(line.slope()).isEqualTo(5.5);
        assertThat(line.intercept()).isEqualTo(-2.25);
    }

    @Test
    void theIntervalOfTheSlopeCoversTheTruthAboutAsOftenAsItSays() {
        int covered = 0;
        for (long seed = 0; seed < 400; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            double[] xs = new double[25];
            double[] ys = new double[25];
            for (int i = 0; i < xs.length; i++) {
                xs[i] = random.nextDouble(8, 38);
                ys[i] = 3 - 0.16 * xs[i] + random.nextDouble(-0.2, 0.2);
            }
            TheilSenLine line = TheilSenLine.of(xs, ys);
            covered += line.slopeLow() <= -0.16 && -0.16 <= line.slopeHigh() ? 1 : 0;
        }
        assertThat(covered).isBetween(368, 392); // 95 % of 400 is 380, its sd 4.4
    }

    @Test
    void pairsAtOnePlaceAreRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> TheilSenLine.of(new double[] {2, 2, 2}, new double[] {1, 2, 3}))
                .withMessageContaining("different places");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> LeastSquaresLine.of(new double[] {1, 2}, new double[] {1, 2}))
                .withMessageContaining("three pairs");
    }
}
