package org.steelyard.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.steelyard.cli.option.CannotException;
import org.steelyard.cli.option.ConfigOption;
import org.steelyard.cli.option.ExitCode;
import org.steelyard.cli.option.ForceOption;
import org.steelyard.cli.option.Version;
import org.steelyard.cli.text.ProposalText;
import org.steelyard.config.Configuration;
import org.steelyard.config.section.MapYaml;
import org.steelyard.model.input.ColumnUnit;
import org.steelyard.model.input.InputProblem;
import org.steelyard.model.type.AircraftType;
import org.steelyard.model.unit.OneLine;
import org.steelyard.read.propose.MapProposal;
import org.steelyard.read.propose.ProposalRequest;
import org.steelyard.read.row.Tails;
import org.steelyard.read.table.SeasonUnreadableException;
import org.steelyard.report.file.Destination;
import org.steelyard.report.file.WholeFile;
import org.steelyard.run.MapTrial;
import org.steelyard.run.OneFlight;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Drafts a heading map. */
@Command(
        name = "propose-map",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        header = "Draft a heading map for a file that none reads yet.",
        description = {
            "",
            "Looks at headings, units and cells, says for each column what it takes it to mean, how sure that is and"
                    + " why, tries the map on the file, and writes it only with --write. What is in doubt is left out"
                    + " until a person decides.",
            ""
        },
        footer = {
            "",
            "Examples:",
            "  steelyard propose-map data-in/club-2026.csv",
            "  steelyard propose-map trips.xlsx --sheet May --dates dd/MM/uuuu --write config/columns/trips.yaml"
        })
final class ProposeMapCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Mixin
    private ConfigOption config;

    @Mixin
    private ForceOption force;

    @Parameters(paramLabel = "FILE", description = "A text file or a workbook with one row for each flight.")
    private Path file;

    @Option(names = "--sheet", paramLabel = "NAME", description = "Sheet of a workbook (the one understood best).")
    private Optional<String> sheet;

    @Option(
            names = "--type",
            paramLabel = "TYPE",
            description = "Whose zones, holds and tanks the headings name (those of all types).")
    private Optional<String> type;

    @Option(names = "--dates", paramLabel = "PATTERN", description = "Pattern of the dates, as dd/MM/uuuu.")
    private Optional<String> dates;

    @Option(names = "--decimal", paramLabel = "SIGN", description = "comma or point (by the cells).")
    private Optional<String> decimal;

    @Option(
            names = "--trim",
            paramLabel = "WAY",
            description = "Which way trims without UP or DN count: nose-up or nose-down.")
    private Optional<String> trim;

    @Option(names = "--name", paramLabel = "NAME", description = "Name of the map (from the name of the file).")
    private Optional<String> name;

    @Option(names = "--write", paramLabel = "MAP", description = "Write the map into this file.")
    private Optional<Path> write;

    @Override
    public Integer call() throws CannotException {
        ProposalRequest request = request();
        Configuration configuration = config.load();
        Tails tails = Tails.of(configuration.tails().values());
        MapProposal draft = draft(request, types(configuration), tails);
        PrintWriter out = spec.commandLine().getOut();
        new ProposalText(draft, MapTrial.of(file, draft.map(), tails))
                .lines().stream().map(OneLine::whole).forEach(out::println);
        out.println();
        if (write.isPresent()) {
            write(draft, force.to(write.get(), configuration, config.folder(), List.of(file)));
            out.println("The map '" + draft.map().name() + "' is in " + write.get()
                    + ". steelyard check-config proves it together with the rest.");
        } else {
            out.println(
                    "Nothing is written; --write config/columns/" + draft.map().name() + ".yaml keeps the map.");
        }
        return ExitCode.FINISHED;
    }

    private ProposalRequest request() {
        Optional<Boolean> comma = decimal.map(sign -> oneOf("--decimal", sign, List.of("comma", "point")))
                .map("comma"::equals);
        Optional<ColumnUnit> unit = trim.map(way -> oneOf("--trim", way, List.of("nose-up", "nose-down")))
                .map(way -> way.equals("nose-up") ? ColumnUnit.NOSE_UP : ColumnUnit.NOSE_DOWN);
        try {
            return new ProposalRequest(name.orElseGet(this::nameOfFile), sheet, dates, comma, unit);
        } catch (IllegalArgumentException e) {
            throw new ParameterException(spec.commandLine(), "--dates: " + e.getMessage(), e);
        }
    }

    private String oneOf(String option, String value, List<String> words) {
        if (!words.contains(value)) {
            throw new ParameterException(
                    spec.commandLine(),
                    option + ": unknown word (value '" + value + "'; expected " + String.join(" or ", words) + ")");
        }
        return value;
    }

    /** The name of the file in lower case without its ending, signs made hyphens. */
    private String nameOfFile() {
        String plain = String.valueOf(file.getFileName())
                .toLowerCase(Locale.ROOT)
                .replaceFirst("\\.[a-z]+$", "")
                .replaceAll("[^\\p{L}\\d]+", "-")
                .replaceAll("^-+|-+$", "");
        return plain.isEmpty() ? "new" : plain;
    }

    private Collection<AircraftType> types(Configuration configuration) throws CannotException {
        if (type.isEmpty()) {
            return configuration.types().values();
        }
        return List.of(OneFlight.type(type.get(), configuration)
                .orElseThrow(() -> new CannotException("There is no type '" + type.get() + "'; there are "
                        + String.join(", ", configuration.types().keySet()) + ".")));
    }

    private MapProposal draft(ProposalRequest request, Collection<AircraftType> types, Tails tails)
            throws CannotException {
        try {
            return MapProposal.of(file, request, types, tails);
        } catch (SeasonUnreadableException e) {
            throw new CannotException(
                    e.problems().stream().map(InputProblem::message).toList());
        }
    }

    private static void write(MapProposal draft, Destination into) throws CannotException {
        String text = MapYaml.of(draft.map(), ProposalText.head(draft), ProposalText.comments(draft));
        try {
            WholeFile.write(into, text);
        } catch (IOException e) {
            throw CannotException.unwritten("The map", into.path(), e);
        }
    }
}
