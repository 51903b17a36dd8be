package org.steelyard.read.text;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.steelyard.model.input.ColumnMap;
import org.steelyard.model.input.ColumnRule;
import org.steelyard.model.input.ColumnUnit;
import org.steelyard.model.input.DigitGrouping;
import org.steelyard.model.input.Field;
import org.steelyard.model.input.RejectedRow;
import org.steelyard.model.loading.Extra;
import org.steelyard.model.loading.Fuel;
import org.steelyard.model.loading.Load;
import org.steelyard.model.loading.Loading;
import org.steelyard.model.type.PassengerCategory;
import org.steelyard.read.row.Fixtures;
import org.steelyard.read.season.ReadAll;
import org.steelyard.samples.Plain;

/** Units in cells and headings, grouped digits, several patterns of dates. */
class WrittenUnitsTest {

    @TempDir
    private Path folder;

    private static ColumnMap map(boolean comma, DigitGrouping grouping, ColumnRule... more) {
        List<ColumnRule> rules = new ArrayList<>(List.of(
                Fixtures.key("Flight", Field.FLIGHT),
                new ColumnRule(
                        "Date",
                        Field.DATE,
                        "",
                        PassengerCategory.ADULT,
                        ColumnUnit.NONE,
                        List.of("dd.MM.uuuu", "d MMM uu", "uuuu-MM-dd'T'HH:mm[:ss]XXX"),
                        true),
                Fixtures.key("Tail", Field.TAIL)));
        rules.addAll(List.of(more));
        return Plain.columnMap(
                "m", List.of(), "", Optional.of(';'), comma, grouping, ColumnMap.UnknownColumns.LEAVE_OUT, rules);
    }

    private static ColumnRule rule(String heading, Field field, ColumnUnit unit) {
        return Fixtures.rule(heading, field, "", unit);
    }

    private ReadAll read(ColumnMap map, String headings, String cells) throws IOException {
        return ReadAll.text(
                folder, "s.csv", "Flight;Date;Tail;" + headings + "\nT1;01.05.2024;SX-BAA;" + cells + "\n", map);
    }

    private static Loading only(ReadAll read) {
        assertThat(read.rejected()).isEmpty();
        return read.accepted().get(0);
    }

    private static List<String> reasons(ReadAll read) {
        return read.rejected().stream()
                .map(RejectedRow::problems)
                .flatMap(List::stream)
                .map(problem -> problem.code().code() + " " + problem.detail())
                .toList();
    }

