package org.steelyard.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.steelyard.balance.Balance;
import org.steelyard.balance.Balancer;
import org.steelyard.check.result.AuditedFlight;
import org.steelyard.check.flight.Checker;
import org.steelyard.model.loading.Loading;
import org.steelyard.model.policy.Policy;
import org.steelyard.read.row.ParsedRow;
import org.steelyard.read.season.RawRows;
import org.steelyard.read.table.ReadOptions;
import org.steelyard.read.season.SourceFile;
import org.steelyard.read.row.Tails;
import org.steelyard.report.season.OutputStage;
import org.steelyard.report.season.SeasonReports;

/**
 * One thread going through a file as far as a stage: {@code Stage CONFIG FILE
 * read|parse|balance|check|flights|findings|workbook|page}. Each includes those before it up to check; of the outputs,
 * each its own alone. So differences are what a stage costs.
 */
final class Stage {

    private static final int BATCH_ROWS = 500;
    private static final Set<String> OUTPUTS = Set.of("flights", "findings", "workbook", "page");

    private final Setup setup;
    private final Policy policy;
    private final String stage;
    private final Optional<SeasonReports> reports;
    private double sum;
    private long flights;

    private Stage(Setup setup, String stage, Optional<SeasonReports> reports) {
        this.setup = setup;
        this.policy = setup.configuration().policy();
        this.stage = stage;
        this.reports = reports;
    }

    public static void main(String[] args) throws IOException {
        Setup setup = Setup.of(Path.of(args[0]));
        if (OUTPUTS.contains(args[2])) {
            Path folder = Files.createTempDirectory("steelyard-stage");
            try (SeasonReports reports = OutputStage.open(folder, setup.configuration().policy(), args[2])) {
                Stage stage = new Stage(setup, args[2], Optional.of(reports));
                stage.run(Path.of(args[1]));
                OutputStage.finish(reports, stage.flights);
            } finally {
                delete(folder);
            }
        } else {
            Stage stage = new Stage(setup, args[2], Optional.empty());
            stage.run(Path.of(args[1]));
            System.out.println(stage.flights + " " + stage.sum);
        }
    }

    private static void delete(Path folder) throws IOException {
        try (var paths = Files.walk(folder)) {
            for (Path path : paths.sorted(java.util.Comparator.reverseOrder()).toList()) {
                Files.delete(path);
            }
        }
    }

    private void run(Path file) throws IOException {
        try (SourceFile source = SourceFile.open(
                file,
                ReadOptions.of(setup.configuration().maps()),
                Tails.of(setup.configuration().tails().values()))) {
            source.forEachBatch(BATCH_ROWS, this::batch);
            if (!source.problems().isEmpty()) {
                throw new IllegalStateException(source.problems().toString());
            }
        }
    }

    private void batch(RawRows rows) throws IOException {
        flights += rows.rows().size();
        if (stage.equals("read")) {
            return;
        }
        List<AuditedFlight> audited = new ArrayList<>();
        for (ParsedRow row : rows.parse()) {
            if (!(row instanceof ParsedRow.Accepted accepted)) {
                throw new IllegalStateException(row.toString());
            }
            if (!stage.equals("parse")) {
                audit(accepted.loading()).ifPresent(audited::add);
            }
        }
        if (reports.isPresent()) {
            reports.get().flights(audited);
        }
    }

    private Optional<AuditedFlight> audit(Loading loading) {
        Balance balance = Balancer.balance(loading, policy);
        sum += balance.takeoff().momentKgM();
        if (stage.equals("balance")) {
            return Optional.empty();
        }
        AuditedFlight flight = new AuditedFlight(loading, balance, Checker.check(loading, balance, policy));
        sum += flight.assessment().findings().size();
        return Optional.of(flight);
    }
}
