package org.steelyard.run;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.function.Function;
import org.steelyard.balance.Balance;
import org.steelyard.model.input.Field;
import org.steelyard.model.input.SourceForm;
import org.steelyard.model.type.AircraftType;
import org.steelyard.model.type.CabinZone;
import org.steelyard.model.type.Hold;
import org.steelyard.model.type.PassengerCategory;
import org.steelyard.model.type.Tank;
import org.steelyard.run.FormStyle.Column;
import org.steelyard.samples.KnownFlight;

/** Writes known flights of one type at every level of input. */
final class FormWriter {

    private static final long SEED = 4711;

    private final AircraftType type;
    private final List<KnownFlight> flights;

    FormWriter(AircraftType type, List<KnownFlight> flights) {
        this.type = type;
        this.flights = flights;
    }

    /** A table of flights that grows by columns. */
    private final class Wide {
        private final String name;
        private final List<Column> columns = new ArrayList<>();
        private final List<Function<KnownFlight, Object>> cells = new ArrayList<>();

        Wide(String name) {
            this.name = name;
            add(Column.of(Field.FLIGHT), KnownFlight::flight);
            add(Column.of(Field.DATE), KnownFlight::date);
            add(Column.of(Field.TAIL), flight -> flight.tail().registration());
            add(Column.of(Field.FLAPS), flight -> 5);
            add(Column.of(Field.LANDING_FLAPS), flight -> 30);
        }

        Wide add(Column column, Function<KnownFlight, Object> cell) {
            columns.add(column);
            cells.add(cell);
            return this;
        }

        Wide burn() {
            return add(Column.of(Field.TAXI_FUEL), KnownFlight::taxiLb)
                    .add(Column.of(Field.TRIP_FUEL), KnownFlight::tripLb);
        }

        Wide tanks() {
            for (int i = 0; i < type.fuel().tanks().size(); i++) {
                int tank = i;
                add(
                        Column.of(Field.FUEL, type.fuel().tanks().get(i).id()),
                        flight -> flight.tanksLb().get(tank));
            }
            return burn();
        }

        Wide zones() {
            for (int i = 0; i < type.cabin().zones().size(); i++) {
                int zone = i;
                String id = type.cabin().zones().get(i).id();
                for (PassengerCategory category : PassengerCategory.values()) {
                    add(new Column(Field.PASSENGERS, id, category), flight -> flight.persons(zone, category));
                }
            }
            return this;
        }

        Wide persons() {
            for (PassengerCategory category : PassengerCategory.values()) {
                add(new Column(Field.PASSENGERS, "", category), flight -> flight.persons(category));
            }
            return this;
        }

        Wide holds() {
            for (int i = 0; i < type.holds().size(); i++) {
                int hold = i;
                String id = type.holds().get(i).id();
                add(Column.of(Field.HOLD_MASS, id), flight -> flight.cargoLb().get(hold));
                add(Column.of(Field.HOLD_BAGS, id), flight -> flight.bags().get(hold));
            }
            return this;
        }

        Wide load() {
            return add(Column.of(Field.HOLD_MASS), flight -> KnownFlight.sum(flight.cargoLb()))
                    .add(Column.of(Field.HOLD_BAGS), FormWriter::bags);
        }

        Wide fuel() {
            return add(Column.of(Field.FUEL), flight -> KnownFlight.sum(flight.tanksLb()))
                    .burn();
        }

        FormFiles table() {
            List<List<Object>> rows = new ArrayList<>();
            for (KnownFlight flight : flights) {
                List<Object> row = new ArrayList<>();
                cells.forEach(cell -> row.add(cell.apply(flight)));
                rows.add(row);
            }
            return new FormFiles(name, SourceForm.FLIGHTS, columns, rows);
        }
    }

    private static int bags(KnownFlight flight) {
        return flight.bags().stream().mapToInt(Integer::intValue).sum();
    }

    FormFiles detail() {
        return new Wide("detail").zones().holds().tanks().table();
    }

    /** Detail with totals beside it, which must agree. */
    FormFiles detailWithTotals() {
        return new Wide("checked")
                .zones()
                .holds()
                .tanks()
                .persons()
                .load()
                .add(Column.of(Field.FUEL), flight -> KnownFlight.sum(flight.tanksLb()))
                .table();
    }

    FormFiles totals() {
        return new Wide("totals").persons().load().fuel().table();
    }

    FormFiles zonesAndTotals() {
        return new Wide("zones").zones().load().fuel().table();
    }

