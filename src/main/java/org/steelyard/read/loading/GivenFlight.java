package org.steelyard.read.loading;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.steelyard.model.input.BlankLoad;
import org.steelyard.model.input.ColumnMap;
import org.steelyard.model.input.ColumnMap.MergedCells;
import org.steelyard.model.input.ColumnRule;
import org.steelyard.model.input.ColumnUnit;
import org.steelyard.model.input.DigitGrouping;
import org.steelyard.model.input.Field;
import org.steelyard.model.input.InputProblem;
import org.steelyard.model.input.ProblemCode;
import org.steelyard.model.input.RejectedRow;
import org.steelyard.model.input.SourceForm;
import org.steelyard.model.type.PassengerCategory;
import org.steelyard.read.heading.Binding;
import org.steelyard.read.row.ParsedRow;
import org.steelyard.read.row.Tails;
import org.steelyard.read.table.RawRow;
import org.steelyard.read.table.SourceFault;
import org.steelyard.read.table.TableName;

/**
 * One flight given as names and values in place of a row of a file, by the same rules ({@link RowParser}).
 *
 * <ul>
 *   <li>A name is a field as in a heading map, with a zone, hold or tank and a passenger category behind points where
 *       it needs them: {@code takeoff-cg}, {@code hold-mass.1}, {@code passengers.A.child}, {@code passengers.infant}.
 *   <li>A number stands with its unit, with or without a blank between: {@code 63.6t}, {@code 140200 lb}, {@code 24.5%}
 *       (% MAC), {@code 12.3m}, {@code 45.3index}, {@code 45 US gal}. Counts have none, nor has a trim as
 *       {@code 0.2UP}.
 *   <li>Flight and date may be left out.
 * </ul>
 */
public final class GivenFlight {

    /**
     * A name with its value.
     *
     * @param name name as above
     * @param value value with its unit
     */
    public record Given(String name, String value) {}

    private static final TableName NOWHERE = new TableName("given", "");
    private static final Pattern NUMBER_WITH_UNIT = Pattern.compile("([+-]?[0-9.,]*)\\s*(.*)");
    private static final String NO_FLIGHT = "one flight";
    private static final String NO_DATE = "1970-01-01";

    private final List<InputProblem> problems = new ArrayList<>();
    private final List<ColumnRule> rules = new ArrayList<>();
    private final List<String> cells = new ArrayList<>();

    private GivenFlight() {}

    /** The fields that a name can begin with. */
    public static List<String> fields() {
        return Stream.of(Field.values())
                .filter(GivenFlight::isNamed)
                .map(Field::key)
                .toList();
    }

    /**
     * What names and values say.
     *
     * @param given each name once
     * @param tails the fleet
     * @return a loading, or every reason why it is none; never blank
     */
    public static ParsedRow read(List<Given> given, Tails tails) {
        GivenFlight flight = new GivenFlight();
        given.forEach(flight::add);
        flight.addIfMissing(Field.FLIGHT, NO_FLIGHT);
        flight.addIfMissing(Field.DATE, NO_DATE);
        flight.addIfMissing(Field.TAIL, "");
        return flight.parse(tails);
    }

    /**
     * What is wrong with one value, whatever else is missing.
     *
     * @param one the value
     * @param tail tail of the flight
     * @param tails the fleet
     * @return the faults of this value alone
     */
    public static List<InputProblem> faults(Given one, String tail, Tails tails) {
        List<Given> given =
                one.name().equals(Field.TAIL.key()) ? List.of(one) : List.of(new Given(Field.TAIL.key(), tail), one);
        return read(given, tails) instanceof ParsedRow.Rejected rejected
                ? rejected.row().problems().stream()
                        .filter(problem -> problem.column().equals(one.name()))
                        .filter(problem -> problem.code() != ProblemCode.MISSING)
                        .filter(problem -> problem.code() != ProblemCode.CONTRADICTION)
                        .toList()
                : List.of();
    }

    private void add(Given given) {
        String[] parts = given.name().split("\\.", -1);
        Optional<Field> field = field(parts[0]);
        if (field.isEmpty() || parts.length > 3) {
            problem(given, ProblemCode.UNKNOWN_NAME, "unknown name", "one of " + String.join(", ", fields()));
            return;
        }
        String place = parts.length > 1 ? parts[1] : "";
        PassengerCategory category = PassengerCategory.ADULT;
        String word = parts.length > 2 ? parts[2] : place;
        Optional<PassengerCategory> named = category(word);
        if (named.isPresent() && field.get().hasCategory()) {
            category = named.get();
            place = parts.length > 2 ? place : "";
        } else if (parts.length > 2) {
            problem(given, ProblemCode.UNKNOWN_NAME, "unknown passenger category '" + word + "'", categories());
            return;
        }
        addCell(given, field.get(), place, category);
    }

