package org.steelyard.read.season;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.steelyard.model.input.ColumnMap;
import org.steelyard.model.input.ColumnRule;
import org.steelyard.model.input.InputProblem;
import org.steelyard.model.input.ProblemCode;
import org.steelyard.model.input.RejectedRow;
import org.steelyard.model.input.SkipKind;
import org.steelyard.model.input.SkippedRow;
import org.steelyard.model.loading.Loading;
import org.steelyard.model.loading.Origin;
import org.steelyard.model.unit.GuardedText;
import org.steelyard.read.heading.Binding;
import org.steelyard.read.loading.ItemBook;
import org.steelyard.read.row.FlightKey;
import org.steelyard.read.row.ParsedRow;
import org.steelyard.read.row.Tails;
import org.steelyard.read.table.CellKind;
import org.steelyard.read.table.HeadingRow;
import org.steelyard.read.table.RawRow;
import org.steelyard.read.table.RejectedColumns;
import org.steelyard.read.table.RowProblems;
import org.steelyard.read.table.SourceFault;
import org.steelyard.read.text.Blanks;

/**
 * Understands the rows of a file of rejected rows. Each is read through the heading map of the file that it came from,
 * under the headings of that file alone; where that file is not among the season's, under those that its map knows and
 * those whose cells are filled. What stands under other headings, or among the cells without a heading, is a fault.
 */
final class PutRightReader implements RowReader {

    private static final int MOST_READERS = 1000;

    private final RejectedTable table;
    private final List<ColumnMap> maps;
    private final Tails tails;
    private final ItemBook items;
    private final Corrections corrections;
    private final Map<Layout, TableReader> readers = new ConcurrentHashMap<>();

    /** A heading map with headings; comparable, as a map finds those of one hash code one by one otherwise. */
    private record Layout(String mapName, List<String> headings) implements Comparable<Layout> {

        private static final Comparator<Layout> ORDER = Comparator.comparing(Layout::mapName)
                .thenComparing(layout -> layout.headings().toArray(String[]::new), Arrays::compare);

        @Override
        public int compareTo(Layout other) {
            return ORDER.compare(this, other);
        }
    }

    /** A row as it stood in its own file. */
    private record Restored(FormerPlace place, TableReader reader, RawRow row, List<String> strays) {}

    PutRightReader(RejectedTable table, List<ColumnMap> maps, Tails tails, ItemBook items, Corrections corrections) {
        this.table = table;
        this.maps = List.copyOf(maps);
        this.tails = tails;
        this.items = items;
        this.corrections = corrections;
    }

    @Override
    public ParsedRow parse(RawRow row) {
        if (row.isBlank()) {
            return new ParsedRow.Blank();
        }
        Origin here = table.name().row(row.number());
        Optional<FormerPlace> place = table.place(row);
        Optional<Correction> later = later(place, here);
        if (later.isPresent()) {
            return new ParsedRow.Skipped(new SkippedRow(
                    here,
                    SkipKind.PUT_RIGHT,
                    "the row is read from " + later.get().place() + " in its place, where it is put right again"));
        }
        try {
            Restored restored = restored(row, place.orElseThrow(() -> noPlace(row, here)));
            return parsed(row, restored);
        } catch (SourceFault e) {
            return new ParsedRow.Rejected(asItStands(row, here, place, e.problems()));
        }
    }

    /** What puts the same row right again. */
    private Optional<Correction> later(Optional<FormerPlace> place, Origin here) {
        return place.flatMap(former -> corrections.of(former.row().origin()))
                .filter(correction -> !correction.place().equals(here));
    }

    @Override
    public void gather(RawRow row, ItemBook into) {
        readable(row)
                .ifPresent(restored -> restored.reader().gather(restored.row(), hasNothingAstray(row, restored), into));
    }

    /** Takes the load items of a row's flight for it, in the order of the rows. */
    void claim(RawRow row) {
        if (!items.isEmpty()) {
            readable(row).ifPresent(restored -> restored.reader().claim(restored.row()));
        }
    }

    private boolean hasNothingAstray(RawRow row, Restored restored) {
        return restored.strays().isEmpty()
                && table.cell(row, RejectedColumns.EXTRA_CELLS).isEmpty();
    }

