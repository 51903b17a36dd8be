package org.steelyard.read.propose;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.steelyard.model.input.BlankLoad;
import org.steelyard.model.input.ColumnMap;
import org.steelyard.model.input.ColumnMap.MergedCells;
import org.steelyard.model.input.ColumnRule;
import org.steelyard.model.input.ColumnUnit;
import org.steelyard.model.input.Field;
import org.steelyard.model.input.SourceForm;
import org.steelyard.model.type.AircraftType;
import org.steelyard.model.type.PassengerCategory;
import org.steelyard.read.propose.FieldWords.Measured;
import org.steelyard.read.propose.ProposedColumn.Confidence;
import org.steelyard.read.row.Tails;
import org.steelyard.read.table.CellKind;
import org.steelyard.read.table.HeadingRow;
import org.steelyard.read.table.SourceFault;
import org.steelyard.read.table.UnitHeading;
import org.steelyard.read.text.TrimText;
import org.steelyard.read.text.WrittenCell;

/** Drafts a heading map: columns one by one, then what they mean together. */
final class ProposalMaker {

    private static final List<Field> KEYS = List.of(Field.FLIGHT, Field.DATE, Field.TAIL);
    private static final Set<String> ALL = Set.of("total", "all", "tot", "sum");

    private final ProposalSource source;
    private final ProposalRequest request;
    private final Tails tails;
    private final PlaceWords places;
    private final List<String> headings;
    private final List<ColumnCells> cells;
    private final NumberStyle numbers;
    private final List<String> notes = new ArrayList<>();
    private final List<String> questions = new ArrayList<>();

    ProposalMaker(ProposalSource source, ProposalRequest request, Collection<AircraftType> types, Tails tails)
            throws SourceFault {
        this.source = source;
        this.request = request;
        this.tails = tails;
        this.places = new PlaceWords(types);
        this.headings = HeadingRow.headings(source.headingRow());
        this.cells = source.cells();
        this.numbers = NumberStyle.of(numeric(), request.decimalComma());
    }

    /** What kind of unit stands behind the words of a heading. */
    static Measured measured(Optional<ColumnUnit> unit) {
        if (unit.isEmpty()) {
            return Measured.NOTHING;
        }
        return switch (unit.get()) {
            case KG, LB, TONNE -> Measured.MASS;
            case LITRE, US_GALLON, IMPERIAL_GALLON -> Measured.VOLUME;
            case KG_PER_LITRE, LB_PER_US_GALLON -> Measured.DENSITY;
            case PERCENT_MAC, METRE, MILLIMETRE, INCH, INDEX -> Measured.POSITION;
            case NONE, NOSE_UP, NOSE_DOWN, IN_CELL, IN_HEADING -> Measured.NOTHING;
        };
    }

    /** The columns whose headings speak of numbers. */
    private List<ColumnCells> numeric() {
        List<ColumnCells> numeric = new ArrayList<>();
        for (int i = 0; i < headings.size(); i++) {
            UnitHeading parts = parts(headings.get(i));
            boolean number = FieldWords.field(HeadingTokens.of(parts.words()), measured(parts.unit()))
                    .filter(field -> field.kind() != Field.Kind.TEXT && field.kind() != Field.Kind.DATE)
                    .isPresent();
            if (number || parts.unit().isPresent()) {
                numeric.add(cells.get(i));
            }
        }
        return numeric;
    }

    /** A heading and its unit; a bare L is the left one where there is a right one beside it. */
    private UnitHeading parts(String heading) {
        UnitHeading parts = UnitHeading.of(heading);
        boolean side = heading.endsWith("L") && headings.contains(heading.substring(0, heading.length() - 1) + "R");
        return side ? new UnitHeading(heading, Optional.empty(), false) : parts;
    }

    MapProposal proposal() {
        List<ProposedColumn> columns = new ArrayList<>();
        for (int i = 0; i < headings.size(); i++) {
            if (!headings.get(i).isEmpty()) {
                columns.add(column(headings.get(i), cells.get(i)));
            }
        }
        columns = bareCgs(columns);
        columns = new ProposalRivals(columns).settled();
        note();
        ask(columns);
        ColumnMap map = new ColumnMap(
                request.mapName(),
                List.of(source.name().file()),
                source.charset(),
                source.delimiter(),
                numbers.decimalComma(),
                numbers.grouping(),
                ColumnMap.UnknownColumns.KEEP,
                columns.stream().map(ProposedColumn::rule).toList(),
                SourceForm.FLIGHTS,
                "",
                MergedCells.FIRST_ROW,
                BlankLoad.NOT_SAID);
        return new MapProposal(
                source.name().file(),
                source.name().sheet(),
                source.headingRow().number(),
                map,
                columns,
                notes,
                questions);
    }

