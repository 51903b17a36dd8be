package org.steelyard.read.loading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.steelyard.read.row.Fixtures.MAP;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.steelyard.model.input.ColumnMap;
import org.steelyard.model.input.ColumnUnit;
import org.steelyard.model.input.Field;
import org.steelyard.model.input.RejectedRow;
import org.steelyard.model.loading.Crew;
import org.steelyard.model.loading.Extra;
import org.steelyard.model.loading.FlightIdent;
import org.steelyard.model.loading.FlightSetting;
import org.steelyard.model.loading.Fuel;
import org.steelyard.model.loading.HoldLoad;
import org.steelyard.model.loading.Load;
import org.steelyard.model.loading.Origin;
import org.steelyard.model.loading.Passengers;
import org.steelyard.model.loading.PerformanceLimits;
import org.steelyard.model.loading.ZoneLoad;
import org.steelyard.model.unit.Amounts;
import org.steelyard.read.row.Fixtures;
import org.steelyard.read.row.ParsedRow;
import org.steelyard.read.season.RawRows;
import org.steelyard.read.season.ReadAll;
import org.steelyard.read.season.SourceFile;
import org.steelyard.read.table.ReadOptions;
import org.steelyard.samples.Plain;

class RowParserTest {

    private static final String HEADINGS = "Flight;Date;Tail;Pax A;Hold 1;Fuel;Taxi;Trip";
    private static final String GOOD = "T1;2024-05-01;SX-BAA;10;200;3000;100;1500";

    @TempDir
    private Path folder;

    private ReadAll read(ColumnMap map, String headings, String... rows) throws IOException {
        return ReadAll.text(folder, "s.csv", headings + "\n" + String.join("\n", rows) + "\n", map);
    }

    /** The reasons for the good row with one cell exchanged, or with one more column. */
    private List<String> reasons(String heading, String value) throws IOException {
        List<String> headings = new ArrayList<>(List.of(HEADINGS.split(";")));
        List<String> cells = new ArrayList<>(List.of(GOOD.split(";")));
        if (headings.contains(heading)) {
            cells.set(headings.indexOf(heading), value);
        } else {
            headings.add(heading);
            cells.add(value);
        }
        return read(MAP, String.join(";", headings), String.join(";", cells)).reasons();
    }

    @Test
    void everyFieldOfARowArrivesInTheLoading() throws IOException {
        ReadAll read = read(
                MAP,
                "Flight;Date;Tail;From;To;Flaps;Thrust;Landing flaps;Crew;Cabin crew;Crew kg;Pantry;Pax A;Pax B;Children B;"
                        + "Infants B;Pax A kg;Hold 1;Hold 3;Bags 2;Left;Right;Taxi;Trip;TO limit;L limit;Trim;Pilot;Clerk",
                " T1 ;2024-05-01;sx-baa;QIAA;QIBB;5;to1;30;3;2;250;LONG;10;20;3;2;812.5;200;0;7;1500;1600;100;1500;39000;"
                        + "35000;1.1 dn;Ann;x");
        assertThat(read.accepted())
                .containsExactly(Plain.loading(
                        new Origin("s.csv", "", 2),
                        new FlightIdent("T1", LocalDate.of(2024, 5, 1), "QIAA", "QIBB"),
                        Fixtures.TWIN_TAIL,
                        new FlightSetting("5", "TO1", "30"),
                        new Crew(OptionalInt.of(3), OptionalInt.of(2), OptionalDouble.of(250), "long"),
                        new Load.ByPlace(
                                List.of(
                                        new ZoneLoad(Passengers.adults(10), OptionalDouble.of(812.5)),
                                        new ZoneLoad(new Passengers(0, 0, 20, 3, 2), OptionalDouble.empty())),
                                List.of(new HoldLoad(200, 0), new HoldLoad(0, 7), HoldLoad.EMPTY)),
                        new Fuel.ByTank(Amounts.of(1500, 1600), 100, 1500),
                        new PerformanceLimits(OptionalDouble.of(39_000), OptionalDouble.of(35_000)),
                        OptionalDouble.of(-1.1),
                        List.of(new Extra("Pilot", "Ann"))));
    }

