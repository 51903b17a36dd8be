package org.steelyard.demo;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.Predicate;
import org.steelyard.model.input.Field;
import org.steelyard.model.type.AircraftType;
import org.steelyard.model.type.Tail;

/** A flight as its row will say it: cells by what they mean, in the units of the file. */
final class DemoRow {

    private final Style style;
    private final Tail tail;
    private final Map<Meaning, Cell> cells = new LinkedHashMap<>();

    DemoRow(Style style, Tail tail) {
        this.style = style;
        this.tail = tail;
        text(Field.TAIL, tail.registration());
    }

    /** The same row, to be changed on its own. */
    DemoRow copy() {
        DemoRow copy = new DemoRow(style, tail);
        copy.cells.clear();
        copy.cells.putAll(cells);
        return copy;
    }

    Style style() {
        return style;
    }

    Tail tail() {
        return tail;
    }

    AircraftType type() {
        return tail.type();
    }

    void put(Meaning meaning, Cell cell) {
        cells.put(meaning, cell);
    }

    /** Puts a text, or nothing where it is blank. */
    void text(Field field, String text) {
        if (!text.isBlank()) {
            put(Meaning.of(field), new Cell.Text(text));
        }
    }

    void mass(Meaning meaning, double massKg) {
        put(meaning, style.mass(massKg));
    }

    void fuel(Meaning meaning, double massKg) {
        put(meaning, style.fuel(massKg, type().fuel().densityKgPerL()));
    }

    void count(Meaning meaning, long count) {
        put(meaning, Cell.count(count));
    }

    void remove(Predicate<Meaning> which) {
        cells.keySet().removeIf(which);
    }

    Optional<Cell> cell(Meaning meaning) {
        return Optional.ofNullable(cells.get(meaning));
    }

    boolean has(Field field) {
        return cells.keySet().stream().anyMatch(meaning -> meaning.field() == field);
    }

    String text(Field field) {
        return cell(Meaning.of(field))
                .map(cell -> cell instanceof Cell.Text text ? text.text() : "")
                .orElse("");
    }

    OptionalDouble number(Meaning meaning) {
        return cells.get(meaning) instanceof Cell.Amount number
                ? OptionalDouble.of(number.value())
                : OptionalDouble.empty();
    }

    OptionalInt count(Meaning meaning) {
        OptionalDouble number = number(meaning);
        return number.isPresent() ? OptionalInt.of((int) number.getAsDouble()) : OptionalInt.empty();
    }

    OptionalDouble massKg(Meaning meaning) {
        OptionalDouble number = number(meaning);
        return number.isPresent() ? OptionalDouble.of(style.massKg(number.getAsDouble())) : number;
    }

    double fuelKg(Meaning meaning) {
        return style.fuelKg(number(meaning).orElse(0), type().fuel().densityKgPerL());
    }
}