    /** The row as it stood in its own file, if it is to be read and can be. */
    private Optional<Restored> readable(RawRow row) {
        Optional<FormerPlace> place = table.place(row);
        if (row.isBlank()
                || place.isEmpty()
                || later(place, table.name().row(row.number())).isPresent()) {
            return Optional.empty();
        }
        try {
            return Optional.of(restored(row, place.get()));
        } catch (SourceFault e) {
            return Optional.empty(); // parsing the row says why
        }
    }

    private SourceFault noPlace(RawRow row, Origin here) {
        return new SourceFault(new InputProblem(
                here,
                RejectedColumns.ROW,
                ProblemCode.MISSING,
                "the row does not say where it stood",
                table.cell(row, RejectedColumns.ROW),
                "file, row and heading map as they were written; a new flight goes into a file of its own"));
    }

    private ParsedRow parsed(RawRow row, Restored restored) {
        List<InputProblem> problems = new ArrayList<>();
        ParsedRow parsed = restored.reader().parse(restored.row());
        if (parsed instanceof ParsedRow.Rejected rejected) {
            problems.addAll(rejected.row().problems());
        }
        strays(row, restored, problems);
        if (!problems.isEmpty()) {
            return new ParsedRow.Rejected(rejected(row, restored, problems));
        }
        return parsed;
    }

    private void strays(RawRow row, Restored restored, List<InputProblem> problems) {
        Origin origin = table.name().row(restored.row());
        String file = restored.place().row().origin().file();
        for (String heading : restored.strays()) {
            problems.add(new InputProblem(
                    origin,
                    heading,
                    ProblemCode.BAD_HEADING,
                    file + " has no column of this heading",
                    RowProblems.shown(table.cell(row, heading)),
                    "a blank cell"));
        }
        String extra = table.cell(row, RejectedColumns.EXTRA_CELLS);
        if (!extra.isEmpty()) {
            problems.add(new InputProblem(
                    origin,
                    RejectedColumns.EXTRA_CELLS,
                    ProblemCode.MALFORMED_ROW,
                    "cells that stood under no heading of " + file + " are still there",
                    RowProblems.shown(extra),
                    "a blank cell, once what they say stands under its heading or is not wanted"));
        }
    }

    private Restored restored(RawRow row, FormerPlace place) throws SourceFault {
        ColumnMap map = map(row, place);
        List<String> headings = corrections.headings(place).orElseGet(() -> headings(row, map));
        List<String> strays = new ArrayList<>();
        for (String heading : table.headings()) {
            if (!RejectedColumns.isOwn(heading)
                    && !headings.contains(heading)
                    && !table.cell(row, heading).isEmpty()) {
                strays.add(heading);
            }
        }
        return new Restored(place, reader(map, headings), cells(row, headings, place), strays);
    }

    private ColumnMap map(RawRow row, FormerPlace place) throws SourceFault {
        return maps.stream()
                .filter(map -> map.name().equals(place.mapName()))
                .findFirst()
                .orElseThrow(() -> new SourceFault(new InputProblem(
                        table.name().row(row.puttingRight(place.row().origin())),
                        RejectedColumns.MAP,
                        ProblemCode.UNKNOWN_NAME,
                        "there is no such heading map",
                        RowProblems.shown(place.mapName()),
                        "one of "
                                + String.join(
                                        ", ", maps.stream().map(ColumnMap::name).toList()))));
    }

    /**
     * The headings of a file that is not there: those that the map knows, and those whose cells are filled. Of headings
     * that differ in case alone, and so cannot be of one file, the one with a filled cell, or as the map writes it.
     */
    private List<String> headings(RawRow row, ColumnMap map) {
        Map<String, ColumnRule> rules = HeadingRow.rules(map);
        Map<String, String> chosen = new LinkedHashMap<>();
        for (String heading : table.headings()) {
            boolean filled = !table.cell(row, heading).isEmpty();
            String folded = Blanks.fold(heading);
            if (RejectedColumns.isOwn(heading) || heading.isEmpty() || !(filled || rules.containsKey(folded))) {
                continue;
            }
            boolean asWritten =
                    rules.containsKey(folded) && rules.get(folded).heading().equals(heading);
            String rival = chosen.get(folded);
            boolean rivalFilled = rival != null && !table.cell(row, rival).isEmpty();
            if (rival == null || (filled && !rivalFilled) || (asWritten && filled == rivalFilled)) {
                chosen.put(folded, heading);
            }
        }
        return List.copyOf(chosen.values());
    }