    @Test
    void headingsCompareWithoutCaseAndBlanks() throws IOException {
        ReadAll read = read(
                MAP,
                " FLIGHT ;date;TAIL;pax  a;\u00a0Hold\u00a01;fuel;taxi;TRIP",
                "T1;2024-05-01;SX-BAA;10;200;3000;100;1500");
        assertThat(read.accepted()).hasSize(1);
        assertThat(read.headings()).startsWith("FLIGHT", "date", "TAIL", "pax  a", "Hold\u00a01");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '"',
            value = {
                "Flight ||flight is missing (expected a flight number or name)",
                "Date   ||date is missing (expected a date as yyyy-MM-dd)",
                "Date   |32.13|not a date (value '32.13'; expected a date as yyyy-MM-dd)",
                "Date   |2024-02-30|not a date (value '2024-02-30'; expected a date as yyyy-MM-dd)",
                "Date   |1899-12-31|the year makes no sense (value '1899-12-31'; expected a year from 1900 to 2199)",
                "Tail   ||tail is missing (expected a tail of the fleet)",
                "Tail   |SX-BAX|unknown tail (value 'SX-BAX'; expected a tail of the fleet; nearest SX-BAA, SX-BAB, SX-BAC)",
                "Tail   |nonsense|unknown tail (value 'nonsense'; expected a tail of the fleet)",
                "Pax A  |-1|less than zero (value '-1'; expected a whole number from 0 to 10,000)",
                "Pax A  |1,5|not a number (value '1,5'; expected a whole number from 0 to 10,000)",
                "Pax A  |1.5|not a whole number (value '1.5'; expected a whole number from 0 to 10,000)",
                "Pax A  |10001|out of range (value '10001'; expected a whole number from 0 to 10,000)",
                "Hold 1 |-200|less than zero (value '-200'; expected a mass from 0 to 1,000,000 kg)",
                "Hold 1 |1000000.5|out of range (value '1000000.5'; expected a mass from 0 to 1,000,000 kg)",
                "Hold 1 |NaN|not a number (value 'NaN'; expected digits with a decimal point, as 12.5, and no thousands"
                        + " separator; a heading map with 'decimal: comma' reads 12,5)",
                "Hold 1 |12,5|not a number (value '12,5'; expected digits with a decimal point, as 12.5, and no thousands"
                        + " separator; a heading map with 'decimal: comma' reads 12,5)",
                "Pantry |short|unknown pantry code (value 'short'; expected one of std, long, as the type has them, or blank)",
                "TO limit|0|out of range (value '0'; expected a mass of more than 0 and at most 1,000,000 kg)",
                "Density|0.4|out of range (value '0.4'; expected a density from 0.5 to 1.0 kg/L)",
                "Trim   |91|out of range (value '91'; expected a trim from -90 to 90 units)",
                "Trim   |UP 2|not a trim setting (value 'UP 2'; expected a number, or one without sign followed by UP or DN,"
                        + " as 0.2 UP)",
                "Trim   |-2 UP|not a trim setting (value '-2 UP'; expected a number, or one without sign followed by UP or"
                        + " DN, as 0.2 UP)",
                "Taxi   ||taxi fuel is missing (expected a mass, 0 for none)",
                "Trip   ||trip fuel is missing (expected a mass, 0 for none)",
                "Fuel   ||no fuel is given (expected fuel by tank or in total at the ramp, 0 for none)"
            })
    void aFaultyCellIsOneReason(String heading, String value, String reason) throws IOException {
        assertThat(reasons(heading.strip(), value == null ? "" : value))
                .containsExactly("s.csv:2:" + heading.strip() + ": " + reason);
    }

    @ParameterizedTest
    @CsvSource({
        "5.0, 5, ''",
        "Flaps 5, 5, ''",
        "05, 5, ''",
        "20, 20, TO2",
        "flaps 20.0, 20, MAX",
    })
    void aSettingThatTheTypeHasNoScaleForIsKept(String flaps, String kept, String thrust) throws IOException {
        ReadAll read =
                read(MAP, HEADINGS + ";Flaps;Thrust;Landing flaps", GOOD + ";" + flaps + ";" + thrust + ";" + flaps);
        assertThat(read.accepted())
                .singleElement()
                .satisfies(loading -> assertThat(loading.setting()).isEqualTo(new FlightSetting(kept, thrust, kept)));
    }

    @ParameterizedTest
    @CsvSource({"Pax A, 5.0", "Pax A, 10000", "Hold 1, 0", "Hold 1, 1000000", "Flaps, ''", "Pantry, ''", "Trim, ''"})
    void whatIsUnusualButPossibleIsAccepted(String heading, String value) throws IOException {
        assertThat(reasons(heading, value)).isEmpty();
    }