    private ProposedColumn column(String heading, ColumnCells column) {
        ColumnVerdict verdict = new ColumnVerdict(heading, column);
        UnitHeading parts = parts(heading);
        HeadingTokens words = HeadingTokens.of(parts.words());
        Optional<Field> field = FieldWords.field(words, measured(parts.unit()));
        if (field.isEmpty()) {
            return FieldWords.isBareCg(words)
                    ? measuredColumn(verdict, Field.TAKEOFF_CG, parts, words, "")
                    : unknown(verdict, column);
        }
        return switch (field.get().kind()) {
            case DATE -> date(verdict, column);
            case TEXT -> text(verdict, field.get(), column);
            case COUNT -> count(verdict, field.get(), words, column);
            case TRIM -> trim(verdict, column);
            case MASS, FUEL, DENSITY, CG -> placed(verdict, field.get(), parts, words);
        };
    }

    private ProposedColumn unknown(ColumnVerdict verdict, ColumnCells column) {
        int known = column.count(cell -> tails.find(cell.text()).isPresent());
        if (column.filled() > 0 && 2 * known > column.filled()) {
            return verdict.likely(Field.TAIL, "its cells are tails of the fleet");
        }
        return verdict.carried("no word of the heading is known");
    }

    private ProposedColumn text(ColumnVerdict verdict, Field field, ColumnCells column) {
        if (column.filled() == 0) {
            return verdict.likely(field, "no cell is filled");
        }
        if (field == Field.TAIL) {
            return tail(verdict, column);
        }
        boolean place = field == Field.FROM || field == Field.TO;
        int timed = column.count(
                cell -> cell.text().matches("\\d{1,2}:?\\d{2}([:.]\\d{2})?[zZ]?") || cell.kind() == CellKind.DATE);
        if (place && 2 * timed > column.filled()) {
            return verdict.carried("its cells are times");
        }
        return verdict.sure(field, "by its heading");
    }

    private ProposedColumn tail(ColumnVerdict verdict, ColumnCells column) {
        int known = column.count(cell -> tails.find(cell.text()).isPresent());
        if (known == column.filled()) {
            return verdict.sure(Field.TAIL, "every cell is a tail of the fleet");
        }
        String strange = column.strange(cell -> tails.find(cell.text()).isPresent());
        String why =
                column.filled() - known + " of " + column.filled() + " cells are no tails of the fleet: " + strange;
        return 2 * known > column.filled() ? verdict.likely(Field.TAIL, why) : verdict.carriedIfTypes(why, column);
    }

    private ProposedColumn date(ColumnVerdict verdict, ColumnCells column) {
        DatePatterns dates = request.dates().isPresent()
                ? DatePatterns.decided(request.dates().get(), column)
                : DatePatterns.of(column);
        if (dates.rival().isPresent()) {
            questions.add("Is '" + firstSample(column) + "' in '" + verdict.heading() + "' " + dates.pattern() + " or "
                    + dates.rival().get() + "? Say --dates " + quoted(dates.pattern()) + " or --dates "
                    + quoted(dates.rival().get()) + ".");
            return verdict.doubtful("day and month cannot be told apart: " + dates.pattern() + " or "
                    + dates.rival().get());
        }
        String pattern = dates.pattern().isEmpty() ? "year-month-day" : dates.pattern();
        boolean stored = column.count(cell -> cell.kind() == CellKind.DATE) == column.filled();
        String what = stored ? "dates that the workbook stores as such" : "dates as " + pattern;
        return verdict.judge(verdict.dated(dates.declared()), what, dates::fits, "dates");
    }

    private static String quoted(String pattern) {
        return pattern.indexOf(' ') < 0 && pattern.indexOf('\'') < 0 ? pattern : '"' + pattern + '"';
    }

    private static String firstSample(ColumnCells column) {
        return column.samples().stream()
                .filter(text -> !text.isEmpty())
                .findFirst()
                .orElse("");
    }

