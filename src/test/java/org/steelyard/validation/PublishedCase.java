package org.steelyard.validation;

import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.cfg.JsonNodeFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/**
 * One published case as it stands in its file: what is given, what is printed, where. See the README beside the files.
 */
record PublishedCase(
        String id,
        String what,
        String source,
        String read,
        String confidence,
        String answer,
        ObjectNode given,
        ObjectNode expected,
        ObjectNode misprint,
        ObjectNode tolerance,
        ObjectNode notNeeded,
        String notRun,
        String note) {

    private static final Set<String> CONFIDENCES = Set.of("READ", "MIXED", "MEMORY");
    private static final Set<String> ANSWERS =
            Set.of("printed", "mixed", "own", "difference of printed values", "point only");

    PublishedCase {
        Objects.requireNonNull(id);
        Objects.requireNonNull(what);
        Objects.requireNonNull(source);
        if (!CONFIDENCES.contains(confidence) || !ANSWERS.contains(answer)) {
            throw new IllegalArgumentException(id + ": confidence " + confidence + ", answer " + answer);
        }
        if (expected.isEmpty() && (misprint == null || misprint.isEmpty())) {
            throw new IllegalArgumentException(id + " expects nothing");
        }
        requireKnown(id, tolerance, expected);
    }

    private static void requireKnown(String id, ObjectNode tolerance, ObjectNode expected) {
        if (tolerance != null) {
            tolerance.fieldNames().forEachRemaining(name -> {
                if (!expected.has(name)) {
                    throw new IllegalArgumentException(id + ": a tolerance for " + name + ", which is not expected");
                }
            });
        }
    }

    ObjectNode misprints() {
        return misprint == null ? JsonNodeFactory.instance.objectNode() : misprint;
    }

    ObjectNode tolerances() {
        return tolerance == null ? JsonNodeFactory.instance.objectNode() : tolerance;
    }

    /** Why the case is not run, if it is not. */
    Optional<String> reasonNotRun() {
        return Optional.ofNullable(notRun);
    }

    /** Reads a file of cases; a field that nothing knows is an error. */
    static List<PublishedCase> read(String kind) {
        JsonMapper mapper = JsonMapper.builder()
                .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
                .enable(DeserializationFeature.FAIL_ON_READING_DUP_TREE_KEY)
                .disable(JsonNodeFeature.STRIP_TRAILING_BIGDECIMAL_ZEROES)
                .build();
        try (InputStream in = PublishedCase.class.getResourceAsStream("/reference/" + kind + ".json")) {
            return List.of(mapper.readValue(in, PublishedCase[].class));
        } catch (IOException e) {
            throw new IllegalStateException(kind, e);
        }
    }
}
