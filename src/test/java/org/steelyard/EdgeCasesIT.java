package org.steelyard;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.steelyard.samples.EdgeTopic;

/** The table of edge cases that README and reports show is the one that the tests have just written. */
class EdgeCasesIT {

    private static final Path TABLE = Path.of("reports/edge-cases.md");

    @Test
    void theTableInReportsIsTheOneOfThisBuild() {
        assertThat(TABLE)
                .as("copy target/edge-cases.md over it and read the difference")
                .hasSameTextualContentAs(Path.of("target/edge-cases.md"));
    }

    @Test
    void everyTopicHasACaseAndThereAreSixty() throws Exception {
        List<String> lines = Files.readAllLines(TABLE);
        for (EdgeTopic topic : EdgeTopic.values()) {
            assertThat(lines).contains("## " + topic.title());
        }
        assertThat(lines.stream().filter(line -> line.startsWith("| ")).count() - EdgeTopic.values().length)
                .isGreaterThanOrEqualTo(60);
    }
}