    private ProposedColumn count(ColumnVerdict verdict, Field field, HeadingTokens words, ColumnCells column) {
        int whole = column.count(this::isCount);
        boolean names = column.filled() > 0 && 2 * column.count(cell -> Double.isNaN(number(cell))) > column.filled();
        if (names && (field == Field.FLIGHT_CREW || field == Field.CABIN_CREW)) {
            return verdict.carried("its cells are names, no numbers");
        }
        if (field == Field.HOLD_BAGS && column.filled() > 0 && 2 * whole < column.filled()) {
            return placed(verdict, Field.HOLD_MASS, UnitHeading.of(verdict.heading()), words);
        }
        PassengerCategory category = field == Field.PASSENGERS
                ? FieldWords.category(words).orElse(PassengerCategory.ADULT)
                : PassengerCategory.ADULT;
        Optional<String> place = place(field, words);
        if (place.isEmpty()) {
            return verdict.doubtful(strangePlace(field));
        }
        ColumnRule rule =
                new ColumnRule(verdict.heading(), field, place.get(), category, ColumnUnit.NONE, List.of(), false);
        return verdict.judge(rule, "whole numbers", this::isCount, "counts");
    }

    private boolean isCount(ColumnCells.Cell cell) {
        double value = number(cell);
        return value >= 0 && value == Math.rint(value) && value < 10_000;
    }

    private double number(ColumnCells.Cell cell) {
        return numbers.number(cell.text(), cell.kind());
    }

    /** The place that a heading names: blank for all together; empty where it names one that no type has. */
    private Optional<String> place(Field field, HeadingTokens words) {
        if (!PlaceWords.hasPlaces(field)) {
            return Optional.of("");
        }
        PlaceWords.Found found = places.find(field, words);
        if (found.place().isPresent() && !words.has(ALL.toArray(String[]::new))) {
            return found.place();
        }
        return found.named() ? Optional.empty() : Optional.of("");
    }

    private String strangePlace(Field field) {
        String noun = PlaceWords.noun(field);
        return "no " + noun + " of the types has such a name; there are " + places.known(field);
    }

    private ProposedColumn placed(ColumnVerdict verdict, Field field, UnitHeading parts, HeadingTokens words) {
        Optional<String> place = place(field, words);
        return place.isPresent()
                ? measuredColumn(verdict, field, parts, words, place.get())
                : verdict.doubtful(strangePlace(field));
    }

    private ProposedColumn measuredColumn(
            ColumnVerdict verdict, Field field, UnitHeading parts, HeadingTokens words, String place) {
        if (parts.anyGallon()) {
            questions.add("Are the gallons of '" + verdict.heading() + "' US gal or imp gal? Write one as its unit.");
            return verdict.doubtful("the heading does not say whether US or imperial gallons");
        }
        Optional<ColumnUnit> unit = unit(verdict, field, parts, words);
        if (unit.isEmpty()) {
            return verdict.withoutUnit(field);
        }
        ColumnRule rule =
                new ColumnRule(verdict.heading(), field, place, PassengerCategory.ADULT, unit.get(), List.of(), false);
        if (!numbers.sure() && verdict.cells().count(cell -> hasMark(cell.text())) > 0) {
            return verdict.doubtful(numbers.why());
        }
        String what = unit.get() == ColumnUnit.IN_CELL
                ? "numbers with their units"
                : "numbers in " + unit.get().symbol();
        return verdict.judge(rule, what, cell -> fits(cell, rule), "numbers");
    }

    private static boolean hasMark(String text) {
        return text.indexOf(',') >= 0 || text.indexOf('.') >= 0;
    }

    private Optional<ColumnUnit> unit(ColumnVerdict verdict, Field field, UnitHeading parts, HeadingTokens words) {
        Optional<ColumnUnit> named = parts.unit().filter(unit -> unit.suits(field));
        if (named.isPresent() || parts.unit().isPresent()) {
            return named;
        }
        int written = verdict.cells()
                .count(cell -> WrittenCell.of(cell.text()).unitFor(field).isPresent());
        if (written > 0 && 2 * written > verdict.cells().filled()) {
            return Optional.of(ColumnUnit.IN_CELL);
        }
        return field.kind() == Field.Kind.CG && words.has("mac")
                ? Optional.of(ColumnUnit.PERCENT_MAC)
                : Optional.empty();
    }

