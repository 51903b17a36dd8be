package org.steelyard.config.source;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;

/** The files of a configuration folder: finds and reads them, and knows the checksum of each. */
public final class SourceFiles {

    private static final long MOST_BYTES = 8L << 20;

    private final Path folder;
    private final Faults faults;
    private final Map<String, byte[]> contents = new TreeMap<>();

    public SourceFiles(Path folder, Faults faults) {
        this.folder = folder;
        this.faults = faults;
    }

    /** The files whose texts were read, by path. Their checksums are made only now: not every reader asks for them. */
    public List<ConfigSource> sources() {
        return contents.entrySet().stream()
                .map(file -> new ConfigSource(file.getKey(), sha256(file.getValue())))
                .toList();
    }

    /** The YAML files of a subfolder by name; a fault where there is none, and for each other file. */
    public List<String> yamlFiles(String subfolder) {
        List<String> yaml = new ArrayList<>();
        for (String name : names(subfolder)) {
            if (name.endsWith(".yaml")) {
                yaml.add(subfolder + "/" + name);
            } else if (!name.startsWith(".") && !name.endsWith("~")) {
                faults.add(subfolder + "/" + name, "a file of another kind", "a name that ends in .yaml");
            }
        }
        if (yaml.isEmpty()) {
            faults.add(subfolder, "no file is here", "a folder with at least one .yaml file");
        }
        return yaml;
    }

    /** The same where there need not be any. */
    public List<String> yamlFilesIfAny(String subfolder) {
        return names(subfolder).isEmpty() ? List.of() : yamlFiles(subfolder);
    }

    /** Whether a file that may be left out is there. */
    public boolean has(String path) {
        return Files.exists(folder.resolve(path));
    }

    private List<String> names(String subfolder) {
        if (!Files.isDirectory(folder.resolve(subfolder))) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(folder.resolve(subfolder))) {
            return files.map(path -> String.valueOf(path.getFileName()))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            faults.add(subfolder, "the folder cannot be read", "a readable folder");
            return List.of();
        }
    }

    /** The text of a file for a first look, by which nothing is noted; blank where it cannot be read. */
    public String peek(String path) {
        try {
            Path file = folder.resolve(path);
            return Files.isRegularFile(file) && Files.size(file) <= MOST_BYTES
                    ? Files.readString(file, StandardCharsets.UTF_8)
                    : "";
        } catch (IOException e) {
            return "";
        }
    }

    /** The text of a file; empty, and a fault, where it cannot be read. */
    public Optional<String> text(String path) {
        Path file = folder.resolve(path);
        if (!Files.isRegularFile(file)) {
            faults.add(path, absence(file), "a file of this name");
            return Optional.empty();
        }
        try {
            if (Files.size(file) > MOST_BYTES) {
                faults.add(path, "the file is larger than 8 MB", "a configuration file, which is smaller");
                return Optional.empty();
            }
            byte[] bytes = Files.readAllBytes(file);
            contents.put(path, bytes);
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
            return Optional.of(text.startsWith("\uFEFF") ? text.substring(1) : text);
        } catch (CharacterCodingException e) {
            faults.add(path, "not a text in UTF-8", "UTF-8");
        } catch (IOException e) {
            faults.add(path, "the file cannot be read", "a readable file");
        }
        return Optional.empty();
    }

    private static String absence(Path file) {
        if (Files.isDirectory(file)) {
            return "a folder, not a file";
        }
        if (Files.exists(file)) {
            return "a pipe or a device, not a file";
        }
        return Files.isSymbolicLink(file) ? "the link leads to nothing or in circles" : "the file is missing";
    }

    private static String sha256(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}
