package org.steelyard.config.type;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.steelyard.config.source.YamlNode;
import org.steelyard.config.value.Cg;
import org.steelyard.config.value.HeadedRows;
import org.steelyard.config.value.Keys;
import org.steelyard.config.value.KnownValues;
import org.steelyard.config.value.NotAcceptedException;
import org.steelyard.config.value.WeighingText;
import org.steelyard.config.value.WrittenNumber;
import org.steelyard.model.type.AircraftType;
import org.steelyard.model.type.MassScheme;
import org.steelyard.model.type.Tail;
import org.steelyard.model.type.WeighingRecord;
import org.steelyard.model.unit.MassMoment;

/**
 * Reads {@code fleet.csv}: a tail in each row, with the columns tail, type, basic mass, basic CG and, if wanted,
 * weighing, scheme and note. A weighing stands in place of basic mass and CG, which are then blank. The units stand
 * with the numbers, as {@code 41230 kg}, or in the heading, as {@code basic mass (kg)}.
 */
public final class FleetFile {

    public static final String TAIL = "tail";
    public static final String TYPE = "type";
    private static final String MASS = "basic mass";
    private static final String CG = "basic CG";
    private static final String WEIGHING = "weighing";
    private static final String SCHEME = "scheme";
    private static final String NOTE = "note";

    public static final HeadedRows.Headings HEADINGS =
            new HeadedRows.Headings(List.of(TAIL, TYPE, MASS, CG), List.of(WEIGHING, SCHEME, NOTE));

    /** A basic mass is never less than this part of the maximum zero-fuel mass: a unit is mistaken, more likely. */
    private static final double LEAST_PART = 0.4;

    /** A basic CG lies on the chord or near it. */
    private static final double LEAST_PERCENT_MAC = -50;

    private static final double MOST_PERCENT_MAC = 150;

    private FleetFile() {}

    public static Map<String, Tail> read(
            List<Keys> rows, KnownValues<AircraftType> types, KnownValues<MassScheme> schemes) {
        Map<String, Tail> tails = new TreeMap<>();
        Map<String, Integer> lines = new LinkedHashMap<>();
        for (Keys row : rows) {
            String registration = row.text(TAIL);
            Integer before = lines.putIfAbsent(registration, row.line());
            if (before != null) {
                row.fault(TAIL, "the tail stands twice, first in line " + before, "each tail once");
            }
            tail(row, registration, types, schemes).ifPresent(tail -> tails.put(registration, tail));
        }
        return tails;
    }

    private static Optional<Tail> tail(
            Keys row, String registration, KnownValues<AircraftType> types, KnownValues<MassScheme> schemes) {
        Optional<AircraftType> type =
                row.take(row.require(TYPE, types.reference()).flatMap(found -> found));
        Optional<MassMoment> basic = row.take(isWeighed(row) ? weighed(row) : stated(row, type));
        Optional<MassScheme> scheme = row.find(
                        SCHEME,
                        text -> text.isBlank()
                                ? Optional.<MassScheme>empty()
                                : schemes.reference().read(text))
                .flatMap(found -> found);
        row.find(NOTE, text -> text);
        if (type.isPresent() && basic.isPresent()) {
            requirePlausible(row, type.get(), basic.get());
        }
        return row.make(() -> new Tail(registration, type.orElseThrow(), basic.orElseThrow(), scheme));
    }

    private static boolean isWeighed(Keys row) {
        return row.peek(WEIGHING)
                .filter(node ->
                        node instanceof YamlNode.Text text && !text.text().isBlank())
                .isPresent();
    }

    private static Optional<MassMoment> weighed(Keys row) {
        row.find(MASS, FleetFile::blank);
        row.find(CG, FleetFile::blank);
        return row.find(WEIGHING, WeighingText::read).flatMap(record -> record).map(WeighingRecord::basic);
    }

    private static String blank(String text) throws NotAcceptedException {
        if (!text.isBlank()) {
            throw new NotAcceptedException(
                    "stands beside a weighing, from which it follows", "a blank cell, or no weighing");
        }
        return text;
    }

    private static Optional<MassMoment> stated(Keys row, Optional<AircraftType> type) {
        Optional<Double> massKg = row.require(MASS, WrittenNumber.MASS);
        Optional<Cg> cg = row.require(CG, Cg::read);
        row.find(WEIGHING, WeighingText::read);
        return massKg.isPresent() && cg.isPresent() && type.isPresent()
                ? Optional.of(
                        MassMoment.at(massKg.get(), cg.get().armM(type.get().geometry(), massKg.get())))
                : Optional.empty();
    }

    private static void requirePlausible(Keys row, AircraftType type, MassMoment basic) {
        boolean weighed = isWeighed(row);
        requirePlausibleMass(row, type, weighed ? WEIGHING : MASS, basic.massKg());
        requirePlausibleCg(row, type, weighed ? WEIGHING : CG, basic.armM());
    }

    private static void requirePlausibleMass(Keys row, AircraftType type, String column, double massKg) {
        double mostKg = type.limits().maxZeroFuelKg();
        if (massKg < LEAST_PART * mostKg || massKg > mostKg) {
            row.fault(
                    column,
                    "not plausible for the type " + type.id() + " as the basic mass",
                    "from " + Math.round(LEAST_PART * mostKg) + " to " + Math.round(mostKg)
                            + " kg, the maximum zero-fuel mass");
        }
    }

    private static void requirePlausibleCg(Keys row, AircraftType type, String column, double armM) {
        double percentMac = type.geometry().chord().percentAt(armM);
        if (percentMac < LEAST_PERCENT_MAC || percentMac > MOST_PERCENT_MAC) {
            row.fault(
                    column,
                    "not plausible for the type " + type.id() + ": it lies at " + Math.round(percentMac) + " % MAC",
                    "from " + Math.round(LEAST_PERCENT_MAC) + " to " + Math.round(MOST_PERCENT_MAC) + " % MAC");
        }
    }
}
