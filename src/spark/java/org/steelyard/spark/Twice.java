package org.steelyard.spark;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.steelyard.model.policy.DuplicateRule;
import org.steelyard.model.loading.Origin;
import org.steelyard.read.row.FlightKey;
import org.steelyard.run.Duplicates;

/**
 * What a flight's row is that may stand in another row, too.
 *
 * @param piece number of its piece
 * @param index its place among the flights of the piece
 * @param kind what it is
 * @param other another row of the flight
 */
record Twice(int piece, int index, Duplicates.Kind kind, Sent.Place other) implements Serializable {

    /** Whether the row's flight counts. */
    boolean counts() {
        return kind != Duplicates.Kind.REPEATS && kind != Duplicates.Kind.DIFFERS;
    }

    /** Judges all rows whose keys have one digest; those that are the only ones of their flight are left out. */
    static List<Twice> judge(DuplicateRule rule, Iterable<Survey.Key> rows) {
        List<Survey.Key> inOrder = new ArrayList<>();
        rows.forEach(inOrder::add);
        List<Twice> found = new ArrayList<>();
        if (inOrder.size() > 1) {
            inOrder.sort(Comparator.comparingInt(Survey.Key::piece).thenComparingInt(Survey.Key::index));
            List<FlightKey> keys = inOrder.stream().map(Survey.Key::key).toList();
            List<Origin> origins =
                    inOrder.stream().map(row -> row.place().origin()).toList();
            List<Duplicates.Verdict> verdicts = Duplicates.judge(rule, keys, origins);
            for (int i = 0; i < verdicts.size(); i++) {
                Duplicates.Verdict verdict = verdicts.get(i);
                if (verdict.other().isPresent()) {
                    Survey.Key row = inOrder.get(i);
                    found.add(new Twice(
                            row.piece(),
                            row.index(),
                            verdict.kind(),
                            Sent.Place.of(verdict.other().get())));
                }
            }
        }
        return found;
    }
}
