package org.steelyard.config.value;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.Map;
import org.steelyard.model.type.Geometry;
import org.steelyard.model.type.MeanChord;

/** A centre of gravity as it is written: {@code 25.3 % MAC}, an arm as {@code 86.6 in}, or {@code 45.3 index}. */
public sealed interface Cg permits Cg.PercentMac, Cg.Arm, Cg.Index {

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
    static Cg read(String text) throws NotAcceptedException {
        double number = measure("a CG", PERCENT_MAC, INDEX).read(text);
        if (text.endsWith(PERCENT_MAC)) {
            return new PercentMac(number);
        }
        return text.endsWith(INDEX) ? new Index(number) : new Arm(number);
    }

    /** A position on the chord, as % MAC or as an arm: one that needs no mass. */
    static double readPercentMac(String text, MeanChord chord) throws NotAcceptedException {
        double number = measure("a CG", PERCENT_MAC).read(text);
        return text.endsWith(PERCENT_MAC) ? number : chord.percentAt(number);
    }

    private static WrittenNumber measure(String noun, String... units) {
        Map<String, BigDecimal> factors = new LinkedHashMap<>();
        for (String unit : units) {
            factors.put(unit, BigDecimal.ONE);
        }
        factors.putAll(FileUnits.LENGTHS);
        return new WrittenNumber(noun, "25.3 % MAC", factors, WrittenNumber.Room.ANY);
    }
}
