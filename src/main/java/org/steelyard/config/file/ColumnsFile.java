package org.steelyard.config.file;

import java.nio.charset.Charset;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.steelyard.config.value.Keys;
import org.steelyard.config.value.KnownPlaces;
import org.steelyard.config.value.KnownValues;
import org.steelyard.config.value.NotAcceptedException;
import org.steelyard.config.value.Words;
import org.steelyard.model.input.BlankLoad;
import org.steelyard.model.input.ColumnMap;
import org.steelyard.model.input.ColumnMap.MergedCells;
import org.steelyard.model.input.ColumnMap.UnknownColumns;
import org.steelyard.model.input.ColumnRule;
import org.steelyard.model.input.ColumnUnit;
import org.steelyard.model.input.DigitGrouping;
import org.steelyard.model.input.Field;
import org.steelyard.model.input.SourceForm;
import org.steelyard.model.type.MassScheme;
import org.steelyard.model.type.PassengerCategory;

/** Reads {@code columns/*.yaml}: how the headings of a source become fields. */
public final class ColumnsFile {

    private static final Map<String, Character> DELIMITERS = Map.of("comma", ',', "semicolon", ';', "tab", '\t');

    /** A day that belongs to the first week of the next year, which a pattern with the year of the week gets wrong. */
    private static final LocalDate YEAR_END = LocalDate.of(2024, 12, 30);

    private static final int DAYS = 366;
    private static final List<BlankLoad> BLANKS = List.of(BlankLoad.NONE, BlankLoad.MISSING);

    private final KnownPlaces places;
    private final KnownValues<MassScheme> schemes;

    private ColumnsFile(KnownPlaces places, KnownValues<MassScheme> schemes) {
        this.places = places;
        this.schemes = schemes;
    }

    public static Optional<ColumnMap> read(Keys keys, KnownPlaces places, KnownValues<MassScheme> schemes) {
        return new ColumnsFile(places, schemes).map(keys);
    }

    private Optional<ColumnMap> map(Keys keys) {
        String name = keys.text("map");
        List<String> files = keys.valuesIfAny("files", Keys::notBlank);
        String charset = keys.find("charset", ColumnsFile::charset).orElse("");
        Optional<Character> delimiter = keys.find("delimiter", Words.choice("comma", "semicolon", "tab"))
                .map(DELIMITERS::get);
        Optional<String> decimal = keys.find("decimal", Words.choice("point", "comma"));
        boolean comma = decimal.filter("comma"::equals).isPresent();
        boolean point = decimal.isPresent() ? !comma : !keys.has("decimal");
        DigitGrouping grouping =
                keys.find("grouping", text -> grouping(text, comma, point)).orElse(DigitGrouping.NONE);
        UnknownColumns unknown = keys.find(
                        "unknown-columns",
                        Words.choice(
                                value -> value.name().toLowerCase(Locale.ROOT).replace('_', ' '),
                                List.of(UnknownColumns.values())))
                .orElse(UnknownColumns.KEEP);
        SourceForm form = keys.find("form", Words.choice(SourceForm::key, List.of(SourceForm.values())))
                .orElse(SourceForm.FLIGHTS);
        String scheme = keys.find("scheme", this::scheme).orElse("");
        MergedCells merged = keys.find("merged-cells", Words.choice(MergedCells::label, List.of(MergedCells.values())))
                .orElse(MergedCells.FIRST_ROW);
        BlankLoad blank =
                keys.find("blank", Words.choice(BlankLoad::label, BLANKS)).orElse(BlankLoad.NOT_SAID);
        List<ColumnRule> columns = keys.each("columns", inner -> column(inner, form));
        requireHeadingsOnce(keys, columns);
        return keys.make(() -> new ColumnMap(
                name, files, charset, delimiter, comma, grouping, unknown, columns, form, scheme, merged, blank));
    }

    private String scheme(String text) throws NotAcceptedException {
        schemes.reference().read(Keys.notBlank(text));
        return text;
    }

    private static DigitGrouping grouping(String text, boolean comma, boolean point) throws NotAcceptedException {
        DigitGrouping grouping = Words.choice(DigitGrouping::label, List.of(DigitGrouping.values()))
                .read(text);
        if ((comma && grouping == DigitGrouping.COMMA) || (point && grouping == DigitGrouping.POINT)) {
            throw new NotAcceptedException("the sign parts the decimals already", "another sign than the decimal sign");
        }
        return grouping;
    }

