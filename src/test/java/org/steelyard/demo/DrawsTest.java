package org.steelyard.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class DrawsTest {

    @Test
    void theSameSeedsGiveTheSameNumbersAndOthersDoNot() {
        Draws one = new Draws(7, 11);
        Draws same = new Draws(7, 11);
        Draws other = new Draws(11, 7);

        List<Long> drawn = IntStream.range(0, 50).mapToObj(i -> one.next()).toList();
        assertThat(IntStream.range(0, 50).mapToObj(i -> same.next()).toList()).isEqualTo(drawn);
        assertThat(IntStream.range(0, 50).mapToObj(i -> other.next()).toList()).doesNotContainAnyElementsOf(drawn);
    }

    @Test
    void wholeNumbersReachBothEndsAndNoFurther() {
        Draws draws = new Draws(1);

        assertThat(IntStream.range(0, 2000)
                        .map(i -> draws.between(-2, 3))
                        .distinct()
                        .sorted())
                .containsExactly(-2, -1, 0, 1, 2, 3);
    }

    @Test
    void chancesComeAboutAsOftenAsTheySay() {
        Draws draws = new Draws(2);

        assertThat(IntStream.range(0, 10_000).filter(i -> draws.chance(30)).count())
                .isBetween(2800L, 3200L);
    }
}
