package org.steelyard.read.loading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.steelyard.model.input.ColumnMap;
import org.steelyard.model.input.ColumnRule;
import org.steelyard.model.input.ColumnUnit;
import org.steelyard.model.input.DigitGrouping;
import org.steelyard.model.input.Field;
import org.steelyard.model.input.InputProblem;
import org.steelyard.model.input.SourceForm;
import org.steelyard.model.loading.CrewStationLoad;
import org.steelyard.model.loading.Fuel;
import org.steelyard.model.loading.HoldLoad;
import org.steelyard.model.loading.Load;
import org.steelyard.model.loading.Loading;
import org.steelyard.model.loading.Passengers;
import org.steelyard.model.loading.SeatRowLoad;
import org.steelyard.model.loading.ZoneLoad;
import org.steelyard.model.type.AircraftType;
import org.steelyard.model.type.Cabin;
import org.steelyard.model.type.CabinZone;
import org.steelyard.model.type.SeatRow;
import org.steelyard.model.unit.Amounts;
import org.steelyard.model.unit.MassMoment;
import org.steelyard.read.row.Fixtures;
import org.steelyard.read.row.ParsedRow;
import org.steelyard.read.row.Tails;
import org.steelyard.read.season.RawRows;
import org.steelyard.read.season.SeasonFiles;
import org.steelyard.read.season.SourceFile;
import org.steelyard.read.table.ReadOptions;
import org.steelyard.samples.Plain;

/** The long form: rows of items become the load of the flights that stand in other files. */
class ItemsTest {

    private static final String FLIGHTS = "Flight;Date;Tail;Pax A;Hold 1;Left;Pax;Load;Fuel;Taxi;Trip;Density\n";
    private static final String ITEMS = "Flight;Date;Reg;Zone;Row;Hold;Tank;Station;Place;What;Pieces;kg\n";
    private static final ColumnMap ITEM_MAP = items(
            "items",
            Fixtures.key("Flight", Field.FLIGHT),
            Fixtures.text("Date", Field.DATE),
            Fixtures.text("Reg", Field.TAIL),
            Fixtures.text("Zone", Field.ITEM_ZONE),
            Fixtures.text("Row", Field.ITEM_ROW),
            Fixtures.text("Hold", Field.ITEM_HOLD),
            Fixtures.text("Tank", Field.ITEM_TANK),
            Fixtures.text("Station", Field.ITEM_STATION),
            Fixtures.text("Place", Field.ITEM_PLACE),
            Fixtures.text("What", Field.ITEM_KIND),
            Fixtures.text("Pieces", Field.ITEM_PIECES),
            Fixtures.rule("kg", Field.ITEM_MASS, "", ColumnUnit.KG),
            Fixtures.rule("L", Field.ITEM_MASS, "", ColumnUnit.LITRE));

    /** The twin with rows 1 to 10 in zone A, 0.8 m apart from 4 m on; zone B has no row table. */
    private static final AircraftType ROWS = withRows();

    private static final Tails TAILS = Tails.of(List.of(
            Plain.tail("SX-BAA", ROWS, MassMoment.at(22_000, 11)),
            Plain.tail("SX-BAB", ROWS, MassMoment.at(22_000, 11)),
            Fixtures.SINGLE_TAIL));

    @TempDir
    private Path folder;

    private static AircraftType withRows() {
        AircraftType twin = Fixtures.TWIN;
        List<SeatRow> rows = new ArrayList<>();
        for (int row = 1; row <= 10; row++) {
            rows.add(new SeatRow(Integer.toString(row), 4 + 0.8 * (row - 1), 4));
        }
        Cabin cabin = twin.cabin();
        return Plain.aircraftType(
                twin.id(),
                twin.name(),
                twin.geometry(),
                twin.limits(),
                new Cabin(
                        List.of(
                                new CabinZone("A", "front", 8, 40, rows),
                                cabin.zones().get(1)),
                        cabin.crewStations(),
                        2,
                        2,
                        cabin.pantries(),
                        cabin.scheme()),
                twin.holds(),
                twin.groups(),
                twin.fuel(),
                twin.envelopes(),
                twin.trimScales());
    }

