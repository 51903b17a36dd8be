package org.steelyard.run;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.steelyard.model.loading.Loading;
import org.steelyard.model.loading.Origin;
import org.steelyard.model.policy.DuplicateRule;
import org.steelyard.read.row.FlightKey;
import org.steelyard.read.row.ParsedRow;
import org.steelyard.read.season.RawRows;
import org.steelyard.read.season.SeasonFiles;
import org.steelyard.read.season.SourceFile;

/**
 * Finds flights that stand in more than one row of a season, and says by the policy's rule which row stands. Rows that
 * agree cell for cell are one flight under every rule but that all count. Flights are to be judged in the order of the
 * input. Where the last or none stands, all files are read once before.
 */
public final class Duplicates {

    private static final int BATCH_ROWS = 500;

    private final DuplicateRule rule;
    private KnownFlights flights = new KnownFlights();
    private final List<Origin> tables = new ArrayList<>();
    private final Map<Integer, Origin> others = new HashMap<>();
    private boolean surveyed;
    private int lastTable;

    Duplicates(DuplicateRule rule) {
        this.rule = rule;
    }

    DuplicateRule rule() {
        return rule;
    }

    /** Lets go of the flights, of which none is judged any more: they are half of what a season keeps in memory. */
    void forget() {
        flights = new KnownFlights();
    }

    /** What a row is. */
    public enum Kind {
        /** The row that stands for its flight. */
        STANDS,
        /** It agrees cell for cell with the one that stands. */
        REPEATS,
        /** It differs from another in some cell and does not stand. */
        DIFFERS,
        /** It agrees cell for cell with another and counts again. */
        COUNTS_AGAIN,
        /** It differs from another in some cell and counts too. */
        COUNTS_TOO
    }

    /**
     * What a row is, and another row of its flight.
     *
     * @param kind what it is
     * @param other the row that stands, or the one it differs from; empty where it is the only one
     */
    public record Verdict(Kind kind, Optional<Origin> other) {

        private static final Verdict ALONE = new Verdict(Kind.STANDS, Optional.empty());
    }

    /**
     * Judges the rows of flights that may be the same, when no other rows of a season can be of these flights.
     *
     * @param rule which of several rows of one flight stands
     * @param keys keys of the rows in the order of the input
     * @param origins where each of them stands
     * @return what each row is
     */
    public static List<Verdict> judge(DuplicateRule rule, List<FlightKey> keys, List<Origin> origins) {
        Duplicates duplicates = new Duplicates(rule);
        if (rule == DuplicateRule.LAST || rule == DuplicateRule.NONE) {
            for (int i = 0; i < keys.size(); i++) {
                duplicates.survey(keys.get(i), origins.get(i));
            }
            duplicates.surveyed = true;
        }
        List<Verdict> verdicts = new ArrayList<>(keys.size());
        for (int i = 0; i < keys.size(); i++) {
            verdicts.add(duplicates.judge(keys.get(i), origins.get(i)));
        }
        return verdicts;
    }

    /** Goes through all files before the first flight is judged, if the rule asks for it. */
    void survey(SeasonFiles files) throws InterruptedException {
        if (rule != DuplicateRule.LAST && rule != DuplicateRule.NONE) {
            return;
        }
        for (Path file : files.inOrder()) {
            try (SourceFile source = files.open(file)) {
                source.forEachBatch(BATCH_ROWS, rows -> {
                    survey(rows);
                    if (Thread.interrupted()) {
                        throw new InterruptedException();
                    }
                });
            }
        }
        surveyed = true;
    }

    private void survey(RawRows rows) {
        List<ParsedRow> parsed = rows.parse();
        for (int i = 0; i < parsed.size(); i++) {
            if (parsed.get(i) instanceof ParsedRow.Accepted accepted) {
                Loading loading = accepted.loading();
                survey(rows.reader().key(rows.rows().get(i), loading), loading.origin());
            }
        }
    }

    private void survey(FlightKey key, Origin origin) {
        int table = number(origin);
        int entry = flights.find(key);
        if (entry < 0) {
            flights.add(key, table, origin.row());
        } else if (rule == DuplicateRule.LAST) {
            flights.put(entry, key, table, origin.row());
        } else if (!flights.hasContent(entry, key)) {
            others.putIfAbsent(entry, origin);
        }
    }

    /** What the next row is. */
    Verdict judge(FlightKey key, Origin origin) {
        int table = number(origin);
        int entry = flights.find(key);
        if (entry < 0) {
            flights.add(key, table, origin.row());
            return Verdict.ALONE;
        }
        boolean itself = surveyed && flights.isAt(entry, table, origin.row());
        if (others.containsKey(entry)) {
            return new Verdict(Kind.DIFFERS, Optional.of(itself ? others.get(entry) : standing(entry)));
        }
        return itself ? Verdict.ALONE : new Verdict(kind(flights.hasContent(entry, key)), Optional.of(standing(entry)));
    }

    private Kind kind(boolean same) {
        if (rule == DuplicateRule.ALL) {
            return same ? Kind.COUNTS_AGAIN : Kind.COUNTS_TOO;
        }
        return same ? Kind.REPEATS : Kind.DIFFERS;
    }

    private Origin standing(int entry) {
        Origin table = tables.get(flights.tableOf(entry));
        return new Origin(table.file(), table.sheet(), flights.rowOf(entry));
    }

    /** The number of a row's table; rows of one table follow each other. */
    private int number(Origin origin) {
        if (lastTable < tables.size() && isOf(lastTable, origin)) {
            return lastTable;
        }
        lastTable = 0;
        while (lastTable < tables.size() && !isOf(lastTable, origin)) {
            lastTable++;
        }
        if (lastTable == tables.size()) {
            tables.add(new Origin(origin.file(), origin.sheet(), 0));
        }
        return lastTable;
    }

    private boolean isOf(int table, Origin origin) {
        return tables.get(table).file().equals(origin.file())
                && tables.get(table).sheet().equals(origin.sheet());
    }
}
