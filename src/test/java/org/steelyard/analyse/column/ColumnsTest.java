package org.steelyard.analyse.column;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.steelyard.model.unit.MassMoment;
import org.steelyard.samples.SampleJet;

class ColumnsTest {

    @Test
    void codesComeBackWhateverTheirSizeAndTakeNoMoreBytesThanTheyNeed() {
        CodeColumn column = new CodeColumn();
        for (int i = 0; i < 20_000; i++) {
            column.add(i % 250);
        }
        assertThat(column.bytesEach()).isEqualTo(1);
        column.add(70_000);
        column.add(5);
        assertThat(column.bytesEach()).isEqualTo(3);
        assertThat(column.size()).isEqualTo(20_002);
        assertThat(column.get(251)).isEqualTo(1);
        assertThat(column.get(19_999)).isEqualTo(249);
        assertThat(column.get(20_000)).isEqualTo(70_000);
        assertThat(column.get(20_001)).isEqualTo(5);
        assertThatThrownBy(() -> column.add(-1)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void numbersAreExactAndMayBeUnknown() {
        NumberColumn column = new NumberColumn();
        for (int i = 0; i < 9_000; i++) {
            column.add(i / 3.0);
        }
        column.add(OptionalDouble.empty());
        assertThat(column.at(8_999)).hasValue(8_999 / 3.0);
        assertThat(column.at(9_000)).isEmpty();
        assertThat(column.knows(9_000)).isFalse();
    }

    @Test
    void massesOfPicturesAreRightToSevenDigits() {
        MassColumn column = new MassColumn();
        column.add(Optional.of(new MassMoment(61_234.5678, 1)));
        column.add(Optional.empty());
        assertThat(column.at(0).orElseThrow() / 61_234.5678 - 1).isBetween(-1e-7, 1e-7);
        assertThat(column.at(1)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"6.6, 5", "1.9, 2", "92, 100", "0.3, 1", "3.1, 2", "3.2, 5", "7.0, 5", "7.2, 10", "1400, 1000"})
    void aBandHasARoundWidth(double wanted, long width) {
        assertThat(Band.roundStep(wanted)).isEqualTo(width);
    }

    @Test
    void aMassOnTheEdgeBelongsToTheBandAbove() {
        // 60,000 kg / 12 = 5,000 kg
        assertThat(Band.ofMass(SampleJet.type(), 54_999.9).label()).isEqualTo("50,000 to 55,000 kg");
        assertThat(Band.ofMass(SampleJet.type(), 55_000).label()).isEqualTo("55,000 to 60,000 kg");
    }

    @Test
    void groupsStandInTheOrderInWhichPeopleLookForThem() {
        GroupColumn<String> column = new GroupColumn<>(GroupKind.named("flaps"));
        for (String name : new String[] {"15", "5", "up", "", "5"}) {
            column.add(column.make(name));
        }
        assertThat(column.groups()).isEqualTo(4);
        assertThat(column.of(4)).isEqualTo(column.of(1));
        assertThat(column.inOrder()).containsExactly(1, 0, 3, 2);
        assertThat(column.label(3)).isEqualTo("not given");
    }
}
