package org.steelyard.report.words;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PointsTest {

    @Test
    void withoutALimitAllAreKept() {
        Points points = Points.all();
        for (int i = 0; i < 1000; i++) {
            points.add(i, -i);
        }
        assertThat(points.size()).isEqualTo(1000);
        assertThat(points.every()).isOne();
        assertThat(points.x(999)).isEqualTo(999);
        assertThat(points.y(999)).isEqualTo(-999);
    }

    @ParameterizedTest
    @CsvSource({"0, 1", "9, 1", "10, 1", "11, 2", "20, 2", "21, 4", "1000, 128", "12345, 2048"})
    void withALimitEveryNthIsKeptAndTheNumberSaid(int seen, long every) {
        Points points = Points.atMost(10);
        for (int i = 0; i < seen; i++) {
            points.add(i, i);
        }
        assertThat(points.seen()).isEqualTo(seen);
        assertThat(points.every()).isEqualTo(every);
        assertThat(points.size()).isEqualTo((int) ((seen + every - 1) / every)).isLessThanOrEqualTo(10);
        for (int i = 0; i < points.size(); i++) {
            assertThat(points.x(i)).isEqualTo((double) (i * every));
        }
    }
}
