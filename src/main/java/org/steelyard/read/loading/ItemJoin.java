package org.steelyard.read.loading;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.steelyard.model.input.Field;
import org.steelyard.model.input.PartSlot;
import org.steelyard.model.input.ProblemCode;
import org.steelyard.model.input.Slot;
import org.steelyard.model.loading.SeatRowLoad;
import org.steelyard.model.type.AircraftType;
import org.steelyard.model.type.MassScheme;
import org.steelyard.model.type.PassengerCategory;
import org.steelyard.read.row.DetailLevels;
import org.steelyard.read.row.LoadRules;
import org.steelyard.read.row.RowDraft;

/** Adds the load items of a flight to the draft of its row, as if they stood there in columns. */
final class ItemJoin {

    private static final List<Long> PARTS = List.of(
            LoadRules.ZONES,
            LoadRules.ALL_SEATS,
            LoadRules.HOLDS,
            LoadRules.ALL_HOLDS,
            Field.FUEL.bit(),
            PartSlot.ALL_FUEL.bit(),
            Slot.bits(Field.CREW, Field.CREW_MASS));

    /** What the persons of one zone, or of the whole cabin, weigh, and where their rows are known. */
    private static final class Seats {
        private double massKg;
        private boolean actual;
        private final double[] rowKg;
        private final int[] rowSeated;

        Seats(int rows) {
            rowKg = new double[rows];
            rowSeated = new int[rows];
        }
    }

    private final FlightItems items;
    private final RowDraft row;
    private final MassScheme scheme;
    private final double densityKgPerL;
    private final AircraftType type;
    private final long columns;
    private long itemSlots;

    private ItemJoin(FlightItems items, RowDraft row, MassScheme scheme, double densityKgPerL, AircraftType type) {
        this.items = items;
        this.row = row;
        this.scheme = scheme;
        this.densityKgPerL = densityKgPerL;
        this.type = type;
        columns = row.loadedSlots();
    }

    /** Joins the items of a row's flight, unless they are another flight's; what is wrong is in the draft. */
    static void join(
            FlightItems items,
            Optional<ItemClaim> others,
            ItemBook book,
            RowDraft row,
            MassScheme scheme,
            double densityKgPerL) {
        if (others.isPresent()) {
            row.refuseItems(
                    ProblemCode.CONTRADICTION,
                    "its load items belong to the flight of " + others.get().row() + " already",
                    "one flight for each item: flights that differ in a column that the items have, too");
        } else if (items.fault().isPresent()) {
            row.refuseItems(
                    ProblemCode.CONTRADICTION,
                    "its load item at " + items.fault().get() + " cannot be used, so its load is not complete",
                    "an item that can be used; its reason stands with the item");
        } else if (row.plan().type().isPresent()) {
            AircraftType type = row.plan().type().get();
            new ItemJoin(items, row, scheme, densityKgPerL, type).add(book.plan(type));
        }
    }

    private void add(ItemPlan plan) {
        List<Seats> zones = new ArrayList<>();
        type.cabin().zones().forEach(zone -> zones.add(new Seats(zone.rows().size())));
        Seats all = new Seats(0);
        double[] stationKg = new double[type.cabin().crewStations().size()];
        boolean[] stationActual = new boolean[stationKg.length];
        for (int i = 0; i < items.size(); i++) {
            LoadItem item = items.at(i);
            try {
                ItemSpot spot = plan.find(item);
                switch (spot.where()) {
                    case ZONE, ROW -> seat(zones.get(spot.index()), item, spot, spot.index(), items.items(i));
                    case STATION -> station(item, spot, items.items(i), stationKg, stationActual);
                    case HOLD -> below(item, spot, Field.HOLD_MASS, Field.HOLD_BAGS, items.items(i));
                    case TANK -> fuel(item, Field.FUEL, spot.index(), items.items(i));
                    case NAMED, ANYWHERE -> anywhere(all, item, spot, items.items(i));
                }
            } catch (ItemRefusal refusal) {
                row.refuseItems(
                        refusal.code(),
                        "one of its load items cannot be used: " + refusal.getMessage()
                                + (refusal.value().isEmpty() ? "" : " '" + refusal.value() + "'"),
                        refusal.expected());
            }
        }
        finish(zones, all, stationKg, stationActual);
    }

