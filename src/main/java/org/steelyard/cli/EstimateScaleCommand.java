package org.steelyard.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import org.steelyard.check.text.FindingText;
import org.steelyard.cli.option.CannotException;
import org.steelyard.cli.option.ConfigOption;
import org.steelyard.cli.option.ExitCode;
import org.steelyard.cli.option.ForceOption;
import org.steelyard.cli.option.SectionOutput;
import org.steelyard.cli.option.Version;
import org.steelyard.config.Configuration;
import org.steelyard.config.section.TrimYaml;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.limit.Envelope;
import org.steelyard.model.trim.TrimScale;
import org.steelyard.model.type.AircraftType;
import org.steelyard.model.type.Airframe;
import org.steelyard.report.text.Caution;
import org.steelyard.run.EstimatedScales;
import org.steelyard.run.OneFlight;
import org.steelyard.trim.EstimatedScale;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Estimates trim scales from the balance of moments. */
@Command(
        name = "estimate-scale",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        header = "Estimate a trim scale from wing, tail and flap data, for a type without any.",
        description = {
            "",
            "Solves the balance of longitudinal moments at take-off speed for each flap setting of"
                    + " airframes/*.yaml in the configuration folder. An ESTIMATE: small angles, linear lift, no ground"
                    + " effect, elevator neutral. Scales that are made of it are marked, and every output says so.",
            ""
        },
        footer = {"", "Example:", "  steelyard estimate-scale single4 --section trim.yaml"})
final class EstimateScaleCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Mixin
    private ConfigOption config;

    @Mixin
    private ForceOption force;

    @Parameters(paramLabel = "TYPE", description = "The type, which must have an airframe in the configuration.")
    private String type;

    @Option(
            names = {"-s", "--section"},
            paramLabel = "FILE",
            description = "Write the ready trim section into a file (shown on the output).")
    private Optional<Path> section;

    @Override
    public Integer call() throws CannotException {
        Configuration configuration = config.load();
        AircraftType of = OneFlight.type(type, configuration)
                .orElseThrow(() -> new CannotException("There is no type '" + type + "'; there are "
                        + String.join(", ", configuration.types().keySet()) + "."));
        Airframe airframe = Optional.ofNullable(configuration.airframes().get(of.id()))
                .orElseThrow(() -> new CannotException("The type " + of.id() + " has no airframe; there "
                        + (configuration.airframes().isEmpty()
                                ? "are none in the configuration."
                                : "are "
                                        + String.join(
                                                ", ", configuration.airframes().keySet()) + ".")));
        PrintWriter out = spec.commandLine().getOut();
        List<TrimYaml.Entry> entries = new ArrayList<>();
        for (EstimatedScale estimated : estimate(of, airframe)) {
            describe(of, estimated, out);
            entries.add(EstimatedScales.entry(estimated, airframe));
        }
        SectionOutput.write(
                TrimYaml.section(entries), section.map(file -> force.to(file, configuration, config.folder())), out);
        out.println(Caution.TEXT);
        return ExitCode.FINISHED;
    }

    private static List<EstimatedScale> estimate(AircraftType type, Airframe airframe) throws CannotException {
        try {
            return EstimatedScales.of(type, airframe);
        } catch (IllegalArgumentException e) {
            throw new CannotException("The airframe of " + type.id() + " makes no scale: " + e.getMessage());
        }
    }

    private static void describe(AircraftType type, EstimatedScale estimated, PrintWriter out) {
        TrimScale scale = estimated.scale();
        Envelope envelope = type.envelope(Phase.TAKEOFF).orElseThrow();
        double massKg = (envelope.minMassKg() + envelope.maxMassKg()) / 2;
        double from = scale.law().cgRange().fromPercentMac();
        double to = scale.law().cgRange().toPercentMac();
        out.println(String.format(
                Locale.ROOT,
                "%s, flaps %s: ESTIMATE %s at %.1f %% MAC to %s at %.1f %% MAC, at %.0f kg",
                type.id(),
                scale.flaps(),
                shown(scale, from, massKg),
                from,
                shown(scale, to, massKg),
                to,
                massKg));
        out.println(String.format(
                Locale.ROOT,
                "  static margin at the rearmost CG %.1f %% MAC; greatest tail lift coefficient %.2f; greatest angle"
                        + " of attack %.1f°",
                estimated.staticMarginPercentMac(),
                estimated.mostTailLift(),
                Math.toDegrees(estimated.mostAngleRad())));
        EstimatedScales.warnings(estimated).forEach(warning -> out.println("  " + warning));
        type.trimScale(Phase.TAKEOFF, scale.flaps(), "").ifPresent(present -> compare(present, scale, massKg, out));
    }

    private static void compare(TrimScale present, TrimScale estimate, double massKg, PrintWriter out) {
        double from = Math.max(
                present.law().cgRange().fromPercentMac(),
                estimate.law().cgRange().fromPercentMac());
        double to = Math.min(
                present.law().cgRange().toPercentMac(), estimate.law().cgRange().toPercentMac());
        if (from < to) {
            out.println(String.format(
                    Locale.ROOT,
                    "  the type's own scale has %s at %.1f %% MAC and %s at %.1f %% MAC",
                    shown(present, from, massKg),
                    from,
                    shown(present, to, massKg),
                    to));
        }
    }

    private static String shown(TrimScale scale, double cg, double massKg) {
        OptionalDouble trim = scale.law().trimUnitsAt(cg, massKg);
        return trim.isPresent() ? FindingText.trim(trim.getAsDouble(), 0.01, scale.unit()) : "nothing";
    }
}
