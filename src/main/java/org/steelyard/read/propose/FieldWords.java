package org.steelyard.read.propose;

import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.steelyard.model.input.Field;
import org.steelyard.model.type.PassengerCategory;

/** Which field the words of a heading speak of: plain terms of the trade in English. */
final class FieldWords {

    /** How the unit behind the words bears on their meaning. */
    enum Measured {
        NOTHING,
        MASS,
        VOLUME,
        POSITION,
        DENSITY
    }

    private static final String[] LIMIT = {"limit", "limited", "max", "maximum", "regulated", "performance", "allowed"};
    private static final String[] LANDING = {"landing", "ldg", "land", "lw", "lm", "ldw", "ldm"};
    private static final String[] HEAVY = {"mass", "weight", "wt", "masses", "weights"};
    private static final String[] PERSONS = {
        "pax",
        "passenger",
        "passengers",
        "seat",
        "seats",
        "seated",
        "souls",
        "people",
        "persons",
        "adult",
        "adults",
        "child",
        "children",
        "kids",
        "chd",
        "infant",
        "infants",
        "inf",
        "men",
        "women",
        "male",
        "males",
        "female",
        "females"
    };
    private static final String[] PIECES = {"bags", "bag", "pcs", "pieces", "piece"};
    private static final String[] GOODS = {
        "hold",
        "holds",
        "cpt",
        "cpts",
        "compartment",
        "compartments",
        "baggage",
        "luggage",
        "cargo",
        "freight",
        "load",
        "bin"
    };

    private static final String[] OTHERS = {
        "fuel",
        "tank",
        "tanks",
        "block",
        "ramp",
        "total",
        "all",
        "tot",
        "sum",
        "mass",
        "weight",
        "wt",
        "no",
        "nr",
        "number",
        "of",
        "in",
        "on",
        "the",
        "zone",
        "cabin",
        "lap",
        "actual",
        "count",
        "quantity",
        "qty"
    };

    /** Words that say what is counted or measured, and so name no place. */
    static final Set<String> PLAIN =
            Stream.of(PERSONS, PIECES, GOODS, OTHERS).flatMap(Stream::of).collect(Collectors.toUnmodifiableSet());

    private FieldWords() {}

    /** The field, if the words speak of one. */
    static Optional<Field> field(HeadingTokens words, Measured unit) {
        return state(words, unit)
                .or(() -> setting(words))
                .or(() -> fuel(words, unit))
                .or(() -> crew(words, unit))
                .or(() -> load(words, unit))
                .or(() -> ident(words));
    }

    private static Optional<Field> state(HeadingTokens words, Measured unit) {
        boolean cg = words.has("cg", "mac", "cog", "arm", "index") || unit == Measured.POSITION;
        boolean takeoff = words.has("tow", "tom") || (words.has("takeoff") && !words.has("flap", "flaps", "thrust"));
        boolean limit = words.has(LIMIT);
        if (words.has("zfw", "zfm", "zerofuel")) {
            return limit ? Optional.empty() : Optional.of(cg ? Field.ZERO_FUEL_CG : Field.ZERO_FUEL_MASS);
        }
        if (words.has("rtow", "rtom") || (takeoff && limit)) {
            return Optional.of(Field.TAKEOFF_LIMIT);
        }
        if (words.has("rlw", "rlm") || (words.has(LANDING) && limit)) {
            return Optional.of(Field.LANDING_LIMIT);
        }
        boolean mass = unit == Measured.MASS || words.has("tow", "tom") || words.has(HEAVY);
        if (takeoff && (cg || mass) && !words.has("trim", "fuel")) {
            return Optional.of(cg ? Field.TAKEOFF_CG : Field.TAKEOFF_MASS);
        }
        return Optional.empty();
    }