    private static ColumnMap items(String name, ColumnRule... rules) {
        return Plain.columnMap(
                name,
                List.of("items*"),
                "",
                Optional.empty(),
                false,
                DigitGrouping.NONE,
                ColumnMap.UnknownColumns.LEAVE_OUT,
                List.of(rules),
                SourceForm.ITEMS,
                "",
                ColumnMap.MergedCells.FIRST_ROW);
    }

    /** All that came of a season of several files. */
    private record Season(List<Loading> flights, int items, int blank, int seen, List<String> reasons) {

        Loading flight() {
            assertThat(reasons).isEmpty();
            assertThat(flights).hasSize(1);
            return flights.get(0);
        }

        Load.ByPlace byPlace() {
            return (Load.ByPlace) flight().load();
        }
    }

    /** Reads flights and items as a run does; files are in the order of their names. */
    private Season read(String... namesAndTexts) throws IOException {
        List<Path> files = new ArrayList<>();
        for (int i = 0; i < namesAndTexts.length; i += 2) {
            files.add(
                    Files.writeString(folder.resolve(namesAndTexts[i]), namesAndTexts[i + 1], StandardCharsets.UTF_8));
        }
        Collections.sort(files);
        ReadOptions options = ReadOptions.of(List.of(Fixtures.forFiles(Fixtures.MAP, "flights*"), ITEM_MAP));
        SeasonFiles season = SeasonFiles.of(files, options, TAILS);
        List<Loading> flights = new ArrayList<>();
        List<String> reasons = new ArrayList<>();
        int[] counts = new int[3];
        for (Path file : season.inOrder()) {
            try (SourceFile source = season.open(file)) {
                Optional<RawRows> rows = source.nextBatch(2);
                while (rows.isPresent()) {
                    counts[2] += rows.get().rows().size();
                    rows.get().parse().forEach(row -> take(row, flights, reasons, counts));
                    rows = source.nextBatch(2);
                }
                assertThat(source.problems()).isEmpty();
            }
        }
        return new Season(flights, counts[0], counts[1], counts[2], reasons);
    }

    private static void take(ParsedRow row, List<Loading> flights, List<String> reasons, int[] counts) {
        if (row instanceof ParsedRow.Accepted accepted) {
            flights.add(accepted.loading());
        } else if (row instanceof ParsedRow.Item) {
            counts[0]++;
        } else if (row instanceof ParsedRow.Rejected rejected) {
            rejected.row().problems().stream().map(InputProblem::message).forEach(reasons::add);
        } else {
            counts[1]++;
        }
    }

    private static String flight(String cells) {
        return "T1;2024-05-01;SX-BAA;" + cells + "\n";
    }

    private static String item(String cells) {
        return "T1;2024-05-01;SX-BAA;" + cells + "\n";
    }

    /** One flight without any load of its own, with fuel in total. */
    private Season one(String... items) throws IOException {
        StringBuilder text = new StringBuilder(ITEMS);
        for (String cells : items) {
            text.append(item(cells));
        }
        return read("flights.csv", FLIGHTS + flight(";;;;;3000;100;1500;"), "items.csv", text.toString());
    }

    @Test
    void itemsMakeTheLoadOfTheirFlight() throws IOException {
        Season season = one(
                "A;;;;;;male;3;",
                "B;;;;;;female;2;",
                "B;;;;;;infant;1;",
                "A;;;;;;child;;",
                ";;1;;;;bags;14;",
                ";;1;;;;cargo;2;250.5",
                ";;3;;;;;;90");
        Load.ByPlace load = season.byPlace();
        assertThat(load.zones())
                .containsExactly(
                        new ZoneLoad(new Passengers(3, 0, 0, 1, 0), OptionalDouble.empty()),
                        new ZoneLoad(new Passengers(0, 2, 0, 0, 1), OptionalDouble.empty()));
        assertThat(load.holds()).containsExactly(new HoldLoad(250.5, 14), HoldLoad.EMPTY, new HoldLoad(90, 0));
        assertThat(season.items()).isEqualTo(7);
        assertThat(season.seen()).isEqualTo(8);
    }

