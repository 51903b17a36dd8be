package org.steelyard.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.steelyard.analyse.change.SeasonChange;
import org.steelyard.analyse.change.SeasonChanges;
import org.steelyard.cli.option.CannotException;
import org.steelyard.cli.option.ConfigOption;
import org.steelyard.cli.option.ExitCode;
import org.steelyard.cli.option.ForceOption;
import org.steelyard.cli.option.OutputName;
import org.steelyard.cli.option.Version;
import org.steelyard.cli.text.TerminalProgress;
import org.steelyard.config.Configuration;
import org.steelyard.model.input.InputProblem;
import org.steelyard.model.policy.RecordedTrimRule;
import org.steelyard.read.table.ReadOptions;
import org.steelyard.read.table.SeasonUnreadableException;
import org.steelyard.report.file.WriteFault;
import org.steelyard.report.season.SeasonChangeFiles;
import org.steelyard.report.season.WrittenSeason;
import org.steelyard.report.text.Caution;
import org.steelyard.run.SeasonOutcome;
import org.steelyard.run.SeasonRequest;
import org.steelyard.run.SeasonRun;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Compares two seasons. */
@Command(
        name = "against",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        header = "This season against another: what moved, and is it more than chance.",
        description = {
            "",
            "AFTER and BEFORE are folders of reports (as reports/2025), or loadings as audit takes them, which are audited"
                    + " first. CG, trim, breached and marginal shares and kinds of findings are compared by type, tail,"
                    + " route and pilot. Writes " + SeasonChangeFiles.BOOK + " and " + SeasonChangeFiles.TABLE
                    + " into a folder named after both.",
            ""
        },
        footer = {
            "",
            "Examples:",
            "  steelyard against reports/2026 reports/2025",
            "  steelyard against data-in/summer data-in/winter --by pilot,gate"
        })
final class AgainstCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Mixin
    private ConfigOption config;

    @Mixin
    private ForceOption force;

    @Parameters(index = "0", paramLabel = "AFTER", description = "The season in question.")
    private Path after;

    @Parameters(index = "1", paramLabel = "BEFORE", description = "The season to compare it with.")
    private Path before;

    @Option(
            names = {"-o", "--reports"},
            paramLabel = "FOLDER",
            defaultValue = "reports",
            description =
                    "Where the comparison, and reports of seasons audited for it, are written (${DEFAULT-VALUE}).")
    private Path reports;

    @Option(
            names = {"-b", "--by"},
            paramLabel = "NAME",
            split = ",",
            description = "Group by these columns of the inputs, too (the one that the policy names, as the pilot).")
    private List<String> by = List.of();

    @Override
    public Integer call() throws CannotException, InterruptedException {
        PrintWriter out = spec.commandLine().getOut();
        Configuration configuration = config.load();
        Path afterReports = reportsOf(after, configuration);
        Path beforeReports = reportsOf(before, configuration);
        String afterName = OutputName.of(afterReports);
        String beforeName = OutputName.of(beforeReports);
        Path folder = reports.resolve(afterName + "-against-" + beforeName);
        List<String> columns = columns(configuration);
        List<SeasonChange> changes = changes(beforeReports, afterReports, columns);
        try {
            SeasonChangeFiles.write(force.to(folder, List.of()), beforeName, afterName, changes);
        } catch (IOException e) {
            throw CannotException.unwritten("The comparison", folder, e);
        }
        SeasonChangeFiles.lines(beforeName, afterName, changes).forEach(out::println);
        out.println("The comparison is in " + folder + ": " + SeasonChangeFiles.BOOK + ", " + SeasonChangeFiles.TABLE);
        out.println(Caution.TEXT);
        return ExitCode.FINISHED;
    }

    private static List<SeasonChange> changes(Path before, Path after, List<String> columns) throws CannotException {
        try {
            return SeasonChanges.between(WrittenSeason.read(before, columns), WrittenSeason.read(after, columns));
        } catch (IOException e) {
            throw new CannotException("The seasons cannot be compared: " + WriteFault.of(e) + ".");
        }
    }

    private List<String> columns(Configuration configuration) {
        List<String> columns = new ArrayList<>();
        configuration
                .policy()
                .recordedTrim()
                .map(RecordedTrimRule::groupBy)
                .filter(name -> !name.isBlank())
                .ifPresent(columns::add);
        by.stream()
                .filter(name -> columns.stream().noneMatch(name::equalsIgnoreCase))
                .forEach(columns::add);
        return columns;
    }

    /** The folder of a season's reports, made first if loadings were given. */
    private Path reportsOf(Path season, Configuration configuration) throws CannotException, InterruptedException {
        if (WrittenSeason.isAt(season)) {
            return season;
        }
        SeasonRequest request = new SeasonRequest(
                season,
                OutputName.checked(OutputName.of(season)),
                configuration,
                new ReadOptions(configuration.maps(), Optional.empty(), Optional.empty(), Optional.empty()),
                reports,
                Runtime.getRuntime().availableProcessors(),
                Version.number(),
                List.of(),
                List.of(),
                false,
                force.isGiven());
        PrintWriter err = spec.commandLine().getErr();
        try (TerminalProgress progress = TerminalProgress.on(err, false)) {
            SeasonOutcome outcome = SeasonRun.audit(request, progress);
            outcome.fileProblems().forEach(problem -> err.println(problem.message()));
            return outcome.folder();
        } catch (SeasonUnreadableException e) {
            throw new CannotException(
                    e.problems().stream().map(InputProblem::message).toList());
        } catch (IOException e) {
            throw CannotException.unwritten("The reports", reports.resolve(request.name()), e);
        }
    }
}
