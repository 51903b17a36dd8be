package org.steelyard.read.loading;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.steelyard.model.input.Field;
import org.steelyard.model.input.ProblemCode;
import org.steelyard.model.input.RejectedRow;
import org.steelyard.model.input.Slot;
import org.steelyard.model.loading.Origin;
import org.steelyard.read.heading.Binding;
import org.steelyard.read.heading.BoundColumn;
import org.steelyard.read.row.CellParser;
import org.steelyard.read.row.DetailLevels;
import org.steelyard.read.row.ParsedRow;
import org.steelyard.read.row.RowDraft;
import org.steelyard.read.row.Tails;
import org.steelyard.read.row.TypePlan;
import org.steelyard.read.table.RawRow;
import org.steelyard.read.table.RowProblems;
import org.steelyard.read.table.TableName;
import org.steelyard.read.text.Blanks;
import org.steelyard.read.text.ColumnUnits;

/**
 * Turns the rows of a table of load items into items of flights. This is the format of a file of items, whose heading
 * map says {@code form: items}; rows and cells are as in a file of flights ({@link RowParser}):
 *
 * <ul>
 *   <li>The flight, and the date and tail where there are columns for them, say to which flight an item belongs: the
 *       first of the season's flights with the same ones. They must be filled in every row. An item whose flight is not
 *       among the season's is rejected.
 *   <li>The place: a zone, a seat row, a hold, a tank or a crew station, each in a column of its own or all in one
 *       column of places; at most one in a row, but a zone may stand beside a seat row. A seat, as 12C, stands for its
 *       row. A row counts at its own arm; where its zone has no row table, at the zone's. Without a place the item adds
 *       to the total of its kind.
 *   <li>The kind: male, female, adult, child, infant, bags, cargo, fuel or crew. Blank, it follows from the place:
 *       adults in zones and seat rows, fuel in tanks, crew at stations, in holds bags where there is no mass and cargo
 *       where there is. One of kind and place must be filled.
 *   <li>The pieces: persons or bags; blank for 1.
 *   <li>The mass of all of the item together, in place of standard masses; blank for these, which cargo and fuel do not
 *       have. Fuel may be given by volume.
 * </ul>
 *
 * <p>The items of a flight come in any order, from any number of files. A flight is used only if all its items are, and
 * if no column of its own gives the same part of the load by place; a total beside them is a check.
 */
public final class ItemParser implements TableParser {

    private static final ParsedRow BLANK = new ParsedRow.Blank();
    private static final ParsedRow ITEM = new ParsedRow.Item();
    private static final List<Slot> PLACES = List.of(
            Field.ITEM_ZONE, Field.ITEM_ROW, Field.ITEM_HOLD, Field.ITEM_TANK, Field.ITEM_STATION, Field.ITEM_PLACE);

    private final TableName name;
    private final Binding binding;
    private final Tails tails;
    private final ItemBook book;
    private final ItemKey key;
    private final CellParser cells;
    private final TypePlan plan;

    public ItemParser(TableName name, Binding binding, Tails tails, ItemBook book) {
        this.name = name;
        this.binding = binding;
        this.tails = tails;
        this.book = book;
        key = ItemKey.ofItems(binding.columns());
        cells = new CellParser(binding.map());
        plan = TypePlan.unknownType(binding.columns().all().size(), tails.schemes());
    }

    /** What a row says once all flights have claimed their items. */
    @Override
    public ParsedRow parse(RawRow row) {
        if (row.isBlank()) {
            return BLANK;
        }
        RowProblems problems = new RowProblems(name.row(row));
        Optional<LoadItem> item = read(row, problems);
        if (item.isPresent()) {
            requireFlight(row, item.get(), problems);
        }
        return problems.isEmpty() ? ITEM : rejected(row, problems);
    }

    @Override
    public boolean reads(RawRow row) {
        return read(row, new RowProblems(name.row(row))).isPresent();
    }

