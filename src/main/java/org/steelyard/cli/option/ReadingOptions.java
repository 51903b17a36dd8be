package org.steelyard.cli.option;

import java.nio.charset.Charset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.steelyard.config.Configuration;
import org.steelyard.model.input.ColumnMap;
import org.steelyard.read.table.ReadOptions;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The options for how tables are read, of every command that reads some. */
public final class ReadingOptions {

    @Spec(Spec.Target.MIXEE)
    private CommandSpec spec;

    @Option(
            names = {"-m", "--map"},
            paramLabel = "NAME",
            description = "Heading map for every table (found by file name and headings).")
    private Optional<String> map;

    @Option(
            names = "--charset",
            paramLabel = "NAME",
            description = "Encoding of text files, as windows-1252 (by the mark at the start, else UTF-8).")
    private Optional<String> charset;

    /** How to read; the delimiter is looked for where it is not given. */
    public ReadOptions with(Configuration configuration, Optional<Character> delimiter) throws CannotException {
        List<String> names = configuration.maps().stream().map(ColumnMap::name).toList();
        if (map.isPresent() && !names.contains(map.get())) {
            throw new CannotException(
                    "There is no heading map '" + map.get() + "'; there are " + String.join(", ", names) + ".");
        }
        return new ReadOptions(configuration.maps(), map, charset.map(this::charset), delimiter);
    }

    private Charset charset(String value) {
        try {
            return Charset.forName(value);
        } catch (IllegalArgumentException e) {
            throw new ParameterException(
                    spec.commandLine(),
                    "--charset: there is no encoding '" + value + "'; expected a name as UTF-8 or windows-1252",
                    e);
        }
    }

    /** What was given, as name=value. */
    public List<String> given() {
        List<String> given = new ArrayList<>();
        map.ifPresent(value -> given.add("map=" + value));
        charset.ifPresent(value -> given.add("charset=" + value));
        return given;
    }
}