    private TableReader reader(ColumnMap map, List<String> headings) throws SourceFault {
        Layout layout = new Layout(map.name(), headings);
        TableReader known = readers.get(layout);
        if (known != null) {
            return known;
        }
        RawRow headingRow = RawRow.ofText(table.headingRow(), headings.toArray(String[]::new));
        TableReader made = new TableReader(
                table.name(), Binding.of(map, headingRow, table.name(), true), tails, items, Corrections.NONE);
        if (readers.size() >= MOST_READERS) {
            readers.clear(); // a row is read twice within a batch at most, and its reader is soon made again
        }
        readers.put(layout, made);
        return made;
    }

    private RawRow cells(RawRow row, List<String> headings, FormerPlace place) {
        String[] texts = new String[headings.size()];
        CellKind[] kinds = new CellKind[texts.length];
        for (int i = 0; i < texts.length; i++) {
            int column = headings.get(i).isEmpty()
                    ? -1
                    : table.column(headings.get(i)).orElse(-1);
            texts[i] = column < 0 ? "" : GuardedText.free(row.cell(column));
            kinds[i] = column < 0 ? CellKind.TEXT : row.kind(column);
        }
        return RawRow.of(row.number(), texts, kinds).puttingRight(place.row().origin());
    }

    @Override
    public Origin origin(RawRow row) {
        return table.name().row(row);
    }

    @Override
    public FlightKey key(RawRow row, Loading loading) {
        try {
            Restored restored = restored(row, table.place(row).orElseThrow());
            return restored.reader().key(restored.row(), loading);
        } catch (SourceFault e) {
            throw new IllegalStateException("a row without a flight", e);
        }
    }

    @Override
    public RejectedRow reject(RawRow row, InputProblem problem) {
        try {
            return rejected(row, restored(row, table.place(row).orElseThrow()), List.of(problem));
        } catch (SourceFault e) {
            throw new IllegalStateException("a row without a flight", e);
        }
    }

    private RejectedRow rejected(RawRow row, Restored restored, List<InputProblem> problems) {
        Binding binding = restored.reader().binding();
        List<String> headings = new ArrayList<>(binding.headings());
        List<String> cells = new ArrayList<>(binding.cellsAsText(restored.row()).subList(0, headings.size()));
        for (String heading : restored.strays()) {
            headings.add(heading);
            cells.add(table.cell(row, heading));
        }
        addExtraCells(row, headings, cells);
        return new RejectedRow(
                table.name().row(restored.row()),
                restored.place().mapName(),
                headings,
                cells,
                problems,
                Optional.of(restored.place().row()));
    }

    private void addExtraCells(RawRow row, List<String> headings, List<String> cells) {
        String extra = table.cell(row, RejectedColumns.EXTRA_CELLS);
        if (!extra.isEmpty()) {
            headings.add(RejectedColumns.EXTRA_CELLS);
            cells.add(extra);
        }
    }

    /** A row whose own file and map cannot be told. */
    private RejectedRow asItStands(RawRow row, Origin here, Optional<FormerPlace> place, List<InputProblem> problems) {
        List<String> headings = new ArrayList<>();
        List<String> cells = new ArrayList<>();
        for (String heading : table.headings()) {
            if (!RejectedColumns.isOwn(heading)) {
                headings.add(heading);
                cells.add(table.cell(row, heading));
            }
        }
        addExtraCells(row, headings, cells);
        return new RejectedRow(
                place.isPresent()
                        ? table.name().row(row.puttingRight(place.get().row().origin()))
                        : here,
                place.map(FormerPlace::mapName).orElse(""),
                headings,
                cells,
                problems,
                place.map(FormerPlace::row));
    }
}
