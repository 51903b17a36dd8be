package org.steelyard.report.output.csv;

import static org.assertj.core.api.Assertions.assertThat;
import static org.steelyard.report.output.page.Flights.aft;
import static org.steelyard.report.output.page.Flights.flight;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.steelyard.model.finding.Severity;
import org.steelyard.model.input.InputProblem;
import org.steelyard.model.input.ProblemCode;
import org.steelyard.model.loading.Origin;
import org.steelyard.report.output.page.Flights;
import org.steelyard.report.output.page.Runs;
import org.steelyard.report.season.SeasonReports;
import org.steelyard.report.text.Caution;

class RunJsonTest {

    @TempDir
    private Path reports;

    private JsonNode run() throws IOException {
        try (SeasonReports season = SeasonReports.open(reports, Runs.SEASON, Flights.POLICY)) {
            season.flight(flight("1").found(aft(Severity.BREACH, -1)).build());
            season.flight(flight("2").build());
            season.rejected(Runs.rejected(3, List.of("tail"), "x"));
            season.fileProblem(new InputProblem(
                    new Origin("bad \"file\".csv", "", 0),
                    "",
                    ProblemCode.UNREADABLE,
                    "is empty",
                    "",
                    "a heading row"));
            season.finish(Runs.facts(2, 1));
        }
        return new ObjectMapper().readTree(Runs.text(reports.resolve("2025/run.json")));
    }

    @Test
    void whatWasReadAndFoundIsToldWithChecksums() throws IOException {
        JsonNode run = run();
        assertThat(run.at("/program").asText()).isEqualTo("Steelyard");
        assertThat(run.at("/version").asText()).isEqualTo("0.1.0");
        assertThat(run.at("/season").asText()).isEqualTo("2025");
        assertThat(run.at("/rows/seen").asLong()).isEqualTo(4);
        assertThat(run.at("/rows/accepted").asLong()).isEqualTo(2);
        assertThat(run.at("/rows/rejected").asLong()).isEqualTo(1);
        assertThat(run.at("/rows/blank").asLong()).isEqualTo(1);
        assertThat(run.at("/flights/total").asLong()).isEqualTo(2);
        assertThat(run.at("/flights/breached").asLong()).isEqualTo(1);
        assertThat(run.at("/findings/0/code").asText()).isEqualTo("cg-aft");
        assertThat(run.at("/inputs/0/sha256").asText()).isEqualTo("ab".repeat(32));
        assertThat(run.at("/inputs/0/notes/0").asText()).contains("gate");
        assertThat(run.at("/config/0/file").asText()).isEqualTo("policy.yaml");
        assertThat(run.at("/skipped/0/file").asText()).isEqualTo("notes.txt");
        assertThat(run.at("/file_problems/0/file").asText()).isEqualTo("bad \"file\".csv");
        assertThat(run.at("/policy/marginal_cg_pct_mac").asDouble()).isEqualTo(0.5);
        assertThat(run.at("/methods/percentiles").asText()).contains("inclusive");
        assertThat(run.at("/caution").asText()).isEqualTo(Caution.TEXT);
    }

    @Test
    void allOutputsThatAreThereAreNamed() throws IOException {
        JsonNode outputs = run().at("/outputs");
        assertThat(outputs).isNotEmpty().allSatisfy(output -> {
            Path file = reports.resolve("2025").resolve(output.get("file").asText());
            assertThat(file).isRegularFile();
            if (!file.endsWith("run.json")) {
                assertThat(file)
                        .hasSize(output.get("bytes").asLong())
                        .hasDigest("SHA-256", output.get("sha256").asText());
            }
        });
    }

    @Test
    void keysKeepTheirOrderAndLinesEndAlike() throws IOException {
        run();
        assertThat(Runs.text(reports.resolve("2025/run.json")))
                .startsWith("{\n  \"program\" : \"Steelyard\",\n  \"version\" : \"0.1.0\",\n  \"season\" : \"2025\"")
                .endsWith("}\n")
                .doesNotContain("\r");
    }
}