    FormFiles holdsAndTotals() {
        return new Wide("holds").persons().holds().tanks().table();
    }

    FormFiles zeroFuelStates() {
        return new Wide("zerofuel")
                .add(Column.of(Field.ZERO_FUEL_MASS), flight -> new FormStyle.StateMass(flight.zeroFuel(false)))
                .add(Column.of(Field.ZERO_FUEL_CG), flight -> new FormStyle.StateCg(flight.zeroFuel(false)))
                .tanks()
                .table();
    }

    FormFiles takeoffStates(List<Balance> known) {
        return new Wide("takeoff")
                .add(
                        Column.of(Field.TAKEOFF_MASS),
                        flight -> new FormStyle.StateMass(
                                known.get(flight.number()).takeoff()))
                .add(
                        Column.of(Field.TAKEOFF_CG),
                        flight ->
                                new FormStyle.StateCg(known.get(flight.number()).takeoff()))
                .table();
    }

    /** Flights whose load and fuel stand in items. */
    FormFiles bare() {
        return new Wide("flights").burn().table();
    }

    private static final List<Column> ITEM_COLUMNS = List.of(
            Column.of(Field.FLIGHT),
            Column.of(Field.DATE),
            Column.of(Field.TAIL),
            Column.of(Field.ITEM_ZONE),
            Column.of(Field.ITEM_ROW),
            Column.of(Field.ITEM_HOLD),
            Column.of(Field.ITEM_TANK),
            Column.of(Field.ITEM_KIND),
            Column.of(Field.ITEM_PIECES),
            Column.of(Field.ITEM_MASS));

    /** How finely items tell where they lie. */
    enum Detail {
        ROWS,
        ZONES,
        TOTALS
    }

    /** Items in any order. */
    FormFiles items(Detail detail) {
        List<List<Object>> rows = new ArrayList<>();
        for (KnownFlight flight : flights) {
            persons(flight, detail, rows);
            below(flight, detail != Detail.TOTALS, rows);
            fuel(flight, detail != Detail.TOTALS, rows);
        }
        Collections.shuffle(rows, new Random(SEED));
        return new FormFiles("items", SourceForm.ITEMS, ITEM_COLUMNS, rows);
    }

    private void persons(KnownFlight flight, Detail detail, List<List<Object>> rows) {
        for (int z = 0; z < type.cabin().zones().size(); z++) {
            CabinZone zone = type.cabin().zones().get(z);
            String zoneId = detail == Detail.TOTALS ? null : zone.id();
            for (PassengerCategory category : PassengerCategory.values()) {
                if (detail != Detail.ROWS || category == PassengerCategory.INFANT) {
                    add(rows, flight, zoneId, null, null, null, category.label(), flight.persons(z, category), null);
                }
            }
            for (int r = 0; detail == Detail.ROWS && r < zone.rows().size(); r++) {
                String row = zone.rows().get(r).id();
                flight.rows().get(z).get(r).forEach((category, count) -> {
                    if (count > 0) {
                        add(rows, flight, null, row, null, null, category.label(), count, null);
                    }
                });
            }
        }
    }

    private void below(KnownFlight flight, boolean byHold, List<List<Object>> rows) {
        for (int h = 0; h < type.holds().size(); h++) {
            Hold hold = type.holds().get(h);
            String id = byHold ? hold.id() : null;
            add(rows, flight, null, null, id, null, "bags", flight.bags().get(h), null);
            add(rows, flight, null, null, id, null, "cargo", 1, flight.cargoLb().get(h));
        }
    }

    private void fuel(KnownFlight flight, boolean byTank, List<List<Object>> rows) {
        for (int t = 0; t < type.fuel().tanks().size(); t++) {
            Tank tank = type.fuel().tanks().get(t);
            String id = byTank ? tank.id() : null;
            add(
                    rows,
                    flight,
                    null,
                    null,
                    null,
                    id,
                    "fuel",
                    null,
                    flight.tanksLb().get(t));
        }
    }

    private static void add(
            List<List<Object>> rows,
            KnownFlight flight,
            String zone,
            String row,
            String hold,
            String tank,
            String kind,
            Integer pieces,
            BigDecimal lb) {
        List<Object> cells = new ArrayList<>();
        Collections.addAll(
                cells,
                flight.flight(),
                flight.date(),
                flight.tail().registration(),
                zone,
                row,
                hold,
                tank,
                kind,
                pieces,
                lb);
        rows.add(cells);
    }
}