    @Test
    void theOrderOfItemsAndFilesDoesNotMatter() throws IOException {
        List<String> items = new ArrayList<>(List.of(
                item(";3;;;;;male;2;"),
                item("B;;;;;;;5;"),
                item(";;2;;;;bags;7;"),
                item(";;;left;;;;;900"),
                item(";;;right;;;fuel;;800"),
                item(";3;;;;;child;1;"),
                item(";;2;;;;cargo;;33.25")));
        String flights = FLIGHTS + flight(";;;;;;100;1500;");
        Loading first = read("flights.csv", flights, "items.csv", ITEMS + String.join("", items))
                .flight();
        for (int seed = 0; seed < 5; seed++) {
            Collections.shuffle(items, new Random(seed));
            Loading other = read(
                            "flights.csv",
                            flights,
                            "items.csv",
                            ITEMS + String.join("", items.subList(0, 3)),
                            "items2.csv",
                            ITEMS + String.join("", items.subList(3, items.size())))
                    .flight();
            assertThat(other).as("seed " + seed).isEqualTo(first);
        }
        assertThat(first.fuel()).isEqualTo(new Fuel.ByTank(Amounts.of(900, 800), 100, 1500));
    }

    @Test
    void aSeatRowCountsAtItsOwnArmWhereTheTypeHasARowTableElseAtTheZones() throws IOException {
        Load.ByPlace load =
                one(";2;;;;;male;3;", "A;10C;;;;;;1;95", "B;14;;;;;female;2;").byPlace();
        assertThat(load.zones().get(0).rows())
                .containsExactly(new SeatRowLoad(1, 3, 3 * 88), new SeatRowLoad(9, 1, 95));
        assertThat(load.zones().get(0).massKg(ROWS.cabin().scheme())).isEqualTo(3 * 88 + 95);
        assertThat(load.zones()
                        .get(0)
                        .momentKgM(ROWS.cabin().scheme(), ROWS.cabin().zones().get(0)))
                .isEqualTo(3 * 88 * 4.8 + 95 * 11.2, within(1e-9));
        assertThat(load.zones().get(1).rows()).isEmpty();
        assertThat(load.zones().get(1).passengers()).isEqualTo(new Passengers(0, 2, 0, 0, 0));
    }

    @Test
    void actualMassesStandBesideStandardOnes() throws IOException {
        Load.ByPlace load = one("A;;;;;;male;2;", "A;;;;;;adult;1;104.5", "A;;;;;;cargo;;40")
                .byPlace();
        assertThat(load.zones().get(0).passengers()).isEqualTo(new Passengers(2, 0, 1, 0, 0));
        assertThat(load.zones().get(0).actualKg()).hasValue(2 * 88 + 104.5 + 40);
    }

    @Test
    void itemsWithoutAPlaceAddToTotals() throws IOException {
        Loading flight = read(
                        "flights.csv",
                        FLIGHTS + flight(";;;;;;100;1500;"),
                        "items.csv",
                        ITEMS
                                + item(";;;;;;pax;50;")
                                + item(";;;;;;INF;2;")
                                + item(";;;;;;bag;31;")
                                + item(";;;;;;freight;;300")
                                + item(";;;;;;fuel;;2000"))
                .flight();
        assertThat(flight.load())
                .isEqualTo(
                        new Load.Totals(new Passengers(0, 0, 50, 0, 2), OptionalDouble.empty(), new HoldLoad(300, 31)));
        assertThat(flight.fuel()).isEqualTo(new Fuel.Total(2000, 100, 1500));
    }

    @Test
    void oneColumnOfPlacesServesForAllKinds() throws IOException {
        Season season = one(";;;;;A;;4;", ";;;;;2;bags;3;", ";;;;;2;female;2;", ";;;;;cockpit;;3;280");
        Load.ByPlace load = season.byPlace();
        assertThat(load.holds().get(1)).isEqualTo(new HoldLoad(0, 3));
        assertThat(load.zones().get(0).passengers()).isEqualTo(new Passengers(0, 2, 4, 0, 0));
        assertThat(load.zones().get(0).rows()).containsExactly(new SeatRowLoad(1, 2, 140));
        assertThat(season.flight().crew().at(0)).hasValue(new CrewStationLoad(3, OptionalDouble.of(280)));
        assertThat(season.flight().crew().at(1)).isEmpty();
    }