    @Test
    void allFiveFaultsOfARowAreListedInTheOrderOfItsColumns() throws IOException {
        ReadAll read = read(MAP, HEADINGS, "T1;32.13;SX-BAX;x;-1;3000;100;");
        assertThat(read.reasons())
                .extracting(reason -> reason.substring(0, reason.indexOf('(') - 1))
                .containsExactly(
                        "s.csv:2:Date: not a date",
                        "s.csv:2:Tail: unknown tail",
                        "s.csv:2:Pax A: not a number",
                        "s.csv:2:Hold 1: less than zero",
                        "s.csv:2:Trip: trip fuel is missing");
        RejectedRow row = read.rejected().get(0);
        assertThat(row.cells()).containsExactly("T1", "32.13", "SX-BAX", "x", "-1", "3000", "100", "");
        assertThat(row.headings()).containsExactly(HEADINGS.split(";"));
        assertThat(row.mapName()).isEqualTo("club");
    }

    @Test
    void aFaultyCellIsNoReasonToCallItsLoadMissing() throws IOException {
        assertThat(read(MAP, HEADINGS, "T1;2024-05-01;SX-BAA;x;;3000;100;1500").reasons())
                .hasSize(1)
                .allMatch(reason -> reason.contains("Pax A: not a number"));
    }

    @Test
    void aBadRowStopsNothing() throws IOException {
        ReadAll read = read(MAP, HEADINGS, GOOD, "T2;x;SX-BAA;10;200;3000;100;1500", "", GOOD.replace("T1", "T3"));
        assertThat(read.flights()).containsExactly("T1", "T3");
        assertThat(read.rejected()).hasSize(1);
        assertThat(read.blank()).isEqualTo(1);
        assertThat(read.seen()).isEqualTo(4);
    }

    @Test
    void placesThatTheTypeDoesNotHaveMustBeBlankOrZero() throws IOException {
        String headings = HEADINGS + ";Hold 3;Bags 2;Left";
        assertThat(read(MAP, headings.replace("Fuel;", ""), "T1;2024-05-01;SX-ONE;2;0;10;100;0;;150")
                        .accepted())
                .hasSize(1);
        ReadAll read = read(MAP, headings.replace("Fuel", "Right"), "T1;2024-05-01;SX-ONE;2;;5;10;100;80;3;150");
        assertThat(read.reasons())
                .containsExactly(
                        "s.csv:2:Right: type single has no tank right; it has left (value '5'; expected a blank cell or 0)",
                        "s.csv:2:Hold 3: type single has no hold 3; it has none (value '80'; expected a blank cell or 0)",
                        "s.csv:2:Bags 2: type single has no hold 2; it has none (value '3'; expected a blank cell or 0)");
        ColumnMap odd = Fixtures.with(MAP, Fixtures.rule("Hold 5", Field.HOLD_MASS, "5", ColumnUnit.KG));
        assertThat(read(odd, HEADINGS + ";Hold 5", GOOD + ";80").reasons())
                .containsExactly("s.csv:2:Hold 5: type twin has no hold 5; it has 1, 2, 3"
                        + " (value '80'; expected a blank cell or 0)");
    }

    @Test
    void aTypeWithoutTrimScalesTakesAnyFlapsButNoPantryAndNoCabinCrew() throws IOException {
        String headings = "Flight;Date;Tail;Pax A;Fuel;Taxi;Trip;Flaps;Pantry;Cabin crew";
        assertThat(read(MAP, headings, "T1;2024-05-01;SX-ONE;2;150;10;100;20;;0")
                        .accepted())
                .hasSize(1);
        assertThat(read(MAP, headings, "T1;2024-05-01;SX-ONE;2;150;10;100;20;std;1")
                        .reasons())
                .containsExactly(
                        "s.csv:2:Pantry: unknown pantry code (value 'std'; expected a blank cell:"
                                + " the type has no pantry code)",
                        "s.csv:2:Cabin crew: type single has no seat for cabin crew (value '1';"
                                + " expected a blank cell or 0)");
    }

    @ParameterizedTest
    @CsvSource({
        "0.2 UP, 0.2",
        "1.1DN, -1.1",
        "1.1 dn, -1.1",
        "0 DN, 0",
        "4, 4",
        "-0.5, -0.5",
        "+0.5, 0.5",
        "90, 90",
        "-90, -90"
    })
    void aTrimIsANumberOrHasUpOrDn(String text, double units) throws IOException {
        ReadAll read = read(MAP, HEADINGS + ";Trim", GOOD + ";" + text);
        assertThat(read.accepted().get(0).recordedTrimUnits()).hasValue(units);
    }

