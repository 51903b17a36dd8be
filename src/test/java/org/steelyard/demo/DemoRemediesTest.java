package org.steelyard.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.steelyard.balance.Balance;
import org.steelyard.balance.Balancer;
import org.steelyard.check.flight.Checker;
import org.steelyard.check.result.AuditedFlight;
import org.steelyard.check.result.Remedy;
import org.steelyard.check.result.RemedyMeans;
import org.steelyard.check.result.Status;
import org.steelyard.config.ConfigFolder;
import org.steelyard.config.ConfigResult;
import org.steelyard.config.Configuration;
import org.steelyard.model.loading.Loading;
import org.steelyard.read.row.ParsedRow;
import org.steelyard.read.row.Tails;
import org.steelyard.read.season.SourceFile;
import org.steelyard.read.table.ReadOptions;
import org.steelyard.remedy.RemedySearch;

/** The breached flights of the demo season, put right and audited again. */
@Tag("validation")
class DemoRemediesTest {

    private static final Configuration CONFIGURATION =
            ((ConfigResult.Loaded) ConfigFolder.load(Path.of("config"))).configuration();

    @Test
    void everyRemedyOfTheSeasonPassesTheAuditAndIsProvedLeast() throws IOException {
        int cured = 0;
        for (Loading loading : loadings()) {
            AuditedFlight flight = audited(loading);
            Optional<Remedy> remedy = RemedySearch.of(flight, CONFIGURATION.policy());
            if (remedy.isPresent() && remedy.get().means() != RemedyMeans.NONE) {
                assertThat(audited(remedy.get().loading().orElseThrow())
                                .assessment()
                                .status())
                        .as("%s: %s", loading.origin(), remedy.get().sentence())
                        .isNotEqualTo(Status.BREACHED);
                assertThat(byLoad(remedy.get()).proved()).isTrue();
                assertThat(remedy.get().massKg()).isPositive();
                cured++;
            }
        }
        assertThat(cured).isGreaterThan(20);
    }

    private static Remedy byLoad(Remedy remedy) {
        return remedy.means() == RemedyMeans.FUEL ? remedy.other().orElseThrow() : remedy;
    }

    private static AuditedFlight audited(Loading loading) {
        Balance balance = Balancer.balance(loading, CONFIGURATION.policy());
        return new AuditedFlight(loading, balance, Checker.check(loading, balance, CONFIGURATION.policy()));
    }

    private static List<Loading> loadings() throws IOException {
        List<Loading> loadings = new ArrayList<>();
        List<Path> files;
        try (Stream<Path> listed = Files.list(Path.of("data-in/demo"))) {
            files = listed.sorted().toList();
        }
        Tails tails = Tails.of(CONFIGURATION.tails().values());
        for (Path file : files) {
            try (SourceFile source = SourceFile.open(file, ReadOptions.of(CONFIGURATION.maps()), tails)) {
                for (var batch = source.nextBatch(500); batch.isPresent(); batch = source.nextBatch(500)) {
                    for (ParsedRow row : batch.orElseThrow().parse()) {
                        if (row instanceof ParsedRow.Accepted accepted) {
                            loadings.add(accepted.loading());
                        }
                    }
                }
            }
        }
        return loadings;
    }
}
