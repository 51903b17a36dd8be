package org.steelyard.config;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.steelyard.config.source.ConfigFault;
import org.steelyard.config.source.ConfigSource;

class ConfigFolderTest {

    private static final String TYPE = "types/example.yaml";

    @TempDir
    private Path folder;

    private final Map<String, String> files = new LinkedHashMap<>(Readme.examples());

    private void edit(String file, UnaryOperator<String> edit) {
        files.compute(file, (path, text) -> edit.apply(text));
    }

    private List<String> messages() {
        Readme.write(folder, files);
        return ConfigFolder.load(folder) instanceof ConfigResult.Faulty faulty
                ? faulty.faults().stream().map(ConfigFault::message).toList()
                : List.of();
    }

    @Test
    void faultsOfSeveralFilesAreListedInOneGo() {
        edit(
                TYPE,
                text -> text.replace("max-ramp: 5730 kg", "max-ramp: 5730")
                        .replace("zones: [B]", "zones: [C]")
                        .replace("per-percent-mac: -0.15", "per-percent-mac: 0.15"));
        edit("fleet.csv", text -> text.replace("QI-AAC,example", "QI-AAC,exampel"));
        edit("policy.yaml", text -> text.replace("  load: 2 %\n", ""));
        edit("columns/example.yaml", text -> text.replace("decimal: comma", "decimal: dot"));
        edit("standard-masses.yaml", text -> text.replace("bag: 13 kg", "bag: 13"));

        assertThat(messages())
                .containsExactly(
                        "columns/example.yaml:5:decimal: unknown word (value 'dot'; expected point or comma)",
                        "fleet.csv:4:type: unknown type; the nearest that is known is 'example' (value 'exampel';"
                                + " expected example)",
                        "policy.yaml:1:marginal.load: the key is missing (expected a percentage in %, as '2 %')",
                        "standard-masses.yaml:9:schemes[1].bag: the unit is missing (value '13'; expected a mass in kg,"
                                + " lb or t, as '18500 kg')",
                        "types/example.yaml:9:masses.max-ramp: the unit is missing (value '5730'; expected a mass in kg,"
                                + " lb or t, as '18500 kg')",
                        "types/example.yaml:37:groups[2].zones[1]: unknown zone (value 'C'; expected A or B)",
                        "types/example.yaml:117:trim[3].law.slope: trim must not turn nose-up as the CG moves aft, as a"
                                + " slope of 0.15 says; is the sign of the scale right");
    }

    @Test
    void aTypeAtFaultIsNotAlsoUnknownToTheFleetAndTheHeadings() {
        edit(TYPE, text -> text.replace("chord: {leading-edge: 5.0 m", "chord: {leading-edge: 5.0 x"));

        assertThat(messages())
                .containsExactly("types/example.yaml:5:chord.leading-edge: unknown unit 'x' (value '5.0 x'; expected an"
                        + " arm in m, cm, mm, in or ft, as '12.4 m')");
    }

    @Test
    void aDirectionThatIsNotKnownMakesNoFaultOfTheTrims() {
        edit(TYPE, text -> text.replace("positive: nose-down", "positive: nose-low"));

        assertThat(messages())
                .containsExactly("types/example.yaml:98:trim[2].positive: unknown word; the nearest that is known is"
                        + " 'nose-down' (value 'nose-low'; expected nose-up or nose-down)");
    }

    @Test
    void aMissingFolderIsNamed() {
        assertThat(ConfigFolder.load(folder.resolve("konfig")))
                .isInstanceOfSatisfying(
                        ConfigResult.Faulty.class,
                        faulty -> assertThat(faulty.faults()).singleElement().satisfies(fault -> {
                            assertThat(fault.file()).endsWith("/konfig");
                            assertThat(fault.reason()).isEqualTo("the folder is missing");
                        }));
    }

    @Test
    void anEmptyFolderLacksEveryFile() {
        files.clear();

        assertThat(messages())
                .containsExactly(
                        "columns: no file is here (expected a folder with at least one .yaml file)",
                        "fleet.csv: the file is missing (expected a file of this name)",
                        "policy.yaml: the file is missing (expected a file of this name)",
                        "standard-masses.yaml: the file is missing (expected a file of this name)",
                        "types: no file is here (expected a folder with at least one .yaml file)");
    }

    @Test
    void emptyFilesAreNamed() {
        files.replaceAll((path, text) -> "");

        assertThat(messages())
                .containsExactly(
                        "airframes/example.yaml: the file is empty (expected keys and values as the README of the folder shows them)",
                        "columns/example.yaml: the file is empty (expected keys and values as the README of the folder"
                                + " shows them)",
                        "columns/items.yaml: the file is empty (expected keys and values as the README of the folder"
                                + " shows them)",
                        "fleet.csv: the file is empty (expected a line of headings and a line for each entry)",
                        "marking.yaml: the file is empty (expected keys and values as the README of the folder shows them)",
                        "policy.yaml: the file is empty (expected keys and values as the README of the folder shows"
                                + " them)",
                        "standard-masses.yaml: the file is empty (expected keys and values as the README of the folder"
                                + " shows them)",
                        "types/example.yaml: the file is empty (expected keys and values as the README of the folder"
                                + " shows them)");
    }

    @Test
    void aListInPlaceOfKeysIsNamed() {
        edit("policy.yaml", text -> "- one\n- two\n");

        assertThat(messages()).containsExactly("policy.yaml:1: the file holds a list (expected keys and values)");
    }

