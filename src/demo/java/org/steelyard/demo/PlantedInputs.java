package org.steelyard.demo;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.commons.csv.CSVRecord;
import org.steelyard.model.input.ColumnMap;
import org.steelyard.model.input.ColumnRule;
import org.steelyard.model.input.Field;
import org.steelyard.model.input.ProblemCode;

/**
 * Rows that are made to be rejected, one in each row of {@code planted-inputs.csv}: a flight of the file is picked and
 * some of its cells are changed.
 */
final class PlantedInputs {

    private static final String ERROR = "#error";
    private static final String FORMULA = "#formula ";

    private final ColumnMap map;

    private PlantedInputs(ColumnMap map) {
        this.map = map;
    }

    /** The entries of a file with the planted rows in place of the flights that are picked. */
    static List<Entry> into(String file, ColumnMap map, List<Entry> entries) throws IOException {
        List<Entry> planted = new ArrayList<>(entries);
        PlantedInputs inputs = new PlantedInputs(map);
        for (CSVRecord record : PlantedTables.read("planted-inputs.csv")) {
            if (record.get("file").equals(file)) {
                int position = position(planted, record.get("type"), Integer.parseInt(record.get("pick")));
                planted.set(position, inputs.spoilt(planted.get(position), record));
            }
        }
        return planted;
    }

    /** The picked one of the file's clean flights of a type that are given in full detail, counted from 1. */
    private static int position(List<Entry> entries, String type, int pick) {
        int left = pick;
        for (int i = 0; i < entries.size(); i++) {
            DemoRow row = entries.get(i).row();
            boolean detailed = row.cell(Meaning.of(Field.HOLD_MASS)).isEmpty()
                    && !row.has(Field.ZERO_FUEL_MASS)
                    && !row.has(Field.TAKEOFF_MASS);
            if (row.type().id().equals(type) && entries.get(i).planted().isEmpty() && detailed && --left == 0) {
                return i;
            }
        }
        throw new IllegalStateException("there are not " + pick + " flights of " + type);
    }

    private Entry spoilt(Entry entry, CSVRecord record) {
        DemoRow row = entry.row().copy();
        for (String edit : record.get("cells").split(" \\| ", -1)) {
            if (!edit.isBlank()) {
                int sign = edit.indexOf('=');
                spoil(
                        row,
                        edit.substring(0, sign).strip(),
                        edit.substring(sign + 1).strip());
            }
        }
        Entry.Shape shape = PlantedTables.find(
                Entry.Shape.values(), value -> value.name().toLowerCase(Locale.ROOT), record.get("shape"));
        return new Entry(row, entry.date(), record.get("planted"), expected(record.get("expected")), shape);
    }

    private void spoil(DemoRow row, String heading, String text) {
        ColumnRule rule = map.columns().stream()
                .filter(column -> column.heading().equals(heading))
                .findAny()
                .orElseThrow(() -> new IllegalStateException("no heading '" + heading + "'"));
        Meaning meaning = Meaning.of(rule);
        if (text.isEmpty()) {
            row.remove(meaning::equals);
        } else if (text.equals(ERROR)) {
            row.put(meaning, new Cell.Failed());
        } else if (text.startsWith(FORMULA)) {
            row.put(meaning, new Cell.Uncalculated(text.substring(FORMULA.length())));
        } else {
            row.put(meaning, new Cell.Text(text));
        }
    }

    private static List<Expected> expected(String text) {
        List<Expected> expected = new ArrayList<>();
        for (String part : text.split("; ", -1)) {
            String[] words = part.split(" ", 2);
            if (words[0].equals("blank")) {
                expected.add(new Expected.Passed());
            } else {
                ProblemCode code = PlantedTables.find(ProblemCode.values(), ProblemCode::code, words[0]);
                expected.add(new Expected.Refused(code, words.length > 1 ? words[1] : ""));
            }
        }
        return expected;
    }
}
