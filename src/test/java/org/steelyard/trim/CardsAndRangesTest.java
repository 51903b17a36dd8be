package org.steelyard.trim;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.limit.CgRange;
import org.steelyard.model.trim.TrimLaw;
import org.steelyard.model.trim.TrimPoint;
import org.steelyard.model.trim.TrimPoints;
import org.steelyard.model.trim.TrimScale;
import org.steelyard.model.trim.TrimSlope;
import org.steelyard.model.trim.TrimTable;
import org.steelyard.model.trim.TrimUnit;
import org.steelyard.model.type.AircraftType;
import org.steelyard.model.unit.Amounts;
import org.steelyard.samples.Plain;
import org.steelyard.samples.SampleJet;
import org.steelyard.trim.TrimCard.Cell;
import org.steelyard.trim.TrimCard.Place;

/** The inverse of a scale, and cards; the sample jet's take-off envelope runs from 20 to 30 % MAC at every mass. */
class CardsAndRangesTest {

    private static TrimScale scale(TrimLaw law, double step, double low, double high) {
        return Plain.trimScale(Phase.TAKEOFF, "5", "", TrimUnit.UNITS, law, step, low, high);
    }

    private static final TrimLaw SLOPE = new TrimSlope(new TrimPoint(25, 1), -0.2, new CgRange(21, 40));

    @Test
    void aSettingStandsForTheCgsWhoseTrimRoundsToIt() {
        CgRange range = SettingRange.of(scale(SLOPE, 0.1, -5, 5), 1.0, 0).orElseThrow();
        assertThat(range.fromPercentMac()).isCloseTo(24.75, within(1e-9));
        assertThat(range.toPercentMac()).isCloseTo(25.25, within(1e-9));
        assertThat(SettingRange.of(scale(SLOPE, 0.1, -5, 5), 3.0, 0)).isEmpty();
    }

    /** Every CG of a drawn scale lies in the range of its own setting, and in no other but at their common end. */
    @Test
    void theRangesOfAllSettingsCoverTheScaleOnce() {
        for (long seed = 0; seed < 200; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            double bend = random.nextDouble(-2, 2);
            TrimScale scale = scale(
                    new TrimPoints(List.of(
                            new TrimPoint(8, 4),
                            new TrimPoint(random.nextDouble(12, 30), bend),
                            new TrimPoint(38, -4))),
                    random.nextBoolean() ? 0.1 : 0.25,
                    -5,
                    5);
            for (int i = 0; i < 50; i++) {
                double cg = random.nextDouble(8, 38);
                double setting = scale.settingFor(scale.law().trimUnitsAt(cg, 0).orElseThrow());
                CgRange range = SettingRange.of(scale, setting, 0).orElseThrow();
                assertThat(cg)
                        .as("seed %d", seed)
                        .isBetween(range.fromPercentMac() - 1e-9, range.toPercentMac() + 1e-9);
                Optional<CgRange> next = SettingRange.of(scale, setting + scale.stepUnits(), 0);
                if (next.isPresent()) {
                    assertThat(next.get().toPercentMac())
                            .as("seed %d", seed)
                            .isLessThanOrEqualTo(range.fromPercentMac() + 1e-9);
                }
            }
        }
    }

    @Test
    void aCardOfAPlainScaleHasOneColumnAndItsInverse() {
        TrimCard card = TrimCards.card(SampleJet.type(), scale(SLOPE, 0.1, -5, 5), 1, OptionalDouble.empty());
        assertThat(card.byMass()).isFalse();
        assertThat(card.massBands()).hasSize(1);
        assertThat(card.cgBands()).hasSize(10);
        assertThat(card.cgBands().get(5).middle()).isEqualTo(25.5);
        assertThat(card.rows().get(5)).containsExactly(new Cell(Place.USABLE, OptionalDouble.of(0.9)));
        // at 20.5 the scale, which begins at 21, gives nothing
        assertThat(card.rows().get(0)).containsExactly(new Cell(Place.OFF_SCALE, OptionalDouble.empty()));
        // trim changes by 0.2 in a cell: half of it and the rounding of 0.05 at 25.5 (0.9 exactly)
        assertThat(card.coarsenessUnits()).isCloseTo(0.1, within(1e-9));
        assertThat(card.settings().get(0).settingUnits()).isEqualTo(1.8);
        assertThat(card.settings().get(0).cgs().fromPercentMac()).isEqualTo(21);
    }

    @Test
    void aCardOfATableHasAColumnForEachBandOfMass() {
        TrimTable table = new TrimTable(
                Amounts.of(41_000, 60_000), Amounts.of(10, 40), List.of(Amounts.of(3, 0), Amounts.of(4, 1)));
        TrimCard card = TrimCards.card(SampleJet.type(), scale(table, 0.1, 1.6, 2.4), 2, OptionalDouble.of(5000));
        assertThat(card.byMass()).isTrue();
        assertThat(card.settings()).isEmpty();
        for (int i = 0; i < card.rows().size(); i++) {
            for (int j = 0; j < card.massBands().size(); j++) {
                Cell cell = card.rows().get(i).get(j);
                double cg = card.cgBands().get(i).middle();
                double kg = card.massBands().get(j).middle();
                OptionalDouble trim = table.trimUnitsAt(cg, kg);
                if (trim.isEmpty()) {
                    assertThat(cell.place()).isIn(Place.OFF_SCALE, Place.OUTSIDE_ENVELOPE);
                } else if (cell.place() != Place.OUTSIDE_ENVELOPE) {
                    double setting = Math.floor(trim.getAsDouble() * 10 + 0.5) / 10;
                    assertThat(cell.settingUnits().orElseThrow()).isCloseTo(setting, within(1e-9));
                    assertThat(cell.place())
                            .isEqualTo(setting < 1.6 || setting > 2.4 ? Place.OUTSIDE_BAND : Place.USABLE);
                }
            }
        }
        assertThat(card.rows().stream().flatMap(List::stream).map(Cell::place))
                .contains(Place.USABLE, Place.OUTSIDE_BAND);
    }

    @Test
    void cellsThatDoNotTouchTheEnvelopeHoldNoSetting() {
        AircraftType type = SampleJet.type();
        TrimLaw wide = new TrimSlope(new TrimPoint(25, 1), -0.2, new CgRange(0, 60));
        TrimCard card = TrimCards.card(type, scale(wide, 0.1, -5, 5), 3, OptionalDouble.empty());
        assertThat(card.cgBands().get(0).from()).isEqualTo(18);
        assertThat(card.cgBands().get(card.cgBands().size() - 1).to()).isEqualTo(30);
        assertThat(card.rows().stream().flatMap(List::stream).map(Cell::place)).containsOnly(Place.USABLE);
    }

    @Test
    void bandsTooNarrowForAPageAreRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(
                        () -> TrimCards.card(SampleJet.type(), scale(SLOPE, 0.1, -5, 5), 0.01, OptionalDouble.empty()))
                .withMessageContaining("60");
        assertThatIllegalArgumentException()
                .isThrownBy(
                        () -> TrimCards.card(SampleJet.type(), scale(SLOPE, 0.1, -5, 5), 0, OptionalDouble.empty()));
    }
}
