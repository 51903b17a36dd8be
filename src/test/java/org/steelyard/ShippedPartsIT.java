package org.steelyard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.abort;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.jar.Attributes;
import java.util.jar.JarFile;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The list of parts (CycloneDX) names what the jar loads, byte for byte, and each part's licence is one we know. */
class ShippedPartsIT {

    private static final Path JAR = Path.of(System.getProperty("steelyard.jar"));

    /** SPDX ids of licences that let the parts be passed on with ours. */
    private static final Set<String> ACCEPTED = Set.of("Apache-2.0", "MIT", "BSD-3-Clause");

    /** Words that stand in each licence's text and no other's; where the copyright line is part of it, that too. */
    private static final Map<String, String[]> WORDS = Map.of(
            "Apache-2.0", new String[] {"Apache License", "Version 2.0, January 2004"},
            "MIT", new String[] {"Copyright (c)", "Permission is hereby granted, free of charge"},
            "BSD-3-Clause", new String[] {"Copyright (c)", "Neither the name of"});

    private static JsonNode list;

    /** A build that may not ask the network makes no list. */
    @BeforeAll
    static void readTheList() throws IOException {
        Path file = JAR.resolveSibling("steelyard-sbom.json");
        if (!Files.exists(file) && !"true".equals(System.getenv("CI"))) {
            System.err.println("SKIPPED: there is no list of parts; build once without --offline");
            abort("the list of parts was not made");
        }
        list = new ObjectMapper().readTree(file.toFile());
    }

    @Test
    void isOfTheOpenFormat() {
        assertThat(list.path("bomFormat").asText()).isEqualTo("CycloneDX");
        assertThat(list.path("specVersion").asText()).isEqualTo("1.6");
        assertThat(list.path("metadata").path("component").path("name").asText())
                .isEqualTo("steelyard");
    }

    @Test
    void namesExactlyTheLibrariesThatTheJarLoads() throws IOException, NoSuchAlgorithmException {
        Map<String, String> listed = new TreeMap<>();
        Map<String, String> shipped = new TreeMap<>();
        for (JsonNode part : list.path("components")) {
            String file =
                    part.path("name").asText() + "-" + part.path("version").asText() + ".jar";
            listed.put(file, checksum(part));
        }
        for (String entry : classPath()) {
            Path library = JAR.resolveSibling(entry);
            shipped.put(library.getFileName().toString(), checksum(library));
        }
        assertThat(listed).isEqualTo(shipped);
    }

    private static List<String> classPath() throws IOException {
        try (JarFile jar = new JarFile(JAR.toFile())) {
            return List.of(jar.getManifest()
                    .getMainAttributes()
                    .getValue(Attributes.Name.CLASS_PATH)
                    .split(" "));
        }
    }

    private static String checksum(JsonNode part) {
        for (JsonNode hash : part.path("hashes")) {
            if (hash.path("alg").asText().equals("SHA-256")) {
                return hash.path("content").asText();
            }
        }
        return "no SHA-256 in the list";
    }

    private static String checksum(Path library) throws IOException, NoSuchAlgorithmException {
        return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(Files.readAllBytes(library)));
    }

    @Test
    void everyPartAndItsLicenceAreLookedAt() throws IOException {
        List<String> listed = new ArrayList<>();
        for (JsonNode part : list.path("components")) {
            String name = part.path("group").asText() + ":" + part.path("name").asText();
            for (JsonNode licence : part.path("licenses")) {
                listed.add(name + " " + licence.path("license").path("id").asText());
            }
        }
        List<String> known = new ArrayList<>();
        for (CSVRecord row : parts()) {
            assertThat(ACCEPTED).as(row.get("part")).contains(row.get("licence"));
            assertThat(row.get("what for")).as(row.get("part")).isNotBlank();
            known.add(row.get("part") + " " + row.get("licence"));
        }
        assertThat(listed).containsExactlyInAnyOrderElementsOf(known);
    }

    /** Either the part's own text, unpacked from it, or one of ours that the list names. */
    @Test
    void everyPartComesWithTheTextOfItsLicence() throws IOException {
        Set<String> named = new TreeSet<>();
        for (CSVRecord row : parts()) {
            List<Path> texts = textsOf(row);
            named.add(row.get("licence text"));
            assertThat(texts).as("%s: licence text", row.get("part")).isNotEmpty();
            StringBuilder all = new StringBuilder();
            for (Path text : texts) {
                all.append(Files.readString(text, StandardCharsets.ISO_8859_1));
            }
            assertThat(all.toString().replaceAll("\\s+", " "))
                    .as("%s in %s", row.get("part"), texts)
                    .contains(WORDS.get(row.get("licence")));
        }
        try (Stream<Path> ours = Files.list(Path.of("src/build/licences"))) {
            assertThat(ours.map(text -> text.getFileName().toString())).allMatch(named::contains);
        }
    }

    private static List<Path> textsOf(CSVRecord row) throws IOException {
        Path licences = JAR.resolveSibling("licences");
        if (!row.get("licence text").isEmpty()) {
            return List.of(licences.resolve(row.get("licence text")));
        }
        String name = row.get("part").substring(row.get("part").indexOf(':') + 1);
        try (Stream<Path> files = Files.walk(licences.resolve(name))) {
            return files.filter(file -> file.getFileName().toString().startsWith("LICENSE"))
                    .toList();
        }
    }

    private static List<CSVRecord> parts() throws IOException {
        CSVFormat format = CSVFormat.RFC4180
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get();
        try (var reader = Files.newBufferedReader(Path.of("src/build/parts.csv"), StandardCharsets.UTF_8);
                var rows = format.parse(reader)) {
            return rows.getRecords();
        }
    }
}