    private boolean fits(ColumnCells.Cell cell, ColumnRule rule) {
        if (rule.unit() != ColumnUnit.IN_CELL) {
            return !Double.isNaN(number(cell));
        }
        WrittenCell written = WrittenCell.of(cell.text());
        return !Double.isNaN(numbers.number(written.number(), cell.kind()))
                && written.unitFor(rule.field()).isPresent();
    }

    private ProposedColumn trim(ColumnVerdict verdict, ColumnCells column) {
        int worded = column.count(cell -> TrimText.isInWords(cell.text()));
        Predicate<ColumnCells.Cell> plain = cell -> TrimText.isInWords(cell.text()) || number(cell) == 0;
        if (request.trimUnit().isEmpty() && column.count(plain) != column.filled()) {
            questions.add("Which way do the numbers of '" + verdict.heading()
                    + "' without UP or DN count? Say --trim nose-up or --trim nose-down.");
        }
        if (request.trimUnit().isEmpty() && worded > 0) {
            return verdict.judge(
                    verdict.rule(Field.RECORDED_TRIM, ColumnUnit.IN_CELL),
                    "trims with UP or DN",
                    plain,
                    "trims with UP or DN");
        }
        if (request.trimUnit().isEmpty()) {
            return verdict.doubtful("trims without UP or DN: nothing says which way they count");
        }
        return verdict.judge(
                verdict.rule(Field.RECORDED_TRIM, request.trimUnit().get()),
                "trims, " + request.trimUnit().get().symbol() + " positive",
                cell -> TrimText.isInWords(cell.text()) || !Double.isNaN(number(cell)),
                "trims");
    }

    /** A CG of which the heading does not say at what phase goes with the only mass that is given. */
    private static List<ProposedColumn> bareCgs(List<ProposedColumn> columns) {
        Map<Field, Long> counts = new HashMap<>();
        columns.forEach(column -> counts.merge(column.rule().field(), 1L, Long::sum));
        boolean takeoff = counts.containsKey(Field.TAKEOFF_MASS);
        boolean zeroFuel = counts.containsKey(Field.ZERO_FUEL_MASS);
        List<ProposedColumn> settled = new ArrayList<>();
        for (ProposedColumn column : columns) {
            UnitHeading parts = UnitHeading.of(column.heading());
            boolean bare = FieldWords.isBareCg(HeadingTokens.of(parts.words()))
                    && column.rule().field() == Field.TAKEOFF_CG;
            settled.add(bare ? bareCg(column, takeoff, zeroFuel) : column);
        }
        return settled;
    }

    private static ProposedColumn bareCg(ProposedColumn column, boolean takeoff, boolean zeroFuel) {
        if (takeoff == zeroFuel) {
            return ColumnVerdict.leftOut(column, "the heading does not say of which state");
        }
        ColumnRule rule = column.rule();
        ColumnRule settled = new ColumnRule(
                rule.heading(),
                takeoff ? Field.TAKEOFF_CG : Field.ZERO_FUEL_CG,
                "",
                rule.category(),
                rule.unit(),
                List.of(),
                false);
        String why =
                column.why() + "; the only mass beside it is the " + (takeoff ? "take-off" : "zero-fuel") + " mass";
        return new ProposedColumn(column.heading(), column.samples(), settled, Confidence.LIKELY, why);
    }

    private void note() {
        if (!source.charset().isEmpty()) {
            notes.add("The text is not UTF-8; read as " + source.charset() + ". Look at letters with accents.");
        }
        source.delimiter().ifPresent(sign -> notes.add("Cells are parted by " + delimiterName(sign) + "."));
        if (!numbers.why().isEmpty()) {
            notes.add("Numbers: " + numbers.why() + (numbers.sure() ? "." : ": not sure."));
        }
        if (!numbers.sure()) {
            questions.add("How are numbers written: " + numbers.why() + "? Say --decimal comma or --decimal point.");
        }
    }

    private static String delimiterName(char sign) {
        return switch (sign) {
            case ',' -> "commas";
            case ';' -> "semicolons";
            case '\t' -> "tabs";
            default -> "'" + sign + "'";
        };
    }

    private void ask(List<ProposedColumn> columns) {
        for (Field key : KEYS) {
            if (KEYS.contains(key)
                    && columns.stream().noneMatch(column -> column.rule().field() == key)) {
                questions.add("Which column is the " + key.key() + "? Without it no row can be read.");
            }
        }
    }
}
