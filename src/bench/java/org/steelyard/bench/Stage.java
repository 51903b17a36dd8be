package org.steelyard.bench;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import org.steelyard.balance.Balance;
import org.steelyard.balance.Balancer;
import org.steelyard.check.AuditedFlight;
import org.steelyard.check.Checker;
import org.steelyard.model.Loading;
import org.steelyard.read.ParsedRow;
import org.steelyard.read.RawRows;
import org.steelyard.read.ReadOptions;
import org.steelyard.read.SourceFile;
import org.steelyard.read.Tails;

/**
 * One thread going through a file as far as a stage: {@code Stage CONFIG FILE read|parse|balance|check}. Each includes
 * those before it, so that differences are what a stage costs.
 */
final class Stage {

    private static final int BATCH_ROWS = 500;

    private final Setup setup;
    private final String stage;
    private double sum;
    private long flights;

    private Stage(Setup setup, String stage) {
        this.setup = setup;
        this.stage = stage;
    }

    public static void main(String[] args) throws IOException {
        Stage stage = new Stage(Setup.of(Path.of(args[0])), args[2]);
        stage.run(Path.of(args[1]));
        System.out.println(stage.flights + " " + stage.sum);
    }

    private void run(Path file) throws IOException {
        try (SourceFile source = SourceFile.open(
                file,
                ReadOptions.of(setup.configuration().maps()),
                Tails.of(setup.configuration().tails().values()))) {
            for (Optional<RawRows> rows = source.nextBatch(BATCH_ROWS); rows.isPresent(); rows = source.nextBatch(BATCH_ROWS)) {
                if (stage.equals("read")) {
                    flights += rows.get().rows().size();
                } else {
                    rows.get().parse().forEach(this::row);
                }
            }
            if (!source.problems().isEmpty()) {
                throw new IllegalStateException(source.problems().toString());
            }
        }
    }

    private void row(ParsedRow row) {
        if (!(row instanceof ParsedRow.Accepted accepted)) {
            throw new IllegalStateException(row.toString());
        }
        flights++;
        if (stage.equals("parse")) {
            return;
        }
        Loading loading = accepted.loading();
        Balance balance = Balancer.balance(loading, setup.configuration().policy());
        sum += balance.takeoff().momentKgM();
        if (stage.equals("check")) {
            AuditedFlight flight = new AuditedFlight(
                    loading, balance, Checker.check(loading, balance, setup.configuration().policy()));
            sum += flight.assessment().findings().size();
        }
    }
}