    @Override
    public void claim(RawRow row) {
        // only flights take items
    }

    @Override
    public void gather(RawRow row, boolean usable, ItemBook into) {
        if (row.isBlank()) {
            return;
        }
        Origin origin = name.row(row);
        Optional<String> flight = key.of(row, binding.columns(), tails);
        RowProblems problems = new RowProblems(origin);
        Optional<LoadItem> item = read(row, problems);
        if (flight.isPresent()) {
            FlightItems items = into.of(key, flight.get());
            item.filter(read -> usable && into.places().takes(read.place()))
                    .ifPresentOrElse(items::add, () -> items.fault(origin));
        }
    }

    private void requireFlight(RawRow row, LoadItem item, RowProblems problems) {
        Optional<FlightItems> items = key.of(row, binding.columns(), tails).flatMap(book::find);
        if (items.flatMap(FlightItems::claim).isEmpty()) {
            BoundColumn flight = binding.columns().first(Field.FLIGHT).orElseThrow();
            problems.add(
                    flight.heading(),
                    ProblemCode.UNKNOWN_NAME,
                    "no flight for this item",
                    Blanks.strip(row.cell(flight.index())),
                    "a row with the same " + key.columns() + " in a file of flights of this season");
        } else {
            items.flatMap(FlightItems::claim).flatMap(ItemClaim::type).ifPresent(type -> {
                try {
                    book.plan(type).find(item);
                } catch (ItemRefusal refusal) {
                    add(refusal, problems);
                }
            });
        }
    }

    private void add(ItemRefusal refusal, RowProblems problems) {
        String heading = binding.columns()
                .first(refusal.slot())
                .map(BoundColumn::heading)
                .orElse("");
        problems.add(heading, refusal.code(), refusal.getMessage(), refusal.value(), refusal.expected());
    }

    private Optional<LoadItem> read(RawRow row, RowProblems problems) {
        binding.shape().check(row, problems);
        if (!problems.isEmpty()) {
            return Optional.empty();
        }
        RowDraft draft = new RowDraft(row, plan, binding.columns(), problems);
        for (BoundColumn column : binding.columns().all()) {
            if (column.slot() != Field.EXTRA) {
                cells.read(row, column, 1, draft);
                requireKey(column, draft);
            }
        }
        ItemKind kind = kind(draft);
        Optional<ItemPlace> place = place(draft);
        LoadItem.Measure measure = measure(draft);
        int pieces = draft.given(Field.ITEM_PIECES) ? (int) draft.sum(Field.ITEM_PIECES) : 1;
        if (place.isPresent()) {
            require(draft, place.get(), kind, measure, pieces);
        }
        return problems.isEmpty()
                ? Optional.of(new LoadItem(place.orElseThrow(), kind, measure, pieces, draft.sum(Field.ITEM_MASS)))
                : Optional.empty();
    }

    private void requireKey(BoundColumn column, RowDraft draft) {
        Slot slot = column.slot();
        if (slot != Field.FLIGHT && slot != Field.DATE && slot != Field.TAIL) {
            return;
        }
        if (!draft.given(slot)) {
            draft.fault(
                    column,
                    ProblemCode.MISSING,
                    slot.label() + " is missing",
                    "",
                    "the " + slot.label() + " of the" + " flight to which the item belongs");
        } else if (slot == Field.TAIL
                && !draft.bad(slot.bit())
                && tails.find(draft.text(slot)).isEmpty()) {
            List<String> nearest = tails.nearest(draft.text(slot));
            String hint = nearest.isEmpty() ? "" : "; nearest " + String.join(", ", nearest);
            draft.fault(
                    column, ProblemCode.UNKNOWN_NAME, "unknown tail", draft.text(slot), "a tail of the fleet" + hint);
        }
    }

