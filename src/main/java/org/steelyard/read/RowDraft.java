package org.steelyard.read;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.steelyard.model.ColumnUnit;
import org.steelyard.model.PassengerCategory;
import org.steelyard.model.Passengers;
import org.steelyard.model.ProblemCode;

/**
 * What the cells of one row say, before it is decided what they come to. A slot is <em>given</em> when one of its cells
 * is not blank, <em>bad</em> when one of them is faulty, and <em>loaded</em> when one of them is more than zero.
 */
final class RowDraft {

    private static final int SLOTS = Slot.ALL.size();
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
    private final double[] tankKg;
    private final int[] allCounts = new int[CATEGORIES];
    private Map<Slot, ColumnUnit> unitsInCells = Map.of();
    private Optional<LocalDate> date = Optional.empty();
    private long given;
    private long several;
    private long bad;
    private long loaded;

    RowDraft(RawRow row, TypePlan plan, BoundColumns columns, RowProblems problems) {
        this.row = row;
        this.plan = plan;
        this.columns = columns;
        this.problems = problems;
        zoneCounts = new int[plan.zoneCount() * CATEGORIES];
        zoneKg = new double[plan.zoneCount()];
        zoneKgGiven = new boolean[plan.zoneCount()];
        holdKg = new double[plan.holdCount()];
        holdBags = new int[plan.holdCount()];
        tankKg = new double[plan.tankCount()];
    }

    TypePlan plan() {
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

    void fault(BoundColumn column, ProblemCode code, String reason, String value, String expected) {
        bad |= column.slot().bit();
        problems.add(column.heading(), code, reason, value, expected);
    }

    /** A fault of what the file gives, or does not give, for a slot. */
    void fault(Slot slot, ProblemCode code, String reason, String value, String expected) {
        bad |= slot.bit();
        problems.add(headingOf(slot), code, reason, value, expected);
    }

    void rowFault(ProblemCode code, String reason, String expected) {
        problems.add("", code, reason, "", expected);
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
            unitsInCells = new EnumMap<>(Slot.class);
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
        if (value > 0) {
            loaded |= slot.bit();
        }
        int place = plan.place(column);
        if (place >= 0) {
            addAt(column, place, value);
        } else if (slot == Slot.ALL_COUNT || slot == Slot.ALL_INFANTS) {
            allCounts[index(column.rule().category())] += (int) value;
        }
    }

    private void addAt(BoundColumn column, int place, double value) {
        switch (column.slot()) {
            case ZONE_COUNT, ZONE_INFANTS ->
                zoneCounts[place * CATEGORIES + index(column.rule().category())] += (int) value;
            case ZONE_MASS -> {
                zoneKg[place] += value;
                zoneKgGiven[place] = true;
            }
            case HOLD_MASS -> holdKg[place] += value;
            case HOLD_BAGS -> holdBags[place] += (int) value;
            case TANK -> tankKg[place] += value;
            default -> throw new IllegalStateException(column.slot() + " has no places");
        }
    }

    /** Whether any of the slots is given. */
    boolean given(long slots) {
        return (given & slots) != 0;
    }

    boolean given(Slot slot) {
        return given(slot.bit());
    }

    /** Whether any of the slots has a faulty cell, so that nothing more can be said of them together. */
    boolean bad(long slots) {
        return (bad & slots) != 0;
    }

    /** Whether any of the slots has a cell that is more than zero. */
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
        return slot.label() + " ('" + headingOf(slot) + "')";
    }

    /** What stands in a slot's cell, or the sum of its cells if several are filled. */
    String valueOf(Slot slot) {
        return (several & slot.bit()) == 0 ? Blanks.strip(row.cell(column(slot).index())) : sumOf(slot);
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
    BoundColumn column(Slot slot) {
        return firstGiven[slot.index()];
    }

    double sum(Slot slot) {
        return sums[slot.index()];
    }

    String text(Slot slot) {
        String text = texts[slot.index()];
        return text == null ? "" : text;
    }

    Optional<LocalDate> date() {
        return date;
    }

    OptionalInt count(Slot slot) {
        return given(slot) ? OptionalInt.of((int) sum(slot)) : OptionalInt.empty();
    }

    OptionalDouble amount(Slot slot) {
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

    double[] tankKg() {
        return tankKg;
    }
}
