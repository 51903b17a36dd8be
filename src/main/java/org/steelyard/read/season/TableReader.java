package org.steelyard.read.season;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.steelyard.model.input.Field;
import org.steelyard.model.input.InputProblem;
import org.steelyard.model.input.RejectedRow;
import org.steelyard.model.input.SkipKind;
import org.steelyard.model.input.SkippedRow;
import org.steelyard.model.input.Slot;
import org.steelyard.model.input.SourceForm;
import org.steelyard.model.loading.Loading;
import org.steelyard.model.loading.Origin;
import org.steelyard.read.heading.Binding;
import org.steelyard.read.loading.ItemBook;
import org.steelyard.read.loading.ItemParser;
import org.steelyard.read.loading.RowParser;
import org.steelyard.read.loading.TableParser;
import org.steelyard.read.row.FlightKey;
import org.steelyard.read.row.ParsedRow;
import org.steelyard.read.row.RowCheck;
import org.steelyard.read.row.Tails;
import org.steelyard.read.table.RawRow;
import org.steelyard.read.table.SkipReason;
import org.steelyard.read.table.TableName;
import org.steelyard.read.text.Blanks;

/** Understands the rows of a table through one heading map, and knows which of them stand put right elsewhere. */
public final class TableReader implements RowReader {

    private static final int ROOM_FOR_CELLS = 1 << 10;
    private static final long KEYS = Slot.bits(Field.FLIGHT, Field.DATE, Field.TAIL);

    private final TableName name;
    private final Binding binding;
    private final TableParser parser;
    private final ItemBook items;
    private final Corrections corrections;
    private final List<Content> content;

    TableReader(TableName name, Binding binding, Tails tails, ItemBook items, Corrections corrections) {
        this.name = name;
        this.binding = binding;
        this.parser = isOfItems(binding)
                ? new ItemParser(name, binding, tails, items)
                : new RowParser(name, binding, tails, items);
        this.items = items;
        this.corrections = corrections;
        this.content = binding.columns().all().stream()
                .filter(column -> (KEYS & column.slot().bit()) == 0)
                .map(column -> new Content(Blanks.fold(column.heading()), column.index()))
                .sorted(Comparator.comparing(Content::heading).thenComparing(Content::index))
                .toList();
    }

    /** A column by which two rows of one flight are told apart. */
    private record Content(String heading, int index) {}

    private static boolean isOfItems(Binding binding) {
        return binding.map().form() == SourceForm.ITEMS;
    }

    Binding binding() {
        return binding;
    }

    public TableParser parser() {
        return parser;
    }

    @Override
    public ParsedRow parse(RawRow row) {
        Origin origin = name.row(row);
        Optional<SkipReason> leftOut = row.leftOut();
        if (leftOut.isPresent()) {
            return new ParsedRow.Skipped(
                    new SkippedRow(origin, leftOut.get().kind(), leftOut.get().reason()));
        }
        Optional<Correction> correction = correction(row);
        return correction.isPresent()
                ? new ParsedRow.Skipped(new SkippedRow(
                        origin,
                        SkipKind.PUT_RIGHT,
                        "the row is read from " + correction.get().place() + " in its place"))
                : parser.parse(row);
    }

    /**
     * What a row gives way to. A row that was rejected gives way to the one that puts it right; one that was changed
     * since does not. Where the check that tells the two apart is missing, a row that can be used stands; a load item,
     * which cannot be judged alone, gives way.
     */
    private Optional<Correction> correction(RawRow row) {
        return corrections
                .of(name.row(row))
                .filter(correction -> !row.isBlank())
                .filter(correction -> correction.check().isEmpty()
                        ? isOfItems(binding) || !parser.reads(row)
                        : correction.check().equals(RowCheck.of(binding.cellsAsText(row))));
    }

    private boolean isRead(RawRow row) {
        return row.leftOut().isEmpty() && correction(row).isEmpty();
    }

    @Override
    public void gather(RawRow row, ItemBook into) {
        gather(row, true, into);
    }

    /** Sums up a load item, or what is known of one that cannot be used. */
    void gather(RawRow row, boolean usable, ItemBook into) {
        if (isOfItems(binding) && isRead(row)) {
            parser.gather(row, usable, into);
        }
    }

    /** Takes the load items of a row's flight for it, in the order of the rows. */
    void claim(RawRow row) {
        if (!items.isEmpty() && !isOfItems(binding) && isRead(row)) {
            parser.claim(row);
        }
    }

    @Override
    public Origin origin(RawRow row) {
        return name.row(row);
    }

    @Override
    public FlightKey key(RawRow row, Loading loading) {
        StringBuilder cells = new StringBuilder(ROOM_FOR_CELLS);
        for (Content column : content) {
            String cell = Blanks.strip(row.cell(column.index()));
            if (!cell.isEmpty()) {
                cells.append(column.heading()).append('\u0000').append(cell).append('\u0000');
            }
        }
        return FlightKey.of(loading.flight(), loading.tail().registration(), cells.toString());
    }

    @Override
    public RejectedRow reject(RawRow row, InputProblem problem) {
        return new RejectedRow(
                name.row(row), binding.map().name(), binding.headings(), binding.cellsAsText(row), List.of(problem));
    }
}
