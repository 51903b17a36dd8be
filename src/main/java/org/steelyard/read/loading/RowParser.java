package org.steelyard.read.loading;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.steelyard.model.input.Field;
import org.steelyard.model.input.ProblemCode;
import org.steelyard.model.input.RejectedRow;
import org.steelyard.model.input.Slot;
import org.steelyard.model.loading.Crew;
import org.steelyard.model.loading.Extra;
import org.steelyard.model.loading.FlightIdent;
import org.steelyard.model.loading.FlightSetting;
import org.steelyard.model.loading.Fuel;
import org.steelyard.model.loading.LastMinuteChange;
import org.steelyard.model.loading.Load;
import org.steelyard.model.loading.Loading;
import org.steelyard.model.loading.Origin;
import org.steelyard.model.loading.PerformanceLimits;
import org.steelyard.model.type.AircraftType;
import org.steelyard.model.type.MassScheme;
import org.steelyard.model.type.Tail;
import org.steelyard.read.heading.Binding;
import org.steelyard.read.heading.BoundColumn;
import org.steelyard.read.heading.BoundColumns;
import org.steelyard.read.row.BlankPlaces;
import org.steelyard.read.row.CellParser;
import org.steelyard.read.row.ChangeRules;
import org.steelyard.read.row.CrewRules;
import org.steelyard.read.row.FlightKey;
import org.steelyard.read.row.FuelRules;
import org.steelyard.read.row.LoadRules;
import org.steelyard.read.row.ParsedRow;
import org.steelyard.read.row.RowDraft;
import org.steelyard.read.row.Tails;
import org.steelyard.read.row.TypePlan;
import org.steelyard.read.table.RawRow;
import org.steelyard.read.table.RowProblems;
import org.steelyard.read.table.TableName;
import org.steelyard.read.text.Blanks;

