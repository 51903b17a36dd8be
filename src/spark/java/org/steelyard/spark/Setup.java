package org.steelyard.spark;

import java.io.IOException;
import java.io.Serializable;
import java.io.UncheckedIOException;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import org.steelyard.config.ConfigFolder;
import org.steelyard.config.ConfigResult;
import org.steelyard.config.Configuration;
import org.steelyard.read.table.ReadOptions;
import org.steelyard.read.row.Tails;

/**
 * All that a run is set up with, as it goes to the workers: the text of the configuration, from which every worker makes
 * types and fleet once.
 */
final class Setup implements Serializable {

    private static final long serialVersionUID = 1;
    private static final Map<String, Configuration> MADE = new ConcurrentHashMap<>();

    private final String run;
    private final Map<String, byte[]> config = new TreeMap<>();
    private final String map;
    private final String charset;
    private final String delimiter;
    private final List<String> by;
    private final Map<String, String> hadoop = new HashMap<>();

    /**
     * A setup.
     *
     * @param run tells this run from others
     * @param folder the configuration folder
     * @param options how files are read, but for the maps
     * @param by headings of carried columns by which statistics are grouped, too
     * @param hadoop settings of the file systems
     */
    Setup(String run, Path folder, ReadOptions options, List<String> by, Iterable<Map.Entry<String, String>> hadoop)
            throws IOException {
        this.run = run;
        this.map = options.mapName().orElse("");
        this.charset = options.charset().map(Charset::name).orElse("");
        this.delimiter = options.delimiter().map(String::valueOf).orElse("");
        this.by = new ArrayList<>(by);
        hadoop.forEach(entry -> this.hadoop.put(entry.getKey(), entry.getValue()));
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                config.put(folder.relativize(file).toString().replace('\\', '/'), Files.readAllBytes(file));
            }
        }
    }

    String run() {
        return run;
    }

    List<String> by() {
        return List.copyOf(by);
    }

    /** The configuration, made once on each machine. */
    Configuration configuration() {
        return MADE.computeIfAbsent(run, key -> make());
    }

    private Configuration make() {
        try (Scratch scratch = new Scratch()) {
            for (Map.Entry<String, byte[]> file : config.entrySet()) {
                Path path = scratch.folder().resolve(file.getKey());
                Files.createDirectories(path.getParent());
                Files.write(path, file.getValue());
            }
            if (ConfigFolder.load(scratch.folder()) instanceof ConfigResult.Loaded loaded) {
                return loaded.configuration();
            }
            throw new IllegalStateException("the configuration cannot be used here, though it was read before");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    ReadOptions reading() {
        return new ReadOptions(
                configuration().maps(),
                Optional.of(map).filter(name -> !name.isEmpty()),
                Optional.of(charset).filter(name -> !name.isEmpty()).map(Charset::forName),
                Optional.of(delimiter).filter(sign -> !sign.isEmpty()).map(sign -> sign.charAt(0)));
    }

    Tails tails() {
        Configuration made = configuration();
        return Tails.of(made.tails().values(), made.schemes().values());
    }

    /** The file systems as the driver knows them. */
    org.apache.hadoop.conf.Configuration hadoop() {
        org.apache.hadoop.conf.Configuration settings = new org.apache.hadoop.conf.Configuration(false);
        hadoop.forEach(settings::set);
        return settings;
    }
}
