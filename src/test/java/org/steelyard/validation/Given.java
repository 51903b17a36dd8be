package org.steelyard.validation;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import org.steelyard.model.type.MeanChord;
import org.steelyard.model.unit.MassMoment;

/** The figures that a case gives, in kg, m and L; it notes which of them are used. */
final class Given {

    private final ObjectNode node;
    private final OptionalDouble densityKgPerL;
    private final Set<String> used = new TreeSet<>();
    private final List<Given> parts = new ArrayList<>();

    Given(ObjectNode node) {
        this(node, OptionalDouble.empty());
    }

    private Given(ObjectNode node, OptionalDouble outerDensityKgPerL) {
        this.node = node;
        OptionalDouble own = find(Dimension.DENSITY, "density");
        this.densityKgPerL = own.isPresent() ? own : outerDensityKgPerL;
    }

    /** Figures that nobody asked for, here and in the parts. */
    List<String> unused() {
        List<String> names = new ArrayList<>();
        node.fieldNames().forEachRemaining(name -> {
            if (!used.contains(name)) {
                names.add(name);
            }
        });
        parts.forEach(part -> names.addAll(part.unused()));
        return names;
    }

    private OptionalDouble find(Dimension dimension, String stem) {
        OptionalDouble found = OptionalDouble.empty();
        for (var field : node.properties()) {
            String name = field.getKey();
            if (name.startsWith(stem) && field.getValue().isNumber()) {
                OptionalDouble inside = dimension.inside(name.substring(stem.length()));
                if (inside.isPresent()) {
                    used.add(name);
                    found = OptionalDouble.of(field.getValue().doubleValue() * inside.getAsDouble());
                }
            }
        }
        return found;
    }

    OptionalDouble massKg(String stem) {
        OptionalDouble massKg = find(Dimension.MASS, stem);
        return massKg.isPresent() ? massKg : massOfVolumeKg(stem);
    }

    private OptionalDouble massOfVolumeKg(String stem) {
        for (String unit : List.of("L", "UsGal", "ImpGal")) {
            if (node.has(stem + unit) && densityKgPerL.isPresent()) {
                used.add(stem + unit);
                return OptionalDouble.of(Dimension.volumeUnit(unit)
                        .toKg(node.get(stem + unit).doubleValue(), densityKgPerL.getAsDouble()));
            }
        }
        return OptionalDouble.empty();
    }

    OptionalDouble densityKgPerL() {
        return densityKgPerL;
    }

    OptionalDouble volumeL(String stem) {
        return find(Dimension.VOLUME, stem);
    }

    OptionalDouble lengthM(String stem) {
        return find(Dimension.LENGTH, stem);
    }

    OptionalDouble momentKgM(String stem) {
        return find(Dimension.MOMENT, stem);
    }

    OptionalDouble inside(Dimension dimension, String stem) {
        return find(dimension, stem);
    }

    double massKg(String stem, double other) {
        return massKg(stem).orElse(other);
    }

    OptionalDouble number(String name) {
        if (!node.has(name)) {
            return OptionalDouble.empty();
        }
        used.add(name);
        return OptionalDouble.of(node.get(name).doubleValue());
    }

    int count(String name) {
        return (int) number(name).orElse(0);
    }

    String word(String name) {
        used.add(name);
        return node.path(name).asText("");
    }

    List<String> words(String name) {
        used.add(name);
        List<String> words = new ArrayList<>();
        node.path(name).forEach(word -> words.add(word.asText()));
        return words;
    }

    /** A list of masses whose name ends in their unit. */
    double sumKg(String stem) {
        double sumKg = 0;
        for (String unit : List.of("Kg", "Lb")) {
            if (node.has(stem + unit)) {
                used.add(stem + unit);
                for (JsonNode mass : node.get(stem + unit)) {
                    sumKg += mass.doubleValue() * Dimension.MASS.inside(unit).orElseThrow();
                }
            }
        }
        return sumKg;
    }

    List<Given> list(String name) {
        used.add(name);
        List<Given> list = new ArrayList<>();
        node.path(name).forEach(part -> list.add(new Given((ObjectNode) part, densityKgPerL)));
        parts.addAll(list);
        return list;
    }

    /** The chord, where the case gives one: by edge and length, by both edges, or by two points. */
    Optional<MeanChord> chord() {
        if (node.has("onePercentMac")) {
            return Optional.of(MeanChord.through(
                    lengthM("one").orElseThrow(),
                    number("onePercentMac").orElseThrow(),
                    lengthM("other").orElseThrow(),
                    number("otherPercentMac").orElseThrow()));
        }
        OptionalDouble temacM = lengthM("temac");
        OptionalDouble macM = lengthM("mac");
        double lemacM = lengthM("lemac").orElse(0);
        if (temacM.isPresent()) {
            return Optional.of(MeanChord.through(lemacM, 0, temacM.getAsDouble(), 100));
        }
        return macM.isPresent() ? Optional.of(new MeanChord(lemacM, macM.getAsDouble())) : Optional.empty();
    }

    /** A position as arm or in % MAC. */
    OptionalDouble positionM(String stem) {
        OptionalDouble percent = number(stem + "PercentMac");
        return percent.isPresent()
                ? OptionalDouble.of(chord().orElseThrow().armAt(percent.getAsDouble()))
                : lengthM(stem);
    }

    /** An item: mass with arm or moment. */
    MassMoment item(String position) {
        double massKg = massKg("mass").orElseGet(() -> massKg("volume").orElseThrow());
        OptionalDouble momentKgM = momentKgM("moment");
        return momentKgM.isPresent()
                ? new MassMoment(massKg, momentKgM.getAsDouble())
                : MassMoment.at(massKg, positionM(position).orElseThrow());
    }
}
