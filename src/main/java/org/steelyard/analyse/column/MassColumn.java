package org.steelyard.analyse.column;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.steelyard.model.unit.MassMoment;

/** Masses for pictures, some not known: four bytes each, right to one part in ten million. */
final class MassColumn {

    private static final int CHUNK = 1 << 13;

    private final List<float[]> chunks = new ArrayList<>();
    private int size;

    void add(Optional<MassMoment> state) {
        if (size == chunks.size() * CHUNK) {
            chunks.add(new float[CHUNK]);
        }
        chunks.get(size / CHUNK)[size % CHUNK] =
                state.isPresent() ? (float) state.get().massKg() : Float.NaN;
        size++;
    }

    OptionalDouble at(int index) {
        float massKg = chunks.get(index / CHUNK)[index % CHUNK];
        return Float.isNaN(massKg) ? OptionalDouble.empty() : OptionalDouble.of(massKg);
    }
}
