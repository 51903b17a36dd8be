package org.steelyard.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.steelyard.check.curtail.Contribution;
import org.steelyard.check.curtail.CurtailedEnvelope;
import org.steelyard.check.curtail.CurtailedPoint;
import org.steelyard.check.curtail.Curtailment;
import org.steelyard.check.text.Rounded;
import org.steelyard.cli.option.CannotException;
import org.steelyard.cli.option.ConfigOption;
import org.steelyard.cli.option.ExitCode;
import org.steelyard.cli.option.ForceOption;
import org.steelyard.cli.option.SectionOutput;
import org.steelyard.cli.option.Version;
import org.steelyard.config.Configuration;
import org.steelyard.config.section.EnvelopeYaml;
import org.steelyard.model.policy.SpreadRule;
import org.steelyard.model.type.AircraftType;
import org.steelyard.model.type.MeanChord;
import org.steelyard.report.text.Caution;
import org.steelyard.report.type.OperationalEnvelopePage;
import org.steelyard.run.OneFlight;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Curtails the envelopes of a type. */
@Command(
        name = "curtail",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        header = "The operational envelope of a type: its limits less what a load sheet does not show.",
        description = {
            "",
            "After FAA AC 120-27: seating within zones (window seats first, from either end) and the type's movements"
                    + " are taken off as they are; masses of passengers and bags, positions in holds, fuel and basic"
                    + " mass and CG as standard deviations from the policy's spread, combined by the root of the sum of"
                    + " squares.",
            ""
        },
        footer = {"", "Example:", "  steelyard curtail jet180 --page operational.html --section envelopes.yaml"})
final class CurtailCommand implements Callable<Integer> {

    private static final double INTERVAL_95 = 1.96;

    @Spec
    private CommandSpec spec;

    @Mixin
    private ConfigOption config;

    @Mixin
    private ForceOption force;

    @Parameters(paramLabel = "TYPE", description = "The type.")
    private String type;

    @Option(
            names = "--deviations",
            paramLabel = "NUMBER",
            description = "How many standard deviations are taken off (1.96: of 100 flights 95 lie between).")
    private double deviations = INTERVAL_95;

    @Option(
            names = {"-p", "--page"},
            paramLabel = "FILE",
            description = "Write a page with pictures and a table of each contribution.")
    private Optional<Path> page;

    @Option(
            names = {"-s", "--section"},
            paramLabel = "FILE",
            description = "Write the ready envelopes section into a file (shown on the output).")
    private Optional<Path> section;

    @Override
    public Integer call() throws CannotException {
        if (!(deviations >= 0 && deviations <= 10)) {
            throw new ParameterException(
                    spec.commandLine(), "--deviations: " + deviations + " is not possible; expected 0 to 10");
        }
        Configuration configuration = config.load();
        AircraftType of = OneFlight.type(type, configuration)
                .orElseThrow(() -> new CannotException("There is no type '" + type + "'; there are "
                        + String.join(", ", configuration.types().keySet()) + "."));
        SpreadRule rule = configuration
                .policy()
                .spread()
                .orElseThrow(() ->
                        new CannotException("The policy gives no spread; expected a section 'spread' in policy.yaml."));
        List<CurtailedEnvelope> envelopes = curtailed(of, rule);
        PrintWriter out = spec.commandLine().getOut();
        envelopes.forEach(envelope -> describe(of, envelope, out));
        List<String> notes = notes(of);
        write(of, envelopes, notes, configuration, out);
        List<EnvelopeYaml.Entry> entries = new ArrayList<>();
        for (int i = 0; i < envelopes.size(); i++) {
            entries.add(new EnvelopeYaml.Entry(
                    envelopes.get(i).operational(), comments(envelopes.get(i), i == 0 ? notes : List.of())));
        }
        SectionOutput.write(
                "envelopes",
                EnvelopeYaml.section(entries, of.geometry().chord()),
                section.map(file -> force.to(file, configuration, config.folder())),
                out);
        out.println(Caution.TEXT);
        return ExitCode.FINISHED;
    }

