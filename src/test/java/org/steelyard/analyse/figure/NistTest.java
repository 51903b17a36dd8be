package org.steelyard.analyse.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.steelyard.model.unit.Amounts;

/**
 * Mean, standard deviation and quantiles against the NIST Statistical Reference Datasets (univariate summary
 * statistics), file {@code reference/nist-strd.json}. NumAcc3 is not in that file: its rule and certified values are
 * from memory.
 */
@Tag("validation")
class NistTest {

    private static final MathContext EXACT = new MathContext(60);

    private record Case(String name, Amounts numbers, double mean, double sd, Map<String, Double> quantiles) {

        double[] data() {
            return numbers.toArray();
        }

        @Override
        public String toString() {
            return name;
        }
    }

    static Stream<Case> sets() throws IOException {
        List<Case> cases = new ArrayList<>();
        try (InputStream file = NistTest.class.getResourceAsStream("/reference/nist-strd.json")) {
            for (Map.Entry<String, JsonNode> set :
                    new ObjectMapper().readTree(file).properties()) {
                if (set.getValue().has("data")) {
                    cases.add(read(set.getKey(), set.getValue()));
                }
            }
        }
        cases.add(new Case("NumAcc3", alternating(1000000.2, 1000000.1, 1000000.3), 1000000.2, 0.1, Map.of()));
        return cases.stream();
    }

    private static Case read(String name, JsonNode set) {
        JsonNode exact = set.get("recomputed_exact");
        return new Case(
                name,
                data(set.get("data")),
                set.get("certified").get("mean").asDouble(),
                set.get("certified").get("sd_sample").asDouble(),
                Map.of(
                        "5", exact.get("p5_type7").asDouble(),
                        "25", exact.get("q1_type7").asDouble(),
                        "50", exact.get("median").asDouble(),
                        "75", exact.get("q3_type7").asDouble(),
                        "95", exact.get("p95_type7").asDouble(),
                        "0", exact.get("min").asDouble(),
                        "100", exact.get("max").asDouble()));
    }

    private static Amounts data(JsonNode data) {
        if (data.has("first")) {
            JsonNode pair = data.get("then_repeat_500_times");
            return alternating(
                    data.get("first").asDouble(),
                    pair.get(0).asDouble(),
                    pair.get(1).asDouble());
        }
        double[] values = new double[data.size()];
        for (int i = 0; i < values.length; i++) {
            values[i] = data.get(i).asDouble();
        }
        return Amounts.of(values);
    }

    private static Amounts alternating(double first, double one, double other) {
        double[] values = new double[1001];
        values[0] = first;
        for (int i = 1; i < values.length; i++) {
            values[i] = i % 2 == 1 ? one : other;
        }
        return Amounts.of(values);
    }

    @Test
    void allSetsOfOneVariableAreThere() throws IOException {
        assertThat(sets().map(Case::name))
                .containsExactlyInAnyOrder("Lew", "Lottery", "Mavro", "NumAcc1", "NumAcc2", "NumAcc3", "NumAcc4");
    }

    /**
     * As many digits as the data keep when they become doubles: 10000000.1 is off by one part in 1e16 of ten million.
     */
    @ParameterizedTest
    @MethodSource("sets")
    void certifiedValuesAreMetToTheDigitsThatDoublesAllow(Case set) {
        Spread spread = Spread.of(set.data());
        double rounding = Math.ulp(Math.max(Math.abs(spread.min()), Math.abs(spread.max())));
        assertThat(spread.mean()).isCloseTo(set.mean(), within(rounding + 5e-15 * Math.abs(set.mean())));
        assertThat(spread.sd().orElseThrow()).isCloseTo(set.sd(), within(rounding + 5e-15 * set.sd()));
    }

    /** Against exact arithmetic on the very doubles, so that nothing is owed to their rounding. */
    @ParameterizedTest
    @MethodSource("sets")
    void theComputationItselfLosesNoDigit(Case set) {
        Moments moments = Moments.of(set.data(), set.data().length);
        BigDecimal n = BigDecimal.valueOf(set.data().length);
        BigDecimal sum = BigDecimal.ZERO;
        for (double value : set.data()) {
            sum = sum.add(new BigDecimal(value));
        }
        BigDecimal mean = sum.divide(n, EXACT);
        BigDecimal squares = BigDecimal.ZERO;
        for (double value : set.data()) {
            BigDecimal deviation = new BigDecimal(value).subtract(mean);
            squares = squares.add(deviation.multiply(deviation));
        }
        double sd =
                squares.divide(n.subtract(BigDecimal.ONE), EXACT).sqrt(EXACT).doubleValue();
        assertThat(moments.mean()).isCloseTo(mean.doubleValue(), within(Math.ulp(mean.doubleValue())));
        assertThat(moments.sd().orElseThrow()).isCloseTo(sd, within(4 * Math.ulp(sd)));
    }

    @ParameterizedTest
    @MethodSource("sets")
    void quantilesFollowDefinitionSeven(Case set) {
        double[] sorted = set.data();
        Arrays.sort(sorted);
        set.quantiles()
                .forEach((percent, expected) -> assertThat(
                                Percentiles.inclusive(sorted, sorted.length, Integer.parseInt(percent)))
                        .as("percentile %s", percent)
                        .isCloseTo(expected, within(2 * Math.ulp(Math.abs(expected)))));
    }
}