    @Test
    void fuelByVolumeTakesTheDensityOfTheFlight() throws IOException {
        String litres = "Flight;Tank;L\nT1;left;1000\nT1;right;500\n";
        assertThat(read("flights.csv", FLIGHTS + flight("3;;;;;;100;1500;0.75"), "items.csv", litres)
                        .flight()
                        .fuel())
                .isEqualTo(new Fuel.ByTank(Amounts.of(750, 375), 100, 1500, OptionalDouble.of(0.75)));
        assertThat(read("flights.csv", FLIGHTS + flight("3;;;;;;100;1500;"), "items.csv", litres)
                        .flight()
                        .fuel())
                .isEqualTo(new Fuel.ByTank(Amounts.of(800, 400), 100, 1500));
    }

    @Test
    void massAndVolumeMayHaveAColumnEachButAnItemHasOneOfThem() throws IOException {
        String flights = FLIGHTS + flight("3;;;;;;100;1500;");
        String both = "Flight;Tank;Hold;kg;L\nT1;left;;;1000\nT1;right;;700;\nT1;;1;300;\n";
        Loading flight = read("flights.csv", flights, "items.csv", both).flight();
        assertThat(flight.fuel()).isEqualTo(new Fuel.ByTank(Amounts.of(800, 700), 100, 1500));
        assertThat(read("flights.csv", flights, "items.csv", both + "T1;left;;8;10\n")
                        .reasons())
                .contains(
                        "items.csv:5:kg: the mass of the item is given twice (value '8'; expected one cell with its mass"
                                + " or volume)");
    }

    @Test
    void totalsOfTheFlightAreACheckOfItsItems() throws IOException {
        String items = ITEMS + item("A;;;;;;;4;") + item("B;;;;;;;5;") + item(";;1;;;;;;70.4") + item(";;2;;;;;;80.3");
        assertThat(read("flights.csv", FLIGHTS + flight(";;;9;151;3000;100;1500;"), "items.csv", items)
                        .byPlace()
                        .zones())
                .hasSize(2);
        Season wrong = read("flights.csv", FLIGHTS + flight(";;;10;155;3000;100;1500;"), "items.csv", items);
        assertThat(wrong.reasons())
                .containsExactly(
                        "flights.csv:2:Pax: differs from the sum of passengers by zone (load items), which is 9"
                                + " (value '10'; expected the same sum, or one of the two blank)",
                        "flights.csv:2:Load: differs from the sum of mass by hold (load items), which is 150.7 kg"
                                + " (value '155'; expected the same sum, or one of the two blank)");
        assertThat(wrong.items()).isEqualTo(4);
    }

    @Test
    void aPartOfTheLoadMayStandInColumnsAndAnotherInItems() throws IOException {
        Load.ByPlace load = read(
                        "flights.csv",
                        FLIGHTS + flight("7;;;;;3000;100;1500;"),
                        "items.csv",
                        ITEMS + item(";;1;;;;;6;"))
                .byPlace();
        assertThat(load.zones().get(0).passengers()).isEqualTo(Passengers.adults(7));
        assertThat(load.holds().get(0)).isEqualTo(new HoldLoad(0, 6));
    }

    @Test
    void theSamePartInColumnsAndInItemsIsAContradiction() throws IOException {
        Season season = read(
                "flights.csv",
                FLIGHTS + flight("7;200;1000;;;;100;1500;"),
                "items.csv",
                ITEMS + item(";;1;;;;;6;") + item("B;;;;;;;2;") + item(";;;left;;;;;900"));
        assertThat(season.flights()).isEmpty();
        assertThat(season.items()).isEqualTo(3);
        String expected = "expected only one of them; a total beside items by place is a check, and the heading map may"
                + " declare a column as extra or ignored)";
        assertThat(season.reasons())
                .containsExactly(
                        "flights.csv:2:Pax A: passengers by zone beside load items of the same part of the load"
                                + " (value '7'; " + expected,
                        "flights.csv:2:Hold 1: mass by hold beside load items of the same part of the load"
                                + " (value '200'; " + expected,
                        "flights.csv:2:Left: fuel by tank beside load items of the same part of the load"
                                + " (value '1000'; " + expected);
    }

