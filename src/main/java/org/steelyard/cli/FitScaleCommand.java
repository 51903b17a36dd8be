package org.steelyard.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.steelyard.check.text.FindingText;
import org.steelyard.cli.option.CannotException;
import org.steelyard.cli.option.ConfigOption;
import org.steelyard.cli.option.ExitCode;
import org.steelyard.cli.option.ForceOption;
import org.steelyard.cli.option.SectionOutput;
import org.steelyard.cli.option.Version;
import org.steelyard.config.Configuration;
import org.steelyard.config.file.PairsFile;
import org.steelyard.config.section.TrimYaml;
import org.steelyard.config.source.ConfigFault;
import org.steelyard.model.input.InputProblem;
import org.steelyard.model.trim.FlapName;
import org.steelyard.model.trim.TrimUnit;
import org.steelyard.model.type.AircraftType;
import org.steelyard.read.table.ReadOptions;
import org.steelyard.read.table.SeasonUnreadableException;
import org.steelyard.report.text.Caution;
import org.steelyard.run.FittedScale;
import org.steelyard.run.OneFlight;
import org.steelyard.run.ScaleEvidence;
import org.steelyard.trim.ScaleFit;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Fits trim scales to recorded settings. */
@Command(
        name = "fit-scale",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        header = "Fit a trim scale to recorded settings, and list the ones that do not belong.",
        description = {
            "",
            "SOURCE is a season with recorded settings: a scale is fitted for each type, flap setting and thrust rating."
                    + " With --pairs it is a small table with the columns cg, setting and, if wanted, mass and note, as"
                    + " read off a printed scale: cg as 24.5 %% MAC, setting as 0.2 UP.",
            "",
            "Method: medians of slopes (Theil and Sen) for the start, then straight pieces that never rise with CG by a"
                    + " bisquare M-estimator; intervals by a seeded bootstrap. A fifth of wrong settings does no harm.",
            ""
        },
        footer = {
            "",
            "Examples:",
            "  steelyard fit-scale data-in/demo --type jet180 --flaps 5",
            "  steelyard fit-scale points.csv --pairs --type prop70 --flaps 10 --step 0.2 --section trim.yaml"
        })
final class FitScaleCommand implements Callable<Integer> {

    private static final int OUTLIERS = 20;

    @Spec
    private CommandSpec spec;

    @Mixin
    private ConfigOption config;

    @Mixin
    private ForceOption force;

    @Parameters(paramLabel = "SOURCE", description = "Season (folder or file), or with --pairs a table of pairs.")
    private Path source;

    @Option(names = "--pairs", description = "SOURCE is a table of pairs; then --type and --flaps say of what.")
    private boolean pairs;

    @Option(names = "--type", paramLabel = "TYPE", description = "One type only (all).")
    private Optional<String> type;

    @Option(
            names = {"-f", "--flaps"},
            paramLabel = "FLAPS",
            description = "One flap setting only (all).")
    private Optional<String> flaps;

    @Option(names = "--thrust", paramLabel = "RATING", description = "Thrust rating of the pairs (any).")
    private Optional<String> thrust;

    @Option(
            names = "--step",
            paramLabel = "UNITS",
            description = "Step of the indicator (that of the type's scale, or 0.1).")
    private Optional<Double> step;

    @Option(
            names = "--resamples",
            paramLabel = "N",
            defaultValue = "400",
            description = "Resamples for the intervals (${DEFAULT-VALUE}).")
    private int resamples;

    @Option(
            names = "--seed",
            paramLabel = "N",
            defaultValue = "1",
            description = "Seed of the resampling (${DEFAULT-VALUE}): the same seed gives the same intervals.")
    private long seed;

    @Option(
            names = {"-s", "--section"},
            paramLabel = "FILE",
            description = "Write the ready trim section into a file (shown on the output).")
    private Optional<Path> section;

    @Override
    public Integer call() throws CannotException, InterruptedException {
        check();
        Configuration configuration = config.load();
        List<ScaleEvidence> evidence = pairs ? List.of(table(configuration)) : season(configuration);
        PrintWriter out = spec.commandLine().getOut();
        List<FittedScale> fitted = new ArrayList<>();
        for (ScaleEvidence one : evidence) {
            fit(one, out).ifPresent(fitted::add);
        }
        if (fitted.isEmpty()) {
            throw new CannotException("No scale could be fitted.");
        }
        write(fitted, configuration, out);
        out.println(Caution.TEXT);
        return ExitCode.FINISHED;
    }

    private void check() {
        require(resamples >= 40 && resamples <= 100_000, "--resamples: " + resamples + "; expected 40 to 100000");
        require(
                step.map(units -> units > 0 && units <= 10).orElse(true),
                "--step: expected more than 0 and at most 10");
        require(!pairs || (type.isPresent() && flaps.isPresent()), "--pairs needs --type and --flaps");
    }

    private void require(boolean holds, String message) {
        if (!holds) {
            throw new ParameterException(spec.commandLine(), message);
        }
    }

    private ScaleEvidence table(Configuration configuration) throws CannotException {
        AircraftType of = OneFlight.type(type.orElseThrow(), configuration)
                .orElseThrow(() -> new CannotException("There is no type '" + type.orElseThrow() + "'; there are "
                        + String.join(", ", configuration.types().keySet()) + "."));
        PairsFile.Content content = PairsFile.read(source, of.geometry().chord());
        if (!content.faults().isEmpty()) {
            throw new CannotException(
                    content.faults().stream().map(ConfigFault::message).toList());
        }
        return ScaleEvidence.of(
                content.pairs(), String.valueOf(source.getFileName()), of, flaps.orElseThrow(), thrust.orElse(""));
    }

