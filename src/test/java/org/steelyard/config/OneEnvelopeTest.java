package org.steelyard.config;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.steelyard.check.type.NotChecked;
import org.steelyard.config.source.ConfigFault;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.limit.Envelope;
import org.steelyard.model.type.AircraftType;
import org.steelyard.samples.EdgeTable;
import org.steelyard.samples.EdgeTopic;

/** A type with one envelope, as a handbook gives it: for take-off only, or for all phases. */
class OneEnvelopeTest {

    private static final EdgeTable EDGES = new EdgeTable(OneEnvelopeTest.class);
    private static final String LINES = """
                forward: {straight-in: arm, points: [{mass: 3200 kg, cg: 10 % MAC}, {mass: HIGHEST kg, cg: 12 % MAC}]}
                aft: {straight-in: arm, points: [{mass: 3200 kg, cg: 35 % MAC}, {mass: HIGHEST kg, cg: 35 % MAC}]}
            """;

    @TempDir
    private Path folder;

    @AfterAll
    static void write() {
        EDGES.write();
    }

    private static String one(String key, int highestKg) {
        return "  " + key + ":\n" + LINES.replace("HIGHEST", Integer.toString(highestKg));
    }

    private ConfigResult read(String... envelopes) {
        Map<String, String> files = new LinkedHashMap<>(Readme.examples());
        String type = files.get("types/example.yaml");
        int from = type.indexOf("\nenvelopes:\n") + 1;
        files.put(
                "types/example.yaml",
                type.substring(0, from) + "envelopes:\n" + String.join("", envelopes)
                        + type.substring(type.indexOf("\ntrim:\n")));
        Readme.write(folder, files);
        return ConfigFolder.load(folder);
    }

    private AircraftType type(String... envelopes) {
        ConfigResult result = read(envelopes);
        assertThat(result).isInstanceOf(ConfigResult.Loaded.class);
        return ((ConfigResult.Loaded) result).configuration().types().get("example");
    }

    private static String phases(AircraftType type) {
        return type.envelopes().stream()
                .map(envelope -> envelope.phase().label())
                .collect(Collectors.joining(", "));
    }

    private static String notChecked(AircraftType type) {
        return NotChecked.of(type).map(NotChecked::when).orElse("all checked");
    }

    @Test
    void anEnvelopeForAllHoldsEachPhase() {
        AircraftType type = type(one("all", 5700));
        EDGES.row(
                EdgeTopic.ONE_ENVELOPE,
                "a type's file with one envelope under all: — the phases that it holds",
                "zero fuel, take-off, in flight, landing",
                phases(type));
        EDGES.row(EdgeTopic.ONE_ENVELOPE, "the same file — not checked", "all checked", notChecked(type));
        List<Envelope> envelopes = type.envelopes();
        assertThat(envelopes).allSatisfy(envelope -> {
            assertThat(envelope.forward()).isEqualTo(envelopes.get(0).forward());
            assertThat(envelope.aft()).isEqualTo(envelopes.get(0).aft());
        });
    }

    @Test
    void aPhaseKeepsItsOwn() {
        AircraftType type = type(one("all", 5700), one("landing", 5500));
        assertThat(phases(type)).isEqualTo("zero fuel, take-off, in flight, landing");
        assertThat(type.envelope(Phase.LANDING).orElseThrow().maxMassKg()).isEqualTo(5500);
        assertThat(type.envelope(Phase.FLIGHT).orElseThrow().maxMassKg()).isEqualTo(5700);
    }

    @Test
    void whereOnlyTakeoffHasOneTheOthersAreNamed() {
        AircraftType type = type(one("take-off", 5700));
        EDGES.row(
                EdgeTopic.ONE_ENVELOPE,
                "a type's file with an envelope for take-off only — not checked",
                "at zero fuel, in flight and at landing",
                notChecked(type));
        EDGES.row(
                EdgeTopic.ONE_ENVELOPE,
                "a type's file with all envelopes but that for zero fuel — not checked",
                "at zero fuel",
                notChecked(type(one("take-off", 5700), one("in-flight", 5700), one("landing", 5500))));
    }

    @Test
    void anEnvelopeForAllReachesTheHighestMassOfAll() {
        ConfigResult result = read(one("all", 5500));
        assertThat(result).isInstanceOf(ConfigResult.Faulty.class);
        assertThat(((ConfigResult.Faulty) result).faults())
                .extracting(ConfigFault::message)
                .singleElement()
                .asString()
                .contains("envelopes.all: ends at 5500 kg, below the maximum mass of a phase that it is for")
                .contains("5700 kg");
    }
}
