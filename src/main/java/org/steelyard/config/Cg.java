package org.steelyard.config;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.Map;
import org.steelyard.model.Geometry;
import org.steelyard.model.MeanChord;

/** A centre of gravity as it is written: {@code 25.3 % MAC}, an arm as {@code 86.6 in}, or {@code 45.3 index}. */
sealed interface Cg permits Cg.PercentMac, Cg.Arm, Cg.Index {

    /** The arm, for a mass, as an index means nothing without one. */
    double armM(Geometry geometry, double massKg);

    /** On the chord. */
    record PercentMac(double percentMac) implements Cg {

        @Override
        public double armM(Geometry geometry, double massKg) {
            return geometry.chord().armAt(percentMac);
        }
    }

    /** From the datum. */
    record Arm(double arm) implements Cg {

        @Override
        public double armM(Geometry geometry, double massKg) {
            return arm;
        }
    }

    /** By the type's index formula. */
    record Index(double index) implements Cg {

        @Override
        public double armM(Geometry geometry, double massKg) {
            return geometry.index().at(massKg, index).armM();
        }
    }

    String PERCENT_MAC = "% MAC";
    String INDEX = "index";

    /** Any of the three. */
    static Cg read(String text) throws Unfit {
        double number = measure("a CG", PERCENT_MAC, INDEX).read(text);
        if (text.endsWith(PERCENT_MAC)) {
            return new PercentMac(number);
        }
        return text.endsWith(INDEX) ? new Index(number) : new Arm(number);
    }

    /** A position on the chord, as % MAC or as an arm: one that needs no mass. */
    static double readPercentMac(String text, MeanChord chord) throws Unfit {
        double number = measure("a CG", PERCENT_MAC).read(text);
        return text.endsWith(PERCENT_MAC) ? number : chord.percentAt(number);
    }

    private static Measure measure(String noun, String... units) {
        Map<String, BigDecimal> factors = new LinkedHashMap<>();
        for (String unit : units) {
            factors.put(unit, BigDecimal.ONE);
        }
        factors.putAll(Units.LENGTHS);
        return new Measure(noun, "25.3 % MAC", factors, Measure.Room.ANY);
    }
}
