package org.steelyard.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import org.steelyard.cli.option.CannotException;
import org.steelyard.cli.option.ConfigOption;
import org.steelyard.cli.option.ExitCode;
import org.steelyard.cli.option.FailOn;
import org.steelyard.cli.option.ForceOption;
import org.steelyard.cli.option.OutputName;
import org.steelyard.cli.option.ReadingOptions;
import org.steelyard.cli.option.Version;
import org.steelyard.cli.text.ClosingSummary;
import org.steelyard.cli.text.TerminalProgress;
import org.steelyard.config.Configuration;
import org.steelyard.model.input.InputProblem;
import org.steelyard.read.table.ReadOptions;
import org.steelyard.read.table.SeasonUnreadableException;
import org.steelyard.report.output.LeftOutGroupings;
import org.steelyard.run.SeasonOutcome;
import org.steelyard.run.SeasonRequest;
import org.steelyard.run.SeasonRun;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Audits a season and writes its reports. */
@Command(
        name = "audit",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        header = "Audit a season: every flight computed, checked and reported.",
        description = {
            "",
            "SEASON is a folder of .csv, .tsv, .txt and .xlsx files, or one such file. The reports go into a folder of"
                    + " the season's name: season.xlsx, report.html, flights.csv, findings.csv, statistics.csv,"
                    + " rejected.csv, skipped.csv, run.json, and room.csv with --room.",
            ""
        },
        footer = {
            "",
            "Examples:",
            "  steelyard audit data-in/demo",
            "  steelyard audit winter.csv --charset windows-1252 --map house",
            "  steelyard audit data-in/summer --fail-on breach,rejected     for scripts: exit code 1 if there are any"
        })
final class AuditCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Mixin
    private ConfigOption config;

    @Mixin
    private ForceOption force;

    @Mixin
    private ReadingOptions reading;

    @Parameters(paramLabel = "SEASON", description = "Folder or file with the loadings.")
    private Path season;

    @Option(
            names = {"-o", "--reports"},
            paramLabel = "FOLDER",
            defaultValue = "reports",
            description = "Where the season's folder of reports is written (${DEFAULT-VALUE}).")
    private Path reports;

    @Option(
            names = {"-n", "--name"},
            paramLabel = "NAME",
            description = "Name of the season (the name of its folder or file).")
    private Optional<String> name;

    @Option(
            names = "--delimiter",
            paramLabel = "CHAR",
            description =
                    "Character between cells: comma, semicolon, tab or any one character (found in the headings).")
    private Optional<String> delimiter;

    @Option(
            names = {"-t", "--threads"},
            paramLabel = "N",
            description = "Worker threads (the number of processors). The results are the same with any number.")
    private Optional<Integer> threads;

    @Option(
            names = {"-b", "--by"},
            paramLabel = "NAME",
            split = ",",
            description = "Group the statistics by these columns of the inputs, too, as --by gate,pilot.")
    private List<String> by = List.of();

    @Option(
            names = "--fail-on",
            paramLabel = "KIND",
            split = ",",
            description = "End with exit code 1 if any is found: ${COMPLETION-CANDIDATES}.")
    private Set<FailOn> failOn = Set.of();

    @Option(
            names = {"-q", "--quiet"},
            description = "No progress and no summary; problems are still told.")
    private boolean quiet;

    @Option(
            names = "--room",
            description = "Write room.csv too: what each zone and hold of each flight could still take.")
    private boolean room;

    @Override
    public Integer call() throws CannotException, InterruptedException {
        Configuration configuration = config.load();
        SeasonRequest request = new SeasonRequest(
                season,
                OutputName.checked(name.orElseGet(() -> OutputName.of(season))),
                configuration,
                reading.with(configuration, delimiter.map(this::delimiter)),
                reports,
                threads(),
                Version.number(),
                by,
                options(),
                room,
                force.isGiven());
        SeasonOutcome outcome = audit(request);
        PrintWriter err = spec.commandLine().getErr();
        outcome.fileProblems().forEach(problem -> err.println(problem.message()));
        outcome.summary().statistics().missing().stream()
                .filter(by::contains)
                .forEach(name -> err.println("--by: no flight has a column '" + name + "' to carry along"));
        LeftOutGroupings.of(outcome.summary()).forEach(err::println);
        if (!quiet) {
            new ClosingSummary(outcome).lines().forEach(spec.commandLine().getOut()::println);
        }
        return failOn.stream().anyMatch(kind -> kind.isFoundIn(outcome)) ? ExitCode.FOUND : ExitCode.FINISHED;
    }

    private SeasonOutcome audit(SeasonRequest request) throws CannotException, InterruptedException {
        try (TerminalProgress progress = TerminalProgress.on(spec.commandLine().getErr(), quiet)) {
            return SeasonRun.audit(request, progress);
        } catch (SeasonUnreadableException e) {
            throw new CannotException(
                    e.problems().stream().map(InputProblem::message).toList());
        } catch (IOException e) {
            throw CannotException.unwritten("The reports", reports.resolve(request.name()), e);
        }
    }

    private Character delimiter(String value) {
        return ReadOptions.delimiter(value)
                .orElseThrow(() -> new ParameterException(
                        spec.commandLine(),
                        "--delimiter: '" + value + "' is not one character; expected comma, semicolon, tab or one"
                                + " character"));
    }

    private int threads() {
        int wanted = threads.orElse(Runtime.getRuntime().availableProcessors());
        if (wanted < 1 || wanted > 1000) {
            throw new ParameterException(
                    spec.commandLine(), "--threads: " + wanted + " is not possible; expected 1 to 1000");
        }
        return wanted;
    }

    /** Options that change results; the number of threads does not. */
    private List<String> options() {
        List<String> given = reading.given();
        delimiter.ifPresent(value -> given.add("delimiter=" + value));
        if (!by.isEmpty()) {
            given.add("by=" + String.join(",", by));
        }
        if (room) {
            given.add("room=yes");
        }
        return given;
    }
}