    private List<ScaleEvidence> season(Configuration configuration) throws CannotException, InterruptedException {
        ReadOptions reading =
                new ReadOptions(configuration.maps(), Optional.empty(), Optional.empty(), Optional.empty());
        try {
            ScaleEvidence.Season season = ScaleEvidence.of(source, reading, configuration);
            PrintWriter err = spec.commandLine().getErr();
            season.problems().forEach(problem -> err.println(problem.message()));
            if (season.rejected() > 0) {
                err.println(season.rejected() + " rows could not be used; steelyard audit says why.");
            }
            if (season.repeated() > 0) {
                err.println(season.repeated() + " rows are left out: their flights stand in other rows, too.");
            }
            List<ScaleEvidence> wanted = season.groups().stream()
                    .filter(group ->
                            type.map(group.type().id()::equalsIgnoreCase).orElse(true))
                    .filter(group -> flaps.map(FlapName::of)
                            .map(group.flaps()::equalsIgnoreCase)
                            .orElse(true))
                    .filter(group -> thrust.map(group.thrustRating()::equals).orElse(true))
                    .toList();
            if (wanted.isEmpty()) {
                throw new CannotException("The season holds no recorded trim for that.");
            }
            return wanted;
        } catch (SeasonUnreadableException e) {
            throw new CannotException(
                    e.problems().stream().map(InputProblem::message).toList());
        } catch (IOException e) {
            throw new CannotException(source + " cannot be read: " + e);
        }
    }

    private Optional<FittedScale> fit(ScaleEvidence evidence, PrintWriter out) {
        out.println(evidence.type().id() + ", flaps " + evidence.flaps()
                + (evidence.thrustRating().isBlank() ? "" : ", thrust " + evidence.thrustRating()) + ": "
                + evidence.pairs().size() + " pairs");
        try {
            FittedScale fitted = FittedScale.of(evidence, step, resamples, seed);
            describe(fitted, out);
            return Optional.of(fitted);
        } catch (IllegalArgumentException e) {
            out.println("  no scale: " + e.getMessage());
            return Optional.empty();
        }
    }

    private static void describe(FittedScale fitted, PrintWriter out) {
        ScaleFit fit = fitted.fit();
        TrimUnit unit = fitted.scale().unit();
        for (ScaleFit.FittedPoint point : fit.points()) {
            out.println(String.format(
                    Locale.ROOT,
                    "  %6.2f %% MAC  %9s   95 %% from %s to %s",
                    point.cgPercentMac(),
                    FindingText.trim(point.trimUnits(), 0.01, unit),
                    FindingText.trim(point.lowUnits(), 0.01, unit),
                    FindingText.trim(point.highUnits(), 0.01, unit)));
        }
        fit.unitsPerKg()
                .ifPresent(perKg -> out.println(String.format(
                        Locale.ROOT,
                        "  at %.0f kg; %+.4f for each 1000 kg more",
                        fit.referenceMassKg(),
                        1000 * perKg)));
        out.println(String.format(
                Locale.ROOT,
                "  rest %.3f (robust sd); overall slope %.4f for each %% MAC (95 %% from %.4f to %.4f);"
                        + " least squares, not robust: %.4f",
                fit.residualSdUnits(),
                fit.line().slope(),
                fit.line().slopeLow(),
                fit.line().slopeHigh(),
                fit.leastSquares().slope()));
        outliers(fit, unit, out);
    }

    private static void outliers(ScaleFit fit, TrimUnit unit, PrintWriter out) {
        if (fit.outliers().isEmpty()) {
            out.println("  no outliers");
            return;
        }
        out.println("  " + fit.outliers().size() + " outliers, without weight in the fit:");
        for (ScaleFit.Outlier outlier :
                fit.outliers().subList(0, Math.min(OUTLIERS, fit.outliers().size()))) {
            out.println(String.format(
                    Locale.ROOT,
                    "    %9s off  recorded %s at %.2f %% MAC  %s",
                    FindingText.trim(outlier.residualUnits(), 0.01, unit),
                    FindingText.trim(outlier.pair().settingUnits(), 0.01, unit),
                    outlier.pair().cgPercentMac(),
                    outlier.pair().label()));
        }
        if (fit.outliers().size() > OUTLIERS) {
            out.println("    and " + (fit.outliers().size() - OUTLIERS) + " more, less far off");
        }
    }

    private void write(List<FittedScale> fitted, Configuration configuration, PrintWriter out) throws CannotException {
        List<String> types = fitted.stream()
                .map(one -> one.evidence().type().id())
                .distinct()
                .toList();
        if (section.isPresent() && types.size() > 1) {
            throw new CannotException(
                    "--section takes one type, not " + String.join(", ", types) + "; name one with --type.");
        }
        for (String id : types) {
            List<TrimYaml.Entry> entries = fitted.stream()
                    .filter(one -> one.evidence().type().id().equals(id))
                    .map(FittedScale::entry)
                    .toList();
            if (types.size() > 1) {
                out.println();
                out.print("# " + id);
            }
            SectionOutput.write(
                    TrimYaml.section(entries),
                    section.map(file -> force.to(file, configuration, config.folder(), List.of(source))),
                    out);
        }
    }
}
