package org.steelyard.model.loading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.steelyard.model.input.ColumnMap;
import org.steelyard.model.input.ColumnRule;
import org.steelyard.model.input.ColumnUnit;
import org.steelyard.model.input.DigitGrouping;
import org.steelyard.model.input.Field;
import org.steelyard.model.input.SourceForm;
import org.steelyard.model.policy.LastMinuteRule;
import org.steelyard.model.type.PassengerCategory;
import org.steelyard.model.type.SeatRow;
import org.steelyard.model.type.Tail;
import org.steelyard.samples.Plain;
import org.steelyard.samples.SampleJet;

/** Seat rows, crew by station, last-minute changes and forms of sources cannot be built wrong. */
class ModelRefusesFormsTest {

    private static Arguments refused(String message, ThrowingCallable maker) {
        return arguments(message, maker);
    }

    static Stream<Arguments> wrong() {
        return Stream.of(
                refused("row id", () -> new SeatRow(" ", 3, 2)),
                refused("armM", () -> new SeatRow("1", Double.NaN, 2)),
                refused("at least one seat", () -> new SeatRow("1", 3, 0)),
                refused("row", () -> new SeatRowLoad(-1, 1, 80)),
                refused("seated", () -> new SeatRowLoad(0, -1, 80)),
                refused("row massKg", () -> new SeatRowLoad(0, 1, -80)),
                refused("crew at a station", () -> new CrewStationLoad(-1, OptionalDouble.empty())),
                refused("crew actualKg", () -> new CrewStationLoad(1, OptionalDouble.of(-1))),
                refused("passengers", () -> new LastMinuteRule(-1, 0, 0)),
                refused("massKg", () -> new LastMinuteRule(0, -1, 0)),
                refused("fuelKg", () -> new LastMinuteRule(0, 0, -1)),
                refused("a place counts from 0", () -> new LastMinuteChange.Part(LoadPart.FUEL, -2, 0, 0, 1)),
                refused("change massKg", () -> new LastMinuteChange.Part(LoadPart.FUEL, 0, 0, 0, Double.NaN)),
                refused("passengersKg", () -> new Load.ByHold(Passengers.NONE, OptionalDouble.of(-1), List.of())),
                refused(
                        "field hold-mass cannot stand in a map of the form items",
                        () -> map(SourceForm.ITEMS, Field.HOLD_MASS)),
                refused(
                        "field item-mass cannot stand in a map of the form flights",
                        () -> map(SourceForm.FLIGHTS, Field.ITEM_MASS)));
    }

    private static ColumnMap map(SourceForm form, Field field) {
        ColumnRule rule = new ColumnRule("h", field, "", PassengerCategory.ADULT, ColumnUnit.KG, "", false);
        return Plain.columnMap(
                "m",
                List.of(),
                "",
                Optional.empty(),
                false,
                DigitGrouping.NONE,
                ColumnMap.UnknownColumns.KEEP,
                List.of(rule),
                form,
                "",
                ColumnMap.MergedCells.FIRST_ROW);
    }

    @ParameterizedTest
    @MethodSource("wrong")
    void aWrongValueIsRefusedWithItsReason(String message, ThrowingCallable maker) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> {
                    try {
                        maker.call();
                    } catch (RuntimeException e) {
                        throw e;
                    } catch (Throwable e) {
                        throw new AssertionError(e);
                    }
                })
                .withMessageContaining(message);
    }

    @ParameterizedTest
    @EnumSource(Field.class)
    void everyFieldIsForAtLeastOneForm(Field field) {
        assertThat(field.suits(SourceForm.FLIGHTS) || field.suits(SourceForm.ITEMS))
                .isTrue();
    }

    @Test
    void aTailWithoutASchemeOfItsOwnHasThatOfItsType() {
        Tail tail = SampleJet.loaded().loading().tail();
        assertThat(tail.scheme()).isEqualTo(SampleJet.type().cabin().scheme());
    }

    @Test
    void whatComesAndWhatGoesBothCount() {
        LastMinuteChange change = new LastMinuteChange(List.of(
                new LastMinuteChange.Part(LoadPart.PASSENGERS, 0, -2, -2, -168),
                new LastMinuteChange.Part(LoadPart.PASSENGERS, 1, 2, 2, 168),
                new LastMinuteChange.Part(LoadPart.HOLDS, 0, 0, 0, -40),
                new LastMinuteChange.Part(LoadPart.FUEL, 0, 0, 0, 90),
                new LastMinuteChange.Part(LoadPart.FUEL, 1, 0, 0, -10)));
        assertThat(change.persons()).isEqualTo(4);
        assertThat(change.trafficLoadKg()).isEqualTo(376);
        assertThat(change.fuelKg()).isEqualTo(100);
        assertThat(LastMinuteChange.NONE.isNone()).isTrue();
    }
}