    @Test
    void twoFilesCannotHaveOneName() {
        files.put("types/other.yaml", files.get(TYPE));
        files.put("columns/other.yaml", files.get("columns/example.yaml"));

        assertThat(messages())
                .containsExactly(
                        "columns/other.yaml:1:map: the name stands twice, first in columns/example.yaml (value"
                                + " 'example'; expected each name once)",
                        "types/other.yaml:1:type: the name stands twice, first in types/example.yaml (value 'example';"
                                + " expected each name once)");
    }

    @Test
    void filesOfOtherKindsBesideTheTypesAreNamedButNotHiddenOnes() {
        files.put("types/jet.yml", "type: jet\n");
        files.put("types/.keep", "");
        files.put("types/example.yaml~", "");

        assertThat(messages())
                .containsExactly("types/jet.yml: a file of another kind (expected a name that ends in .yaml)");
    }

    @Test
    void aFileThatIsNotUtf8IsNamedAndAByteOrderMarkIsNot() throws IOException {
        Readme.write(folder, files);
        Files.write(folder.resolve("policy.yaml"), "# größer\n".getBytes(StandardCharsets.ISO_8859_1));
        files.remove("policy.yaml");
        edit("fleet.csv", text -> "\uFEFF" + text);

        assertThat(messages()).containsExactly("policy.yaml: not a text in UTF-8 (expected UTF-8)");
    }

    @Test
    void controlCharactersAreRefusedAsYaml() {
        edit("policy.yaml", text -> text.replace("by capacity", "by \u0007 capacity"));

        assertThat(messages())
                .singleElement()
                .asString()
                .startsWith("policy.yaml")
                .contains("not readable as YAML");
    }

    @Test
    void theUnitOfAColumnMayStandInItsHeading() {
        edit("fleet.csv", text -> "tail,basic mass (lb),type,basic CG (in)\nQI-AAA,7300,example,215.4\n\n");

        assertThat(messages()).isEmpty();
        assertThat(loaded().tails().get("QI-AAA").basic().massKg()).isEqualTo(3311.224301);
        assertThat(loaded().tails().get("QI-AAA").basic().armM()).isEqualTo(5.47116);
    }

    @Test
    void basicCgIsReadInAnyOfItsForms() {
        Readme.write(folder, files);

        assertThat(loaded().tails().values())
                .extracting(tail -> Math.round(1000 * tail.basic().armM()))
                .containsExactly(5492L, 5471L, 5510L, 5815L);
    }

    @Test
    void sourcesHaveTheChecksumsOfTheirBytes() throws IOException {
        Readme.write(folder, files);
        Files.writeString(folder.resolve("fleet.csv"), "tail,type,basic mass,basic CG\n");

        assertThat(loaded().sources())
                .extracting(ConfigSource::path)
                .containsExactly(
                        "airframes/example.yaml",
                        "columns/example.yaml",
                        "columns/items.yaml",
                        "fleet.csv",
                        "marking.yaml",
                        "policy.yaml",
                        "standard-masses.yaml",
                        "types/example.yaml");
        assertThat(loaded().sources().get(3).sha256())
                .isEqualTo("c88bc749b0c09cc7927d21c5e026914963dd36b4441b482e2207a0026789e7c6");
    }

    private Configuration loaded() {
        return ((ConfigResult.Loaded) ConfigFolder.load(folder)).configuration();
    }

    private static Configuration ofFlight(Path folder, Optional<String> type, Optional<String> tail) {
        return ((ConfigResult.Loaded) ConfigFolder.loadForFlight(folder, type, tail)).configuration();
    }

    @Test
    void oneFlightNeedsItsTypeAloneAndGetsTheSameOne() {
        Path shipped = Path.of("config");
        Configuration whole = ((ConfigResult.Loaded) ConfigFolder.load(shipped)).configuration();

        Configuration byType = ofFlight(shipped, Optional.of("JET180"), Optional.empty());
        Configuration byTail = ofFlight(shipped, Optional.empty(), Optional.of("qi-jaa"));

        assertThat(byType.types().keySet()).containsExactly("jet180");
        assertThat(byTail.types()).isEqualTo(byType.types());
        assertThat(byTail.types().get("jet180")).isEqualTo(whole.types().get("jet180"));
        assertThat(byTail.tails().get("QI-JAA")).isEqualTo(whole.tails().get("QI-JAA"));
        assertThat(byTail.policy()).isEqualTo(whole.policy());
        assertThat(byTail.maps()).isEmpty();
    }

    @Test
    void aTypeOrTailThatIsNotThereGetsTheWholeFolder() {
        Path shipped = Path.of("config");

        assertThat(ofFlight(shipped, Optional.of("jet18"), Optional.empty()).types())
                .hasSize(3);
        assertThat(ofFlight(shipped, Optional.empty(), Optional.of("QI-ZZZ")).types())
                .hasSize(3);
        assertThat(ofFlight(shipped, Optional.empty(), Optional.empty()).types())
                .hasSize(3);
    }

    @Test
    void aFaultWhereOneFlightLooksIsToldWithAllOthers() {
        edit(TYPE, text -> text.replace("type: example", "type: example\nwings: 2"));
        Readme.write(folder, files);

        assertThat(ConfigFolder.loadForFlight(folder, Optional.of("example"), Optional.empty()))
                .isEqualTo(ConfigFolder.load(folder))
                .isInstanceOf(ConfigResult.Faulty.class);
    }
}
