package org.steelyard.validation;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** No file of reference values lies there without a test that reads it. */
@Tag("validation")
class ReferenceFilesTest {

    private static final Set<String> READ_HERE = Set.of(
            "cg-envelopes.csv",
            "envelopes.json",
            "floor-loads.json",
            "fuel-tables.json",
            "index.json",
            "limiting-masses.json",
            "load-changes.json",
            "loaded-tables.json",
            "percent-mac.json",
            "pitch-balance.json",
            "standard-masses.csv",
            "standard-masses.json",
            "transport-loadings.json",
            "trim.json",
            "units.json",
            "weighing.json");

    /** Read by tests of other packages. */
    private static final Set<String> READ_ELSEWHERE = Set.of("nist-strd.json");

    @Test
    void everyFileIsReadByATest() throws IOException, URISyntaxException {
        Path folder = Path.of(Objects.requireNonNull(ReferenceFilesTest.class.getResource("/reference"))
                .toURI());
        try (Stream<Path> files = Files.list(folder)) {
            Set<String> names = files.map(file -> file.getFileName().toString())
                    .filter(name -> !name.endsWith(".md"))
                    .filter(name -> !READ_ELSEWHERE.contains(name))
                    .collect(Collectors.toCollection(TreeSet::new));
            assertThat(names).isEqualTo(new TreeSet<>(READ_HERE));
        }
    }
}
