package org.steelyard.read.heading;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.steelyard.model.input.ColumnMap;
import org.steelyard.model.input.ColumnRule;
import org.steelyard.model.input.ColumnUnit;
import org.steelyard.model.input.Field;
import org.steelyard.model.input.InputProblem;
import org.steelyard.model.input.ProblemCode;
import org.steelyard.model.input.Slot;
import org.steelyard.model.type.PassengerCategory;
import org.steelyard.read.table.CellKind;
import org.steelyard.read.table.HeadingRow;
import org.steelyard.read.table.RawRow;
import org.steelyard.read.table.RowProblems;
import org.steelyard.read.table.SourceFault;
import org.steelyard.read.table.TableName;
import org.steelyard.read.text.Blanks;
import org.steelyard.read.text.DateFormat;

/**
 * The headings of a table bound to the rules of a map.
 *
 * @param map the map
 * @param headings the headings as they stand in the file, without blanks around them or blank ones at the end
 * @param columns the columns that mean something or are carried along
 * @param extras how many columns are carried along
 * @param leftOut headings of columns without a rule that are not carried along
 * @param shape what rows must look like
 */
public record Binding(
        ColumnMap map, List<String> headings, BoundColumns columns, int extras, List<String> leftOut, RowShape shape) {

    private static final int MOST_COLUMNS = 2_000;
    private static final int MOST_PROBLEMS = 20;

    public Binding {
        headings = List.copyOf(headings);
        leftOut = List.copyOf(leftOut);
    }

    /**
     * Binds the headings of a row.
     *
     * @throws SourceFault if a heading is there twice, or two columns mean what only one can
     */
    public static Binding of(ColumnMap map, RawRow row, TableName name, boolean rowsMayEndEarly) throws SourceFault {
        List<String> headings = HeadingRow.headings(row);
        requireFew(headings, row, name);
        List<InputProblem> problems = new ArrayList<>(repeated(headings, row, name));
        List<BoundColumn> columns = new ArrayList<>();
        List<String> leftOut = new ArrayList<>();
        Map<String, ColumnRule> rules = HeadingRow.rules(map);
        for (int i = 0; i < headings.size(); i++) {
            String heading = headings.get(i);
            Optional<ColumnRule> rule = HeadingRow.rule(rules, heading).or(() -> unknownColumn(map, heading));
            HeadingRow.unitFault(rules, heading)
                    .ifPresent(fault -> problems.add(name.problem(
                            row.number(),
                            ProblemCode.BAD_HEADING,
                            fault,
                            heading,
                            "the heading and its unit, as Fuel (kg)")));
            if (rule.isPresent() && rule.get().field() != Field.IGNORED) {
                BoundColumn column = BoundColumn.of(columns.size(), i, heading, rule.get());
                columns.add(column);
                if (column.dates().filter(DateFormat::hasTime).isPresent()) {
                    columns.add(BoundColumn.of(columns.size(), i, heading, carried(heading)));
                }
            } else if (rule.isEmpty() && !heading.isEmpty()) {
                leftOut.add(heading);
            }
        }
        problems.addAll(rivals(columns, row, name));
        problems.addAll(twoUnits(columns, row, name));
        if (!problems.isEmpty()) {
            throw new SourceFault(few(problems, row, name));
        }
        int extras = (int)
                columns.stream().filter(column -> column.slot() == Field.EXTRA).count();
        return new Binding(
                map, headings, new BoundColumns(columns), extras, leftOut, RowShape.of(headings, rowsMayEndEarly));
    }

    /** The first faults, and how many there are beside them. */
    private static List<InputProblem> few(List<InputProblem> problems, RawRow row, TableName name) {
        if (problems.size() <= MOST_PROBLEMS) {
            return problems;
        }
        List<InputProblem> few = new ArrayList<>(problems.subList(0, MOST_PROBLEMS));
        few.add(name.problem(
                row.number(),
                ProblemCode.BAD_HEADING,
                String.format(Locale.ROOT, "%,d more faults of the headings", problems.size() - MOST_PROBLEMS),
                "",
                "headings that a person could read"));
        return few;
    }

    private static void requireFew(List<String> headings, RawRow row, TableName name) throws SourceFault {
        if (headings.size() > MOST_COLUMNS) {
            throw new SourceFault(name.problem(
                    row.number(),
                    ProblemCode.BAD_HEADING,
                    String.format(Locale.ROOT, "the headings take %,d columns", headings.size()),
                    RowProblems.shown(headings.get(headings.size() - 1)),
                    String.format(Locale.ROOT, "at most %,d columns, blank ones among them", MOST_COLUMNS)));
        }
    }

    private static Optional<ColumnRule> unknownColumn(ColumnMap map, String heading) {
        return map.unknownColumns() == ColumnMap.UnknownColumns.KEEP && !heading.isEmpty()
                ? Optional.of(carried(heading))
                : Optional.empty();
    }

    private static ColumnRule carried(String heading) {
        return new ColumnRule(heading, Field.EXTRA, "", PassengerCategory.ADULT, ColumnUnit.NONE, "", false);
    }

    private static List<InputProblem> repeated(List<String> headings, RawRow row, TableName name) {
        List<InputProblem> problems = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        for (String heading : headings) {
            if (!heading.isEmpty() && !seen.add(Blanks.fold(heading))) {
                problems.add(name.problem(
                        row.number(),
                        ProblemCode.BAD_HEADING,
                        "the heading is there twice",
                        heading,
                        "each heading once, case and blanks aside"));
            }
        }
        return problems;
    }

    private static List<InputProblem> rivals(List<BoundColumn> columns, RawRow row, TableName name) {
        List<InputProblem> problems = new ArrayList<>();
        Map<Slot, BoundColumn> firsts = new HashMap<>();
        for (BoundColumn column : columns) {
            BoundColumn first = firsts.putIfAbsent(column.slot(), column);
            if (first != null
                    && !column.slot().takesSeveral()
                    && !Blanks.fold(first.heading()).equals(Blanks.fold(column.heading()))) {
                problems.add(name.problem(
                        row.number(),
                        ProblemCode.BAD_HEADING,
                        "'" + first.heading() + "' and '" + column.heading() + "' both mean "
                                + column.slot().label(),
                        column.heading(),
                        "one column for it; the heading map may declare the other as extra or ignored"));
            }
        }
        return problems;
    }

    /** A heading of the map that stands in the file with two units: the two would be added up. */
    private static List<InputProblem> twoUnits(List<BoundColumn> columns, RawRow row, TableName name) {
        List<InputProblem> problems = new ArrayList<>();
        Map<String, BoundColumn> firsts = new HashMap<>();
        for (BoundColumn column : columns) {
            BoundColumn first = firsts.putIfAbsent(Blanks.fold(column.rule().heading()), column);
            boolean sameHeading = first != null && Blanks.fold(first.heading()).equals(Blanks.fold(column.heading()));
            if (first != null && !sameHeading) {
                problems.add(name.problem(
                        row.number(),
                        ProblemCode.BAD_HEADING,
                        "'" + first.heading() + "' and '" + column.heading() + "' are both '"
                                + column.rule().heading() + "'",
                        column.heading(),
                        "one column for it; the heading map may name both with their units, one as ignored"));
            }
        }
        return problems;
    }

    /**
     * The cells of a row as a text file for the same map has them: typed dates and numbers in the map's own way. Beyond
     * the headings blank cells are left out.
     */
    public List<String> cellsAsText(RawRow row) {
        int within = Math.min(row.size(), headings.size());
        List<String> cells = new ArrayList<>(within);
        for (int i = 0; i < within; i++) {
            cells.add(cellAsText(row, i));
        }
        for (int i = row.nextFilled(within); i >= 0; i = row.nextFilled(i + 1)) {
            cells.add(cellAsText(row, i));
        }
        for (BoundColumn column : columns.all()) {
            if (row.kind(column.index()) == CellKind.DATE && column.dates().isPresent()) {
                Optional<LocalDateTime> stored = DateFormat.storedDateTime(row.cell(column.index()));
                stored.ifPresent(
                        time -> cells.set(column.index(), column.dates().get().format(time)));
            }
        }
        return cells;
    }

    private String cellAsText(RawRow row, int index) {
        return switch (row.kind(index)) {
            case COVERED -> "";
            case NUMBER -> map.decimalComma() ? row.cell(index).replace('.', ',') : row.cell(index);
            default -> row.cell(index);
        };
    }
}
