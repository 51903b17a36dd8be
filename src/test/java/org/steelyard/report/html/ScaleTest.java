package org.steelyard.report.html;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ScaleTest {

    @Test
    void endsFallOnTheirPlaces() {
        Scale scale = new Scale(10, 30, 300, 100);
        assertThat(scale.px(10)).isEqualTo(300);
        assertThat(scale.px(30)).isEqualTo(100);
        assertThat(scale.px(15)).isCloseTo(250, within(1e-12));
    }

    @ParameterizedTest
    @CsvSource({"0, 10, 2, 0", "38000, 73500, 5000, 0", "-0.3, 0.4, 0.1, 1", "81, 96, 2, 0", "0.001, 0.0012, 0.00002, 5"
    })
    void marksAreRoundAndWithinTheScale(double from, double to, double step, int decimals) {
        Scale scale = new Scale(from, to, 0, 100);
        assertThat(scale.step(6)).isCloseTo(step, within(step * 1e-9));
        assertThat(scale.decimals(6)).isEqualTo(decimals);
        List<Double> marks = scale.marks(6);
        assertThat(marks).hasSizeBetween(4, 11).allMatch(scale::contains);
    }

    @Test
    void aRangeOfOneValueStillHasAWidth() {
        Range range = new Range();
        range.add(5);
        Scale scale = range.grown(0.1).scale(0, 100);
        assertThat(scale.px(5)).isCloseTo(50, within(1e-9));
    }
}
