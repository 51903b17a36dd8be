package org.steelyard.read.row;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.steelyard.model.input.ColumnUnit;
import org.steelyard.model.input.Field;
import org.steelyard.model.input.PartSlot;
import org.steelyard.model.input.ProblemCode;
import org.steelyard.model.input.Slot;
import org.steelyard.model.loading.Passengers;
import org.steelyard.model.loading.SeatRowLoad;
import org.steelyard.model.type.PassengerCategory;
import org.steelyard.read.heading.BoundColumn;
import org.steelyard.read.heading.BoundColumns;
import org.steelyard.read.table.RawRow;
import org.steelyard.read.table.RowProblems;
import org.steelyard.read.text.Blanks;

/**
 * What the cells of one row say, before it is decided what they come to. A slot is <em>given</em> when one of its cells
 * is not blank, <em>bad</em> when one of them is faulty, and <em>loaded</em> when one of them is not zero.
 */
public final class RowDraft {

    private static final int SLOTS = Slot.count();
    private static final int CATEGORIES = 5;

    private final RawRow row;
    private final TypePlan plan;
    private final BoundColumns columns;
    private final RowProblems problems;
    private final String[] texts = new String[SLOTS];
    private final double[] sums = new double[SLOTS];
    private final BoundColumn[] firstGiven = new BoundColumn[SLOTS];
    private final int[] zoneCounts;
    private final double[] zoneKg;
    private final boolean[] zoneKgGiven;
    private final double[] holdKg;
    private final int[] holdBags;
    private final double[] bagKg;
    private final boolean[] bagKgGiven;
    private final double[] tankKg;
    private final int[] stationCounts;
    private final double[] stationKg;
    private final boolean[] stationKgGiven;
    private final Map<Integer, List<SeatRowLoad>> seatRows = new HashMap<>(0);
    private final List<Change> changes = new ArrayList<>(0);
    private final int[] allCounts = new int[CATEGORIES];
    private Map<Slot, ColumnUnit> unitsInCells = Map.of();
    private Optional<LocalDate> date = Optional.empty();
    private final int[] itemFigures = new int[SLOTS];
    private boolean itemsRefused;
    private long given;
    private long several;
    private long bad;
    private long loaded;

    public RowDraft(RawRow row, TypePlan plan, BoundColumns columns, RowProblems problems) {
        this.row = row;
        this.plan = plan;
        this.columns = columns;
        this.problems = problems;
        zoneCounts = new int[plan.zoneCount() * CATEGORIES];
        zoneKg = new double[plan.zoneCount()];
        zoneKgGiven = new boolean[plan.zoneCount()];
        holdKg = new double[plan.holdCount()];
        holdBags = new int[plan.holdCount()];
        bagKg = new double[plan.holdCount()];
        bagKgGiven = new boolean[plan.holdCount()];
        tankKg = new double[plan.tankCount()];
        stationCounts = new int[plan.stationCount()];
        stationKg = new double[plan.stationCount()];
        stationKgGiven = new boolean[plan.stationCount()];
    }

    /** One cell of a last-minute change; the place is one of the type's, or {@link TypePlan#NO_PLACE}. */
    record Change(BoundColumn column, int place, double value) {}

    public TypePlan plan() {
        return plan;
    }

    BoundColumns columns() {
        return columns;
    }

    /** Notes that a cell of the column is not blank. */
    void give(BoundColumn column) {
        Slot slot = column.slot();
        if ((given & slot.bit()) == 0) {
            given |= slot.bit();
            firstGiven[slot.index()] = column;
        } else {
            several |= slot.bit();
        }
    }

    public void fault(BoundColumn column, ProblemCode code, String reason, String value, String expected) {
        bad |= column.slot().bit();
        problems.add(column.heading(), code, reason, value, expected);
    }

    /** A fault of what the file gives, or does not give, for a slot. */
    public void fault(Slot slot, ProblemCode code, String reason, String value, String expected) {
        bad |= slot.bit();
        problems.add(headingOf(slot), code, reason, value, expected);
    }

    public void rowFault(ProblemCode code, String reason, String expected) {
        problems.add("", code, reason, "", expected);
    }

    /** A fault of the load items, after which nothing is said of what the row lacks. */
    public void refuseItems(ProblemCode code, String reason, String expected) {
        itemsRefused = true;
        rowFault(code, reason, expected);
    }

