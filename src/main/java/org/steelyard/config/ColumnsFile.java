package org.steelyard.config;

import java.nio.charset.Charset;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.steelyard.model.ColumnMap;
import org.steelyard.model.ColumnMap.MergedCells;
import org.steelyard.model.ColumnMap.UnknownColumns;
import org.steelyard.model.ColumnRule;
import org.steelyard.model.ColumnUnit;
import org.steelyard.model.Field;
import org.steelyard.model.PassengerCategory;

/** Reads {@code columns/*.yaml}: how the headings of a source become fields. */
final class ColumnsFile {

    private static final Map<String, Character> DELIMITERS = Map.of("comma", ',', "semicolon", ';', "tab", '\t');

    /** A day that belongs to the first week of the next year, which a pattern with the year of the week gets wrong. */
    private static final LocalDate YEAR_END = LocalDate.of(2024, 12, 30);

    private final Places places;

    private ColumnsFile(Places places) {
        this.places = places;
    }

    static Optional<ColumnMap> read(Keys keys, Places places) {
        return new ColumnsFile(places).map(keys);
    }

    private Optional<ColumnMap> map(Keys keys) {
        String name = keys.text("map");
        List<String> files = keys.valuesIfAny("files", Keys::notBlank);
        String charset = keys.find("charset", ColumnsFile::charset).orElse("");
        Optional<Character> delimiter = keys.find("delimiter", Words.choice("comma", "semicolon", "tab"))
                .map(DELIMITERS::get);
        boolean comma = keys.find("decimal", Words.choice("point", "comma"))
                .filter("comma"::equals)
                .isPresent();
        UnknownColumns unknown = keys.find(
                        "unknown-columns",
                        Words.choice(
                                value -> value.name().toLowerCase(Locale.ROOT).replace('_', ' '),
                                List.of(UnknownColumns.values())))
                .orElse(UnknownColumns.KEEP);
        MergedCells merged = keys.find("merged-cells", Words.choice(MergedCells::label, List.of(MergedCells.values())))
                .orElse(MergedCells.FIRST_ROW);
        List<ColumnRule> columns = keys.each("columns", this::column);
        requireHeadingsOnce(keys, columns);
        return keys.make(() -> new ColumnMap(name, files, charset, delimiter, comma, unknown, columns, merged));
    }

    private static String charset(String text) throws Unfit {
        try {
            return Charset.forName(text).name();
        } catch (IllegalArgumentException e) {
            throw new Unfit("unknown text encoding", "a name as UTF-8, UTF-16 or windows-1252");
        }
    }

    /** Headings are compared as the reader compares them: without regard to case and repeated blanks. */
    private static void requireHeadingsOnce(Keys keys, List<ColumnRule> columns) {
        Set<String> seen = new HashSet<>();
        for (int i = 0; i < columns.size(); i++) {
            String heading = columns.get(i).heading();
            if (!seen.add(heading.strip().replaceAll("\\s+", " ").toLowerCase(Locale.ROOT))) {
                keys.fault("columns", i + 1, "heading", "the heading stands twice", "each heading once");
            }
        }
    }

    private Optional<ColumnRule> column(Keys keys) {
        String heading = keys.text("heading");
        Optional<Field> field = keys.require("field", Words.choice(Field::key, List.of(Field.values())));
        boolean required = keys.find("required", Words::yes).orElse(false);
        Optional<ColumnUnit> unit = keys.find("unit", text -> unit(text, field));
        Optional<String> place = keys.find("place", text -> place(text, field));
        Optional<PassengerCategory> category = keys.find("category", text -> category(text, field));
        Optional<String> dates = keys.find("dates", text -> dates(text, field));
        if (field.isPresent() && unit.isEmpty() && !ColumnUnit.NONE.suits(field.get()) && !keys.has("unit")) {
            keys.fault("unit", "the key is missing", unitsOf(field.get()));
        }
        return keys.make(() -> new ColumnRule(
                heading,
                field.orElseThrow(),
                place.orElse(""),
                category.orElse(PassengerCategory.ADULT),
                unit.orElse(ColumnUnit.NONE),
                dates.orElse(""),
                required));
    }

    private static ColumnUnit unit(String text, Optional<Field> field) throws Unfit {
        for (ColumnUnit unit : ColumnUnit.values()) {
            if (unit.symbol().equals(text)
                    && unit != ColumnUnit.NONE
                    && field.map(unit::suits).orElse(true)) {
                return unit;
            }
        }
        throw new Unfit(
                "not a unit of the field", field.map(ColumnsFile::unitsOf).orElse("a unit"));
    }

    private static String unitsOf(Field field) {
        List<String> symbols = Stream.of(ColumnUnit.values())
                .filter(unit -> unit.suits(field))
                .map(ColumnUnit::symbol)
                .toList();
        return symbols.equals(List.of("")) ? "no unit" : Words.or(symbols);
    }

    private String place(String text, Optional<Field> field) throws Unfit {
        return field.isPresent() ? places.forField(field.get()).read(text) : text;
    }

    private static PassengerCategory category(String text, Optional<Field> field) throws Unfit {
        if (field.isPresent() && field.get() != Field.PASSENGERS) {
            throw new Unfit("the field " + field.get().key() + " counts no passengers", "no category");
        }
        return Words.choice(PassengerCategory::label, List.of(PassengerCategory.values()))
                .read(text);
    }

    private static String dates(String text, Optional<Field> field) throws Unfit {
        if (field.isPresent() && field.get() != Field.DATE) {
            throw new Unfit("the field " + field.get().key() + " holds no dates", "no pattern of dates");
        }
        if (!tells(text)) {
            throw new Unfit("not a pattern of dates", "letters for day, month and year, as 'dd.MM.uuuu'");
        }
        return text;
    }

    /** Whether a pattern tells a day from every other: what is written by it reads back the same. */
    private static boolean tells(String pattern) {
        try {
            DateTimeFormatter formatter = DateTimeFormatter.ofPattern(pattern, Locale.ROOT);
            return LocalDate.parse(YEAR_END.format(formatter), formatter).equals(YEAR_END);
        } catch (IllegalArgumentException | DateTimeException e) {
            return false;
        }
    }
}
