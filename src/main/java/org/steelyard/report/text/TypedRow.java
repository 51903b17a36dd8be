package org.steelyard.report.text;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;

/** A line whose cells stay what they are: texts, whole numbers, numbers, and null where there is none. */
public final class TypedRow extends CsvLine {

    private List<Object> cells = new ArrayList<>();

    @Override
    public CsvLine text(String text) {
        cells.add(text);
        return this;
    }

    @Override
    public CsvLine raw(String text) {
        cells.add(text);
        return this;
    }

    @Override
    public CsvLine whole(long number) {
        cells.add(number);
        return this;
    }

    @Override
    public CsvLine number(double number) {
        cells.add(number);
        return this;
    }

    @Override
    public CsvLine number(OptionalDouble number) {
        cells.add(number.isPresent() ? number.getAsDouble() : null);
        return this;
    }

    @Override
    public CsvLine blank() {
        cells.add(null);
        return this;
    }

    @Override
    public void next() {}

    /** The cells since the last call. */
    public List<Object> cells() {
        List<Object> taken = Collections.unmodifiableList(cells);
        cells = new ArrayList<>();
        return taken;
    }
}