    private static ItemKind kind(RowDraft draft) {
        if (!draft.given(Field.ITEM_KIND) || draft.bad(Field.ITEM_KIND.bit())) {
            return ItemKind.UNSAID;
        }
        Optional<ItemKind> kind = ItemKind.of(draft.text(Field.ITEM_KIND));
        if (kind.isEmpty()) {
            draft.fault(
                    Field.ITEM_KIND,
                    ProblemCode.UNKNOWN_NAME,
                    "unknown kind of item",
                    draft.text(Field.ITEM_KIND),
                    ItemKind.WORDS + ", or a blank cell where the place says it");
        }
        return kind.orElse(ItemKind.UNSAID);
    }

    /** The place; empty, with the reason in the draft, where several are given. */
    private static Optional<ItemPlace> place(RowDraft draft) {
        List<Slot> given = new ArrayList<>(PLACES);
        given.removeIf(slot -> draft.text(slot).isEmpty());
        String zone = "";
        if (given.equals(List.of(Field.ITEM_ZONE, Field.ITEM_ROW))) {
            zone = draft.text(Field.ITEM_ZONE);
            given.remove(Field.ITEM_ZONE);
        }
        if (given.size() > 1) {
            DetailLevels.contradiction(draft, given.get(0), given.get(1));
            return Optional.empty();
        }
        return Optional.of(given.isEmpty() ? ItemPlace.ANYWHERE : place(draft, given.get(0), zone));
    }

    private static ItemPlace place(RowDraft draft, Slot slot, String zone) {
        for (ItemPlace.Kind kind : ItemPlace.Kind.values()) {
            if (kind.slot() == slot) {
                return new ItemPlace(kind, draft.text(slot), zone);
            }
        }
        throw new IllegalStateException(slot + " is no place");
    }

    private static LoadItem.Measure measure(RowDraft draft) {
        if (!draft.given(Field.ITEM_MASS)) {
            return LoadItem.Measure.STANDARD;
        }
        return ColumnUnits.isVolume(draft.column(Field.ITEM_MASS).rule().unit())
                ? LoadItem.Measure.LITRE
                : LoadItem.Measure.KG;
    }

    private static void require(RowDraft draft, ItemPlace place, ItemKind kind, LoadItem.Measure measure, int pieces) {
        if (place.equals(ItemPlace.ANYWHERE) && kind == ItemKind.UNSAID && !draft.bad(Field.ITEM_KIND.bit())) {
            draft.rowFault(
                    ProblemCode.MISSING,
                    "neither place nor kind of the item is given",
                    "a place, or " + ItemKind.WORDS);
        }
        if (draft.isSeveral(Field.ITEM_MASS)) {
            draft.fault(
                    Field.ITEM_MASS,
                    ProblemCode.CONTRADICTION,
                    "the mass of the item is given twice",
                    draft.columnValue(Field.ITEM_MASS),
                    "one cell with its mass or volume");
        }
        boolean weighed = measure != LoadItem.Measure.STANDARD;
        if (!weighed && (kind == ItemKind.CARGO || kind == ItemKind.FUEL)) {
            draft.fault(
                    Field.ITEM_MASS, ProblemCode.MISSING, kind.word() + " without its mass", "", "a mass, 0 for none");
        }
        boolean counted = kind != ItemKind.CARGO && kind != ItemKind.FUEL && kind != ItemKind.UNSAID;
        if (weighed && counted && pieces > 0 && draft.sum(Field.ITEM_MASS) == 0 && !draft.bad(Field.ITEM_MASS.bit())) {
            draft.fault(
                    Field.ITEM_MASS,
                    ProblemCode.CONTRADICTION,
                    "an actual mass of 0 for " + pieces + " " + kind.word(),
                    draft.valueOf(Field.ITEM_MASS),
                    "their mass, or a blank cell for standard masses");
        }
    }

    private ParsedRow rejected(RawRow row, RowProblems problems) {
        return new ParsedRow.Rejected(new RejectedRow(
                name.row(row), binding.map().name(), binding.headings(), binding.cellsAsText(row), problems.all()));
    }
}