/**
 * Turns the rows of one table into loadings. Every fault of a row is listed, never the first alone. Pure and safe for
 * use by several threads. This is the format of a season file:
 *
 * <h2>Rows and cells</h2>
 *
 * <ul>
 *   <li>A heading row, then one flight in each row. What a column means, and its unit, is said by a heading map.
 *   <li>Blanks around a cell, no-break spaces among them, do not count. A row whose cells are all blank is a blank row.
 *   <li>A row of a text file has a cell for each heading; blank cells beyond the last heading do no harm. A row that is
 *       shorter, or has something beyond the headings or under a blank heading, is rejected. A row of a workbook may
 *       end early: the rest is blank.
 *   <li>Numbers: an optional sign, digits, optionally a decimal sign and digits. The decimal sign is a point, or a
 *       comma where the map says so; there is no thousands separator. Numbers that a workbook stores as numbers are
 *       taken as stored.
 *   <li>Masses and fuel from 0 to 1,000,000 kg, changes either way; masses of a given state and limits of the day more
 *       than 0. Counts whole, from 0 to 10,000, changes either way. CG from -100 to 200 % MAC, also where given as arm
 *       or index. Density from 0.5 to 1.0 kg/L. Trim within 90 units, as a number, or as a number without sign and UP
 *       or DN; where all take-off scales of the type have plain numbers, a number is that of the scale.
 *   <li>Dates: by the map's pattern, strictly, or as year-month-day; date cells of a workbook always. Years 1900 to
 *       2199.
 *   <li>An error cell, or a formula without a stored result, is a fault where its column means something; columns that
 *       are only carried along take it as text.
 * </ul>
 *
 * <h2>Required</h2>
 *
 * <ul>
 *   <li>Flight, date and tail in every row. The tail is one of the fleet, as written there or in other case.
 *   <li>A load, fuel aboard, taxi fuel and trip fuel, save with a given take-off state. Without a taxi-fuel column
 *       there is no taxi fuel, which the notes of the file say; a blank cell in such a column is a fault.
 * </ul>
 *
 * <h2>Load: the level follows from the cells that are filled</h2>
 *
 * <ol>
 *   <li>Aboard: passengers and holds, each by place or in total. By place, where one of the part's zones or holds has a
 *       figure, every other one is empty; passenger categories of a zone and several columns of a hold add up. In
 *       total, what is blank is 0. The passengers' mass, where given, replaces their standard mass, and that of bags
 *       theirs; it cannot be 0 for somebody. A total beside its parts is a check: masses agree to half a kg for each
 *       figure compared, counts exactly, a total of passengers with the infants or without. A total of more than 0
 *       cannot stand beside other figures of the same part by place, but for infants whose scheme gives them no mass.
 *       Places that the type does not have must be blank or 0.
 *   <li>Zero-fuel mass and CG, both, with fuel.
 *   <li>Take-off mass and CG, both, without fuel.
 * </ol>
 *
 * Two levels with figures in one row contradict each other. Zeros beside a given state do not. Load items of the flight
 * in files of their own ({@link ItemParser}) count as if they stood in columns of the row.
 *
 * <p>What a blank zone, hold or tank beside filled ones, or a blank part of the load, means is said by the heading map:
 * nothing, or a figure that is missing, which is a fault. Where it says neither, it counts as nothing and the loading
 * says so ({@link BlankPlaces}).
 *
 * <h2>Standard masses</h2>
 *
 * <ul>
 *   <li>By the scheme that the row names, else by that of the heading map, of the tail, of the type.
 * </ul>
 *
 * <h2>Last-minute changes</h2>
 *
 * <ul>
 *   <li>Signed; by zone, hold and tank, or anywhere. Passengers and bags count at standard mass. Of each place that is
 *       given, and in all, no more can go than is there. A take-off state alone does not change.
 * </ul>
 *
 * <h2>Fuel</h2>
 *
 * <ul>
 *   <li>By tank (a blank tank is empty), or in total; a total beside tanks is a check as above.
 *   <li>Volumes become masses by the density of the row, or the type's where the row has none; the tanks hold the same
 *       volume of it.
 * </ul>
 *
 * <h2>Names</h2>
 *
 * <ul>
 *   <li>Flap settings and thrust ratings are those of the type's trim scales, in any case of letters; 5, 5.0, 05 and
 *       Flaps 5 are one setting. One that the type has no scale for is kept, and gives no trim. Blank is accepted.
 *   <li>The pantry code is one of the type's, or blank for the standard one. Blank crew is the standard crew; where a
 *       station of a role has crew, all of that role sit as the stations say.
 * </ul>
 */
public final class RowParser implements TableParser {

    private static final ParsedRow BLANK = new ParsedRow.Blank();
    private static final MassScheme NO_SCHEME =
            new MassScheme("none", "for rows of unknown tails", 1, 1, 1, 1, 0, 1, 1, 1);

    private final TableName name;
    private final Binding binding;
    private final Tails tails;
    private final Map<String, TypePlan> plans = new HashMap<>();
    private final TypePlan unknownType;
    private final CellParser cells;
    private final Optional<MassScheme> mapScheme;
    private final ItemBook items;

    public RowParser(TableName name, Binding binding, Tails tails) {
        this(name, binding, tails, ItemBook.NONE);
    }

    public RowParser(TableName name, Binding binding, Tails tails, ItemBook items) {
        this.name = name;
        this.binding = binding;
        this.tails = tails;
        this.cells = new CellParser(binding.map());
        this.items = items;
        String schemeId = binding.map().scheme();
        this.mapScheme = tails.scheme(schemeId);
        if (mapScheme.isEmpty() && !schemeId.isBlank()) {
            throw new IllegalArgumentException(
                    "heading map " + binding.map().name() + " names the scheme " + schemeId + ", which is not known");
        }
        List<BoundColumn> columns = binding.columns().all();
        this.unknownType = TypePlan.unknownType(columns.size(), tails.schemes());
        for (AircraftType type : tails.types()) {
            plans.put(
                    type.id(),
                    new TypePlan(type, columns, tails.schemes(), binding.map().blank()));
        }
    }