    private void anywhere(Seats all, LoadItem item, ItemSpot spot, int figures) {
        if (spot.kind() == ItemKind.FUEL) {
            fuel(item, PartSlot.ALL_FUEL, -1, figures);
        } else if (spot.kind().category().isPresent()) {
            seat(all, item, spot, -1, figures);
        } else {
            below(item, spot, PartSlot.ALL_HOLD_MASS, PartSlot.ALL_BAGS, figures);
        }
    }

    /** Persons, or bags and cargo on seats, which have a mass alone. */
    private void seat(Seats seats, LoadItem item, ItemSpot spot, int zone, int figures) {
        boolean persons = spot.kind().category().isPresent();
        boolean actual = item.measure() == LoadItem.Measure.KG;
        double eachKg = persons ? scheme.massKg(spot.kind().category().orElseThrow()) : scheme.bagKg();
        double massKg = actual ? item.amount() : item.pieces() * eachKg;
        seats.massKg += massKg;
        seats.actual |= actual || !persons;
        int seated = 0;
        if (persons) {
            PassengerCategory category = spot.kind().category().orElseThrow();
            boolean infant = category == PassengerCategory.INFANT;
            seated = infant ? 0 : item.pieces();
            Slot slot = zone < 0
                    ? infant ? PartSlot.ALL_INFANTS : PartSlot.ALL_COUNT
                    : infant ? PartSlot.ZONE_INFANTS : Field.PASSENGERS;
            note(slot);
            row.addItems(slot, zone, category, item.pieces(), figures);
        }
        if (spot.row() >= 0) {
            seats.rowKg[spot.row()] += massKg;
            seats.rowSeated[spot.row()] += seated;
        }
    }

    private void below(LoadItem item, ItemSpot spot, Slot mass, Slot bags, int figures) {
        boolean counted = item.measure() == LoadItem.Measure.STANDARD;
        Slot slot = counted ? bags : mass;
        note(slot);
        add(slot, spot.index(), counted ? item.pieces() : item.amount(), figures);
    }

    private void fuel(LoadItem item, Slot slot, int tank, int figures) {
        boolean volume = item.measure() == LoadItem.Measure.LITRE;
        note(slot);
        add(slot, tank, volume ? item.amount() * densityKgPerL : item.amount(), figures);
    }

    private void station(LoadItem item, ItemSpot spot, int figures, double[] stationKg, boolean[] actual) {
        boolean weighed = item.measure() == LoadItem.Measure.KG;
        note(Field.CREW);
        add(Field.CREW, spot.index(), item.pieces(), figures);
        stationKg[spot.index()] += weighed
                ? item.amount()
                : item.pieces()
                        * scheme.massKg(
                                type.cabin().crewStations().get(spot.index()).role());
        actual[spot.index()] |= weighed;
    }

    private void add(Slot slot, int place, double value, int figures) {
        if (place < 0) {
            row.addItems(slot, value, figures);
        } else {
            row.addItems(slot, place, value, figures);
        }
    }

    private void note(Slot slot) {
        itemSlots |= slot.bit();
    }

    private void finish(List<Seats> zones, Seats all, double[] stationKg, boolean[] stationActual) {
        for (int zone = 0; zone < zones.size(); zone++) {
            Seats seats = zones.get(zone);
            if (seats.actual) {
                note(Field.PASSENGER_MASS);
                row.addItems(Field.PASSENGER_MASS, zone, seats.massKg, 1);
            }
            rows(zone, seats);
        }
        if (all.actual) {
            note(PartSlot.ALL_PASSENGER_MASS);
            row.addItems(PartSlot.ALL_PASSENGER_MASS, all.massKg, 1);
        }
        for (int station = 0; station < stationKg.length; station++) {
            if (stationActual[station]) {
                row.addItems(Field.CREW_MASS, station, stationKg[station], 1);
            }
        }
        for (long part : PARTS) {
            if ((columns & part) != 0 && (itemSlots & part) != 0) {
                DetailLevels.besideItems(row, Slot.first(columns & part));
            }
        }
    }

    private void rows(int zone, Seats seats) {
        List<SeatRowLoad> loads = new ArrayList<>();
        for (int i = 0; i < seats.rowKg.length; i++) {
            if (seats.rowKg[i] > 0 || seats.rowSeated[i] > 0) {
                loads.add(new SeatRowLoad(i, seats.rowSeated[i], seats.rowKg[i]));
            }
        }
        if (!loads.isEmpty()) {
            row.seatRows(zone, loads);
        }
    }
}