    private List<CurtailedEnvelope> curtailed(AircraftType of, SpreadRule rule) throws CannotException {
        try {
            return Curtailment.of(of, rule, deviations);
        } catch (IllegalArgumentException e) {
            throw new CannotException("The envelopes of " + of.id() + " cannot be curtailed: " + e.getMessage());
        }
    }

    private void write(
            AircraftType of,
            List<CurtailedEnvelope> envelopes,
            List<String> notes,
            Configuration configuration,
            PrintWriter out)
            throws CannotException {
        if (page.isPresent()) {
            try {
                OperationalEnvelopePage.write(
                        of, envelopes, notes, force.to(page.get(), configuration, config.folder()), Version.number());
                out.println("The page is in " + page.get());
            } catch (IOException e) {
                throw CannotException.unwritten("The page", page.get(), e);
            }
        }
    }

    private List<String> notes(AircraftType of) {
        List<String> notes = new ArrayList<>();
        notes.add(String.format(
                Locale.ROOT,
                "Operational limits after FAA AC 120-27, for %d seats: what moves and how people sit is added, what"
                        + " varies by chance is %.2f standard deviations, combined by the root of the sum of squares.",
                of.cabin().seats(),
                deviations));
        notes.add(
                "Each vertex is moved by the greatest total up to its neighbours. Fuel burnt is not taken off: the path"
                        + " in flight is checked itself.");
        if (of.cabin().zones().stream().anyMatch(zone -> zone.rows().isEmpty())) {
            notes.add("The rows of some zones are not known: seating within those is not taken off.");
        }
        if (of.movements().isEmpty()) {
            notes.add("The type's file gives no movements: gear, flaps and people walking are not taken off.");
        }
        return notes;
    }

    private static void describe(AircraftType type, CurtailedEnvelope envelope, PrintWriter out) {
        out.println(String.format(
                Locale.ROOT, "%s, %s", type.id(), envelope.certified().phase().label()));
        MeanChord chord = type.geometry().chord();
        for (CurtailedPoint point : envelope.forward()) {
            out.println(line(
                    "forward",
                    point,
                    Rounded.upTo(chord.percentAt(point.operational().armM()), 2),
                    chord));
        }
        for (CurtailedPoint point : envelope.aft()) {
            out.println(line(
                    "aft",
                    point,
                    Rounded.downTo(chord.percentAt(point.operational().armM()), 2),
                    chord));
        }
    }

    /** What is permitted is rounded inwards. */
    private static String line(String side, CurtailedPoint point, String permittedPercentMac, MeanChord chord) {
        return String.format(
                Locale.ROOT,
                "  %-8s %8.0f kg  %6.2f to %6s %% MAC  (%.0f kg m)",
                side,
                point.certified().massKg(),
                chord.percentAt(point.certified().armM()),
                permittedPercentMac,
                point.takenKgM());
    }

    /** What takes off how much at the heaviest vertex, where most can be aboard. */
    private static List<String> comments(CurtailedEnvelope envelope, List<String> notes) {
        List<String> comments = new ArrayList<>(notes);
        comments.add(side("forward", envelope.forward().get(envelope.forward().size() - 1)));
        comments.add(side("aft", envelope.aft().get(envelope.aft().size() - 1)));
        return comments;
    }

    private static String side(String side, CurtailedPoint point) {
        StringBuilder text = new StringBuilder(String.format(
                Locale.ROOT, "%s at %.0f kg, in kg m:", side, point.certified().massKg()));
        for (Contribution contribution : point.contributions()) {
            text.append(String.format(
                    Locale.ROOT,
                    " %s %.0f%s;",
                    contribution.cause(),
                    contribution.kgM(),
                    contribution.byChance() ? " by chance" : ""));
        }
        return text.append(String.format(Locale.ROOT, " together %.0f", point.totalKgM()))
                .toString();
    }
}