    private void addCell(Given given, Field field, String place, PassengerCategory category) {
        Optional<Amount> amount = amount(given, field);
        if (amount.isPresent()) {
            rules.add(new ColumnRule(
                    given.name(), field, place, category, amount.get().unit(), "", false));
            cells.add(amount.get().text());
        }
    }

    private record Amount(String text, ColumnUnit unit) {}

    private Optional<Amount> amount(Given given, Field field) {
        String value = given.value().strip();
        if (ColumnUnit.NONE.suits(field)) {
            return Optional.of(new Amount(value, ColumnUnit.NONE));
        }
        if (field.kind() == Field.Kind.TRIM) {
            return Optional.of(new Amount(value, ColumnUnit.NOSE_UP));
        }
        Matcher parts = NUMBER_WITH_UNIT.matcher(value);
        String unit = parts.matches() ? parts.group(2) : "";
        Optional<ColumnUnit> known = units(field)
                .filter(one -> folded(one.symbol()).equals(folded(unit)) || isPercent(one, unit))
                .findFirst();
        if (known.isEmpty()) {
            String reason = unit.isEmpty() ? "the unit is missing" : "unknown unit '" + unit + "'";
            String expected =
                    String.join(", ", units(field).map(ColumnUnit::symbol).toList());
            problem(given, ProblemCode.NOT_A_NUMBER, reason, "a number in one of " + expected);
        }
        return known.map(one -> new Amount(parts.group(1), one));
    }

    private static Stream<ColumnUnit> units(Field field) {
        return Stream.of(ColumnUnit.values()).filter(unit -> unit.isUnit() && unit.suits(field));
    }

    private static boolean isPercent(ColumnUnit unit, String text) {
        return unit == ColumnUnit.PERCENT_MAC && text.equals("%");
    }

    private static String folded(String text) {
        return text.replace(" ", "").toLowerCase(Locale.ROOT);
    }

    private static Optional<Field> field(String key) {
        return Stream.of(Field.values())
                .filter(GivenFlight::isNamed)
                .filter(field -> field.key().equals(key))
                .findFirst();
    }

    private static boolean isNamed(Field field) {
        return field != Field.IGNORED && field != Field.EXTRA && !field.isOfSheet() && field.suits(SourceForm.FLIGHTS);
    }

    private static Optional<PassengerCategory> category(String word) {
        return Stream.of(PassengerCategory.values())
                .filter(category -> category.label().equals(word))
                .findFirst();
    }

    private static String categories() {
        return String.join(
                ", ",
                Stream.of(PassengerCategory.values())
                        .map(PassengerCategory::label)
                        .toList());
    }

    private void addIfMissing(Field field, String value) {
        if (rules.stream().noneMatch(rule -> rule.field() == field)) {
            rules.add(new ColumnRule(field.key(), field, "", PassengerCategory.ADULT, ColumnUnit.NONE, "", false));
            cells.add(value);
        }
    }

    private void problem(Given given, ProblemCode code, String reason, String expected) {
        problems.add(new InputProblem(NOWHERE.row(1), given.name(), code, reason, given.value(), expected));
    }

    private ParsedRow parse(Tails tails) {
        ColumnMap map = new ColumnMap(
                "given",
                List.of(),
                "",
                Optional.empty(),
                false,
                DigitGrouping.NONE,
                ColumnMap.UnknownColumns.LEAVE_OUT,
                rules,
                SourceForm.FLIGHTS,
                "",
                MergedCells.FIRST_ROW,
                BlankLoad.NOT_SAID);
        String[] headings = rules.stream().map(ColumnRule::heading).toArray(String[]::new);
        try {
            Binding binding = Binding.of(map, RawRow.ofText(1, headings), NOWHERE, true);
            ParsedRow parsed =
                    new RowParser(NOWHERE, binding, tails).parse(RawRow.ofText(1, cells.toArray(String[]::new)));
            if (parsed instanceof ParsedRow.Rejected rejected) {
                withoutConsequences(rejected.row().problems());
            }
            return problems.isEmpty() ? parsed : rejected();
        } catch (SourceFault fault) {
            problems.addAll(fault.problems());
            return rejected();
        }
    }

    /** What is missing only because its value could not be read is no fault of its own. */
    private void withoutConsequences(List<InputProblem> found) {
        Set<String> faulty = new HashSet<>();
        problems.forEach(problem -> faulty.add(problem.column()));
        for (InputProblem problem : found) {
            if (faulty.isEmpty() || problem.code() != ProblemCode.MISSING) {
                problems.add(problem);
            }
        }
    }

    private ParsedRow rejected() {
        return new ParsedRow.Rejected(new RejectedRow(
                NOWHERE.row(1), "given", rules.stream().map(ColumnRule::heading).toList(), cells, problems));
    }
}