    @ParameterizedTest
    @CsvSource({"0.2 UP, 0.2", "1.1 DN, -1.1", "4, -4", "-0.5, 0.5"})
    void inANoseDownColumnBareNumbersTurnRound(String text, double units) throws IOException {
        ColumnMap map = Fixtures.with(MAP, Fixtures.rule("Trim", Field.RECORDED_TRIM, "", ColumnUnit.NOSE_DOWN));
        ReadAll read = read(map, HEADINGS + ";Trim", GOOD + ";" + text);
        assertThat(read.accepted().get(0).recordedTrimUnits()).hasValue(units);
    }

    @Test
    void withDecimalCommaAllNumbersHaveIt() throws IOException {
        ColumnMap map = Fixtures.withDecimalComma(MAP);
        ReadAll read = read(map, HEADINGS + ";Trim", "T1;2024-05-01;SX-BAA;10;200,5;3000,25;100;1500;0,2 UP");
        assertThat(read.accepted().get(0).fuel()).isEqualTo(new Fuel.Total(3000.25, 100, 1500));
        assertThat(read.accepted().get(0).recordedTrimUnits()).hasValue(0.2);
        assertThat(read(map, HEADINGS, GOOD.replace("200", "200.5")).reasons())
                .containsExactly(
                        "s.csv:2:Hold 1: not a number (value '200.5'; expected digits with a decimal comma, as 12,5,"
                                + " and no thousands separator)");
    }

    @Test
    void datesReadByThePatternOfTheirColumn() throws IOException {
        ColumnMap map = Fixtures.with(MAP, Fixtures.date("Date", "dd.MM.yyyy"));
        ReadAll read =
                read(map, HEADINGS, GOOD.replace("2024-05-01", "01.05.2024"), GOOD.replace("2024-05-01", "32.13"));
        assertThat(read.accepted().get(0).flight().date()).isEqualTo("2024-05-01");
        assertThat(read.reasons())
                .containsExactly("s.csv:3:Date: not a date (value '32.13'; expected a date as dd.MM.yyyy)");
    }

