package org.steelyard.config.value;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NearestTest {

    /** The textbook pairs of Levenshtein's distance. */
    @ParameterizedTest
    @CsvSource({"kitten, sitting, 3", "saturday, sunday, 3", "flaw, lawn, 2", "'', abc, 3", "MAX, max, 0"})
    void distanceCountsLettersToChange(String one, String other, int distance) {
        assertThat(Nearest.distance(one, other)).isEqualTo(distance);
        assertThat(Nearest.distance(other, one)).isEqualTo(distance);
    }

    @Test
    void theNearestNameIsSuggestedAndNoneThatIsFar() {
        List<String> known = List.of("length", "width", "max");

        assertThat(Nearest.to("lenght", known)).contains("length");
        assertThat(Nearest.to("colour", known)).isEmpty();
        assertThat(Nearest.to("x", List.of())).isEmpty();
    }
}