    @Override
    public void claim(RawRow row) {
        if (items.isEmpty() || row.isBlank()) {
            return;
        }
        List<FlightItems> found = items.find(row, binding.columns(), tails);
        if (!found.isEmpty()) {
            ItemClaim claim =
                    new ItemClaim(name.row(row), flight(row), tail(row).map(Tail::type), items.isAhead());
            found.forEach(one -> one.claim(claim));
        }
    }

    @Override
    public void gather(RawRow row, boolean usable, ItemBook into) {
        // a flight is no load item
    }

    @Override
    public boolean reads(RawRow row) {
        return !(parse(row) instanceof ParsedRow.Rejected);
    }

    /** Which flight the row is of; empty where the cells that say so cannot be read. */
    private Optional<FlightKey> flight(RawRow row) {
        BoundColumns columns = binding.columns();
        Optional<String> flight = ItemKey.text(row, columns, Field.FLIGHT);
        Optional<LocalDate> date = ItemKey.date(row, columns);
        Optional<Tail> tail = tail(row);
        return flight.isEmpty() || date.isEmpty() || tail.isEmpty()
                ? Optional.empty()
                : Optional.of(FlightKey.of(
                        new FlightIdent(
                                flight.get(),
                                date.get(),
                                ItemKey.text(row, columns, Field.FROM).orElse(""),
                                ItemKey.text(row, columns, Field.TO).orElse("")),
                        tail.get().registration(),
                        0));
    }

    /** What a row says: a loading, or every reason why it is none, or nothing. */
    @Override
    public ParsedRow parse(RawRow row) {
        if (row.isBlank()) {
            return BLANK;
        }
        Origin origin = name.row(row);
        RowProblems problems = new RowProblems(origin);
        binding.shape().check(row, problems);
        requireColumns(problems);
        if (!problems.isEmpty()) {
            return rejected(row, origin, problems);
        }
        Optional<Tail> tail = tail(row);
        TypePlan plan = tail.map(known -> plans.get(known.type().id())).orElse(unknownType);
        RowDraft draft = new RowDraft(row, plan, binding.columns(), problems);
        OptionalDouble givenKgPerL = densityKgPerL(row);
        double densityKgPerL = givenKgPerL.orElseGet(
                () -> plan.type().map(type -> type.fuel().densityKgPerL()).orElse(1.0));
        List<Extra> extras = read(row, draft, tail, densityKgPerL);
        MassScheme scheme = scheme(draft, tail);
        join(row, origin, draft, scheme, densityKgPerL);
        Optional<Loading> loading = loading(row, origin, tail, draft, scheme, givenKgPerL, extras, problems);
        return loading.isPresent() ? new ParsedRow.Accepted(loading.get()) : rejected(row, origin, problems);
    }

    public Binding binding() {
        return binding;
    }

    /** A map may leave them out for sheets of figures alone, and rejected rows may have lost them. */
    private void requireColumns(RowProblems problems) {
        if (!binding.columns().has(Field.TAIL)) {
            problems.add("", ProblemCode.MISSING, "the row holds no loading", "", "columns for tail, load and fuel");
            return;
        }
        for (Slot slot : List.of(Field.FLIGHT, Field.DATE)) {
            if (!binding.columns().has(slot)) {
                problems.add(
                        "",
                        ProblemCode.MISSING,
                        "there is no column for the " + slot.label(),
                        "",
                        "columns for flight, date and tail");
            }
        }
    }

    private Optional<Tail> tail(RawRow row) {
        return binding.columns()
                .first(Field.TAIL)
                .flatMap(column -> tails.find(Blanks.strip(row.cell(column.index()))));
    }

    /** The row's own scheme, else that of its heading map, tail or type; any will do where nothing is computed. */
    private MassScheme scheme(RowDraft draft, Optional<Tail> tail) {
        return tails.scheme(draft.text(Field.SCHEME))
                .or(() -> mapScheme)
                .or(() -> tail.map(Tail::scheme))
                .orElse(NO_SCHEME);
    }