    boolean itemsRefused() {
        return itemsRefused;
    }

    void text(BoundColumn column, String text) {
        texts[column.slot().index()] = text;
    }

    void date(LocalDate value) {
        date = Optional.of(value);
    }

    /** Notes the unit that the cell of a column says itself. */
    void unit(BoundColumn column, ColumnUnit unit) {
        if (unitsInCells.isEmpty()) {
            unitsInCells = new HashMap<>();
        }
        unitsInCells.put(column.slot(), unit);
    }

    /** The unit of a column's cell that was read last: its own, or that of the column. */
    ColumnUnit unit(BoundColumn column) {
        return unitsInCells.getOrDefault(column.slot(), column.rule().unit());
    }

    /** Adds a number: persons, bags, kg, kg/L, trim units, or a CG in the unit of its column. */
    void add(BoundColumn column, double value) {
        Slot slot = column.slot();
        sums[slot.index()] += value;
        if (value != 0) {
            loaded |= slot.bit();
        }
        int place = plan.place(column);
        if (column.rule().field().isChange()) {
            if (value != 0) {
                changes.add(new Change(column, place, value));
            }
        } else if (place >= 0) {
            addAt(column, place, value);
        } else if (slot == PartSlot.ALL_COUNT || slot == PartSlot.ALL_INFANTS) {
            allCounts[index(column.rule().category())] += (int) value;
        }
    }

    private void addAt(BoundColumn column, int place, double value) {
        if (column.slot() == Field.PASSENGERS || column.slot() == PartSlot.ZONE_INFANTS) {
            zoneCounts[place * CATEGORIES + index(column.rule().category())] += (int) value;
        } else {
            addAt(column.slot(), place, value);
        }
    }

    private void addAt(Slot slot, int place, double value) {
        switch (slot.field()) {
            case PASSENGER_MASS -> {
                zoneKg[place] += value;
                zoneKgGiven[place] = true;
            }
            case HOLD_MASS -> holdKg[place] += value;
            case HOLD_BAGS -> holdBags[place] += (int) value;
            case BAG_MASS -> {
                bagKg[place] += value;
                bagKgGiven[place] = true;
            }
            case FUEL -> tankKg[place] += value;
            case CREW -> stationCounts[place] += (int) value;
            case CREW_MASS -> {
                stationKg[place] += value;
                stationKgGiven[place] = true;
            }
            default -> throw new IllegalStateException(slot + " has no places");
        }
    }

    /** Whether any of the slots is given. */
    public boolean given(long slots) {
        return (given & slots) != 0;
    }

    /** Whether what is given of the slots comes from load items alone. */
    boolean isByItems(long slots) {
        for (long left = given & slots; left != 0; left &= left - 1) {
            if (firstGiven[Slot.first(left).index()] != null) {
                return false;
            }
        }
        return true;
    }

    public boolean given(Slot slot) {
        return given(slot.bit());
    }

    /** Whether any of the slots has a faulty cell, so that nothing more can be said of them together. */
    public boolean bad(long slots) {
        return (bad & slots) != 0;
    }

    /** Whether any of the slots has a cell that is not zero. */
    boolean loaded(long slots) {
        return (loaded & slots) != 0;
    }

    /** The first of the slots that is given, by the order of slots; loaded ones before those that are zero. */
    Slot firstOf(long slots) {
        long wanted = (loaded & slots) != 0 ? loaded & slots : given & slots;
        return Slot.first(wanted);
    }

    /** The heading of the first filled column of a slot, else of its first column; blank if it has none. */
    String headingOf(Slot slot) {
        BoundColumn first = firstGiven[slot.index()];
        return first != null
                ? first.heading()
                : columns.first(slot).map(BoundColumn::heading).orElse("");
    }

    /** What a slot is called in messages, with its heading. */
    String named(Slot slot) {
        boolean byItems = (given & slot.bit()) != 0 && firstGiven[slot.index()] == null;
        return slot.label() + (byItems ? " (load items)" : " ('" + headingOf(slot) + "')");
    }

    /** Whether several cells of a slot are filled. */
    public boolean isSeveral(Slot slot) {
        return (several & slot.bit()) != 0;
    }

