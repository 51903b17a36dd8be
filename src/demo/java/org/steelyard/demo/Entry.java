package org.steelyard.demo;

import java.time.LocalDate;
import java.util.List;
import org.steelyard.model.input.Field;

/**
 * A row of a file.
 *
 * @param row the flight
 * @param date its true date, by which the rows stand in order
 * @param planted what was planted in it, in words; blank for nothing
 * @param expected what must come of it, beside notes; empty for a clean flight
 * @param shape how the row fits its headings
 */
record Entry(DemoRow row, LocalDate date, String planted, List<Expected> expected, Shape shape) {

    /** How a row fits its headings. */
    enum Shape {
        FITTING,
        SHORT,
        LONG,
        BLANK
    }

    Entry {
        expected = List.copyOf(expected);
    }

    static Entry clean(DemoRow row, LocalDate date) {
        return new Entry(row, date, "", List.of(), Shape.FITTING);
    }

    String flight() {
        return row.text(Field.FLIGHT);
    }
}
