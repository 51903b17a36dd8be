package org.steelyard.run;

import java.math.BigDecimal;
import java.math.MathContext;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.steelyard.model.input.ColumnMap;
import org.steelyard.model.input.ColumnRule;
import org.steelyard.model.input.ColumnUnit;
import org.steelyard.model.input.DigitGrouping;
import org.steelyard.model.input.Field;
import org.steelyard.model.input.SourceForm;
import org.steelyard.model.type.AircraftType;
import org.steelyard.model.type.PassengerCategory;
import org.steelyard.model.unit.MassMoment;
import org.steelyard.samples.KnownFlight;
import org.steelyard.samples.Plain;

/** Three ways in which houses head and write their columns. */
enum FormStyle {
    KILOS("", ',', false, "uuuu-MM-dd", ColumnUnit.KG, ColumnUnit.PERCENT_MAC),
    POUNDS("Log: ", ';', true, "dd.MM.uuuu", ColumnUnit.LB, ColumnUnit.INCH),
    TONS("T/", '\t', false, "MM/dd/uuuu", ColumnUnit.TONNE, ColumnUnit.INDEX);

    /** 15 digits come back as the same double but for its last bits. */
    private static final MathContext DIGITS = new MathContext(15);

    private final String lead;
    private final char delimiter;
    private final boolean decimalComma;
    private final String dates;
    private final ColumnUnit mass;
    private final ColumnUnit cg;

    FormStyle(String lead, char delimiter, boolean decimalComma, String dates, ColumnUnit mass, ColumnUnit cg) {
        this.lead = lead;
        this.delimiter = delimiter;
        this.decimalComma = decimalComma;
        this.dates = dates;
        this.mass = mass;
        this.cg = cg;
    }

    /** What a column is for, whatever its heading. */
    record Column(Field field, String place, PassengerCategory category) {

        static Column of(Field field) {
            return new Column(field, "", PassengerCategory.ADULT);
        }

        static Column of(Field field, String place) {
            return new Column(field, place, PassengerCategory.ADULT);
        }
    }

    char delimiter() {
        return delimiter;
    }

    ColumnMap map(String name, List<Column> columns, SourceForm form) {
        List<ColumnRule> rules = new ArrayList<>();
        for (Column column : columns) {
            Field field = column.field();
            ColumnUnit unit = switch (field.kind()) {
                case MASS, FUEL -> mass;
                case CG -> cg;
                case TEXT, DATE, COUNT, DENSITY, TRIM -> ColumnUnit.NONE;
            };
            rules.add(new ColumnRule(
                    heading(column),
                    field,
                    column.place(),
                    column.category(),
                    unit,
                    field == Field.DATE ? dates : "",
                    field == Field.FLIGHT));
        }
        return Plain.columnMap(
                name,
                List.of(name + ".*"),
                "",
                Optional.of(delimiter),
                decimalComma,
                DigitGrouping.NONE,
                ColumnMap.UnknownColumns.LEAVE_OUT,
                rules,
                form,
                "",
                ColumnMap.MergedCells.FIRST_ROW);
    }

    String heading(Column column) {
        String category = column.category() == PassengerCategory.ADULT
                ? ""
                : " " + column.category().label();
        return (lead + column.field().key() + " " + column.place() + category).strip();
    }

    /** A value as this house writes it in a text file: pounds, a state's mass or CG, a date, a count or a text. */
    String text(Object value, AircraftType type) {
        if (value instanceof LocalDate date) {
            return date.format(DateTimeFormatter.ofPattern(dates, Locale.ROOT));
        }
        Object stored = stored(value, type);
        String text = stored instanceof BigDecimal number ? number.toPlainString() : stored.toString();
        return decimalComma && stored instanceof BigDecimal ? text.replace('.', ',') : text;
    }

    /** The same as a workbook stores it. */
    Object stored(Object value, AircraftType type) {
        if (value instanceof BigDecimal lb) {
            return switch (mass) {
                case LB -> lb;
                case TONNE -> KnownFlight.kg(lb).movePointLeft(3);
                default -> KnownFlight.kg(lb);
            };
        }
        if (value instanceof StateMass state) {
            BigDecimal kg = new BigDecimal(state.state().massKg());
            return switch (mass) {
                case LB -> kg.divide(new BigDecimal("0.45359237"), DIGITS);
                case TONNE -> kg.movePointLeft(3).round(DIGITS);
                default -> kg.round(DIGITS);
            };
        }
        if (value instanceof StateCg state) {
            double armM = state.state().armM();
            double figure = switch (cg) {
                case INCH -> armM / 0.0254;
                case INDEX -> type.geometry().index().indexOf(state.state());
                default -> type.geometry().chord().percentAt(armM);
            };
            return new BigDecimal(figure).round(DIGITS);
        }
        return value;
    }

    /** The mass of a state. */
    record StateMass(MassMoment state) {}

    /** The CG of a state. */
    record StateCg(MassMoment state) {}
}