    /** Factors: 1 lb = 0.45359237 kg (international pound, 1959); 1 US gal = 3.785411784 L; tank density 0.8 kg/L. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "1250 kg   | 1250",
                "1250kg    | 1250",
                "1250 KGS  | 1250",
                "2750 lb   | 1247.3790175",
                "2750 lbs. | 1247.3790175",
                "1.25 t    | 1250",
                "1250 L    | 1000",
                "100 US gal| 302.83294272",
                "100 USG   | 302.83294272",
                "100 imp gal| 363.6872",
            })
    void aCellIsReadWithItsOwnUnit(String cell, double massKg) throws IOException {
        ColumnMap map = map(
                false,
                DigitGrouping.NONE,
                rule("ZFM", Field.ZERO_FUEL_MASS, ColumnUnit.KG),
                rule("CG", Field.ZERO_FUEL_CG, ColumnUnit.PERCENT_MAC),
                rule("Fuel", Field.FUEL, ColumnUnit.IN_CELL),
                rule("Taxi", Field.TAXI_FUEL, ColumnUnit.KG),
                rule("Trip", Field.TRIP_FUEL, ColumnUnit.KG));
        Loading loading = only(read(map, "ZFM;CG;Fuel;Taxi;Trip", "30000;25;" + cell + ";0;0"));
        assertThat(((Fuel.Total) loading.fuel()).totalKg()).isCloseTo(massKg, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({"26.1 %", "26.1% MAC", "26.1 %MAC", "11.044 m", "11044 mm"})
    void aCgIsReadAsPercentOrArm(String cell) throws IOException {
        ColumnMap map = map(
                false,
                DigitGrouping.NONE,
                rule("TOM", Field.TAKEOFF_MASS, ColumnUnit.IN_CELL),
                rule("CG", Field.TAKEOFF_CG, ColumnUnit.IN_CELL));
        Load.TakeoffGiven load =
                (Load.TakeoffGiven) only(read(map, "TOM;CG", "30 t;" + cell)).load();
        assertThat(load.takeoff().massKg()).isEqualTo(30_000);
        assertThat(load.takeoff().armM()).isCloseTo(11.044, within(1e-12));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "1250   | unknown-unit TOM: the unit is missing (value '1250'; expected a number and its unit, one of kg, lb, t)",
                "9 stone| unknown-unit TOM: unknown unit 'stone' (value '9 stone'; expected a number and its unit, one of kg, lb, t)",
                "9 L    | unknown-unit TOM: a unit of another kind: 'L' (value '9 L'; expected a number and its unit, one of kg, lb, t)",
                "9 gal  | unknown-unit TOM: 'gal' may be US or imperial gallons (value '9 gal'; expected a number and its unit, one of kg, lb, t)",
                "1,5 t  | not-a-number TOM: not a number (value '1,5 t'; expected digits with a decimal point, as 12.5, and no thousands separator; a heading map with 'decimal: comma' reads 12,5)",
                "kg     | not-a-number TOM: not a number (value 'kg'; expected digits with a decimal point, as 12.5, and no thousands separator; a heading map with 'decimal: comma' reads 12,5)",
            })
    void aUnitThatIsMissingUnknownOrOfAnotherKindIsNamed(String cell, String reason) throws IOException {
        ColumnMap map = map(
                false,
                DigitGrouping.NONE,
                rule("TOM", Field.TAKEOFF_MASS, ColumnUnit.IN_CELL),
                rule("CG", Field.TAKEOFF_CG, ColumnUnit.PERCENT_MAC));
        assertThat(reasons(read(map, "TOM;CG", cell + ";25"))).containsExactly(reason);
    }

    @Test
    void aTrimWithoutUpOrDownIsRefusedWhereTheCellMustSaySo() throws IOException {
        ColumnMap map = map(
                false,
                DigitGrouping.NONE,
                rule("TOM", Field.TAKEOFF_MASS, ColumnUnit.KG),
                rule("CG", Field.TAKEOFF_CG, ColumnUnit.PERCENT_MAC),
                rule("Trim", Field.RECORDED_TRIM, ColumnUnit.IN_CELL));
        assertThat(only(read(map, "TOM;CG;Trim", "30000;25;1.1 DN")).recordedTrimUnits())
                .hasValue(-1.1);
        assertThat(reasons(read(map, "TOM;CG;Trim", "30000;25;1.1")))
                .containsExactly("unknown-unit Trim: UP or DN is missing (value '1.1'; expected a number without sign"
                        + " followed by UP or DN, as 0.2 UP)");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "TOM (kg) | 30000",
                "TOM [lb] | 13607.7711",
                "tom_t    | 30000000",
                "TOM, kg  | 30000",
                "TOM kgs  | 30000",
            })
    void aHeadingNamesTheUnitOfItsColumn(String heading, double massKg) throws IOException {
        ColumnMap map = map(
                false,
                DigitGrouping.NONE,
                rule("TOM", Field.TAKEOFF_LIMIT, ColumnUnit.IN_HEADING),
                rule("TOM A", Field.TAKEOFF_MASS, ColumnUnit.KG),
                rule("CG", Field.TAKEOFF_CG, ColumnUnit.PERCENT_MAC));
        ReadAll read = read(map, heading + ";TOM A;CG", "30000;30000;25");
        if (massKg <= 1_000_000) {
            assertThat(only(read).performance().takeoffKg().getAsDouble()).isCloseTo(massKg, within(1e-9));
        } else {
            assertThat(reasons(read)).singleElement().asString().startsWith("out-of-range " + heading);
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "TOM      | the heading names no unit",
                "TOM (L)  | the heading names a unit of another kind",
                "TOM (gal)| the heading may mean US or imperial gallons",
            })
    void aHeadingThatOughtToNameItsUnitAndDoesNotIsAFaultOfTheFile(String heading, String reason) throws IOException {
        ColumnMap map = map(false, DigitGrouping.NONE, rule("TOM", Field.TAKEOFF_MASS, ColumnUnit.IN_HEADING));
        assertThat(read(map, heading, "30000").problems())
                .containsExactly("s.csv:1: " + reason + " (value '" + heading
                        + "'; expected the heading and its unit, as Fuel (kg))");
    }

    @Test
    void oneHeadingInTwoUnitsIsRefusedAsTheTwoWouldBeAddedUp() throws IOException {
        ColumnMap map = map(false, DigitGrouping.NONE, rule("Fuel", Field.FUEL, ColumnUnit.IN_HEADING));
        assertThat(read(map, "Fuel kg;Fuel lb", "1000;2205").problems())
                .containsExactly(
                        "s.csv:1: 'Fuel kg' and 'Fuel lb' are both 'Fuel' (value 'Fuel lb'; expected one column"
                                + " for it; the heading map may name both with their units, one as ignored)");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "COMMA      | false | 62,700     | 62700",
                "COMMA      | false | 1,062,700.5| 1062700.5",
                "COMMA      | false | 62700      | 62700",
                "COMMA      | false | 6,27       | NaN",
                "COMMA      | false | 6,2700     | NaN",
                "COMMA      | false | 1062,700   | NaN",
                "COMMA      | false | ,700       | NaN",
                "COMMA      | false | 62,700,    | NaN",
                "COMMA      | false | 1.062,700  | NaN",
                "POINT      | true  | 62.700,25  | 62700.25",
                "POINT      | true  | 62.70      | NaN",
                "BLANK      | true  | 62 700,5   | 62700.5",
                "BLANK      | true  | 62\u00A0700 | 62700",
                "BLANK      | true  | 62\u202F700 | 62700",
                "APOSTROPHE | false | -62\u2019700.5 | -62700.5",
                "NONE       | false | 62 700     | NaN",
            })
    void digitsAreGroupedOnlyAsDeclared(DigitGrouping grouping, boolean comma, String text, double value) {
        char decimal = comma ? ',' : '.';
        assertThat(NumberGrammar.parse(Grouping.without(text, decimal, grouping), decimal, false))
                .isEqualTo(Double.valueOf(value));
    }

    @Test
    void aDecimalCommaAndGroupsStandBesideUnitsInCells() throws IOException {
        ColumnMap map = map(
                true,
                DigitGrouping.BLANK,
                rule("TOM", Field.TAKEOFF_MASS, ColumnUnit.IN_CELL),
                rule("CG", Field.TAKEOFF_CG, ColumnUnit.IN_CELL));
        Load.TakeoffGiven load = (Load.TakeoffGiven)
                only(read(map, "TOM;CG", "31 250,5 kg;26,1 % MAC")).load();
        assertThat(load.takeoff().massKg()).isEqualTo(31_250.5);
        assertThat(reasons(read(map, "TOM;CG", "31.250 kg;26,1 %")))
                .singleElement()
                .asString()
                .contains(
                        "expected digits in groups of three parted by the map's sign (blank), or none, with a decimal comma");
    }

    @ParameterizedTest
    @CsvSource({
        "01.05.2024, 2024-05-01",
        "1 MAY 24, 2024-05-01",
        "2024-05-01T23:30-10:00, 2024-05-01",
        "2024-05-01T00:30:15+12:45, 2024-05-01",
    })
    void severalPatternsOfDatesMayStandInOneColumnAndTheDateIsTheOneThatIsWritten(String cell, LocalDate date)
            throws IOException {
        ColumnMap map = map(
                false,
                DigitGrouping.NONE,
                rule("TOM", Field.TAKEOFF_MASS, ColumnUnit.KG),
                rule("CG", Field.TAKEOFF_CG, ColumnUnit.PERCENT_MAC));
        Loading loading =
                only(ReadAll.text(folder, "s.csv", "Flight;Date;Tail;TOM;CG\nT1;" + cell + ";SX-BAA;30000;25\n", map));
        assertThat(loading.flight().date()).isEqualTo(date);
        assertThat(loading.extras()).containsExactly(new Extra("Date", cell));
    }

    @Test
    void monthsAreEnglishInFullToo() {
        assertThat(new DateFormat("d MMMM uuuu").parse("30 december 2024")).contains(LocalDate.of(2024, 12, 30));
        assertThat(new DateFormat("d MMM uuuu").format(LocalDate.of(2024, 9, 3)))
                .isEqualTo("3 Sep 2024");
        assertThat(new DateFormat("d MMM uuuu").parse("3 Eyl 2024")).isEmpty();
    }
}