    /** The slots with a cell that is not zero. */
    public long loadedSlots() {
        return loaded;
    }

    /** What stands in the first filled cell of a slot. */
    public String columnValue(Slot slot) {
        return Blanks.strip(row.cell(column(slot).index()));
    }

    /** What stands in a slot's cell, or the sum of its cells if several are filled. */
    public String valueOf(Slot slot) {
        return (several & slot.bit()) == 0 && firstGiven[slot.index()] != null
                ? Blanks.strip(row.cell(column(slot).index()))
                : sumOf(slot);
    }

    /** The sum of a slot's cells with its unit inside, for messages. */
    String sumOf(Slot slot) {
        String figure = BigDecimal.valueOf(sum(slot))
                .setScale(3, RoundingMode.HALF_EVEN)
                .stripTrailingZeros()
                .toPlainString();
        return slot.isMass() ? figure + " kg" : figure;
    }

    /** The filled column of a slot that takes only one. */
    public BoundColumn column(Slot slot) {
        return firstGiven[slot.index()];
    }

    public double sum(Slot slot) {
        return sums[slot.index()];
    }

    public String text(Slot slot) {
        String text = texts[slot.index()];
        return text == null ? "" : text;
    }

    public Optional<LocalDate> date() {
        return date;
    }

    OptionalInt count(Slot slot) {
        return given(slot) ? OptionalInt.of((int) sum(slot)) : OptionalInt.empty();
    }

    public OptionalDouble amount(Slot slot) {
        return given(slot) ? OptionalDouble.of(sum(slot)) : OptionalDouble.empty();
    }

    Passengers zonePassengers(int zone) {
        return passengers(zoneCounts, zone * CATEGORIES);
    }

    Passengers allPassengers() {
        return passengers(allCounts, 0);
    }

    private static Passengers passengers(int[] counts, int from) {
        return new Passengers(counts[from], counts[from + 1], counts[from + 2], counts[from + 3], counts[from + 4]);
    }

    private static int index(PassengerCategory category) {
        return switch (category) {
            case MALE -> 0;
            case FEMALE -> 1;
            case ADULT -> 2;
            case CHILD -> 3;
            case INFANT -> 4;
        };
    }

    OptionalDouble zoneKg(int zone) {
        return zoneKgGiven[zone] ? OptionalDouble.of(zoneKg[zone]) : OptionalDouble.empty();
    }

    double holdKg(int hold) {
        return holdKg[hold];
    }

    int holdBags(int hold) {
        return holdBags[hold];
    }

    /** The actual mass of the bags of a hold, where it is given. */
    OptionalDouble bagKg(int hold) {
        return bagKgGiven[hold] ? OptionalDouble.of(bagKg[hold]) : OptionalDouble.empty();
    }

    double[] tankKg() {
        return tankKg;
    }

    int stationCount(int station) {
        return stationCounts[station];
    }

    OptionalDouble stationKg(int station) {
        return stationKgGiven[station] ? OptionalDouble.of(stationKg[station]) : OptionalDouble.empty();
    }

    List<SeatRowLoad> seatRows(int zone) {
        return seatRows.getOrDefault(zone, List.of());
    }

    List<Change> changes() {
        return changes;
    }

    /** How many figures a slot sums up: its columns, or for load items as many as there are. */
    int figures(Slot slot) {
        return columns.count(slot) + itemFigures[slot.index()];
    }

    /** Adds what load items give of a slot without a place. */
    public void addItems(Slot slot, double value, int figures) {
        given |= slot.bit();
        sums[slot.index()] += value;
        itemFigures[slot.index()] += figures;
        if (value != 0) {
            loaded |= slot.bit();
        }
    }

    /** Adds passengers that load items give of a category, in a zone or in all. */
    public void addItems(Slot slot, int zone, PassengerCategory category, int persons, int figures) {
        addItems(slot, persons, figures);
        if (zone >= 0) {
            zoneCounts[zone * CATEGORIES + index(category)] += persons;
        } else {
            allCounts[index(category)] += persons;
        }
    }

    /** Adds what load items give of a place. */
    public void addItems(Slot slot, int place, double value, int figures) {
        addItems(slot, value, figures);
        addAt(slot, place, value);
    }

    public void seatRows(int zone, List<SeatRowLoad> rows) {
        seatRows.put(zone, rows);
    }
}