    @Test
    void aGivenStateBesideItemsIsAContradiction() throws IOException {
        Season season = read(
                "flights.csv",
                "Flight;Date;Tail;ZFM;ZFCG;Fuel;Taxi;Trip\nT1;2024-05-01;SX-BAA;30000;25;3000;0;1000\n",
                "items.csv",
                ITEMS + item("A;;;;;;;2;"));
        assertThat(season.reasons())
                .containsExactly(
                        "flights.csv:2:ZFM: both zero-fuel mass ('ZFM') and passengers by zone (load items) are"
                                + " given (value '30000'; expected only one of them; the heading map may declare the other as"
                                + " extra or ignored)");
    }

    @Test
    void anItemWithoutAFlightIsRejected() throws IOException {
        Season season = read(
                "flights.csv",
                FLIGHTS + flight("7;;;;;3000;100;1500;"),
                "items.csv",
                ITEMS + "T2;2024-05-01;SX-BAA;;;1;;;;bags;3;\nT1;2024-05-02;SX-BAA;;;1;;;;bags;3;\n\n"
                        + item(";;1;;;;bags;3;"));
        assertThat(season.flights()).hasSize(1);
        assertThat(season.items()).isEqualTo(1);
        assertThat(season.blank()).isEqualTo(1);
        assertThat(season.seen()).isEqualTo(1 + 1 + 2 + 1);
        String expected = "expected a row with the same flight, date and tail in a file of flights of this season)";
        assertThat(season.reasons())
                .containsExactly(
                        "items.csv:2:Flight: no flight for this item (value 'T2'; " + expected,
                        "items.csv:3:Flight: no flight for this item (value 'T1'; " + expected);
    }

    @Test
    void twoFlightsThatTheItemsCannotTellApartAreNotBothLoaded() throws IOException {
        Season season = read(
                "flights.csv",
                FLIGHTS + flight(";;;;;3000;100;1500;") + "T1;2024-05-02;SX-BAA;;;;;;3000;100;1500;\n",
                "items.csv",
                "Flight;Hold;What;Pieces\nt1;1;bags;3\n");
        assertThat(season.flights()).hasSize(1);
        assertThat(season.reasons())
                .containsExactly("flights.csv:3: its load items belong to the flight of flights.csv:2 already"
                        + " (expected one flight for each item: flights that differ in a column that the items have,"
                        + " too)");
    }

