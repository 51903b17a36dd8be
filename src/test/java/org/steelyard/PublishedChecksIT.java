package org.steelyard;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** The table of published checks that readers see is the one that the tests wrote. */
class PublishedChecksIT {

    @Test
    void theTableUnderReportsIsWhatTheTestsComputed() {
        assertThat(Path.of("reports/published-checks.md"))
                .as("copy target/published-checks.md over it and read the difference")
                .hasSameTextualContentAs(Path.of("target/published-checks.md"));
    }

    @Test
    void theTableOfSlipsUnderReportsIsWhatTheTestsComputed() {
        assertThat(Path.of("reports/slips.md"))
                .as("copy target/slips.md over it and read the difference")
                .hasSameTextualContentAs(Path.of("target/slips.md"));
    }
}
