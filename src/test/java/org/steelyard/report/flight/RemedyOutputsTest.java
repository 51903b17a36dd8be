package org.steelyard.report.flight;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.steelyard.balance.Balance;
import org.steelyard.balance.Balancer;
import org.steelyard.check.flight.Checker;
import org.steelyard.check.result.AuditedFlight;
import org.steelyard.model.policy.ChanceRule;
import org.steelyard.model.policy.DuplicateRule;
import org.steelyard.model.policy.Policy;
import org.steelyard.model.policy.SeatingRule;
import org.steelyard.model.policy.SharingRule;
import org.steelyard.model.policy.SpreadRule;
import org.steelyard.remedy.RemedySearch;
import org.steelyard.report.file.Destination;
import org.steelyard.report.output.csv.Csv;
import org.steelyard.report.season.SeasonReports;
import org.steelyard.samples.Plain;
import org.steelyard.samples.SampleJet;

/** Remedies, chances and room on the outputs. */
class RemedyOutputsTest {

    private static final SpreadRule PEOPLE = new SpreadRule(SeatingRule.RANDOM, 0, 0, 16, 0, 0, 0, 0, 0, 0, 0);
    private static final Policy POLICY = Plain.policy(
            1,
            0.5,
            2,
            0.2,
            SharingRule.BY_CAPACITY,
            Optional.empty(),
            Optional.empty(),
            DuplicateRule.FIRST,
            Optional.of(new ChanceRule(5, false)),
            Optional.of(PEOPLE),
            0);

    @TempDir
    private Path reports;

    private static AuditedFlight flight(SampleJet jet) {
        var loading = jet.loading();
        Balance balance = Balancer.balance(loading, POLICY);
        AuditedFlight flight = new AuditedFlight(loading, balance, Checker.check(loading, balance, POLICY));
        return flight.withRemedy(RemedySearch.of(flight, POLICY));
    }

    private static final AuditedFlight OVERFULL = flight(SampleJet.loaded().hold(2, 3200));
    private static final AuditedFlight CLEAN = flight(SampleJet.loaded());
    private static final AuditedFlight LIKELY_OUTSIDE =
            flight(SampleJet.loaded().takeoffLimit(53_200 + 16 * Math.sqrt(30)));

    private Path write() throws IOException {
        try (SeasonReports open = SeasonReports.open(Destination.of(reports), "s", POLICY, List.of(), true)) {
            open.flight(OVERFULL);
            open.flight(CLEAN);
            open.flight(LIKELY_OUTSIDE);
            open.finish(Plain.runFacts("s", "1", List.of(), List.of(), List.of(), List.of()));
        }
        return reports.resolve("s");
    }

    @Test
    void aBreachHasItsRemedyBesideIt() throws IOException {
        List<CSVRecord> findings = Csv.records(write().resolve("findings.csv"));

        assertThat(findings.stream().filter(line -> line.get("severity").equals("breach")))
                .isNotEmpty()
                .allSatisfy(line -> assertThat(line.get("remedy")).startsWith("move 200 kg from hold 3 to hold 1"));
        assertThat(findings.stream().filter(line -> !line.get("severity").equals("breach")))
                .allSatisfy(line -> assertThat(line.get("remedy")).isEmpty());
    }

    @Test
    void everyFlightHasItsSpreadAndChances() throws IOException {
        List<CSVRecord> flights = Csv.records(write().resolve("flights.csv"));

        assertThat(flights).extracting(line -> line.get("remedy_by")).containsExactly("move", "", "");
        assertThat(flights).extracting(line -> line.get("remedy_kg")).containsExactly("200", "", "");
        assertThat(Double.parseDouble(flights.get(1).get("tow_sd_kg"))).isBetween(87.6, 87.7);
        assertThat(flights.get(2).get("tow_mass_chance")).startsWith("0.15865525");
        assertThat(flights.get(2).get("greatest_chance_of")).isEqualTo("mass-high take-off");
    }

    @Test
    void roomIsWrittenForFlightsWithoutABreach() throws IOException {
        List<CSVRecord> room = Csv.records(write().resolve("room.csv"));

        assertThat(room).hasSize(12);
        assertThat(room.get(0).get("place")).isEqualTo("zone A");
        assertThat(room.get(0).get("room_adults")).isEqualTo("20");
        assertThat(room.get(4).get("place")).isEqualTo("hold 2");
        assertThat(room.get(4).get("room_kg")).isEqualTo("2500");
        assertThat(room.get(4).get("limited_by")).isEqualTo("its own limit");
    }

    @Test
    void theOverviewSaysHowManyAreInsideOnPaperButLikelyOutside() throws IOException {
        String page = Files.readString(write().resolve("report.html"));

        assertThat(page)
                .contains("Inside on paper, but outside with a chance of more than 5.0 %")
                .contains("1 flight");
        assertThat(page).contains("move 200 kg from hold 3 to hold 1");
    }

    @Test
    void theLoadSummarySaysRemedyOrRoom() {
        LoadSummary breached = new LoadSummary(OVERFULL, true);
        LoadSummary clean = new LoadSummary(CLEAN, true);

        assertThat(breached.remedy()).startsWith("move 200 kg");
        assertThat(breached.room()).isEmpty();
        assertThat(clean.remedy()).isEmpty();
        assertThat(clean.room()).contains(new LoadSummary.Fact("hold 2", "2,500 kg, by its own limit"));
        assertThat(clean.uncertainty()).contains(new LoadSummary.Fact("take-off mass, sd", "88 kg"));
    }
}
