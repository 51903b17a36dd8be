package org.steelyard.config;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The README of the configuration folder: its examples are one whole small configuration. */
public final class Readme {

    public static final Path SHIPPED = Path.of("config");

    private static final Pattern EXAMPLE = Pattern.compile("(?m)^`(\\S+)`\\n```\\w+\\n((?s).*?)^```$");

    private Readme() {}

    public static String text() {
        try {
            return Files.readString(SHIPPED.resolve("README.md"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The examples by the path of their file. */
    public static Map<String, String> examples() {
        Map<String, String> examples = new LinkedHashMap<>();
        Matcher matcher = EXAMPLE.matcher(text());
        while (matcher.find()) {
            examples.put(matcher.group(1), matcher.group(2));
        }
        return examples;
    }

    /** Writes files of a configuration into a folder. */
    public static void write(Path folder, Map<String, String> files) {
        files.forEach((path, text) -> {
            try {
                Files.createDirectories(folder.resolve(path).getParent());
                Files.writeString(folder.resolve(path), text);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        });
    }
}
