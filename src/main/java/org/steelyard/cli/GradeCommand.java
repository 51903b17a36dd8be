package org.steelyard.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.steelyard.cli.option.CannotException;
import org.steelyard.cli.option.ConfigOption;
import org.steelyard.cli.option.ExitCode;
import org.steelyard.cli.option.ForceOption;
import org.steelyard.cli.option.OutputName;
import org.steelyard.cli.option.ReadingOptions;
import org.steelyard.cli.option.Version;
import org.steelyard.config.ConfigFolder;
import org.steelyard.config.Configuration;
import org.steelyard.config.source.ConfigFault;
import org.steelyard.grade.mark.ClassSummary;
import org.steelyard.grade.mark.ClassSummary.SlipCount;
import org.steelyard.model.input.InputProblem;
import org.steelyard.model.policy.MarkingScheme;
import org.steelyard.read.table.ReadOptions;
import org.steelyard.read.table.SeasonFolder;
import org.steelyard.read.table.SeasonUnreadableException;
import org.steelyard.report.file.Destination;
import org.steelyard.report.grade.GradeReports;
import org.steelyard.run.GradeRun;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Marks students' load sheets. */
@Command(
        name = "grade",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        header = "Mark students' load sheets: points, what follows on, and the likely slip.",
        description = {
            "",
            "SHEETS is a folder of filled-in sheets (.xlsx) or a table with a sheet in each row (.csv, .xlsx). The"
                    + " loading stands in the row, or the sheet names an exercise of given.csv, which is looked for beside"
                    + " the sheets and in the folder above. Writes " + GradeReports.BOOK + ", " + GradeReports.TABLE
                    + " and a page for each student.",
            ""
        },
        footer = {
            "",
            "Examples:",
            "  steelyard grade data-in/class",
            "  steelyard grade monday/sheets --given monday/given.csv -n monday",
            "  steelyard grade monday/sheets --marking exams/four.yaml"
        })
final class GradeCommand implements Callable<Integer> {

    private static final int SLIPS = 5;

    @Spec
    private CommandSpec spec;

    @Mixin
    private ConfigOption config;

    @Mixin
    private ForceOption force;

    @Mixin
    private ReadingOptions reading;

    @Parameters(paramLabel = "SHEETS", description = "Folder or file with the students' sheets.")
    private Path sheets;

    @Option(
            names = {"-g", "--given"},
            paramLabel = "FILE",
            description = "The exercises: a table of loadings (given.csv beside the sheets or above them).")
    private Optional<Path> given;

    @Option(
            names = {"-o", "--reports"},
            paramLabel = "FOLDER",
            defaultValue = "reports",
            description = "Where the folder of the class is written (${DEFAULT-VALUE}).")
    private Path reports;

    @Option(
            names = {"-n", "--name"},
            paramLabel = "NAME",
            description = "Name of the class (the name of the folder or file of sheets).")
    private Optional<String> name;

    @Option(
            names = "--marking",
            paramLabel = "FILE",
            description = "The marking scheme (marking.yaml of the configuration).")
    private Optional<Path> marking;

    @Override
    public Integer call() throws CannotException {
        Configuration configuration = config.load();
        MarkingScheme scheme = scheme(configuration);
        Path folder = reports.resolve(OutputName.checked(name.orElseGet(() -> OutputName.of(sheets))));
        Destination to = force.to(folder, read());
        GradeRun.Outcome outcome = mark(configuration, scheme);
        write(outcome, scheme, to);
        PrintWriter err = spec.commandLine().getErr();
        outcome.problems().forEach(problem -> err.println(problem.message()));
        summary(outcome, folder);
        return ExitCode.FINISHED;
    }

    private MarkingScheme scheme(Configuration configuration) throws CannotException {
        if (marking.isEmpty()) {
            return configuration
                    .marking()
                    .orElseThrow(() -> new CannotException(
                            "The configuration holds no marking scheme (expected a file marking.yaml, or one named by"
                                    + " --marking; config/README.md shows one)."));
        }
        List<ConfigFault> faults = new ArrayList<>();
        Optional<MarkingScheme> scheme = ConfigFolder.marking(marking.get(), faults);
        return scheme.orElseThrow(() ->
                new CannotException(faults.stream().map(ConfigFault::message).toList()));
    }

    /** The sheets and exercises, which must stay. */
    private List<Path> read() throws CannotException {
        try {
            List<Path> read = new ArrayList<>(SeasonFolder.list(sheets).files());
            given.or(() -> GradeRun.beside(sheets)).ifPresent(read::add);
            return read;
        } catch (SeasonUnreadableException e) {
            throw new CannotException(messages(e.problems(), ""));
        }
    }

    private GradeRun.Outcome mark(Configuration configuration, MarkingScheme scheme) throws CannotException {
        try {
            ReadOptions options = reading.with(configuration, Optional.empty());
            GradeRun.Outcome outcome = GradeRun.mark(sheets, given, options, configuration, scheme);
            if (outcome.sheets().isEmpty()) {
                throw new CannotException(messages(outcome.problems(), "There is no sheet to mark in " + sheets + "."));
            }
            return outcome;
        } catch (SeasonUnreadableException e) {
            throw new CannotException(messages(e.problems(), ""));
        }
    }

    private static List<String> messages(List<InputProblem> problems, String otherwise) {
        return problems.isEmpty()
                ? List.of(otherwise)
                : problems.stream().map(InputProblem::message).toList();
    }

    private void write(GradeRun.Outcome outcome, MarkingScheme scheme, Destination to) throws CannotException {
        try {
            to.requireApartFrom(sheets);
            GradeReports.write(outcome.sheets(), outcome.problems(), scheme, to, Version.number());
        } catch (IOException e) {
            throw CannotException.unwritten("The grades", to.path(), e);
        }
    }

    private void summary(GradeRun.Outcome outcome, Path folder) {
        PrintWriter out = spec.commandLine().getOut();
        ClassSummary summary = ClassSummary.of(outcome.sheets());
        out.println(String.format(
                Locale.ROOT,
                "%d sheets marked, %d passed; mean %.0f %%, median %.0f %% of the points",
                summary.sheets(),
                summary.passed(),
                summary.meanPercent(),
                summary.medianPercent()));
        summary.hardest()
                .ifPresent(item -> out.println(String.format(
                        Locale.ROOT,
                        "Hardest figure: %s, %.0f %% of its points",
                        item.item().label(),
                        item.percent())));
        for (SlipCount slip : summary.slips().stream().limit(SLIPS).toList()) {
            out.println(String.format(
                    Locale.ROOT,
                    "  %-30s named on %d, possible on %d",
                    slip.kind().label(),
                    slip.certain(),
                    slip.possible()));
        }
        if (summary.untold() > 0) {
            out.println("  cannot tell on " + summary.untold());
        }
        summary.handedInTwice().ifPresent(out::println);
        out.println("In " + folder + ": " + GradeReports.BOOK + ", " + GradeReports.TABLE + ", " + GradeReports.STUDENTS
                + "/");
    }
}
