package org.steelyard.config;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.steelyard.model.AircraftType;
import org.steelyard.model.MassMoment;
import org.steelyard.model.Tail;

/**
 * Reads {@code fleet.csv}: a tail in each row, with the columns tail, type, basic mass, basic CG and, if wanted, note.
 * The units stand with the numbers, as {@code 41230 kg}, or in the heading, as {@code basic mass (kg)}.
 */
final class FleetFile {

    private static final String TAIL = "tail";
    private static final String TYPE = "type";
    private static final String MASS = "basic mass";
    private static final String CG = "basic CG";
    private static final String NOTE = "note";

    static final CsvTable.Headings HEADINGS = new CsvTable.Headings(List.of(TAIL, TYPE, MASS, CG), List.of(NOTE));

    /** A basic mass is never less than this part of the maximum zero-fuel mass: a unit is mistaken, more likely. */
    private static final double LEAST_PART = 0.4;

    /** A basic CG lies on the chord or near it. */
    private static final double LEAST_PERCENT_MAC = -50;

    private static final double MOST_PERCENT_MAC = 150;

    private FleetFile() {}

    static Map<String, Tail> read(List<Keys> rows, Known<AircraftType> types) {
        Map<String, Tail> tails = new TreeMap<>();
        Map<String, Integer> lines = new LinkedHashMap<>();
        for (Keys row : rows) {
            String registration = row.text(TAIL);
            Integer before = lines.putIfAbsent(registration, row.line());
            if (before != null) {
                row.fault(TAIL, "the tail stands twice, first in line " + before, "each tail once");
            }
            tail(row, registration, types).ifPresent(tail -> tails.put(registration, tail));
        }
        return tails;
    }

    private static Optional<Tail> tail(Keys row, String registration, Known<AircraftType> types) {
        Optional<AircraftType> type =
                row.take(row.require(TYPE, types.reference()).flatMap(found -> found));
        Optional<Double> massKg = row.require(MASS, Measure.MASS);
        Optional<Cg> cg = row.require(CG, Cg::read);
        row.find(NOTE, text -> text);
        if (type.isPresent() && massKg.isPresent()) {
            requirePlausibleMass(row, type.get(), massKg.get());
            cg.ifPresent(found -> requirePlausibleCg(row, type.get(), massKg.get(), found));
        }
        return row.make(() -> {
            double armM = cg.orElseThrow().armM(type.orElseThrow().geometry(), massKg.orElseThrow());
            return new Tail(registration, type.orElseThrow(), MassMoment.at(massKg.orElseThrow(), armM));
        });
    }

    private static void requirePlausibleMass(Keys row, AircraftType type, double massKg) {
        double mostKg = type.limits().maxZeroFuelKg();
        if (massKg < LEAST_PART * mostKg || massKg > mostKg) {
            row.fault(
                    MASS,
                    "not plausible for the type " + type.id() + " as the basic mass",
                    "from " + Math.round(LEAST_PART * mostKg) + " to " + Math.round(mostKg)
                            + " kg, the maximum zero-fuel mass");
        }
    }

    private static void requirePlausibleCg(Keys row, AircraftType type, double massKg, Cg cg) {
        double percentMac = type.geometry().chord().percentAt(cg.armM(type.geometry(), massKg));
        if (percentMac < LEAST_PERCENT_MAC || percentMac > MOST_PERCENT_MAC) {
            row.fault(
                    CG,
                    "not plausible for the type " + type.id() + ": it lies at " + Math.round(percentMac) + " % MAC",
                    "from " + Math.round(LEAST_PERCENT_MAC) + " to " + Math.round(MOST_PERCENT_MAC) + " % MAC");
        }
    }
}
