package org.steelyard.validation;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import org.steelyard.model.unit.MassMoment;

/** What the program answers to a case, held against what is printed. */
final class Answers {

    /** One answer beside the printed one; a misprint is right when the two differ. */
    record Compared(String name, String printed, String computed, String difference, boolean misprint, boolean right) {}

    private static final double ROUNDING = 1e-9;

    private final PublishedCase published;
    private final Map<String, Object> computed = new LinkedHashMap<>();

    Answers(PublishedCase published) {
        this.published = published;
    }

    /** Whether an answer whose name begins so is asked for: what is not asked need not be computable. */
    boolean asks(String stem) {
        return asked().stream().anyMatch(name -> name.startsWith(stem));
    }

    private Set<String> asked() {
        Set<String> names = new TreeSet<>();
        published.expected().fieldNames().forEachRemaining(names::add);
        published.misprints().fieldNames().forEachRemaining(names::add);
        return names;
    }

    private void put(Dimension dimension, String stem, double inside) {
        for (String name : asked()) {
            if (name.startsWith(stem)) {
                OptionalDouble unit = dimension.inside(name.substring(stem.length()));
                unit.ifPresent(factor -> computed.put(name, inside / factor));
            }
        }
    }

    void mass(String stem, double massKg) {
        put(Dimension.MASS, stem, massKg);
    }

    void length(String stem, double lengthM) {
        put(Dimension.LENGTH, stem, lengthM);
    }

    void moment(String stem, double momentKgM) {
        put(Dimension.MOMENT, stem, momentKgM);
    }

    void inside(Dimension dimension, String stem, double value) {
        put(dimension, stem, value);
    }

    /** Mass, moment and arm of a state by the usual names. */
    void state(String stem, String cgStem, MassMoment state) {
        mass(stem, state.massKg());
        moment(stem + "Moment", state.momentKgM());
        if (state.massKg() != 0) {
            length(cgStem, state.armM());
        }
    }

    void number(String name, double value) {
        computed.put(name, value);
    }

    void word(String name, String value) {
        computed.put(name, value);
    }

    /** Every printed answer beside the computed one. */
    List<Compared> compared() {
        List<Compared> rows = new ArrayList<>();
        published.expected().properties().forEach(field -> rows.add(compare(field.getKey(), field.getValue(), false)));
        published.misprints().properties().forEach(field -> rows.add(compare(field.getKey(), field.getValue(), true)));
        return rows;
    }

    private Compared compare(String name, JsonNode printed, boolean misprint) {
        Object answer = computed.get(name);
        if (answer == null) {
            throw new AssertionError(published.id() + ": nothing answers " + name);
        }
        if (printed.isTextual()) {
            boolean same = printed.asText().equals(answer);
            return new Compared(name, printed.asText(), answer.toString(), "", misprint, same != misprint);
        }
        double value = (Double) answer;
        double difference = value - printed.doubleValue();
        int decimals = Math.max(printed.decimalValue().scale(), 0);
        double half = 0.5 * Math.pow(10, -decimals);
        double allowed = misprint ? half : tolerance(published.tolerances(), name, half);
        boolean near = Math.abs(difference) <= allowed + ROUNDING * Math.max(1, Math.abs(printed.doubleValue()));
        return new Compared(
                name,
                printed.decimalValue().toPlainString(),
                String.format(Locale.ROOT, "%." + (decimals + 2) + "f", value),
                String.format(Locale.ROOT, "%." + (decimals + 2) + "f", difference),
                misprint,
                near != misprint);
    }

    private static double tolerance(ObjectNode tolerances, String name, double half) {
        return tolerances.has(name) ? tolerances.get(name).doubleValue() : half;
    }
}
