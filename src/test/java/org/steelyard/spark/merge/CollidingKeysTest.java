package org.steelyard.spark.merge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.time.Duration;
import java.util.HashMap;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.steelyard.analyse.change.SeasonSide;
import org.steelyard.analyse.column.TrimSetting;

/** Keys whose hash codes are all the same, as of names made of Aa and BB, are found no slower than others. */
class CollidingKeysTest {

    private static final int LETTERS = 15;

    static Stream<Function<String, Object>> keys() {
        return Stream.of(
                name -> new TrimSetting("jet180", name, ""),
                name -> new SeasonSide.GroupKey("pilot", "jet180", name),
                name -> new MergeableTally.Place("pilot", "jet180", name));
    }

    @ParameterizedTest
    @MethodSource("keys")
    void manyOfThemAreFoundInSeconds(Function<String, Object> key) {
        Map<Object, Integer> found = new HashMap<>();
        assertTimeoutPreemptively(Duration.ofSeconds(20), () -> {
            for (int i = 0; i < 1 << LETTERS; i++) {
                found.put(key.apply(name(i)), i);
            }
        });
        assertThat(found).hasSize(1 << LETTERS);
        assertThat(found.keySet().stream().map(Object::hashCode).distinct()).hasSize(1);
    }

    private static String name(int number) {
        StringBuilder name = new StringBuilder();
        for (int bit = 0; bit < LETTERS; bit++) {
            name.append(((number >> bit) & 1) == 0 ? "Aa" : "BB");
        }
        return name.toString();
    }
}
