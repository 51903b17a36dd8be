package org.steelyard.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.steelyard.check.type.TypeRemark;
import org.steelyard.check.type.TypeReview;
import org.steelyard.cli.option.CannotException;
import org.steelyard.cli.option.ConfigOption;
import org.steelyard.cli.option.ExitCode;
import org.steelyard.cli.option.ForceOption;
import org.steelyard.cli.option.Version;
import org.steelyard.cli.text.TextTable;
import org.steelyard.config.ConfigResult;
import org.steelyard.config.Configuration;
import org.steelyard.config.source.ConfigFault;
import org.steelyard.config.source.ConfigSource;
import org.steelyard.model.type.AircraftType;
import org.steelyard.model.type.Tail;
import org.steelyard.model.unit.Counted;
import org.steelyard.report.text.Caution;
import org.steelyard.report.type.TypePages;
import org.steelyard.report.type.TypeTable;
import org.steelyard.report.type.TypeTables;
import org.steelyard.run.OneFlight;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Proves the configuration alone and shows what it says. */
@Command(
        name = "check-config",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        header = "Prove the configuration, and show each aircraft type as tables and pictures.",
        description = {
            "",
            "Lists the files that were read, every fault with file, line, key, value and what would do, then each type:"
                    + " limits, places, fuel, envelopes, trim scales, fleet, and what is no fault but worth a second"
                    + " look. With --write a page for each type, with envelopes, trim scales and tanks drawn.",
            ""
        },
        footer = {
            "",
            "Examples:",
            "  steelyard check-config",
            "  steelyard check-config --type jet180 --write reports/types"
        })
final class CheckConfigCommand implements Callable<Integer> {

    private static final int WIDTH = 110;

    @Spec
    private CommandSpec spec;

    @Mixin
    private ConfigOption config;

    @Mixin
    private ForceOption force;

    @Option(names = "--type", paramLabel = "TYPE", description = "One type only (all types).")
    private Optional<String> type;

    @Option(names = "--brief", description = "No tables: files, faults and what is worth a second look.")
    private boolean brief;

    @Option(
            names = {"-w", "--write"},
            paramLabel = "FOLDER",
            description = "Write a page for each type into this folder.")
    private Optional<Path> write;

    @Override
    public Integer call() throws CannotException {
        PrintWriter out = spec.commandLine().getOut();
        ConfigResult result = config.read();
        files(result.sources(), out);
        if (result instanceof ConfigResult.Faulty faulty) {
            faults(faulty.faults(), out);
            return ExitCode.CANNOT;
        }
        Configuration configuration = ((ConfigResult.Loaded) result).configuration();
        List<AircraftType> types = types(configuration);
        out.println("No faults: " + Counted.of(configuration.types().size(), "type") + ", "
                + Counted.of(configuration.tails().size(), "tail") + ", "
                + Counted.of(configuration.maps().size(), "heading map") + ".");
        for (AircraftType one : types) {
            show(one, tails(one, configuration), out);
        }
        write(types, configuration, out);
        out.println();
        TextTable.wrapped(Caution.TEXT, "", WIDTH).forEach(out::println);
        return ExitCode.FINISHED;
    }

    private void files(List<ConfigSource> sources, PrintWriter out) {
        out.println(Counted.of(sources.size(), "file") + " read from " + config.folder() + ":");
        String names =
                String.join(", ", sources.stream().map(ConfigSource::path).toList());
        TextTable.wrapped(names, "  ", WIDTH).forEach(out::println);
    }

    private static void faults(List<ConfigFault> faults, PrintWriter out) {
        out.println(Counted.of(faults.size(), "fault") + ":");
        String file = "";
        for (ConfigFault fault : faults) {
            if (!fault.file().equals(file)) {
                file = fault.file();
                out.println("  " + file);
            }
            out.println("    " + fault.message());
        }
    }

    private List<AircraftType> types(Configuration configuration) throws CannotException {
        if (type.isEmpty()) {
            return List.copyOf(configuration.types().values());
        }
        return List.of(OneFlight.type(type.get(), configuration)
                .orElseThrow(() -> new CannotException("There is no type '" + type.get() + "'; there are "
                        + String.join(", ", configuration.types().keySet()) + ".")));
    }

    private static List<Tail> tails(AircraftType type, Configuration configuration) {
        return configuration.tails().values().stream()
                .filter(tail -> tail.type().equals(type))
                .toList();
    }

    private void show(AircraftType one, List<Tail> tails, PrintWriter out) {
        out.println();
        out.println("━━ " + one.id() + ": " + one.name() + " "
                + "━"
                        .repeat(Math.max(
                                3, WIDTH - 6 - one.id().length() - one.name().length())));
        if (!brief) {
            for (TypeTable table : TypeTables.of(one, tails)) {
                out.println();
                out.println(table.title());
                table(table).forEach(out::println);
            }
            out.println();
        }
        remarks(TypeReview.of(one, tails), out);
    }

    private static List<String> table(TypeTable table) {
        TextTable text = new TextTable(WIDTH, table.headings().toArray(String[]::new));
        table.rows().forEach(text::row);
        List<String> lines = new ArrayList<>(text.lines("  "));
        if (!table.note().isBlank()) {
            lines.addAll(TextTable.wrapped(table.note(), "  ", WIDTH));
        }
        return lines;
    }

    private static void remarks(List<TypeRemark> remarks, PrintWriter out) {
        out.println(remarks.isEmpty() ? "Nothing else to remark." : "No fault, but worth a second look:");
        for (TypeRemark remark : remarks) {
            TextTable.wrapped(remark.about() + ": " + remark.sentence(), "  ", WIDTH)
                    .forEach(out::println);
        }
    }

    private void write(List<AircraftType> types, Configuration configuration, PrintWriter out) throws CannotException {
        if (write.isEmpty()) {
            return;
        }
        try {
            Map<AircraftType, List<Tail>> pages = new LinkedHashMap<>();
            types.forEach(one -> pages.put(one, tails(one, configuration)));
            List<String> names =
                    TypePages.write(pages, force.to(write.get(), configuration, config.folder()), Version.number());
            out.println();
            out.println("Written into " + write.get() + ": " + String.join(", ", names));
        } catch (IOException e) {
            throw CannotException.unwritten("The pages", write.get(), e);
        }
    }
}
