package org.steelyard.read.row;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.function.ToIntFunction;
import org.steelyard.model.input.BlankLoad;
import org.steelyard.model.input.Field;
import org.steelyard.model.input.PartSlot;
import org.steelyard.model.input.ProblemCode;
import org.steelyard.model.input.Slot;
import org.steelyard.read.heading.BoundColumn;
import org.steelyard.read.table.RawRow;
import org.steelyard.read.text.Blanks;

/**
 * The places of a type whose load one file gives in columns, and what it means that all cells of a place are blank.
 * Where one zone, hold or tank of a row has a figure, the blank ones count as empty; where passengers or holds have
 * none at all, so do all of them. Whether that is so the heading map says; where it does not, it is told.
 */
public final class BlankPlaces {

    private static final long FUEL = Slot.bits(Field.FUEL);
    private static final long ALL_FUEL = Slot.bits(PartSlot.ALL_FUEL);

    /** No type is known, or nothing is given in columns. */
    static final BlankPlaces NONE = new BlankPlaces(List.of(), BlankLoad.NONE, column -> TypePlan.NO_PLACE);

    private final List<Part> parts;

    /**
     * Looks the places up.
     *
     * @param columns what the file's columns mean
     * @param map what the heading map says of blank cells
     * @param place position of a column's place in the type
     */
    BlankPlaces(List<BoundColumn> columns, BlankLoad map, ToIntFunction<BoundColumn> place) {
        List<Part> all = List.of(
                Part.of(LoadRules.ZONES, LoadRules.ALL_SEATS, columns, map, place),
                Part.of(LoadRules.HOLDS, LoadRules.ALL_HOLDS, columns, map, place),
                Part.of(FUEL, ALL_FUEL, columns, map, place));
        parts = all.stream().filter(Predicate.not(Part::isSilent)).toList();
    }

    /** The headings of the places that count as empty unsaid; blank cells that the map calls missing become faults. */
    public List<String> unsaid(RawRow row, RowDraft draft) {
        if (parts.isEmpty()) {
            return List.of();
        }
        List<String> unsaid = new ArrayList<>(0);
        for (Part part : parts) {
            if (part.counts(draft)) {
                part.look(row, draft, unsaid);
            }
        }
        return unsaid;
    }

    /** The columns of one place, or of a part in total. */
    private record Place(List<BoundColumn> columns, BlankLoad blank) {

        static Place of(List<BoundColumn> columns, BlankLoad map) {
            for (BlankLoad said : List.of(BlankLoad.MISSING, BlankLoad.NONE)) {
                if (columns.stream().anyMatch(column -> column.rule().blank() == said)) {
                    return new Place(columns, said);
                }
            }
            return new Place(columns, map);
        }

        void look(RawRow row, RowDraft draft, List<String> unsaid) {
            boolean blank = columns.stream().allMatch(column -> isBlank(row, column));
            if (blank && blank() == BlankLoad.NOT_SAID) {
                unsaid.add(columns.get(0).heading());
            } else if (blank && blank() == BlankLoad.MISSING) {
                missing(columns.get(0), draft);
            } else if (!blank) {
                columns.stream()
                        .filter(column -> column.rule().blank() == BlankLoad.MISSING && isBlank(row, column))
                        .forEach(column -> missing(column, draft));
            }
        }

        private static boolean isBlank(RawRow row, BoundColumn column) {
            return Blanks.strip(row.cell(column.index())).isEmpty();
        }

        private static void missing(BoundColumn column, RowDraft draft) {
            draft.fault(
                    column,
                    ProblemCode.MISSING,
                    "the cell is blank, which the heading map calls missing",
                    "",
                    "a number, 0 for none");
        }
    }

    /** Passengers, holds or fuel: by place, and in total. */
    private record Part(long slots, long totalSlots, List<Place> places, List<Place> total) {

        static Part of(
                long slots,
                long totalSlots,
                List<BoundColumn> columns,
                BlankLoad map,
                ToIntFunction<BoundColumn> place) {
            Map<Integer, List<BoundColumn>> byPlace = new TreeMap<>();
            List<BoundColumn> total = new ArrayList<>();
            for (BoundColumn column : columns) {
                if ((column.slot().bit() & totalSlots) != 0) {
                    total.add(column);
                } else if ((column.slot().bit() & slots) != 0 && place.applyAsInt(column) >= 0) {
                    byPlace.computeIfAbsent(place.applyAsInt(column), absent -> new ArrayList<>())
                            .add(column);
                }
            }
            return new Part(
                    slots,
                    totalSlots,
                    byPlace.values().stream().map(its -> Place.of(its, map)).toList(),
                    total.isEmpty() ? List.of() : List.of(Place.of(total, map)));
        }

        boolean isSilent() {
            return places.stream().allMatch(Part::isSilent) && total.stream().allMatch(Part::isSilent);
        }

        private static boolean isSilent(Place place) {
            return place.blank() == BlankLoad.NONE;
        }

        /** Whether what is aboard is made up from the part, and not from a state in its place. */
        boolean counts(RowDraft draft) {
            boolean takeoff = draft.given(LoadRules.TAKEOFF);
            return slots == FUEL
                    ? !takeoff
                    : !takeoff && !draft.given(LoadRules.ZERO_FUEL) && !LoadRules.isNothing(draft);
        }

        void look(RawRow row, RowDraft draft, List<String> unsaid) {
            boolean byPlace = draft.given(slots);
            if (byPlace && !draft.isByItems(slots)) {
                places.forEach(place -> place.look(row, draft, unsaid));
            } else if (!byPlace && draft.given(totalSlots)) {
                if (!draft.isByItems(totalSlots)) {
                    total.forEach(place -> place.look(row, draft, unsaid));
                }
            } else if (!byPlace && slots != FUEL) {
                (total.isEmpty() ? places : total).forEach(place -> place.look(row, draft, unsaid));
            }
        }
    }
}
