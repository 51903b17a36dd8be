package org.steelyard.read.row;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.steelyard.model.type.Tail;
import org.steelyard.model.unit.EditDistance;
import org.steelyard.model.unit.MassMoment;
import org.steelyard.samples.Plain;

class TailsTest {

    private static Tail tail(String registration) {
        return Plain.tail(registration, Fixtures.TWIN, MassMoment.at(22_000, 11));
    }

    @Test
    void aTailIsFoundAsWrittenAndInOtherCase() {
        assertThat(Fixtures.TAILS.find("SX-BAA")).contains(Fixtures.TWIN_TAIL);
        assertThat(Fixtures.TAILS.find("sx-baa")).contains(Fixtures.TWIN_TAIL);
        assertThat(Fixtures.TAILS.find("SXBAA")).isEmpty();
    }

    @Test
    void whereCaseAloneTellsTwoTailsApartOnlyTheExactOneIsFound() {
        Tails tails = Tails.of(List.of(tail("ab"), tail("AB")));
        assertThat(tails.find("AB")).contains(tail("AB"));
        assertThat(tails.find("Ab")).isEmpty();
    }

    @Test
    void anUnknownTailHasAtMostThreeNearestNames() {
        assertThat(Fixtures.TAILS.nearest("SX-BAX")).containsExactly("SX-BAA", "SX-BAB", "SX-BAC");
        assertThat(Fixtures.TAILS.nearest("SX-OME")).startsWith("SX-ONE");
        assertThat(Fixtures.TAILS.nearest("12345678")).isEmpty();
        assertThat(Fixtures.TAILS.nearest("S".repeat(100_000))).isEmpty();
    }

    @Test
    void aTailIsInTheFleetOnce() {
        assertThatThrownBy(() -> Tails.of(List.of(tail("AB"), tail("AB")))).hasMessageContaining("AB");
    }

    /** Published pairs of the measure: kitten/sitting 3, saturday/sunday 3 (from memory of the literature). */
    @ParameterizedTest
    @CsvSource({"kitten, sitting, 3", "saturday, sunday, 3", "'', abc, 3", "abc, '', 3", "abc, abc, 0", "ab, ba, 2"})
    void theDistanceCountsSingleEdits(String one, String other, int distance) {
        assertThat(EditDistance.between(one, other)).isEqualTo(distance);
    }
}
