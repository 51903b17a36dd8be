package org.steelyard.model.unit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class EditDistanceTest {

    /** The first three are examples that textbooks give (from memory); the rest by hand. */
    @ParameterizedTest
    @CsvSource({
        "kitten, sitting, 3",
        "saturday, sunday, 3",
        "intention, execution, 5",
        "QX-001, QZ-001, 1",
        "abc, abc, 0",
        "'', abc, 3",
        "abc, '', 3",
        "ab, ba, 2"
    })
    void theDistanceCountsCharactersToChange(String one, String other, int distance) {
        assertThat(EditDistance.between(one, other)).isEqualTo(distance);
        assertThat(EditDistance.between(other, one)).isEqualTo(distance);
    }

    /** All texts of up to five of two letters, against the definition by recursion. */
    @Test
    void theDistanceIsToldAsFarAsItMatters() {
        List<String> texts = new ArrayList<>(List.of(""));
        for (int i = 0; texts.get(i).length() < 5; i++) {
            texts.add(texts.get(i) + "a");
            texts.add(texts.get(i) + "b");
        }
        for (String one : texts) {
            for (String other : texts) {
                int distance = byDefinition(one, other);
                for (int most = 0; most <= 5; most++) {
                    assertThat(EditDistance.within(one, other, most))
                            .as("%s to %s within %d", one, other, most)
                            .isEqualTo(Math.min(distance, most + 1));
                }
            }
        }
    }

    private static int byDefinition(String one, String other) {
        if (one.isEmpty() || other.isEmpty()) {
            return one.length() + other.length();
        }
        String rest = one.substring(1);
        String otherRest = other.substring(1);
        if (one.charAt(0) == other.charAt(0)) {
            return byDefinition(rest, otherRest);
        }
        return 1
                + Math.min(
                        byDefinition(rest, otherRest),
                        Math.min(byDefinition(rest, other), byDefinition(one, otherRest)));
    }
}
