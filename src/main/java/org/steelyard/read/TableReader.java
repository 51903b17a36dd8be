package org.steelyard.read;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.steelyard.model.InputProblem;
import org.steelyard.model.Loading;
import org.steelyard.model.Origin;
import org.steelyard.model.RejectedRow;
import org.steelyard.model.SkipKind;
import org.steelyard.model.SkippedRow;

/** Understands the rows of a table through one heading map, and knows which of them stand put right elsewhere. */
final class TableReader implements RowReader {

    private static final long KEYS = Slot.bits(Slot.FLIGHT, Slot.DATE, Slot.TAIL);

    private final TableName name;
    private final Binding binding;
    private final RowParser parser;
    private final Corrections corrections;
    private final List<BoundColumn> content;

    TableReader(TableName name, Binding binding, Tails tails, Corrections corrections) {
        this.name = name;
        this.binding = binding;
        this.parser = new RowParser(name, binding, tails);
        this.corrections = corrections;
        this.content = binding.columns().all().stream()
                .filter(column -> (KEYS & column.slot().bit()) == 0)
                .sorted(Comparator.comparing((BoundColumn column) -> Blanks.fold(column.heading()))
                        .thenComparing(BoundColumn::index))
                .toList();
    }

    Binding binding() {
        return binding;
    }

    @Override
    public ParsedRow parse(RawRow row) {
        Origin origin = name.row(row);
        Optional<LeftOut> leftOut = row.leftOut();
        if (leftOut.isPresent()) {
            return new ParsedRow.Skipped(
                    new SkippedRow(origin, leftOut.get().kind(), leftOut.get().reason()));
        }
        Optional<Correction> correction = corrections.of(origin);
        if (correction.isEmpty() || row.isBlank()) {
            return parser.parse(row);
        }
        return corrected(row, origin, correction.get());
    }

    /** The row that was rejected gives way to the one that puts it right; one that was changed since does not. */
    private ParsedRow corrected(RawRow row, Origin origin, Correction correction) {
        boolean same = correction.check().equals(RowCheck.of(binding.cellsAsText(row)));
        ParsedRow parsed = same ? new ParsedRow.Blank() : parser.parse(row);
        boolean bad = correction.check().isEmpty() && parsed instanceof ParsedRow.Rejected;
        return same || bad
                ? new ParsedRow.Skipped(new SkippedRow(
                        origin, SkipKind.PUT_RIGHT, "the row is read from " + correction.place() + " in its place"))
                : parsed;
    }

    @Override
    public FlightKey key(RawRow row, Loading loading) {
        StringBuilder cells = new StringBuilder();
        for (BoundColumn column : content) {
            String cell = Blanks.strip(row.cell(column.index()));
            if (!cell.isEmpty()) {
                cells.append(Blanks.fold(column.heading()))
                        .append('\u0000')
                        .append(cell)
                        .append('\u0000');
            }
        }
        long digest = FlightKey.digest(cells.toString()).getLong();
        return FlightKey.of(loading.flight(), loading.tail().registration(), digest);
    }

    @Override
    public RejectedRow reject(RawRow row, InputProblem problem) {
        return new RejectedRow(
                name.row(row), binding.map().name(), binding.headings(), binding.cellsAsText(row), List.of(problem));
    }
}
