package org.steelyard.read.table;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.steelyard.hostile.Draw;
import org.steelyard.hostile.Finite;
import org.steelyard.hostile.Fuzz;
import org.steelyard.model.input.ColumnMap;
import org.steelyard.model.input.ColumnRule;
import org.steelyard.model.input.ColumnUnit;
import org.steelyard.model.type.PassengerCategory;
import org.steelyard.read.heading.Binding;
import org.steelyard.read.heading.BoundColumn;
import org.steelyard.read.loading.RowParser;
import org.steelyard.read.row.Fixtures;
import org.steelyard.read.row.ParsedRow;

/** Drawn rows, as texts and as cells of a workbook, through maps of every kind of field, unit and number. */
class RowFuzzTest {

    private static final List<RowParser> PARSERS =
            List.of(parser(Fixtures.MAP), parser(Fixtures.withDecimalComma(Fixtures.MAP)), parser(withUnitsInCells()));

    private static final List<CellKind> KINDS = List.of(CellKind.values());

    private static ColumnMap withUnitsInCells() {
        return Fixtures.map(
                "in cells",
                Fixtures.MAP.columns().stream()
                        .map(rule -> switch (rule.field().kind()) {
                            case MASS, FUEL, CG, DENSITY, TRIM -> inCell(rule);
                            default -> rule;
                        })
                        .toArray(ColumnRule[]::new));
    }

    private static ColumnRule inCell(ColumnRule rule) {
        return new ColumnRule(
                rule.heading() + " ",
                rule.field(),
                rule.place(),
                PassengerCategory.ADULT,
                ColumnUnit.IN_CELL,
                "",
                rule.required());
    }

    private static RowParser parser(ColumnMap map) {
        String[] headings = map.columns().stream()
                .map(ColumnRule::heading)
                .filter(heading -> !heading.startsWith("Fuel L"))
                .toArray(String[]::new);
        TableName name = new TableName("s.csv", "");
        try {
            return new RowParser(name, Binding.of(map, RawRow.ofText(1, headings), name, false), Fixtures.TAILS);
        } catch (SourceFault e) {
            throw new IllegalStateException(e.problems().get(0).message(), e);
        }
    }

    @Test
    void rowsAreReadOrRejected() {
        Fuzz.run("rows", 5_000, new Rows());
    }

    /** A row whose cells are parted by a sign that none of them holds; in front, the parser and the kinds of cells. */
    private static final class Rows implements Fuzz.Target {

        private static final char PART = '\u001D';

        @Override
        public byte[] input(SplittableRandom random) {
            Draw draw = new Draw(random);
            int parser = draw.below(PARSERS.size());
            StringBuilder row = new StringBuilder().append((char) ('0' + parser));
            int changes = draw.below(4);
            int level = draw.below(5);
            for (BoundColumn column : PARSERS.get(parser).binding().columns().all()) {
                String usual = usual(column, level, parser, draw);
                boolean changed = changes > 0 && draw.onceIn(8);
                changes -= changed ? 1 : 0;
                row.append((char) ('0' + (draw.onceIn(12) ? draw.below(KINDS.size()) : KINDS.indexOf(CellKind.TEXT))))
                        .append((changed ? draw.cell(usual) : usual).replace(PART, ' '))
                        .append(PART);
            }
            return row.toString().getBytes(StandardCharsets.UTF_8);
        }

        private static String usual(BoundColumn column, int level, int parser, Draw draw) {
            ColumnRule rule = column.rule();
            boolean placed = !rule.place().isEmpty();
            String unit = parser == 2 ? " " : "";
            return switch (rule.field()) {
                case FLIGHT -> "T" + draw.below(99);
                case DATE -> "2026-05-0" + (1 + draw.below(9));
                case TAIL -> draw.onceIn(5) ? "SX-ONE" : "SX-BAA";
                case FLAPS -> draw.onceIn(2) ? "5" : "";
                case TAXI_FUEL -> level < 4 ? "100" + (parser == 2 ? " kg" : "") : "";
                case TRIP_FUEL -> level < 4 ? "1000" + (parser == 2 ? " kg" : "") : "";
                case PASSENGERS -> (level < 2 && placed == (level == 0)) && draw.onceIn(2) ? "" + draw.below(40) : "";
                case HOLD_MASS ->
                    level < 2 && placed == (level == 0) ? draw.below(900) + (parser == 2 ? " kg" : "") : "";
                case HOLD_BAGS -> level == 0 && draw.onceIn(2) ? "" + draw.below(30) : "";
                case FUEL -> level < 4 && placed == (level == 0) ? draw.below(2900) + (parser == 2 ? " kg" : "") : "";
                case ZERO_FUEL_MASS -> level == 2 || level == 3 ? "30000" + (unit.isEmpty() ? "" : " kg") : "";
                case ZERO_FUEL_CG -> level == 2 || level == 3 ? "24" + (unit.isEmpty() ? "" : " % MAC") : "";
                case TAKEOFF_MASS -> level == 4 ? "33000" + (unit.isEmpty() ? "" : " kg") : "";
                case TAKEOFF_CG -> level == 4 ? "23" + (unit.isEmpty() ? "" : " % MAC") : "";
                case RECORDED_TRIM -> draw.onceIn(3) ? (unit.isEmpty() ? "0" : "0 UP") : "";
                default -> "";
            };
        }

        @Override
        public void run(byte[] input) throws Exception {
            String text = new String(input, StandardCharsets.UTF_8);
            String[] parts = text.substring(1).split(String.valueOf(PART), -1);
            String[] cells = new String[parts.length - 1];
            CellKind[] kinds = new CellKind[cells.length];
            for (int i = 0; i < cells.length; i++) {
                kinds[i] = KINDS.get(parts[i].charAt(0) - '0');
                cells[i] = parts[i].substring(1);
            }
            RowParser parser = PARSERS.get(text.charAt(0) - '0');
            ParsedRow parsed = parser.parse(RawRow.of(2, cells.clone(), kinds.clone()));
            if (parsed instanceof ParsedRow.Accepted accepted) {
                Finite.require(accepted.loading());
            } else if (parsed instanceof ParsedRow.Rejected rejected) {
                rejected.row().problems().forEach(problem -> require(problem.message()));
            }
            if (input.length % 16 == 0
                    && !parser.parse(RawRow.of(2, cells, kinds)).equals(parsed)) {
                throw new AssertionError("the same row read otherwise");
            }
        }

        private static void require(String message) {
            if (message.length() > 2_000 || message.chars().anyMatch(Character::isISOControl)) {
                throw new AssertionError("a message that fits on no line");
            }
        }
    }
}
