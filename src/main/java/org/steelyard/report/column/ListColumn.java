package org.steelyard.report.column;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.ToLongFunction;
import org.steelyard.model.finding.Severity;
import org.steelyard.report.text.ListCells;

/**
 * A column of a list: what it says and how it is got.
 *
 * @param name its name in files; blank where the sheet alone has it
 * @param unit unit of its numbers
 * @param kind what its cells are; a cell may be empty in any
 * @param meaning what it says, in a few words
 * @param cell how the cell of an item is got
 * @param onSheet how it stands on the sheet; empty where files alone have it
 * @param <T> what a row is of
 */
public record ListColumn<T>(
        String name, ListUnit unit, Kind kind, String meaning, Cell<T> cell, Optional<OnSheet<T>> onSheet) {

    /** What cells are. */
    public enum Kind {
        /** Texts. */
        TEXT("text"),
        /** Texts of many words, which people read as sentences. */
        SENTENCE("text"),
        /** Trim settings as pilots say them. */
        SETTING("text"),
        /** How serious it is, which people see by a mark. */
        MARK("text"),
        /** Dates. */
        DATE("date"),
        /** Whole numbers. */
        WHOLE("whole number"),
        /** Numbers. */
        NUMBER("number");

        private final String label;

        Kind(String label) {
            this.label = label;
        }

        public String label() {
            return label;
        }

        /** Whether cells stand to the right. */
        public boolean toTheRight() {
            return this == SETTING || this == WHOLE || this == NUMBER;
        }

        private int widthChars() {
            return switch (this) {
                case TEXT, MARK, DATE -> 13;
                case SENTENCE -> 84;
                case SETTING, NUMBER -> 11;
                case WHOLE -> 9;
            };
        }
    }

    /** Adds the cell of an item. */
    @FunctionalInterface
    public interface Cell<T> {
        void add(T item, ListCells cells);
    }

    /**
     * A column on a sheet.
     *
     * @param heading what stands at its head, with the unit
     * @param widthChars width in characters
     * @param permitted whether its numbers are what is permitted, which is rounded down
     * @param cell how its cell is got there
     * @param worst the worst that is to be said of the figure of an item, by which it is coloured
     */
    public record OnSheet<T>(
            String heading, int widthChars, boolean permitted, Cell<T> cell, Function<T, Severity> worst) {}

    static <T> ListColumn<T> text(String name, String meaning, Function<T, String> text) {
        return text(name, Kind.TEXT, meaning, text);
    }

    static <T> ListColumn<T> text(String name, Kind kind, String meaning, Function<T, String> text) {
        return of(name, ListUnit.NONE, kind, meaning, (item, cells) -> cells.text(text.apply(item)));
    }

    static <T> ListColumn<T> date(String name, String meaning, Function<T, LocalDate> date) {
        return of(name, ListUnit.NONE, Kind.DATE, meaning, (item, cells) -> cells.date(date.apply(item)));
    }

    static <T> ListColumn<T> whole(String name, String meaning, ToLongFunction<T> number) {
        return of(name, ListUnit.NONE, Kind.WHOLE, meaning, (item, cells) -> cells.whole(number.applyAsLong(item)));
    }

    static <T> ListColumn<T> number(String name, ListUnit unit, String meaning, Function<T, OptionalDouble> number) {
        return of(name, unit, Kind.NUMBER, meaning, (item, cells) -> cells.number(number.apply(item)));
    }

    static <T> ListColumn<T> of(String name, ListUnit unit, Kind kind, String meaning, Cell<T> cell) {
        return new ListColumn<>(name, unit, kind, meaning, cell, Optional.empty());
    }

    /** The same of an item that has one of these. */
    <S> ListColumn<S> of(Function<S, T> item) {
        return new ListColumn<>(
                name,
                unit,
                kind,
                meaning,
                (other, cells) -> cell.add(item.apply(other), cells),
                onSheet.map(there -> new OnSheet<>(
                        there.heading(),
                        there.widthChars(),
                        there.permitted(),
                        (other, cells) -> there.cell().add(item.apply(other), cells),
                        other -> there.worst().apply(item.apply(other)))));
    }

    /** The same on the sheet too, as wide as its kind asks for. */
    ListColumn<T> onSheet(String title) {
        return onSheet(title, kind.widthChars());
    }

    ListColumn<T> onSheet(String title, int widthChars) {
        return with(new OnSheet<>(title + unit.ofTitle(), widthChars, false, cell, item -> Severity.NOTE));
    }

    /** The same with other words on the sheet. */
    ListColumn<T> saying(Function<T, String> words) {
        OnSheet<T> there = onSheet.orElseThrow();
        return with(new OnSheet<>(
                there.heading(),
                there.widthChars(),
                there.permitted(),
                (item, cells) -> cells.text(words.apply(item)),
                there.worst()));
    }

    /** The same, rounded down on the sheet. */
    ListColumn<T> permitted() {
        OnSheet<T> there = onSheet.orElseThrow();
        return with(new OnSheet<>(there.heading(), there.widthChars(), true, there.cell(), there.worst()));
    }

    /** The same, coloured on the sheet by the worst that is to be said of it. */
    ListColumn<T> coloured(Function<T, Severity> worst) {
        OnSheet<T> there = onSheet.orElseThrow();
        return with(new OnSheet<>(there.heading(), there.widthChars(), there.permitted(), there.cell(), worst));
    }

    ListColumn<T> inFilesOnly() {
        return new ListColumn<>(name, unit, kind, meaning, cell, Optional.empty());
    }

    ListColumn<T> onSheetOnly() {
        return new ListColumn<>("", unit, kind, meaning, cell, onSheet);
    }

    private ListColumn<T> with(OnSheet<T> there) {
        return new ListColumn<>(name, unit, kind, meaning, cell, Optional.of(there));
    }
}