    @Test
    void aFlightWithAnItemThatCannotBeUsedIsNotCountedInPart() throws IOException {
        Season season = one("A;;;;;;male;3;", "A;;;;;;alien;3;", ";;9;;;;bags;2;");
        assertThat(season.flights()).isEmpty();
        assertThat(season.items()).isEqualTo(1);
        assertThat(season.reasons())
                .containsExactly(
                        "flights.csv:2: its load item at items.csv:3 cannot be used, so its load is not complete"
                                + " (expected an item that can be used; its reason stands with the item)",
                        "items.csv:3:What: unknown kind of item (value 'alien'; expected male, female, adult, child,"
                                + " infant, bags, cargo, fuel or crew, or a blank cell where the place says it)",
                        "items.csv:4:Hold: type twin has no such hold (value '9'; expected one of 1, 2, 3)");
        assertThat(one("A;;;;;;male;3;", ";;9;;;;bags;2;").reasons())
                .containsExactly(
                        "flights.csv:2: one of its load items cannot be used: type twin has no such hold '9'"
                                + " (expected one of 1, 2, 3)",
                        "items.csv:3:Hold: type twin has no such hold (value '9'; expected one of 1, 2, 3)");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "';;;;;;;2;'|neither place nor kind of the item is given (expected a place, or male, female, adult,"
                        + " child, infant, bags, cargo, fuel or crew)",
                "';;1;;;;cargo;2;'|kg: cargo without its mass (expected a mass, 0 for none)",
                "';;;left;;;;;'|kg: fuel without its mass (expected a mass or volume, 0 for none)",
                "';;1;;;;bags;3;0'|kg: an actual mass of 0 for 3 bags (value '0'; expected their mass, or a blank cell"
                        + " for standard masses)",
                "'A;;1;;;;bags;3;'|Zone: both zone of the item ('Zone') and hold of the item ('Hold') are given"
                        + " (value 'A'; expected only one of them; the heading map may declare the other as extra or"
                        + " ignored)",
                "';;1;;;;child;3;'|What: child cannot be in a hold (value 'child'; expected passengers in zones and seat"
                        + " rows, bags and cargo in holds or zones, fuel in tanks, crew at crew stations)",
                "';;;;;;crew;3;'|What: crew cannot be given without a place (value 'crew'; expected passengers in zones"
                        + " and seat rows, bags and cargo in holds or zones, fuel in tanks, crew at crew stations)",
                "';14;;;;;;1;'|Row: type twin has no such seat row (value '14'; expected one of 1 to 10)",
                "'B;4;;;;;;1;'|Zone: seat row 4 of type twin is in zone A (value 'B'; expected A, or a blank cell)",
                "';;;;;quay;bags;1;'|Place: type twin has no such place (value 'quay'; expected one of zones A, B; holds"
                        + " 1, 2, 3; tanks left, right; crew stations cockpit, jump; seat rows 1 to 10)",
                "'A;;;;;;;1.5;'|Pieces: not a whole number (value '1.5'; expected a whole number from 0 to 10,000)",
                "'A;;;;;;;;x'|kg: not a number (value 'x'; expected digits with a decimal point, as 12.5, and no thousands"
                        + " separator; a heading map with 'decimal: comma' reads 12,5)"
            })
    void anItemThatCannotBeUsedSaysWhy(String cells, String reason) throws IOException {
        assertThat(one(cells).reasons()).contains("items.csv:2:" + (reason.startsWith("neither") ? " " : "") + reason);
    }

    /** Items without date and tail look most like totals; the second row's pieces are the sum of those above. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "'Total;;;12;'|3|0",
                "';;;12;'|3|0",
                "'Flight;Hold;What;Pieces;kg'|3|0",
                "'T1;1;;12;'|4|0",
                "'T1;;bags;12;'|4|0",
                "';1;bags;12;'|3|1",
                "';;bags;12;'|3|1",
                "';;;13;'|3|1",
                "'T1;;;12;'|3|1",
                "'Total;1;;12;'|3|1",
                "'Sum 1;;bags;12;'|3|1"
            })
    void aTotalsRowIsNoItemAndAnItemIsNoTotalsRow(String row, int items, int rejectedItems) throws IOException {
        Season season = read(
                "flights.csv",
                FLIGHTS + flight(";;;;;3000;100;1500;"),
                "items.csv",
                "Flight;Hold;What;Pieces;kg\nT1;1;bags;5;\nT1;2;bags;4;\nT1;3;;3;\n" + row + "\n");
        assertThat(season.items()).isEqualTo(items);
        assertThat(season.reasons().stream()
                        .filter(reason -> reason.startsWith("items.csv:5:"))
                        .limit(1))
                .hasSize(rejectedItems);
        assertThat(season.seen()).isEqualTo(5);
    }

    @Test
    void manyItemsTakeNoMoreRoomThanTheirSums() throws IOException {
        FlightItems items = new FlightItems(new ItemPlaces());
        for (int i = 0; i < 10_000; i++) {
            ItemPlace place = new ItemPlace(ItemPlace.Kind.HOLD, Integer.toString(i % 5), "");
            items.add(new LoadItem(place, ItemKind.BAGS, LoadItem.Measure.STANDARD, 1, 0));
        }
        assertThat(items.size()).isEqualTo(5);
        assertThat(items.at(3).pieces()).isEqualTo(2000);
        assertThat(items.items(3)).isEqualTo(2000);
    }
}