    /** Factors of NIST SP 811, appendix B: 1 lb = 0.45359237 kg, 1 US gal = 3.785411784 L; 1 imp gal = 4.54609 L. */
    @ParameterizedTest
    @CsvSource({
        "KG, 1000, 1000",
        "LB, 1000, 453.59237",
        "TONNE, 1.5, 1500",
        "LITRE, 1000, 800",
        "US_GALLON, 1000, 3028.3294272",
        "IMPERIAL_GALLON, 100, 363.6872"
    })
    void fuelIsReadInTheUnitOfItsColumn(ColumnUnit unit, String value, double massKg) throws IOException {
        ColumnMap map = Fixtures.with(MAP, Fixtures.rule("Fuel", Field.FUEL, "", unit));
        Fuel fuel = read(map, HEADINGS, GOOD.replace("3000", value))
                .accepted()
                .get(0)
                .fuel();
        assertThat(((Fuel.Total) fuel).totalKg()).isEqualTo(massKg, org.assertj.core.api.Assertions.within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({"0.72, 720", "'', 800"})
    void volumesTakeTheDensityOfTheRowOrOfTheType(String density, double massKg) throws IOException {
        ReadAll read = read(
                MAP, HEADINGS.replace("Fuel", "Fuel L") + ";Density", GOOD.replace("3000", "1000") + ";" + density);
        OptionalDouble given = density.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(0.72);
        assertThat(read.accepted().get(0).fuel()).isEqualTo(new Fuel.Total(massKg, 100, 1500, given));
    }

    @Test
    void aFaultyDensityIsOneReasonOnly() throws IOException {
        assertThat(read(MAP, HEADINGS.replace("Fuel", "Fuel L") + ";Density", GOOD + ";0,8")
                        .reasons())
                .hasSize(1)
                .allMatch(reason -> reason.startsWith("s.csv:2:Density: not a number"));
    }

    @Test
    void densityInPoundsForAGallonIsConverted() throws IOException {
        ColumnMap map =
                Fixtures.with(MAP, Fixtures.rule("Density", Field.FUEL_DENSITY, "", ColumnUnit.LB_PER_US_GALLON));
        ReadAll read =
                read(map, HEADINGS.replace("Fuel", "Fuel L") + ";Density", GOOD.replace("3000", "1000") + ";6.7");
        Fuel fuel = read.accepted().get(0).fuel();
        assertThat(((Fuel.Total) fuel).totalKg())
                .isEqualTo(6.7 * 0.45359237 / 3.785411784 * 1000, org.assertj.core.api.Assertions.within(1e-9));
    }

    @Test
    void withoutATaxiColumnTaxiFuelIsZeroAndNoted() throws IOException {
        ReadAll read = read(MAP, HEADINGS.replace("Taxi;", ""), GOOD.replace("100;", ""));
        assertThat(read.accepted().get(0).fuel()).isEqualTo(new Fuel.Total(3000, 0, 1500));
        assertThat(read.notes()).containsExactly("there is no column for taxi fuel: it is taken as 0");
    }

    @Test
    void withoutATripColumnEveryRowSaysSo() throws IOException {
        assertThat(read(MAP, HEADINGS.replace(";Trip", ""), GOOD.replace(";1500", ""))
                        .reasons())
                .containsExactly(
                        "s.csv:2: trip fuel is missing; the file has no column for it (expected a mass, 0 for none)");
    }

    @Test
    void columnsWithoutARuleAreLeftOutOrKeptAsTheMapSays() throws IOException {
        String headings = HEADINGS + ";Gate;Clerk;Pilot";
        ReadAll left = read(MAP, headings, GOOD + ";12;x;Ann");
        assertThat(left.accepted().get(0).extras()).containsExactly(new Extra("Pilot", "Ann"));
        assertThat(left.notes()).containsExactly("columns left out: Gate");
        ReadAll kept = read(Fixtures.keepingUnknown(MAP), headings, GOOD + ";12;x;");
        assertThat(kept.accepted().get(0).extras()).containsExactly(new Extra("Gate", "12"), new Extra("Pilot", ""));
        assertThat(kept.notes()).isEmpty();
    }

    @Test
    void blanksAroundCellsDoNotCount() throws IOException {
        ReadAll read = read(MAP, HEADINGS, " T1\u00a0; 2024-05-01 ;\u00a0SX-BAA; 10\t;\u202f200;3000;100;1500 ");
        assertThat(read.flights()).containsExactly("T1");
    }

    @Test
    void severalColumnsOfOneHoldAddUp() throws IOException {
        ColumnMap map = Fixtures.with(MAP, Fixtures.rule("Cargo 1", Field.HOLD_MASS, "1", ColumnUnit.LB));
        ReadAll read = read(map, HEADINGS + ";Cargo 1", GOOD + ";1000");
        Load.ByPlace load = (Load.ByPlace) read.accepted().get(0).load();
        assertThat(load.holds().get(0).massKg()).isEqualTo(200 + 453.59237);
    }

    @Test
    void aLongValueIsShortenedInItsMessageAlone() throws IOException {
        ReadAll read = read(MAP, HEADINGS, GOOD.replace("SX-BAA", "\"x" + "y".repeat(500) + "\nz\""));
        assertThat(read.reasons().get(0)).hasSizeLessThan(250).contains("yyy…'");
        assertThat(read.rejected().get(0).cells().get(2)).hasSize(503);
    }

    @Test
    void oneParserServesSeveralThreads() throws Exception {
        ColumnMap map = Fixtures.with(MAP, Fixtures.date("Date", "dd.MM.yyyy"));
        StringBuilder text = new StringBuilder(HEADINGS).append('\n');
        for (int i = 0; i < 600; i++) {
            text.append(GOOD.replace("T1", "T" + i).replace("2024-05-01", (1 + i % 28) + ".05.2024"))
                    .append('\n');
        }
        Path file = java.nio.file.Files.writeString(folder.resolve("s.csv"), text);
        List<ParsedRow> alone = new ArrayList<>();
        List<Callable<List<ParsedRow>>> tasks = new ArrayList<>();
        try (SourceFile source = SourceFile.open(file, ReadOptions.of(List.of(map)), Fixtures.TAILS)) {
            RawRows rows = source.nextBatch(1000).orElseThrow();
            alone.addAll(rows.parse());
            for (int i = 0; i < 8; i++) {
                tasks.add(rows::parse);
            }
        }
        ExecutorService workers = Executors.newFixedThreadPool(4);
        try {
            for (Future<List<ParsedRow>> result : workers.invokeAll(tasks)) {
                assertThat(result.get()).hasSize(600).isEqualTo(alone);
            }
        } finally {
            workers.shutdown();
            assertThat(workers.awaitTermination(10, TimeUnit.SECONDS)).isTrue();
        }
    }
}