    private static Optional<Field> setting(HeadingTokens words) {
        if (words.has("flap", "flaps")) {
            return Optional.of(words.has(LANDING) ? Field.LANDING_FLAPS : Field.FLAPS);
        }
        if (words.has("thrust")) {
            return Optional.of(Field.THRUST);
        }
        if (words.has("trim", "stab", "stabilizer", "stabiliser")) {
            return words.has(LANDING) ? Optional.empty() : Optional.of(Field.RECORDED_TRIM);
        }
        return words.has("pantry", "catering", "galley") ? Optional.of(Field.PANTRY) : Optional.empty();
    }

    private static Optional<Field> fuel(HeadingTokens words, Measured unit) {
        boolean measured = unit == Measured.MASS || unit == Measured.VOLUME;
        boolean clock = words.has("time", "hours", "min", "utc");
        if (unit == Measured.DENSITY || words.has("density", "sg")) {
            return Optional.of(Field.FUEL_DENSITY);
        }
        if (words.has("taxi") && !clock) {
            return Optional.of(Field.TAXI_FUEL);
        }
        if (words.has("burn", "enroute") || (words.has("trip") && (measured || words.has("fuel")))) {
            return Optional.of(Field.TRIP_FUEL);
        }
        boolean aboard = words.has("fuel", "tank", "tanks") || (words.has("block") && measured && !clock);
        boolean other = words.has("landing", "reserve", "alternate", "contingency", "planned", "remaining", "minimum");
        return aboard && !other ? Optional.of(Field.FUEL) : Optional.empty();
    }

    private static Optional<Field> crew(HeadingTokens words, Measured unit) {
        boolean cockpit = words.has("cockpit", "pilot", "pilots") || (words.has("flight") && words.has("crew"));
        if (cockpit) {
            return Optional.of(unit == Measured.MASS ? Field.FLIGHT_CREW_MASS : Field.FLIGHT_CREW);
        }
        boolean cabin = words.has("attendants") || (words.has("cabin") && !words.has(PERSONS) && !words.has(GOODS));
        return cabin && unit == Measured.NOTHING ? Optional.of(Field.CABIN_CREW) : Optional.empty();
    }

    private static Optional<Field> load(HeadingTokens words, Measured unit) {
        boolean mass = unit == Measured.MASS || words.has(HEAVY);
        if (words.has(PERSONS)) {
            return Optional.of(mass ? Field.PASSENGER_MASS : Field.PASSENGERS);
        }
        if (words.has(PIECES) && !mass) {
            return Optional.of(Field.HOLD_BAGS);
        }
        return words.has(GOODS) || words.has(PIECES) ? Optional.of(Field.HOLD_MASS) : Optional.empty();
    }

    private static Optional<Field> ident(HeadingTokens words) {
        if (words.has("date", "day")) {
            return Optional.of(Field.DATE);
        }
        if (words.has("reg", "registration", "tail", "aircraft", "airplane", "aeroplane")) {
            return Optional.of(Field.TAIL);
        }
        if (words.has("flight", "flt", "callsign", "sector")) {
            return Optional.of(Field.FLIGHT);
        }
        if (words.has("from", "origin", "dep", "depart*", "off", "adep")) {
            return Optional.of(Field.FROM);
        }
        return words.has("to", "destination", "dest", "arr", "arriv*", "on", "ades")
                ? Optional.of(Field.TO)
                : Optional.empty();
    }

    /** Whether a mass or CG without another word is meant, as {@code CG in}. */
    static boolean isBareCg(HeadingTokens words) {
        return words.has("cg", "cog")
                && words.without(Set.of("cg", "cog", "mac")).isEmpty();
    }

    /** The category that the words name; empty where they name none. */
    static Optional<PassengerCategory> category(HeadingTokens words) {
        if (words.has("infant", "infants", "inf", "lap")) {
            return Optional.of(PassengerCategory.INFANT);
        }
        if (words.has("child", "children", "kids", "chd")) {
            return Optional.of(PassengerCategory.CHILD);
        }
        if (words.has("female", "females", "women")) {
            return Optional.of(PassengerCategory.FEMALE);
        }
        if (words.has("male", "males", "men")) {
            return Optional.of(PassengerCategory.MALE);
        }
        return words.has("adult", "adults") ? Optional.of(PassengerCategory.ADULT) : Optional.empty();
    }
}