    private static String charset(String text) throws NotAcceptedException {
        try {
            return Charset.forName(text).name();
        } catch (IllegalArgumentException e) {
            throw new NotAcceptedException("unknown text encoding", "a name as UTF-8, UTF-16 or windows-1252");
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

    private Optional<ColumnRule> column(Keys keys, SourceForm form) {
        String heading = keys.text("heading");
        Optional<Field> field = keys.require("field", text -> field(text, form));
        boolean required = keys.find("required", Words::yes).orElse(false);
        Optional<ColumnUnit> unit = keys.find("unit", text -> unit(text, field));
        Optional<String> place = keys.find("place", text -> place(text, field));
        Optional<PassengerCategory> category = keys.find("category", text -> category(text, field));
        List<String> dates = keys.oneOrMore("dates", text -> dates(text, field));
        Optional<BlankLoad> blank = keys.find("blank", text -> blank(text, field));
        requireOneReading(keys, dates);
        if (field.map(ColumnsFile::needsPlace).orElse(false) && !keys.has("place")) {
            keys.fault("place", "the key is missing", "one of the crew stations");
        }
        if (field.isPresent() && unit.isEmpty() && !ColumnUnit.NONE.suits(field.get()) && !keys.has("unit")) {
            keys.fault("unit", "the key is missing", unitsOf(field.get()));
        }
        return keys.make(() -> new ColumnRule(
                heading,
                field.orElseThrow(),
                place.orElse(""),
                category.orElse(PassengerCategory.ADULT),
                unit.orElse(ColumnUnit.NONE),
                dates,
                required,
                blank.orElse(BlankLoad.NOT_SAID)));
    }

    private static BlankLoad blank(String text, Optional<Field> field) throws NotAcceptedException {
        if (field.isPresent() && !field.get().isLoad()) {
            throw new NotAcceptedException("the field " + field.get().key() + " is no load", "no word on blank cells");
        }
        return Words.choice(BlankLoad::label, BLANKS).read(text);
    }

    private static Field field(String text, SourceForm form) throws NotAcceptedException {
        for (Field other : Field.values()) {
            if (other.key().equals(text) && !other.suits(form)) {
                String its = form == SourceForm.ITEMS ? SourceForm.FLIGHTS.key() : SourceForm.ITEMS.key();
                throw new NotAcceptedException(
                        "the field is for a map of the form " + its, "a field of a map of the form " + form.key());
            }
        }
        List<Field> fields =
                Stream.of(Field.values()).filter(one -> one.suits(form)).toList();
        return Words.choice(Field::key, fields).read(text);
    }

    private static boolean needsPlace(Field field) {
        return field == Field.CREW || field == Field.CREW_MASS;
    }

    private static ColumnUnit unit(String text, Optional<Field> field) throws NotAcceptedException {
        for (ColumnUnit unit : ColumnUnit.values()) {
            if (unit.symbol().equals(text)
                    && unit != ColumnUnit.NONE
                    && field.map(unit::suits).orElse(true)) {
                return unit;
            }
        }
        throw new NotAcceptedException(
                "not a unit of the field", field.map(ColumnsFile::unitsOf).orElse("a unit"));
    }

    private static String unitsOf(Field field) {
        List<String> symbols = Stream.of(ColumnUnit.values())
                .filter(unit -> unit.suits(field))
                .map(ColumnUnit::symbol)
                .toList();
        return symbols.equals(List.of("")) ? "no unit" : Words.or(symbols);
    }

    private String place(String text, Optional<Field> field) throws NotAcceptedException {
        return field.isPresent() ? places.forField(field.get()).read(text) : text;
    }

    private static PassengerCategory category(String text, Optional<Field> field) throws NotAcceptedException {
        if (field.isPresent() && !field.get().hasCategory()) {
            throw new NotAcceptedException("the field " + field.get().key() + " counts no passengers", "no category");
        }
        return Words.choice(PassengerCategory::label, List.of(PassengerCategory.values()))
                .read(text);
    }

    private static String dates(String text, Optional<Field> field) throws NotAcceptedException {
        if (field.isPresent() && field.get() != Field.DATE) {
            throw new NotAcceptedException("the field " + field.get().key() + " holds no dates", "no pattern of dates");
        }
        if (!tells(text)) {
            throw new NotAcceptedException(
                    "not a pattern of dates", "letters for day, month and year, as 'dd.MM.uuuu'");
        }
        return text;
    }

    /** Whether a pattern tells a day from every other: what is written by it reads back the same. */
    private static boolean tells(String pattern) {
        try {
            DateTimeFormatter formatter = DateTimeFormatter.ofPattern(pattern, Locale.ROOT);
            return LocalDate.parse(written(YEAR_END, formatter), formatter).equals(YEAR_END);
        } catch (IllegalArgumentException | DateTimeException e) {
            return false;
        }
    }

    /** A day by a pattern, which may want a time and a zone as well. */
    private static String written(LocalDate day, DateTimeFormatter formatter) {
        return ZonedDateTime.of(day, LocalTime.NOON, ZoneOffset.UTC).format(formatter);
    }

    /** What one of several patterns writes, no other may read as another day. */
    private static void requireOneReading(Keys keys, List<String> patterns) {
        for (String one : patterns) {
            for (String other : patterns) {
                Optional<String> twoWays = twoWays(one, other);
                if (twoWays.isPresent()) {
                    keys.fault(
                            "dates",
                            "'" + one + "' and '" + other + "' read '" + twoWays.get() + "' as two different days",
                            "patterns that read every date in one way");
                    return;
                }
            }
        }
    }

    private static Optional<String> twoWays(String one, String other) {
        DateTimeFormatter writer = DateTimeFormatter.ofPattern(one, Locale.ROOT);
        DateTimeFormatter reader = DateTimeFormatter.ofPattern(other, Locale.ROOT);
        for (int i = 0; i < DAYS; i++) {
            LocalDate day = YEAR_END.minusDays(i);
            String text = written(day, writer);
            if (date(text, reader).filter(read -> !read.equals(day)).isPresent()) {
                return Optional.of(text);
            }
        }
        return Optional.empty();
    }

    private static Optional<LocalDate> date(String text, DateTimeFormatter reader) {
        try {
            return Optional.of(LocalDate.parse(text, reader));
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }
}