    private void join(RawRow row, Origin origin, RowDraft draft, MassScheme scheme, double densityKgPerL) {
        if (!items.isEmpty()) {
            for (FlightItems found : items.find(row, binding.columns(), tails)) {
                Optional<ItemClaim> others = found.claim()
                        .filter(claim -> !claim.row().equals(origin))
                        .filter(claim -> !claim.isOf(flight(row)));
                ItemJoin.join(found, others, items, draft, scheme, densityKgPerL);
            }
        }
    }

    private List<Extra> read(RawRow row, RowDraft draft, Optional<Tail> tail, double densityKgPerL) {
        List<Extra> extras = new ArrayList<>(binding.extras());
        for (BoundColumn column : binding.columns().all()) {
            if (column.slot() == Field.EXTRA) {
                String text = Blanks.strip(row.cell(column.index()));
                CellParser.isPlain(text, column, draft);
                extras.add(new Extra(column.heading(), text));
            } else {
                cells.read(row, column, densityKgPerL, draft);
                requireGiven(column, draft, tail);
            }
        }
        return extras;
    }

    private OptionalDouble densityKgPerL(RawRow row) {
        return binding.columns()
                .first(Field.FUEL_DENSITY)
                .flatMap(column -> cells.densityKgPerL(row, column))
                .map(OptionalDouble::of)
                .orElse(OptionalDouble.empty());
    }

    private void requireGiven(BoundColumn column, RowDraft draft, Optional<Tail> tail) {
        Slot slot = column.slot();
        if (slot != Field.FLIGHT && slot != Field.DATE && slot != Field.TAIL) {
            return;
        }
        if (!draft.given(slot)) {
            draft.fault(column, ProblemCode.MISSING, slot.label() + " is missing", "", expected(column));
        } else if (slot == Field.TAIL && tail.isEmpty() && !draft.bad(slot.bit())) {
            List<String> nearest = tails.nearest(draft.text(slot));
            String hint = nearest.isEmpty() ? "" : "; nearest " + String.join(", ", nearest);
            draft.fault(
                    column, ProblemCode.UNKNOWN_NAME, "unknown tail", draft.text(slot), "a tail of the fleet" + hint);
        }
    }

    private static String expected(BoundColumn column) {
        return switch (column.rule().field()) {
            case DATE -> "a date as " + column.dates().orElseThrow().pattern();
            case TAIL -> "a tail of the fleet";
            default -> "a flight number or name";
        };
    }

    private static Optional<Loading> loading(
            RawRow row,
            Origin origin,
            Optional<Tail> tail,
            RowDraft draft,
            MassScheme scheme,
            OptionalDouble densityKgPerL,
            List<Extra> extras,
            RowProblems problems) {
        Crew crew = CrewRules.crew(draft);
        Optional<Load> load = LoadRules.load(draft, scheme);
        Optional<Fuel> fuel = FuelRules.fuel(draft, densityKgPerL);
        List<String> blanks = draft.plan().blankPlaces().unsaid(row, draft);
        LastMinuteChange change = ChangeRules.change(draft, scheme, load, fuel);
        if (!problems.isEmpty()) {
            return Optional.empty();
        }
        LocalDate date = draft.date().orElseThrow();
        return Optional.of(new Loading(
                origin,
                new FlightIdent(draft.text(Field.FLIGHT), date, draft.text(Field.FROM), draft.text(Field.TO)),
                tail.orElseThrow(),
                new FlightSetting(draft.text(Field.FLAPS), draft.text(Field.THRUST), draft.text(Field.LANDING_FLAPS)),
                scheme,
                crew,
                load.orElseThrow(),
                fuel.orElseThrow(),
                change,
                new PerformanceLimits(draft.amount(Field.TAKEOFF_LIMIT), draft.amount(Field.LANDING_LIMIT)),
                draft.amount(Field.RECORDED_TRIM),
                extras,
                blanks));
    }

    private ParsedRow rejected(RawRow row, Origin origin, RowProblems problems) {
        return new ParsedRow.Rejected(new RejectedRow(
                origin, binding.map().name(), binding.headings(), binding.cellsAsText(row), problems.all()));
    }
}
